//! The main story's second visit, walked tap by tap through the screens, comes to the verdict that its visit file comes to.
//! Common practice, no source: what was done by hand and what was written down must be judged alike.

use acts::record::file::VisitFile;
use fixtures::pictures::jpegs;
use fixtures::play::{Call, Player};
use fixtures::{Demo, Story};
use job::hand::{Hand, button};
use job::scene::{Scene, main_story, main_story_alone};
use job::walking::{self, Pictures};
use screens::{Place, Screens};
use trade::mark::NotSeen;
use trade::outcome::Came;

#[test]
fn the_second_visit_by_hand_is_judged_as_the_one_written_down() {
    let demo = main_story_alone();
    let by_hand = Scene::new();
    let (book, call) = by_hand.until_call(&mut Player::new(&demo));
    let mut hand = Hand::new(Screens::of(book), demo.today);
    let file = second_visit(&demo);

    arrive(&mut hand, file);
    doorstep(&mut hand, &call, file);
    walking::safety(&mut hand, file);
    walking::walk(&mut hand, file, &pictures(main_story(&demo)));
    close(&mut hand, NotSeen::NotReached);
    let walked = judged(&mut hand);
    letter(&mut hand);
    outcome(&mut hand);

    let written = Scene::new();
    let (book, call) = written.all_of(&demo);
    let mut reader = Hand::new(Screens::of(book), demo.today);
    reader.at = last_visit(&reader, &call);
    assert_eq!(walked, judged(&mut reader));
}

fn second_visit(demo: &Demo) -> &VisitFile {
    main_story(demo).visits().last().expect("there is a visit")
}

fn pictures(story: &Story) -> Pictures {
    let shots: Vec<_> = story.shots().collect();
    let pictures: Vec<_> = shots.iter().map(|shot| &shot.picture).collect();
    let bytes = jpegs(&pictures).expect("the pictures are drawn");
    shots
        .iter()
        .map(|shot| shot.name.clone())
        .zip(bytes)
        .collect()
}

/// He types the street as the caller says it, without its number's neighbours or its suffix.
fn arrive(hand: &mut Hand, file: &VisitFile) {
    let search = hand.arrive().search;
    hand.send(&search, &[("find", "318 lamplighter")]);
    let found = hand.arrive().found;
    hand.tap_row(&found, &file.property.address.line);
}

fn doorstep(hand: &mut Hand, call: &Call, file: &VisitFile) {
    let told = hand
        .screens
        .doorstep(call.property, Some(&call.request), hand.now())
        .expect("the doorstep is shown");
    let then = told.then.expect("it says what was said then");
    assert_eq!(then.contradicts, Some(hand.text("doorstep-contradicts")));
    let open = told.open.expect("a visit can be opened");
    let ask = &call.request.asks[0];
    let remedy = ask.remedy.as_ref().expect("a remedy is asked for");
    let (kind, remedy) = (hand.text(&ask.kind.message()), hand.text(&remedy.message()));
    let leaking = hand.text("answer-yes");
    let wet_when = hand.text(call.request.wet_when[0].key());
    let scope = hand.text(file.visit.scope.key());
    hand.send(
        &open,
        &[
            ("words", &call.request.words),
            ("kind", &kind),
            ("remedy", &remedy),
            ("leaking", &leaking),
            (
                "room",
                call.request.room.as_deref().expect("a room is named"),
            ),
            ("wet-when", &wet_when),
            ("scope", &scope),
        ],
    );
    let Place::Safety { visit } = hand.at else {
        panic!("{} comes after the doorstep", hand.at);
    };
    let (_, opened) = acts::visit::find(hand.screens.book(), visit).expect("the visit is open");
    assert_eq!(opened.request, call.request);
}

fn close(hand: &mut Hand, rest: NotSeen) {
    let label = match rest {
        NotSeen::OutsideScope => "close-outside-scope",
        _ => "close-not-reached",
    };
    let label = hand.text(label);
    hand.tap(&hand.walk().close, &label);
}

fn last_visit(hand: &Hand, call: &Call) -> Place {
    let history = job::scene::history(hand.screens.book(), call.property);
    let visit = history.visits.last().expect("there is a visit").id;
    Place::ThenAndNow { visit }
}

/// What Then and now and the verdict on every structure say, in words alone.
fn judged(hand: &mut Hand) -> Vec<String> {
    let changed = hand.then_and_now();
    let mut says: Vec<String> = changed
        .changed
        .iter()
        .map(|one| format!("{}: {} {:?} {:?}", one.part, one.became, one.then, one.now))
        .collect();
    // Parts of the same weight stand in the order of their birth, which is the hand's own.
    says.sort();
    says.extend(changed.quiet);
    hand.act(&changed.main.action);
    let structures = hand.verdict().structures;
    assert!(structures.len() > 1, "the story has several structures");
    for structure in &structures {
        hand.act(&structure.action);
        let verdict = hand.verdict();
        assert!(button(&verdict.structures, &structure.label).chosen);
        says.push(format!(
            "{} {:#?} {:#?}",
            verdict.under, verdict.steps, verdict.refused
        ));
        says.push(format!(
            "{:#?} {:?}",
            titles(&verdict.look),
            verdict.turns_to
        ));
        says.push(format!(
            "{:#?} {:#?} {:#?}",
            verdict.cautions, verdict.limits, verdict.unseen
        ));
    }
    says
}

fn titles(rows: &[screens::Row]) -> Vec<(&String, &String)> {
    rows.iter().map(|row| (&row.title, &row.says)).collect()
}

fn letter(hand: &mut Hand) {
    let main = hand.verdict().main;
    hand.act(&main.action);
    let write = hand.text("letter-write-english");
    hand.tap(&hand.letter().acts, &write);
    let sent = hand.letter().sent;
    assert_eq!(sent.len(), 1);
    let paper = hand
        .screens
        .paper(sent[0].letter)
        .expect("the paper is kept");
    assert!(paper.starts_with(b"%PDF-"));
}

fn outcome(hand: &mut Hand) {
    let main = hand.letter().main;
    hand.act(&main.action);
    let before = hand.outcome().told.len();
    let came = hand.text(Came::Accepted.key());
    let form = hand.outcome().record;
    hand.send(
        &form,
        &[
            ("came", &came),
            ("amount", "$2,310.00"),
            ("words", "Both cheeks, she says."),
        ],
    );
    let told = hand.outcome().told;
    assert_eq!(told.len(), before + 1);
    assert!(told[0].row.says.contains("Both cheeks"));
}
