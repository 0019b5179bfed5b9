//! What the doorstep says, line by line, in the words that are read on the phone. What is worth telling is common practice, no source.

mod roof;

use roof::papers::{advised, asks, lines, named, read, repair, said, tear_off};
use roof::{Books, Roof, day, found, near, not_seen, remedy};
use trade::answer::Answer;
use trade::doorstep::Tells;
use trade::mark::{Correction, NotSeen, Rung};
use trade::outcome::{Because, Came};
use trade::property::StructureKind;
use trade::verdict::{Answered, Question};
use trade::visit::{Reach, Reached, Request, SafetyAnswer, SafetyCheck};
use trade::work::{By, Did, Evidence, WorkOn};

use Rung::{Ageing, Failed, Failing, Sound};

const SPLIT: &[&str] = &["boot-split"];
const NOTHING: &[&str] = &[];

#[test]
fn how_often_a_cause_was_patched_and_what_one_more_would_be() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("sealant"), By::NotUs, "2017-06-01");
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    roof.work(boot, Did::Something, By::Unknown, "2018-06-01");
    let request = asks(&[("pipe-boot", Some("sealant"))]);
    assert_eq!(
        read(&roof.doorstep(Some(&request), "2019-01-01"), Tells::Patched),
        lines([
            "{kind-pipe-boot} A1: patched 2 times. Cause: {cause-boot-perished}. \
          It held at most 11 months from 1 June 2017. {remedy-sealant}: that would be patch number 3. Our limit is 2."
        ])
    );
    let cure = asks(&[("pipe-boot", Some("new-boot"))]);
    assert_eq!(
        read(&roof.doorstep(Some(&cure), "2019-01-01"), Tells::Patched),
        lines([
            "{kind-pipe-boot} A1: patched 2 times. Cause: {cause-boot-perished}. \
          It held at most 11 months from 1 June 2017. Our limit is 2."
        ])
    );
    roof.work(boot, Did::Replaced, By::NotUs, "2018-08-01");
    assert_eq!(
        read(&roof.doorstep(Some(&cure), "2019-01-01"), Tells::Patched),
        NOTHING
    );
}

#[test]
fn what_was_offered_and_how_it_was_answered() {
    let mut roof = advised(repair, vec![]);
    let letter = roof.history.letters[0].id;
    let offer = named("Letter of 11 April 2017. {course-repair}.");
    let told = |roof: &Roof| read(&roof.doorstep(None, "2018-01-01"), Tells::Offered);
    assert_eq!(told(&roof), [format!("{offer} No answer so far.")]);
    roof.outcome(Some(letter), Came::NoAnswer, "2017-06-01", "");
    assert_eq!(
        told(&roof),
        [offer.clone() + &named(" {came-no-answer}, 1 June 2017.")]
    );
    roof.outcome(
        Some(letter),
        Came::Declined,
        "2017-07-01",
        "Waiting for the sale.",
    );
    let declined = offer + &named(" {came-declined}, 1 July 2017: “Waiting for the sale.”");
    assert_eq!(told(&roof), std::slice::from_ref(&declined));
    roof.outcome(None, Came::DoneByOthers, "2017-09-01", "");
    assert_eq!(
        told(&roof),
        [declined, named("{came-done-by-others}, 1 September 2017.")]
    );
    roof.outcome(Some(letter), Came::Accepted, "2018-06-01", "");
    assert_eq!(told(&roof).len(), 2, "what lies ahead is left out");
}

#[test]
fn what_was_never_or_not_again_seen() {
    let mut roof = Roof::new();
    let kinds = ["pipe-boot", "covering", "gutter", "deck", "ridge-cap"];
    let [boot, covering, gutter, deck, ridge] = kinds.map(|kind| roof.part(kind));
    let first = roof.visit("2017-04-11");
    roof.mark(first, boot, near(Failing), SPLIT);
    roof.mark(first, covering, near(Sound), NOTHING);
    roof.mark(first, gutter, not_seen(NotSeen::OutOfReach), NOTHING);
    roof.mark(first, ridge, not_seen(NotSeen::OutOfReach), NOTHING);
    roof.mark(first, deck, near(Ageing), NOTHING);
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, not_seen(NotSeen::Wet), NOTHING);
    roof.mark(second, covering, not_seen(NotSeen::NotReached), NOTHING);
    roof.mark(second, deck, not_seen(NotSeen::Hidden), NOTHING);
    assert_eq!(
        read(&roof.doorstep(None, "2019-01-01"), Tells::NotSeen),
        lines([
            "Never seen: {kind-gutter} A3 and {kind-ridge-cap} A5. {not-seen-out-of-reach}.",
            "Found bad, not seen since: {kind-pipe-boot} A1. {not-seen-wet}.",
            "Covered, could not be judged: {kind-deck} A4.",
        ])
    );
}

