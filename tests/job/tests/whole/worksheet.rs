//! The worksheet of an offer: what a person counts and chooses changes the price, and is kept; what cannot be is refused by its field.

use acts::Book;
use acts::record::{self, PictureFiles};
use job::hand::Hand;
use job::scene::{self, Scene};
use screens::{Action, CourseBlock, Form, Place, Screens};
use serde_json::json;
use trade::history::History;
use trade::ids::{PropertyId, StructureId, VisitId};
use trade::verdict::Course;
use trade::words::{Language, Said};
use trade::worksheet::Worksheet;

/// A visit file that names no picture.
struct NoPictures;

impl PictureFiles for NoPictures {
    fn read(&self, _: &str) -> Result<Vec<u8>, Said> {
        Err(Said::verbatim("there is none"))
    }
}

/// Before the offer for the house of one visit.
struct AtOffer {
    hand: Hand,
    property: PropertyId,
    visit: VisitId,
    structure: StructureId,
}

impl AtOffer {
    /// The house of the demo's main story.
    fn of_main_story(scene: &Scene) -> Self {
        let (book, call) = scene.all_of(&scene::main_story_alone());
        Self::new(book, call.property)
    }

    /// A house with a worn-out front and a sound rear, 40 by 28 ft, with a chimney and an open valley that failed; its prices are the demo's.
    fn of_half_worn_house(scene: &Scene) -> Self {
        let moment = scene::after_noon(fixtures::TODAY, 0);
        let mut book = Book::create(&scene.book(), &scene.key, moment.device(), moment.at)
            .expect("the book is made");
        let demo = fixtures::demo();
        acts::settings::set_profile(&mut book, demo.profile, moment).expect("a profile");
        acts::offer::set_price_list(&mut book, demo.prices.as_bytes(), moment).expect("a list");
        let file = record::read(&half_worn().to_string()).expect("a visit file");
        let taken = record::take_in(&mut book, &file, &NoPictures, moment).expect("it is taken in");
        let mut at = Self::new(book, taken.property);
        at.hand.at = Place::Roof {
            structure: at.structure,
        };
        let gable = at.hand.text("ends-gable-sides");
        let title = at.hand.text("roof-box");
        let forms = at.hand.roof().forms;
        let form = forms
            .iter()
            .find(|form| form.title == title)
            .expect("a box");
        at.hand.send(
            form,
            &[
                ("across", "40 ft"),
                ("deep", "28 ft"),
                ("pitch", "6/12"),
                ("ends", &gable),
            ],
        );
        at.go();
        at
    }

    fn new(book: Book, property: PropertyId) -> Self {
        let history = scene::history(&book, property);
        let visit = history.visits.last().expect("somebody was there").id;
        let mut at = Self {
            hand: Hand::new(Screens::of(book), fixtures::TODAY),
            property,
            visit,
            structure: history.structures[0].id,
        };
        at.go();
        at
    }

    fn go(&mut self) {
        self.hand.at = Place::Offer {
            visit: self.visit,
            structure: self.structure,
        };
    }

    fn form(&self) -> Form {
        let worksheet = self.hand.offer().worksheet;
        worksheet.expect("something is to be counted")
    }

    fn fill(&mut self, filled: &[(&str, &str)]) {
        let form = self.form();
        self.hand.send(&form, filled);
    }

    fn refuse(&mut self, name: &str, text: &str) -> String {
        let form = self.form().form;
        let values = vec![(name.to_owned(), text.to_owned())];
        let refused = self.hand.try_act(&Action::Submit { form, values });
        refused.expect_err(text).says
    }

    fn course(&self, course: Course) -> CourseBlock {
        let what = self.hand.text(course.key());
        let courses = self.hand.offer().courses;
        let found = courses.into_iter().find(|block| block.what == what);
        found.unwrap_or_else(|| panic!("{what} is not offered"))
    }

    fn history(&self) -> History {
        scene::history(self.hand.screens.book(), self.property)
    }

    fn sheet(&self) -> Worksheet {
        let history = self.history();
        let sheet = history.worksheet_of(self.structure);
        sheet.expect("a worksheet is kept").clone()
    }

    fn value(&self, name: &str) -> String {
        let fields = self.form().fields;
        let field = fields.iter().find(|field| field.name == name);
        field
            .unwrap_or_else(|| panic!("no field {name}"))
            .value
            .clone()
    }

    /// The letter as a page, with the offer as it stands put into it.
    fn letter(&mut self) -> String {
        let put = self.hand.offer().main.expect("an offer can be put");
        self.hand.act(&put.action);
        let (_, drawn) = acts::letter::draw(
            self.hand.screens.book(),
            self.visit,
            Language::English,
            self.hand.now(),
        )
        .expect("the letter is drawn");
        drawn.html
    }
}

