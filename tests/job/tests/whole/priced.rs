//! The offer of the main story: priced by the firm's list, put to the owner, and found again in the letter.

use job::hand::Hand;
use job::scene::{self, Scene};
use screens::{Action, Place, Screens};
use trade::ids::{StructureId, VisitId};
use trade::words::Language;

fn at_the_offer(scene: &Scene) -> (Hand, VisitId, StructureId) {
    let demo = scene::main_story_alone();
    let (book, call) = scene.all_of(&demo);
    let hand = Hand::new(Screens::of(book), fixtures::TODAY);
    let history = scene::history(hand.screens.book(), call.property);
    let visit = history.visits.last().expect("somebody was there").id;
    let structure = history.structures[0].id;
    (hand, visit, structure)
}

#[test]
fn the_offer_is_reached_from_the_verdict_and_says_what_it_holds() {
    let scene = Scene::new();
    let (mut hand, visit, structure) = at_the_offer(&scene);
    hand.at = Place::Verdict { visit, structure };
    let offer = hand.verdict().offer;
    hand.act(&offer.action);
    let shown = hand.offer();
    assert_eq!(shown.trouble, None);
    assert!(!shown.courses.is_empty());
    for course in &shown.courses {
        assert!(
            course.price.is_some() || !course.unpriced.is_empty() || course.made.is_empty(),
            "{course:?}"
        );
    }
    assert!(!shown.takes.is_empty());
    assert!(!shown.weighs.is_empty());
}

#[test]
fn what_judgement_refuses_is_offered_only_with_a_reason() {
    let scene = Scene::new();
    let (mut hand, visit, structure) = at_the_offer(&scene);
    hand.at = Place::Offer { visit, structure };
    let before = hand.offer();
    let form = before
        .nevertheless
        .first()
        .cloned()
        .expect("something is refused");
    let empty = Action::Submit {
        form: form.form.clone(),
        values: vec![("because".to_owned(), "  ".to_owned())],
    };
    assert!(hand.try_act(&empty).is_err());
    assert_eq!(hand.offer().courses, before.courses);
    hand.send(
        &form,
        &[("because", "She sells in spring and will disclose it.")],
    );
    let after = hand.offer();
    assert_eq!(after.courses.len(), before.courses.len() + 1);
    assert!(after.courses.iter().any(|course| {
        course
            .beside
            .iter()
            .any(|says| says.contains("She sells in spring"))
    }));
}

#[test]
fn the_figures_of_the_offer_stand_in_the_letter() {
    let scene = Scene::new();
    let (hand, visit, structure) = at_the_offer(&scene);
    let history = acts::visit::find(hand.screens.book(), visit)
        .expect("the visit is there")
        .0;
    let put = acts::offer::last_offer(&history, structure).expect("the demo puts an offer");
    let (_, drawn) = acts::letter::draw(hand.screens.book(), visit, Language::English, hand.now())
        .expect("the letter is drawn");
    let words = trade::words::Words::of(Language::English);
    let mut priced = 0;
    for course in &put.courses {
        if let Some(price) = course.price() {
            let says = words.say(&price.says(&put.currency));
            assert!(drawn.html.contains(&says), "{says} is not in the letter");
            priced += 1;
        }
    }
    assert!(priced > 0, "some course has a price");
}

#[test]
fn a_wrong_price_list_is_refused_line_by_line_and_the_old_one_stands() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_offer(&scene);
    hand.at = Place::Settings;
    let title = hand.text("settings-price-list");
    let settings = match hand.look() {
        screens::Screen::Settings(state) => state,
        other => panic!("{other:?}"),
    };
    let form = settings
        .forms
        .iter()
        .find(|form| form.title == title)
        .expect("the price list has a form");
    let before = form.fields[0].value.clone();
    assert!(before.contains("laminated-shingle"));
    let values = vec![(
        "list".to_owned(),
        before.replace("currency,,,,,,,,,USD", "currency,,,,,,,,,dollars"),
    )];
    let refused = hand
        .try_act(&Action::Submit {
            form: form.form.clone(),
            values,
        })
        .expect_err("dollars is no currency of three letters");
    assert!(refused.says.contains("dollars"), "{refused}");
    assert_eq!(
        acts::offer::price_list(hand.screens.book()).unwrap(),
        Some(before)
    );
}