#[test]
fn a_structure_that_nobody_came_near_to_is_named() {
    let rows = [
        (
            vec![Reach::Ground],
            Some("{structure-detached-garage}: only ever seen from the ground."),
        ),
        (
            vec![Reach::NotReached],
            Some("{structure-detached-garage}: never reached."),
        ),
        (
            vec![Reach::Inside, Reach::NotReached],
            Some("{structure-detached-garage}: only ever seen from inside."),
        ),
        (vec![Reach::Ladder, Reach::Ground], None),
        (vec![], None),
    ];
    for (ways, says) in rows {
        let mut roof = Roof::new();
        let garage = roof.structure(StructureKind::DetachedGarage);
        for (year, how) in ways.iter().enumerate() {
            roof.visit(&format!("201{year}-04-11"));
            roof.history.visits[year].reached = vec![Reached {
                structure: garage,
                how: *how,
            }];
        }
        let told = read(&roof.doorstep(None, "2019-01-01"), Tells::NotSeen);
        assert_eq!(told.first().cloned(), says.map(named), "{ways:?}");
        roof.history.structures[1].gone = Some(day("2018-01-01"));
        assert_eq!(
            read(&roof.doorstep(None, "2019-01-01"), Tells::NotSeen),
            NOTHING
        );
    }
}

#[test]
fn work_since_is_ours_or_not_or_unknown_and_never_a_guess_at_who() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let (front, house) = (roof.front, roof.house);
    roof.work(boot, remedy("sealant"), By::NotUs, "2017-08-01");
    roof.work(boot, remedy("new-boot"), By::Us, "2018-02-01");
    roof.work_on(
        WorkOn::Slope(front),
        Did::Something,
        By::Unknown,
        "2018-03-01",
        None,
    );
    roof.work_on(
        WorkOn::Structure(house),
        remedy("clean-gutter"),
        By::NotUs,
        "2018-03-02",
        None,
    );
    let last = roof.history.works.last_mut().unwrap();
    last.exact = false;
    last.evidence = Evidence::Told;
    let told = |roof: &Roof| read(&roof.doorstep(None, "2018-06-01"), Tells::WorkSince);
    assert_eq!(
        told(&roof),
        lines([
            "{kind-pipe-boot} A1: {remedy-sealant}. {by-not-us}, 1 August 2017.",
            "{kind-pipe-boot} A1: {remedy-new-boot}. {by-us}, 1 February 2018.",
            "Slope A: {did-something}. {by-unknown}, 1 March 2018.",
            "{structure-house}: {remedy-clean-gutter}. {by-not-us}, by 2 March 2018 at the latest. So we were told.",
        ])
    );
    let second = roof.visit("2018-05-11");
    roof.mark(second, boot, near(Sound), NOTHING);
    assert_eq!(told(&roof), NOTHING, "what a look has seen is no news");
}

#[test]
fn dangers_come_first_and_outlive_the_weather() {
    let (mut roof, deck) = found("deck", Failing, NOTHING);
    roof.history
        .property
        .dangers
        .push("The dog is not chained.".to_owned());
    roof.history.marks[0].answers = vec![Answered {
        question: Question::DeckWetBroad,
        answer: Answer::Yes,
    }];
    let check = |check, holds| SafetyAnswer { check, holds };
    roof.history.visits[0].safety = vec![
        check(SafetyCheck::LinesClear, Answer::No),
        check(SafetyCheck::SurfaceDry, Answer::No),
        check(SafetyCheck::DeckBears, Answer::Unknown),
    ];
    let told = |roof: &Roof| read(&roof.doorstep(None, "2019-01-01"), Tells::Danger);
    assert_eq!(
        told(&roof),
        lines([
            "The dog is not chained.",
            "11 April 2017: {safety-lines-clear.stop}.",
            "{kind-deck} A1, 11 April 2017: {question-deck-wet-broad.yes}.",
        ])
    );
    assert_eq!(
        roof.doorstep(None, "2019-01-01").lines[0].tells,
        Tells::Danger
    );
    roof.visit("2018-04-11");
    roof.history.visits[1].safety = vec![check(SafetyCheck::LinesClear, Answer::Yes)];
    roof.work(deck, Did::Replaced, By::NotUs, "2018-05-11");
    assert_eq!(told(&roof), ["The dog is not chained."]);
}

