//! Every defect within three taps from a lit Walk: part, (family,) defect. Common practice, no source: few taps for a gloved hand.

use job::hand::Hand;
use job::scene::{self, Scene};
use screens::{Action, Button, Place};
use trade::catalogue::{Catalogue, DefectKey, Kind};
use trade::visit::Scope;

#[test]
fn every_defect_of_every_kind_is_three_taps_away() {
    let scene = Scene::new();
    let (mut hand, _, visit) = scene::first_visit(&scene, Scope::WholeRoof);
    let walk = scene::walk(hand.screens.book(), visit);
    let catalogue = Catalogue::standard();
    let (mut ways, mut at_two) = (0, 0);
    for kind in catalogue.kinds() {
        stand_at(&mut hand, &walk, kind);
        let at = hand.at.clone();
        for defect in catalogue.defects_of(&kind.key) {
            hand.at = at.clone();
            let taps = taps_to(&mut hand, kind, &defect.key);
            let taps =
                taps.unwrap_or_else(|| panic!("{} is not reached on {}", defect.key, kind.key));
            assert!(
                taps <= 3,
                "{} on {} takes {taps} taps",
                defect.key,
                kind.key
            );
            ways += 1;
            at_two += u32::from(taps == 2);
        }
    }
    println!(
        "{ways} ways to {} defects; {at_two} take two taps, the others three",
        catalogue.defects().len()
    );
    assert!(ways >= catalogue.defects().len());
}

/// Stands on a walk lit at the stop of a kind, where a part of that kind is known.
fn stand_at(hand: &mut Hand, walk: &Place, kind: &Kind) {
    let Place::Walk {
        visit, structure, ..
    } = *walk
    else {
        panic!("{walk} is no walk");
    };
    hand.at = Place::Walk {
        visit,
        structure,
        stop: Some(kind.stop.clone()),
    };
    if spot(hand, kind).is_some() {
        return;
    }
    let add = hand.walk().here.expect("there is a stop").add;
    let name = hand.text(&kind.key.message());
    let slope = add
        .fields
        .iter()
        .find(|field| field.name == "slope")
        .map(|field| match &field.kind {
            screens::FieldKind::OneOf { choices } => choices[0].label.clone(),
            _ => panic!("a slope is chosen"),
        });
    let slope = slope.filter(|_| kind.on_slope);
    let mut filled = vec![("kind", name.as_str())];
    filled.extend(slope.as_deref().map(|slope| ("slope", slope)));
    hand.send(&add, &filled);
    let rung = hand.text("rung-ageing");
    hand.tap(&hand.mark().rungs, &rung);
    let back = hand.mark().back.action;
    hand.act(&back);
}

/// The way to the mark of the first part of a kind at the lit stop.
fn spot(hand: &Hand, kind: &Kind) -> Option<Action> {
    let name = hand.text(&kind.key.message());
    let rows = hand.walk().here?.spots;
    let row = rows
        .iter()
        .find(|row| row.name == name || row.name.starts_with(&format!("{name}, ")));
    row.map(|row| row.mark.action.clone())
}

fn taps_to(hand: &mut Hand, kind: &Kind, defect: &DefectKey) -> Option<u32> {
    let part = spot(hand, kind)?;
    hand.act(&part);
    if names(&hand.mark().defects, defect) {
        return Some(2);
    }
    hand.mark().families.into_iter().find_map(|family| {
        hand.act(&family.action);
        let found = names(&hand.mark().defects, defect);
        hand.act(&part);
        found.then_some(3)
    })
}

fn names(buttons: &[Button], defect: &DefectKey) -> bool {
    buttons.iter().any(|button| {
        matches!(&button.action, Action::ToggleDefect { defect: named, .. } if named == defect)
    })
}