fn half_worn() -> serde_json::Value {
    json!({
        "ladderbook-visit": 1,
        "property": { "address": { "line": "9 Oakum Yard", "town": "Merrow Bight" } },
        "visit": {
            "on": "2026-05-06",
            "by": "Ottilie Pask",
            "scope": "whole-roof",
            "request": { "leaking": "no" }
        },
        "structures": [{
            "kind": "house",
            "reached": "on-roof",
            "slopes": [
                { "letter": "A", "side": "front", "pitch": "6:12" },
                { "letter": "B", "side": "rear", "pitch": "6:12" }
            ],
            "layers": [
                { "slope": "A", "layers": [{ "layer": { "is": "covering", "of": "asphalt-strip" } }, { "layer": { "is": "deck" } }], "learned": "rake-edge" },
                { "slope": "B", "layers": [{ "layer": { "is": "covering", "of": "asphalt-strip" } }, { "layer": { "is": "deck" } }], "learned": "rake-edge" }
            ],
            "parts": [
                { "kind": "covering", "slope": "A", "rung": "failed", "seen": "touched", "defects": [{ "defect": "covering-worn-out", "extent": "broad" }] },
                { "kind": "covering", "slope": "B", "rung": "sound", "seen": "touched" },
                { "kind": "masonry-chimney", "slope": "A", "rung": "sound", "seen": "touched" },
                { "kind": "rake-edge", "slope": "B", "rung": "failing", "seen": "touched", "defects": [{ "defect": "no-drip-edge", "extent": "spot" }] }
            ]
        }]
    })
}

#[test]
fn what_is_counted_and_chosen_is_kept_and_shown_again() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    let typed = [
        ("repair-lasts", "5-8"),
        ("deck-sheets", "2-4"),
        ("attic-area", "900"),
        ("high-vent", "50"),
        ("low-vent", "26"),
        ("counter-flashing", "14'"),
        ("nails", "6"),
        ("sealant", "3"),
    ];
    at.fill(&typed);
    for (name, text) in typed {
        assert_eq!(at.value(name), text);
    }
    let first = at.sheet();
    at.fill(&[("cement", "2"), ("sealant", "")]);
    let second = at.sheet();
    assert_eq!(first.id, second.id, "one worksheet a structure");
    assert_eq!((second.sealant, second.cement), (0, 2));
    assert_eq!(second.repair_lasts, first.repair_lasts);
    assert_eq!(at.history().worksheets.len(), 1);
    let book = at.hand.screens.book();
    assert_eq!(book.check().expect("the book is read").problems, []);
    let lines = book.lines_about(second.id).expect("the ink is read");
    assert_eq!(lines.len(), 2, "what stood before stays in the ink");
}

#[test]
fn a_repair_costs_so_much_a_year_once_somebody_says_how_long_it_lasts() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    at.fill(&[("count-4-new-drip-edge", "60")]);
    let a_year = |at: &AtOffer| {
        let beside = at.course(Course::Repair).beside;
        beside.into_iter().find(|says| says.contains(" a year"))
    };
    assert_eq!(a_year(&at), None);
    at.fill(&[("repair-lasts", "5 to 8")]);
    let says = a_year(&at).expect("a cost a year");
    assert!(
        says.starts_with("It should last 5 to 8 years here"),
        "{says}"
    );
    assert!(at.letter().contains("It should last 5 to 8 years here"));
}

#[test]
fn a_length_that_nobody_measured_is_suggested_counted_and_priced() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    let before = at.course(Course::Repair);
    assert_eq!(before.price, None);
    assert!(
        before.unpriced[0].contains("count or measure"),
        "{before:?}"
    );
    let name = "count-4-new-drip-edge";
    let fields = at.form().fields;
    let field = fields
        .iter()
        .find(|field| field.name == name)
        .expect("it is asked");
    // Both rakes of a slope that rises 6:12 over 14 ft: 2 × 14 × 1.118 ft.
    assert!(field.label.contains("31 to 32 feet"), "{}", field.label);
    assert_eq!(
        field.value, "",
        "a suggestion counts only once it is written down"
    );
    at.fill(&[(name, "30-32")]);
    let after = at.course(Course::Repair);
    assert!(
        after.price.is_some() && after.unpriced.is_empty(),
        "{after:?}"
    );
    at.fill(&[(name, "")]);
    assert_eq!(at.course(Course::Repair).price, None);
}

#[test]
fn the_choices_of_a_covering_change_what_it_takes() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    let says = |at: &AtOffer| {
        let rows = at.hand.offer().takes.into_iter();
        rows.map(|row| format!("{} {}", row.title, row.says))
            .collect::<Vec<_>>()
            .join("\n")
    };
    let before = says(&at);
    for absent in [
        "Behind a chimney",
        "Intake vents",
        "Sealant",
        "6 in each shingle",
    ] {
        assert!(!before.contains(absent), "{before}");
    }
    assert!(
        before.contains("The chimney's width was not measured."),
        "{before}"
    );
    at.fill(&[
        ("chimney-3-width", "36 in"),
        ("chimney-3-depth", "20 in"),
        ("attic-area", "1120"),
        ("high-vent", "50"),
        ("low-vent", "26"),
        ("sealant", "3"),
        ("nails", "6"),
    ]);
    let after = says(&at);
    // IRC R1003.20 at 6:12: a quarter of 36 in. R806.2: 1120 ft² / 150 are 1075 in², half of them low: 537.6 / 26, begun ones whole.
    for wanted in [
        "Behind a chimney 3' wide: a small roof 9\" high",
        "Intake vents: 21 pieces",
        "Sealant: 3 tubes",
        "6 in each shingle",
    ] {
        assert!(after.contains(wanted), "{wanted}: {after}");
    }
    assert!(!after.contains("was not measured"), "{after}");
    let left = at.course(Course::TearOff).leaves;
    assert!(
        !left.iter().any(|says| says.contains("enough vents")),
        "{left:?}"
    );
}

