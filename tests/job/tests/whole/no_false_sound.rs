//! What nobody looked at is never called sound. Common practice, no source: a limit of the look is said, not guessed over.

use acts::walk::Spot;
use fixtures::dice::Dice;
use fixtures::play::Player;
use job::chance;
use job::hand::Hand;
use job::scene::{self, Scene, main_story_alone};
use screens::{Action, Place, Screens};
use std::collections::BTreeMap;
use trade::history::History;
use trade::ids::{PartId, PropertyId, VisitId};
use trade::ladder::Ladder;
use trade::mark::{Condition, NotSeen};
use trade::visit::Scope;

/// One house that had a visit before, where much was sound then; each way of closing on top of it.
#[test]
fn closing_a_visit_calls_nothing_sound_that_has_no_mark_of_its_own() {
    let demo = main_story_alone();
    let scene = Scene::new();
    let (book, call) = scene.until_call(&mut Player::new(&demo));
    let mut screens = Screens::of(book);
    let mut number = 0;
    for scope in Scope::ALL {
        for rest in [NotSeen::OutsideScope, NotSeen::NotReached] {
            number += 1;
            let mut hand = Hand::new(screens, demo.today);
            let visit = open(&mut hand, call.property, scope);
            let own = some_taps(&mut hand, call.property, visit, number);
            close(&mut hand, visit, rest);
            holds(&hand, visit, rest, &own);
            screens = hand.screens;
        }
    }
}

/// Rails without rungs: it is known what became of it, so it is not dotted like what nobody saw.
#[test]
fn what_was_taken_down_is_shown_as_gone_and_not_as_unseen() {
    let demo = main_story_alone();
    let scene = Scene::new();
    let (book, call) = scene.until_call(&mut Player::new(&demo));
    let mut hand = Hand::new(Screens::of(book), demo.today);
    let visit = open(&mut hand, call.property, Scope::WholeRoof);
    let part = scene::history(hand.screens.book(), call.property).parts[0].id;
    let spot = Spot::Known { part };
    hand.act(&Action::SetGone { visit, spot });
    let walked = Place::Walk {
        visit,
        structure: scene::history(hand.screens.book(), call.property).parts[0].structure,
        stop: None,
    };
    let gone = everywhere(&mut hand, walked);
    assert_eq!(gone, 1);
    close(&mut hand, visit, NotSeen::OutsideScope);
    hand.at = Place::ThenAndNow { visit };
    let changed = hand.then_and_now().changed;
    assert_eq!(
        changed.iter().filter(|one| one.now == Ladder::Gone).count(),
        1
    );
}

/// How many parts stand as gone on all stops of a walk.
fn everywhere(hand: &mut Hand, walk: Place) -> usize {
    hand.at = walk;
    let stops = hand.walk().stops;
    let mut gone = 0;
    for stop in stops {
        hand.act(&stop.go);
        let here = hand.walk().here;
        gone += here
            .iter()
            .flat_map(|here| &here.spots)
            .filter(|spot| spot.ladder == Ladder::Gone)
            .count();
    }
    gone
}

fn open(hand: &mut Hand, property: PropertyId, scope: Scope) -> VisitId {
    hand.at = Place::Doorstep { property };
    let form = hand.doorstep().open.expect("a visit can be opened");
    let kind = hand.text("kind-sidewall-flashing");
    let scope = hand.text(scope.key());
    hand.send(&form, &[("kind", &kind), ("scope", &scope)]);
    scene::open_visit(hand.screens.book(), property)
}

/// Taps by chance; the marks of this visit before it is closed.
fn some_taps(
    hand: &mut Hand,
    property: PropertyId,
    visit: VisitId,
    number: u64,
) -> BTreeMap<PartId, Condition> {
    let mut dice = Dice::new(number);
    hand.at = scene::walk(hand.screens.book(), visit);
    for _ in 0..30 {
        let offered: Vec<_> = chance::offered(&hand.look())
            .into_iter()
            .filter(chance::stays_on_visit)
            .filter(|action| !matches!(action, screens::Action::SetScope { .. }))
            .collect();
        let action = dice.pick(&offered).clone();
        hand.act(&action);
    }
    conditions(&scene::history(hand.screens.book(), property), visit)
}

fn conditions(history: &History, visit: VisitId) -> BTreeMap<PartId, Condition> {
    let of_visit = history.marks.iter().filter(|mark| mark.visit == visit);
    of_visit.map(|mark| (mark.part, mark.condition)).collect()
}

fn close(hand: &mut Hand, visit: VisitId, rest: NotSeen) {
    hand.at = scene::walk(hand.screens.book(), visit);
    let label = hand.text(match rest {
        NotSeen::OutsideScope => "close-outside-scope",
        _ => "close-not-reached",
    });
    hand.tap(&hand.walk().close, &label);
}

fn holds(hand: &Hand, visit: VisitId, rest: NotSeen, own: &BTreeMap<PartId, Condition>) {
    let judged =
        acts::judge::judge(hand.screens.book(), visit, hand.now()).expect("the visit is judged");
    let mut closed = 0;
    for (part, condition) in conditions(&judged.history, visit) {
        match own.get(&part) {
            Some(own)
                if *own
                    != (Condition::NotSeen {
                        why: NotSeen::NotReached,
                    }) =>
            {
                assert_eq!(condition, *own, "closing changes no answer");
            }
            _ => {
                assert_eq!(condition, Condition::NotSeen { why: rest });
                closed += 1;
            }
        }
    }
    assert!(closed > 0, "closing had something to close");
    for thread in &judged.threads {
        let real = own
            .get(&thread.part)
            .is_some_and(|condition| condition.rung().is_some());
        assert!(
            real || thread.rung_now.is_none(),
            "{thread:?} stands on no look of this visit"
        );
    }
}
