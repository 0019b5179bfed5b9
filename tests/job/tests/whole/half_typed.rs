//! Half-typed words stand in their field again after a call, a dead battery or a killed program, on every screen; and they go with the place
//! they are about. Common practice, no source.

use job::chance;
use job::hand::Hand;
use job::scene::{self, Scene, main_story_alone};
use screens::{Action, FormOf, Place, Screens};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use trade::visit::Scope;

/// So many screens of each kind are looked at.
const OF_EACH: usize = 3;

/// A form of a screen and what can be typed into it: a choice is typed by the value that it stands for.
struct Asked {
    form: FormOf,
    fields: Vec<(String, String)>,
}

#[test]
fn every_field_of_every_screen_shows_what_was_half_typed() {
    let scene = Scene::new();
    let (book, call) = scene.all_of(&main_story_alone());
    let mut hand = Hand::new(Screens::of(book), fixtures::TODAY);
    hand.at = Place::Doorstep {
        property: call.property,
    };
    let mut kinds = half_type_everywhere(&mut hand);

    let scene = Scene::new();
    let (mut hand, ..) = scene::first_visit(&scene, Scope::WholeRoof);
    kinds.extend(half_type_everywhere(&mut hand));
    assert!(
        kinds.len() >= 25,
        "only these kinds of form were met: {kinds:?}"
    );
}

#[test]
fn half_typed_words_go_with_their_place() {
    let scene = Scene::new();
    let (mut hand, property, visit) = scene::first_visit(&scene, Scope::WholeRoof);
    let structure = scene::history(hand.screens.book(), property).structures[0].id;
    let forms = [
        FormOf::Outcome { property },
        FormOf::Temperature { visit },
        FormOf::RoofBox { structure },
    ];
    for form in &forms {
        half_type(&mut hand, form, "words", "the collar is");
    }
    let elsewhere = FormOf::Firm;
    half_type(&mut hand, &elsewhere, "words", "stays");
    hand.act(&Action::Submit {
        form: FormOf::Erase { property },
        values: vec![("confirm".to_owned(), "7 tidewaiter row".to_owned())],
    });
    for form in &forms {
        assert_eq!(kept(&hand, form, "words"), None, "{form:?}");
    }
    assert_eq!(kept(&hand, &elsewhere, "words").as_deref(), Some("stays"));
}

/// Types into every field that can be reached, and looks whether it stands there; the kinds of form that were met.
fn half_type_everywhere(hand: &mut Hand) -> BTreeSet<String> {
    let mut kinds = BTreeSet::new();
    for place in places(hand) {
        hand.at = place.clone();
        for asked in forms(hand) {
            for (field, text) in &asked.fields {
                half_type(hand, &asked.form, field, text);
            }
            hand.at = place.clone();
            let shown = values(hand, &asked.form);
            for (field, text) in &asked.fields {
                assert_eq!(
                    shown.get(field),
                    Some(text),
                    "{field} of {:?} at {place}",
                    asked.form
                );
            }
            kinds.insert(kind(&asked.form));
        }
    }
    kinds
}

/// The places that lead from one to the next, so many of each kind.
fn places(hand: &mut Hand) -> Vec<Place> {
    let mut met: BTreeMap<String, usize> = BTreeMap::new();
    let mut places = vec![Place::start(), hand.at.clone()];
    let mut next = 0;
    while let Some(place) = places.get(next).cloned() {
        next += 1;
        hand.at = place;
        for action in chance::offered(&hand.look()) {
            let Action::Go { to } = action else { continue };
            let count = met.entry(kind_of_place(&to)).or_default();
            if *count < OF_EACH && !places.contains(&to) {
                *count += 1;
                places.push(to);
            }
        }
    }
    places
}

fn kind_of_place(place: &Place) -> String {
    tag(
        &serde_json::to_value(place).expect("a place is JSON"),
        "place",
    )
}

fn kind(form: &FormOf) -> String {
    tag(&serde_json::to_value(form).expect("a form is JSON"), "form")
}

fn tag(value: &Value, name: &str) -> String {
    value[name].as_str().expect("it is tagged").to_owned()
}

fn half_type(hand: &mut Hand, form: &FormOf, field: &str, text: &str) {
    hand.act(&Action::Draft {
        form: form.clone(),
        field: field.to_owned(),
        text: text.to_owned(),
    });
}

fn kept(hand: &Hand, form: &FormOf, field: &str) -> Option<String> {
    let form = serde_json::to_string(form).expect("a form is JSON");
    let draft = hand.screens.book().draft(&format!("{form}/{field}"));
    draft.expect("the book reads")
}

/// Every form on the screen, read as any shell reads it.
fn forms(hand: &Hand) -> Vec<Asked> {
    let mut found = Vec::new();
    collect(&state(hand), &mut |form, fields| {
        let fields = fields.iter().map(typed).collect();
        found.push(Asked { form, fields });
    });
    found
}

fn typed(field: &Value) -> (String, String) {
    let text = match field["kind"]["choices"]
        .as_array()
        .and_then(|all| all.last())
    {
        Some(choice) => choice["value"].as_str().unwrap_or_default(),
        None => "the collar is",
    };
    (tag(field, "name"), text.to_owned())
}

/// What stands in the fields of a form.
fn values(hand: &Hand, of: &FormOf) -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    collect(&state(hand), &mut |form, fields| {
        if form == *of {
            found = fields
                .iter()
                .map(|field| (tag(field, "name"), tag(field, "value")))
                .collect();
        }
    });
    found
}

fn state(hand: &Hand) -> Value {
    serde_json::to_value(hand.look()).expect("a state is JSON")
}

fn collect(value: &Value, found: &mut impl FnMut(FormOf, &[Value])) {
    match value {
        Value::Object(members) => {
            if let (Some(form), Some(Value::Array(fields))) =
                (members.get("form"), members.get("fields"))
            {
                let form = serde_json::from_value(form.clone()).expect("a form reads");
                found(form, fields);
            }
            members.values().for_each(|member| collect(member, found));
        }
        Value::Array(all) => all.iter().for_each(|one| collect(one, found)),
        _ => {}
    }
}
