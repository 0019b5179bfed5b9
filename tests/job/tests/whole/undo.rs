//! Undo is a later line of ink. Common practice, no source: what is taken back leaves everything as it was before, tap by tap.

use job::chance;
use job::hand::{Hand, button};
use job::scene::{self, Scene};
use proptest::prelude::*;
use screens::Place;
use trade::ids::VisitId;
use trade::visit::Scope;

/// Taps something that the screen shows and that stays on the visit.
fn tap(hand: &mut Hand, number: usize) {
    let offered: Vec<_> = chance::offered(&hand.look())
        .into_iter()
        .filter(chance::stays_on_visit)
        .collect();
    let action = offered[number % offered.len()].clone();
    hand.act(&action);
}

fn undo(hand: &mut Hand, visit: VisitId) {
    if !matches!(hand.at, Place::Walk { .. } | Place::Mark { .. }) {
        hand.at = scene::walk(hand.screens.book(), visit);
    }
    let shown = chance::offered(&hand.look());
    let undo = shown
        .into_iter()
        .find(|action| matches!(action, screens::Action::Undo { .. }))
        .expect("undo is shown");
    hand.act(&undo);
    // What is shown after it can be shown.
    hand.look();
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn undoing_every_tap_leaves_what_was_there_before(taps in prop::collection::vec(any::<usize>(), 1..24)) {
        let scene = Scene::new();
        let (mut hand, property, visit) = scene::first_visit(&scene, Scope::WholeRoof);
        let before = scene::history(hand.screens.book(), property);
        let mut recorded = 0;
        for number in taps {
            let ink = scene::ink(hand.screens.book());
            tap(&mut hand, number);
            recorded += usize::from(scene::ink(hand.screens.book()) > ink);
        }
        for _ in 0..recorded {
            let ink = scene::ink(hand.screens.book());
            undo(&mut hand, visit);
            prop_assert!(scene::ink(hand.screens.book()) > ink, "an undo is a later line");
        }
        prop_assert_eq!(scene::history(hand.screens.book(), property), before);
        let checked = hand.screens.book().check().expect("the book reads");
        prop_assert_eq!(checked.problems, vec![]);
    }
}

#[test]
fn the_opening_of_a_visit_is_not_taken_back() {
    let scene = Scene::new();
    let (mut hand, property, visit) = scene::first_visit(&scene, Scope::QuickLook);
    let before = scene::history(hand.screens.book(), property);
    hand.at = scene::walk(hand.screens.book(), visit);
    let undo = hand.walk().undo.action;
    let trouble = hand
        .try_act(&undo)
        .expect_err("there is nothing to take back");
    assert_eq!(trouble.says, hand.text("error-nothing-to-undo"));
    assert_eq!(scene::history(hand.screens.book(), property), before);
}

#[test]
fn a_stop_that_was_not_seen_is_taken_back_with_one_undo() {
    let scene = Scene::new();
    let (mut hand, property, visit) = scene::first_visit(&scene, Scope::WholeRoof);
    let before = scene::history(hand.screens.book(), property);
    hand.at = scene::walk(hand.screens.book(), visit);
    let stops = hand.walk().stops;
    let several = stops.iter().find(|stop| {
        hand.act(&stop.go);
        hand.walk().here.is_some_and(|here| here.spots.len() > 2)
    });
    several.expect("some stop has several parts");
    let wet = hand.text("not-seen-wet");
    let buttons = hand.walk().here.expect("there is a stop").not_seen;
    let label = button(&buttons, &wet).label.clone();
    hand.tap(&buttons, &label);
    assert!(scene::history(hand.screens.book(), property).marks.len() > 1);
    undo(&mut hand, visit);
    assert_eq!(scene::history(hand.screens.book(), property), before);
}

#[test]
fn work_that_lies_ahead_leaves_nothing_behind() {
    let scene = Scene::new();
    let (mut hand, property, visit) = scene::first_visit(&scene, Scope::WholeRoof);
    hand.at = scene::walk(hand.screens.book(), visit);
    let mark = hand.walk().here.expect("there is a stop").spots[0]
        .mark
        .action
        .clone();
    hand.act(&mark);
    let before = scene::history(hand.screens.book(), property);
    let title = hand.text("work-title");
    let form = hand
        .mark()
        .forms
        .into_iter()
        .find(|form| form.title == title)
        .expect("work can be told");
    let action = screens::Action::Submit {
        form: form.form,
        values: vec![("when".to_owned(), "2031-01-01".to_owned())],
    };
    hand.try_act(&action).expect_err("work cannot lie ahead");
    assert_eq!(scene::history(hand.screens.book(), property), before);
}
