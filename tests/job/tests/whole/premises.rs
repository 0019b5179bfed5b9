//! What stands at an address, by taps alone: its spellings, people and dangers, two that are one place, and the owner's right to be erased.

use job::hand::Hand;
use job::scene::{self, Scene};
use screens::{Action, Form, Place};
use trade::ids::PropertyId;
use trade::mark::{Condition, NotSeen};
use trade::stack::LayerIs;
use trade::visit::Scope;

fn at_the_place(hand: &mut Hand, property: PropertyId) {
    hand.at = Place::Doorstep { property };
    let title = hand.text("property-title");
    let doors = hand.doorstep().doors;
    hand.tap(&doors, &title);
}

fn form<'a>(forms: &'a [Form], title: &str) -> &'a Form {
    forms
        .iter()
        .find(|form| form.title == title)
        .unwrap_or_else(|| panic!("no form is called {title:?}"))
}

fn found(hand: &mut Hand, text: &str) -> Vec<String> {
    hand.at = Place::start();
    let search = hand.arrive().search;
    hand.send(&search, &[("find", text)]);
    hand.arrive()
        .found
        .into_iter()
        .map(|row| row.title)
        .collect()
}

fn added(hand: &mut Hand, line: &str) -> PropertyId {
    hand.at = Place::Arrive {
        find: line.to_owned(),
    };
    let add = hand.arrive().add.expect("an address can be added");
    hand.send(&add, &[("town", "Merrow Bight")]);
    match hand.at {
        Place::Doorstep { property } => property,
        ref other => panic!("{other} comes after adding"),
    }
}

#[test]
fn a_place_is_found_under_its_old_spelling_its_people_and_where_it_stands() {
    let scene = Scene::new();
    let (mut hand, property, _) = scene::first_visit(&scene, Scope::QuickLook);
    at_the_place(&mut hand, property);
    let place = hand.property().place;
    hand.send(&place[0], &[("line", "9 Tidewaiter Row")]);
    hand.send(&place[1], &[("line", "31 Ropewalk Alley")]);
    hand.send(
        &place[2],
        &[
            ("dangers", "A goose\nA live wire at the rear eave"),
            ("built", "1931"),
            ("position", "43.612000, -124.203000"),
        ],
    );
    let title = hand.text("property-person-add");
    let add = hand.property().people;
    let tenant = hand.text("role-tenant");
    hand.send(
        form(&add, &title),
        &[
            ("name", "Philippa Marlin"),
            ("role", &tenant),
            ("phones", "(541) 555-0188"),
        ],
    );
    let shown = hand.property();
    assert_eq!(shown.also.len(), 2, "the old spelling stays");
    assert_eq!(shown.people.len(), 3, "two, and one to add");

    for text in [
        "9 tidewaiter row",
        "7 Tidewaiter Row",
        "31 ropewalk aly",
        "Marlin",
        "5550188",
        "43.6125, -124.2035",
    ] {
        assert_eq!(found(&mut hand, text), ["9 Tidewaiter Row"], "{text}");
    }
    assert!(found(&mut hand, "43.7, -124.2035").is_empty());
    hand.at = Place::Doorstep { property };
    assert_eq!(hand.doorstep().dangers.len(), 2);
}

#[test]
fn what_cannot_be_is_refused_and_nothing_is_changed() {
    let scene = Scene::new();
    let (mut hand, property, _) = scene::first_visit(&scene, Scope::QuickLook);
    at_the_place(&mut hand, property);
    let before = scene::ink_of(hand.screens.book(), property);
    let place = hand.property().place;
    for (at, field, text) in [
        (0, "line", ""),
        (2, "built", "19310"),
        (2, "built", "soon"),
        (2, "position", "somewhere"),
        (2, "position", "95, 10"),
    ] {
        let form = place[at].form.clone();
        let values = vec![(field.to_owned(), text.to_owned())];
        let refused = hand.try_act(&Action::Submit { form, values });
        assert!(refused.is_err(), "{field}: {text:?}");
    }
    assert_eq!(scene::ink_of(hand.screens.book(), property), before);
}