#[test]
fn what_is_due() {
    let mut roof = advised(tear_off, vec![]);
    roof.reminder(Because::LookPromised, "2018-01-01", "After the thaw.");
    roof.reminder(Because::LookPromised, "2021-01-01", "");
    roof.reminder(Because::AskForAnswer, "2021-01-01", "");
    roof.reminder(Because::NotSeenYet, "2017-06-01", "");
    roof.history.reminders[3].done = Some(day("2017-06-02"));
    let told = |roof: &Roof, today: &str| read(&roof.doorstep(None, today), Tells::Due);
    assert_eq!(
        told(&roof, "2018-02-01"),
        lines([
            "{because-look-promised}: due 1 January 2018. After the thaw.",
            "{because-look-promised}: for 1 January 2021.",
            "The temporary cover was to hold until 23 May 2017.",
            "Letter of 11 April 2017: no answer for 296 days. Ask.",
        ])
    );
    let letter = roof.history.letters[0].id;
    roof.outcome(Some(letter), Came::Declined, "2017-05-01", "");
    roof.history.reminders.clear();
    assert_eq!(told(&roof, "2018-02-01"), NOTHING);
    assert_eq!(
        told(&roof, "2020-04-11"),
        ["Last looked at on 11 April 2017. A look is due every 3 years."]
    );
}

#[test]
fn a_temporary_cover_runs_out() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("temporary-cover"), By::Us, "2017-04-12");
    let told = |roof: &Roof, today: &str| read(&roof.doorstep(None, today), Tells::Due);
    assert_eq!(told(&roof, "2017-05-24"), NOTHING, "six weeks to the day");
    assert_eq!(
        told(&roof, "2017-05-25"),
        lines(["{kind-pipe-boot} A1: temporary cover of 12 April 2017, good for 6 weeks."])
    );
    roof.reminder(Because::CoverRunsOut, "2017-05-24", "");
    assert_eq!(
        told(&roof, "2017-05-25"),
        lines(["{because-cover-runs-out}: due 24 May 2017."])
    );
    roof.work(boot, remedy("new-boot"), By::Us, "2017-05-20");
    roof.history.reminders.clear();
    let second = roof.visit("2017-05-21");
    roof.mark(second, boot, near(Sound), NOTHING);
    assert_eq!(told(&roof, "2017-05-25"), NOTHING);
}

#[test]
fn a_correction_that_overtook_a_letter() {
    let mut roof = advised(repair, vec![]);
    let told = |roof: &Roof| read(&roof.doorstep(None, "2018-06-01"), Tells::Corrected);
    roof.history.letters[0].out_of_date = Some(day("2017-05-01"));
    assert_eq!(
        told(&roof),
        ["The letter of 11 April 2017 is out of date since 1 May 2017."]
    );
    roof.history.marks[0].corrected = Some(Correction {
        on: day("2017-05-01"),
        why: "It is the boot by the ridge.".to_owned(),
    });
    assert_eq!(
        told(&roof),
        lines([
            "{kind-pipe-boot} A1: our record was put right on 1 May 2017, after the letter of 11 April 2017. \
          It is the boot by the ridge."
        ])
    );
    let (visit, house) = (roof.visit("2018-02-01"), roof.house);
    roof.letter(visit, house, vec![], vec![]);
    assert_eq!(told(&roof), NOTHING, "a later letter has told it right");
}