#[test]
fn what_cannot_be_is_refused_by_its_field_and_nothing_changes() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    let alone = at.refuse("high-vent", "50");
    assert!(alone.contains("Floor of the vented attic"), "{alone}");
    at.fill(&[("repair-lasts", "5-8"), ("attic-area", "900")]);
    let before = scene::ink_of(at.hand.screens.book(), at.property);
    for (name, text, says) in [
        (
            "repair-lasts",
            "for ever",
            "How many years a repair lasts here",
        ),
        ("repair-lasts", "8-5", "How many years a repair lasts here"),
        ("deck-sheets", "some", "Sheets of deck to allow for"),
        ("counter-flashing", "14", "Upper flashing along walls"),
        ("high-share", "140", "Share of the open vent area"),
        ("high-vent", "none", "Open area of one high vent"),
        ("nails", "3", "Nails in each shingle"),
        ("chimney-3-depth", "-20 in", "depth from front to back"),
        ("count-4-new-drip-edge", "-3", "New drip edge"),
        ("order-at", "whenever", "How much is ordered"),
        ("count-77-new-drip-edge", "3", "count-77-new-drip-edge"),
    ] {
        let refused = at.refuse(name, text);
        assert!(refused.contains(says), "{name}={text}: {refused}");
        assert!(refused.contains("Nothing was changed"), "{refused}");
    }
    assert_eq!(scene::ink_of(at.hand.screens.book(), at.property), before);
}

#[test]
fn half_typed_words_stand_in_their_field_until_they_are_sent() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    let form = at.form().form;
    at.hand.act(&Action::Draft {
        form,
        field: "attic-area".to_owned(),
        text: "90".to_owned(),
    });
    at.go();
    assert_eq!(at.value("attic-area"), "90");
    at.fill(&[("attic-area", "900")]);
    assert_eq!(at.value("attic-area"), "900");
    assert!(at.sheet().vents.is_some());
}

/// Where only the front is worn out, only the front is laid, torn off and priced; the letter says which slopes.
#[test]
fn only_the_slopes_that_the_verdict_covers_are_counted() {
    let scene = Scene::new();
    let mut at = AtOffer::of_half_worn_house(&scene);
    let book = at.hand.screens.book();
    let judged = acts::judge::judge(book, at.visit, at.hand.now()).expect("it is judged");
    let list = book.price_list().expect("the book is read");
    let slopes = acts::offer::covered_slopes(&judged, at.structure);
    assert_eq!(slopes, [judged.history.slopes[0].id]);
    let reckon = |slopes: &[trade::ids::SlopeId]| {
        acts::offer::reckon(
            &judged.history,
            at.structure,
            slopes,
            &judged.going,
            list.as_ref(),
        )
        .expect("it is counted")
    };
    let (front, whole) = (reckon(slopes), reckon(&[]));
    assert_eq!(front.takeoff.planes, ["A"]);
    assert_eq!(front.takeoff.planes_left, ["B"]);
    let half = |one: f64, all: f64| (one * 2.0 - all).abs() < 1e-6 * all;
    assert!(half(
        front.takeoff.squares.likely,
        whole.takeoff.squares.likely
    ));
    let down = |of: &acts::offer::Reckoning| of.tear_off.as_ref().expect("it comes down").pounds;
    assert!(half(down(&front).likely, down(&whole).likely));
    assert!(
        front
            .pieces
            .iter()
            .all(|piece| piece.plane == front.laid.planes[0].plane)
    );
    let left = at.course(Course::TearOff).leaves;
    let stays = "Slopes that stay as they are: B.";
    assert!(left.iter().any(|says| says == stays), "{left:?}");
    let letter = at.letter();
    assert!(letter.contains(stays), "{letter}");
    assert!(letter.contains("on these slopes: A."), "{letter}");
}

/// A verdict that covers all slopes counts all planes, those too that no slope of the walk is the measure of.
#[test]
fn a_covering_over_all_slopes_counts_every_plane() {
    let scene = Scene::new();
    let at = AtOffer::of_main_story(&scene);
    let judged =
        acts::judge::judge(at.hand.screens.book(), at.visit, at.hand.now()).expect("it is judged");
    let plan = acts::measure::plan(&judged.history, at.structure)
        .expect("it is a roof")
        .expect("it was measured");
    let reckoned = acts::offer::reckon(&judged.history, at.structure, &[], &judged.going, None)
        .expect("it is counted");
    assert_eq!(reckoned.takeoff.planes.len(), plan.planes.len());
    assert_eq!(reckoned.takeoff.planes_left, Vec::<String>::new());
}