#[test]
fn two_that_are_one_place_are_joined_and_parted_again() {
    let scene = Scene::new();
    let (mut hand, kept, _) = scene::first_visit(&scene, Scope::QuickLook);
    let other = added(&mut hand, "31 Ropewalk Alley");
    at_the_place(&mut hand, kept);
    let same = hand.property().same;
    hand.send(&same, &[("like", "31 Ropewalk")]);
    let twin = hand.property().found.remove(0);
    hand.act(&twin.tap.action);
    assert_eq!(found(&mut hand, "31 Ropewalk Alley"), ["7 Tidewaiter Row"]);
    hand.at = Place::Doorstep { property: other };
    assert_eq!(hand.doorstep().address, "7 Tidewaiter Row");

    at_the_place(&mut hand, kept);
    let joined = hand.property().joined.remove(0);
    hand.act(&joined.tap.action);
    assert!(hand.property().joined.is_empty());
    assert_eq!(found(&mut hand, "31 Ropewalk Alley"), ["31 Ropewalk Alley"]);
}

#[test]
fn a_place_is_erased_only_by_its_own_address() {
    let scene = Scene::new();
    let (mut hand, property, _) = scene::first_visit(&scene, Scope::QuickLook);
    let other = added(&mut hand, "31 Ropewalk Alley");
    at_the_place(&mut hand, property);
    let erase = hand.property().erase.form;
    let typed = |text: &str| vec![("confirm".to_owned(), text.to_owned())];
    for wrong in ["", "yes", "31 Ropewalk Alley"] {
        let refused = hand.try_act(&Action::Submit {
            form: erase.clone(),
            values: typed(wrong),
        });
        assert!(refused.is_err(), "{wrong:?}");
    }
    assert!(hand.screens.book().history(property).unwrap().is_some());
    hand.act(&Action::Submit {
        form: erase,
        values: typed("7 tidewaiter row"),
    });
    assert_eq!(hand.screens.book().history(property).unwrap(), None);
    assert!(found(&mut hand, "Tidewaiter").is_empty());
    assert!(hand.screens.book().history(other).unwrap().is_some());
}

#[test]
fn a_structure_that_was_taken_down_is_no_longer_walked() {
    let scene = Scene::new();
    let (mut hand, property, visit) = scene::first_visit(&scene, Scope::QuickLook);
    hand.act(&Action::Close {
        visit,
        rest: NotSeen::OutsideScope,
    });
    at_the_place(&mut hand, property);
    let structure = hand.property().structures.remove(0);
    let today = fixtures::TODAY.to_string();
    hand.send(&structure, &[("gone", &today)]);
    let history = scene::history(hand.screens.book(), property);
    assert_eq!(history.structures[0].gone, Some(fixtures::TODAY));
}

#[test]
fn what_was_advised_read_and_measured_reaches_the_record() {
    let scene = Scene::new();
    let (mut hand, property, visit) = scene::first_visit(&scene, Scope::WholeRoof);
    hand.at = Place::Safety { visit };
    let warm = hand.safety().temperature;
    hand.send(&warm, &[("degrees", "41")]);
    hand.at = scene::walk(hand.screens.book(), visit);
    let structure = match hand.at {
        Place::Walk { structure, .. } => structure,
        ref other => panic!("{other} is no walk"),
    };
    let unborn = |kind: &str| acts::walk::Spot::Unborn {
        structure,
        slope: None,
        kind: kind.into(),
        which: None,
    };
    let mark = |kind| Place::Mark {
        visit,
        spot: unborn(kind),
        family: None,
    };
    hand.at = mark("gutter");
    let defect = hand.mark().defects[0].clone();
    hand.act(&defect.action);
    let advise = hand.mark().named[0].advise[0].clone();
    assert!(!advise.chosen);
    hand.act(&advise.action);
    assert!(hand.mark().named[0].advise[0].chosen);

    hand.at = mark("layers");
    let layers = hand.text("layers-title");
    let (two, membrane) = ("2", hand.text("layer-membrane"));
    let read = hand.mark().forms;
    hand.send(
        form(&read, &layers),
        &[
            ("count", two),
            ("between", &membrane),
            ("colour", "slate grey"),
        ],
    );

    let (history, visit) = acts::visit::find(hand.screens.book(), visit).expect("it is there");
    assert_eq!(visit.weather.celsius, Some(5));
    assert_eq!(history.property.id, property);
    assert!(
        history
            .marks
            .iter()
            .any(|mark| mark.advised.len() == 1 && matches!(mark.condition, Condition::Seen { .. }))
    );
    let stack = &history.stacks[0].layers;
    assert_eq!(stack.len(), 4);
    assert_eq!(stack[0].colour.as_deref(), Some("slate grey"));
    assert_eq!(stack[1].is, LayerIs::Membrane);
    assert_eq!(stack[3].is, LayerIs::Deck);
}