#[test]
fn our_own_callback() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("new-boot"), By::Us, "2017-06-01");
    let told = |roof: &Roof, request: Option<&Request>, today: &str| {
        read(&roof.doorstep(request, today), Tells::Callback)
    };
    let leaks = Request {
        leaking: Answer::Yes,
        ..Request::default()
    };
    let mine = lines([
        "{kind-pipe-boot} A1: we did it on 1 June 2017. Bad again within 2 years is ours. {remedy-new-boot}.",
    ]);
    assert_eq!(told(&roof, Some(&leaks), "2018-01-01"), mine);
    assert_eq!(
        told(&roof, Some(&asks(&[("pipe-boot", None)])), "2018-01-01"),
        mine
    );
    assert_eq!(
        told(&roof, Some(&asks(&[("gutter", None)])), "2018-01-01"),
        NOTHING
    );
    assert_eq!(told(&roof, None, "2018-01-01"), NOTHING);
    assert_eq!(told(&roof, Some(&leaks), "2019-06-02"), NOTHING);

    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    assert_eq!(
        told(&roof, None, "2018-06-01"),
        lines([
            "{kind-pipe-boot} A1: our work of 1 June 2017 came back on 11 April 2018. Ours to answer for. {remedy-new-boot}."
        ])
    );
    roof.history.works[0].by = By::NotUs;
    assert_eq!(told(&roof, Some(&leaks), "2018-06-01"), NOTHING);
}

#[test]
fn look_again_worst_first() {
    let mut roof = Roof::new();
    let kinds = [
        "gutter",
        "pipe-boot",
        "covering",
        "fascia",
        "deck",
        "soffit",
    ];
    let [gutter, boot, covering, fascia, deck, soffit] = kinds.map(|kind| roof.part(kind));
    let first = roof.visit("2017-04-11");
    roof.mark(first, gutter, near(Ageing), &["gutter-clogged"]);
    roof.mark(first, boot, near(Failing), SPLIT);
    roof.mark(first, covering, near(Failed), NOTHING);
    roof.mark(first, fascia, near(Sound), NOTHING);
    roof.mark(first, deck, not_seen(NotSeen::Locked), NOTHING);
    roof.mark(first, soffit, near(Failing), NOTHING);
    roof.work(boot, remedy("sealant"), By::NotUs, "2017-08-01");
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Sound), NOTHING);
    roof.mark(second, soffit, not_seen(NotSeen::Wet), NOTHING);
    roof.work(gutter, remedy("clean-gutter"), By::Us, "2018-05-01");
    let again: Vec<(_, _, String)> = roof
        .doorstep(None, "2018-06-01")
        .look_again
        .iter()
        .map(|one| (one.part, one.rung, said(&one.says)))
        .collect();
    let told = |part, rung, says: &str| (part, rung, named(says));
    assert_eq!(
        again,
        [
            told(covering, Some(Failed), "{rung-failed} on 11 April 2017."),
            told(
                soffit,
                Some(Failing),
                "{rung-failing} on 11 April 2017. Not seen on 11 April 2018: {not-seen-wet.what}.",
            ),
            told(
                gutter,
                Some(Ageing),
                "{rung-ageing} on 11 April 2017: {defect-gutter-clogged}. Since then: {remedy-clean-gutter}. {by-us}, 1 May 2018.",
            ),
            told(
                boot,
                Some(Sound),
                "Looked sound on 11 April 2018, but the cause was not cured: {defect-boot-split}.",
            ),
            told(deck, None, "Never seen: {not-seen-locked.what}."),
        ]
    );
}

#[test]
fn a_visit_under_way_tells_nothing_yet() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let before = roof.doorstep(None, "2018-04-11");
    let now = roof.visit("2018-04-11");
    roof.history.visits[1].closed = None;
    roof.mark(now, boot, near(Sound), NOTHING);
    assert_eq!(roof.doorstep(None, "2018-04-11"), before);
    assert_ne!(roof.doorstep(None, "2018-04-12"), before);
}

#[test]
fn an_address_of_which_nothing_is_known_says_nothing() {
    let roof = Roof::new();
    let doorstep = roof.doorstep(Some(&asks(&[("pipe-boot", Some("sealant"))])), "2018-04-11");
    assert!(doorstep.lines.is_empty() && doorstep.look_again.is_empty());
    assert_eq!(doorstep.then_and_now, None);
    assert!(judge::standing(&roof.history, day("2018-04-11"), &Books::new().rules()).is_empty());
}
