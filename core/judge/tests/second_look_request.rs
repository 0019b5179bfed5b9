//! The request at the doorstep, set against what was advised last. Common practice, no source.

mod roof;

use roof::papers::{advised, asks, lines, named, read, refused, repair, said, step, tear_off};
use roof::{Roof, day, found, near, remedy};
use trade::doorstep::Tells;
use trade::mark::Rung::{Failed, Failing, Sound};
use trade::outcome::Came;
use trade::property::StructureKind;
use trade::verdict::{Course, LicensedTrade, Narrowed, Refused, Step, When};
use trade::work::{By, WorkOn};

const SPLIT: &[&str] = &["boot-split"];
const NOTHING: &[&str] = &[];

/// What is asked, what was advised, what was refused, whether the request goes against it, and what is said to that.
const REQUESTS: &str = "
pipe-boot sealant         | repair     | -                  | against | {remedy-sealant}: that buys 6 to 24 months and cures nothing. Found: {defect-boot-split}.
pipe-boot sealant         | repair     | sealant-alone      | against | {remedy-sealant}: we said no to that on 11 April 2017. Advised: {course-repair}.
pipe-boot new-boot        | repair     | sealant-alone      | -       | {remedy-new-boot}: we advised that on 11 April 2017.
pipe-boot boot-collar     | repair     | -                  | -       | -
pipe-boot new-boot        | tear-off   | -                  | against | {remedy-new-boot}: that is less than we advised on 11 April 2017. Advised: {course-tear-off}.
pipe-boot new-boot        | tear-off   | beyond-making-safe | against | {remedy-new-boot}: we said no to that on 11 April 2017. Advised: {course-tear-off}.
pipe-boot temporary-cover | tear-off   | beyond-making-safe | -       | {remedy-temporary-cover}: that is the first step only. Advised on 11 April 2017: {course-tear-off}.
covering recover          | tear-off   | recover by code    | against | {remedy-recover}: code does not allow it here. We said so on 11 April 2017.
covering recover          | tear-off   | old-flashings      | against | {remedy-recover}: that is less than we advised on 11 April 2017. Advised: {course-tear-off}.
covering tear-off         | tear-off   | -                  | -       | {remedy-tear-off}: we advised that on 11 April 2017.
covering tear-off         | leave      | -                  | -       | {remedy-tear-off}: that is more than we advised on 11 April 2017. Advised: {course-leave}.
covering tear-off         | repair     | -                  | -       | -
gutter clean-gutter       | tear-off   | maintain           | -       | -
pipe-boot                 | repair     | -                  | -       | {kind-pipe-boot}: on 11 April 2017 we advised: {remedy-new-boot}.
gutter                    | repair     | -                  | -       | -
covering replace-shingles | look-first | -                  | -       | {remedy-replace-shingles}: on 11 April 2017 we could not say before a closer look.
";

fn steps(course: &str) -> fn(&Roof) -> Vec<Step> {
    match course {
        "repair" => repair,
        "tear-off" => tear_off,
        "leave" => |_| vec![step(When::Later, Course::Leave, &[])],
        "look-first" => |_| vec![step(When::Now, Course::LookFirst, &[])],
        other => panic!("{other}"),
    }
}

fn refusal(what: &str) -> Vec<Refused> {
    let (course, narrowed, forbidden) = match what {
        "-" => return Vec::new(),
        "sealant-alone" => (Course::Repair, Narrowed::SealantAlone, false),
        "beyond-making-safe" => (Course::Repair, Narrowed::BeyondMakingSafe, false),
        "recover by code" => (Course::Recover, Narrowed::Whole, true),
        "old-flashings" => (Course::Recover, Narrowed::OldFlashings, false),
        "maintain" => (Course::Maintain, Narrowed::Whole, false),
        other => panic!("{other}"),
    };
    vec![refused(course, narrowed, forbidden)]
}

#[test]
fn the_request_against_the_last_verdict() {
    for row in REQUESTS.trim().lines() {
        let cells: Vec<&str> = row.split('|').map(str::trim).collect();
        let [asked, course, refused, against, says] = cells[..] else {
            panic!("{row}");
        };
        let roof = advised(steps(course), refusal(refused));
        let (kind, remedy) = match asked.split_once(' ') {
            Some((kind, remedy)) => (kind, Some(remedy)),
            None => (asked, None),
        };
        let doorstep = roof.doorstep(Some(&asks(&[(kind, remedy)])), "2017-05-02");
        let then = doorstep.then_and_now.as_ref().unwrap();
        assert_eq!(then.contradicts, against == "against", "{row}");
        assert_eq!(then.on, day("2017-04-11"));
        let says: Vec<String> = (says != "-").then(|| named(says)).into_iter().collect();
        assert_eq!(read(&doorstep, Tells::Request), says, "{row}");
    }
}

#[test]
fn a_first_step_whose_day_has_passed_is_no_answer_any_more() {
    let roof = advised(tear_off, vec![]);
    let request = asks(&[("pipe-boot", Some("temporary-cover"))]);
    let doorstep = roof.doorstep(Some(&request), "2017-09-02");
    assert!(doorstep.then_and_now.as_ref().unwrap().contradicts);
    assert_eq!(
        read(&doorstep, Tells::Request),
        lines([
            "{remedy-temporary-cover}: that was to hold until 23 May 2017. Advised: {course-tear-off}."
        ])
    );
}

#[test]
fn what_was_sent_to_another_trade_is_not_ours() {
    let (mut roof, chimney) = found("masonry-chimney", Failing, &["mortar-washed-out"]);
    let (visit, house) = (roof.history.visits[0].id, roof.house);
    let mut refer = step(When::ThisSeason, Course::Refer, &[(chimney, "repoint")]);
    refer.tasks[0].trade = Some(LicensedTrade::Mason);
    roof.letter(visit, house, vec![refer], vec![]);
    let request = asks(&[("masonry-chimney", Some("sealant"))]);
    let doorstep = roof.doorstep(Some(&request), "2018-04-11");
    assert!(doorstep.then_and_now.as_ref().unwrap().contradicts);
    assert_eq!(
        read(&doorstep, Tells::Request),
        lines([
            "{remedy-sealant}: not our work. On 11 April 2017 we sent them to {trade-mason.who}."
        ])
    );
}

#[test]
fn the_verdict_and_its_reasons_stand_beside_the_request() {
    let roof = advised(
        tear_off,
        vec![refused(Course::Repair, Narrowed::BeyondMakingSafe, false)],
    );
    let request = asks(&[("pipe-boot", Some("new-boot"))]);
    let then = roof
        .doorstep(Some(&request), "2017-05-02")
        .then_and_now
        .unwrap();
    assert_eq!(
        said(&then.said),
        named(
            "{when-now}: {course-make-safe}. {remedy-temporary-cover}. {when-this-season}: {course-tear-off}."
        )
    );
    let why: Vec<String> = then.why.iter().map(said).collect();
    assert_eq!(
        why,
        ["the refusal's reason"],
        "what answers the request is told alone"
    );
    assert_eq!(roof.doorstep(None, "2017-05-02").then_and_now, None);
}

#[test]
fn where_nothing_answers_the_request_the_main_course_is_explained() {
    let request = asks(&[("pipe-boot", Some("new-boot"))]);
    let then = advised(tear_off, vec![])
        .doorstep(Some(&request), "2017-05-02")
        .then_and_now
        .unwrap();
    let why: Vec<String> = then.why.iter().map(said).collect();
    assert_eq!(why, ["the step's reason"]);
}

#[test]
fn a_verdict_that_was_carried_out_is_not_held_against_the_caller() {
    for outcome in [Some(Came::DoneByUs), Some(Came::DoneByOthers), None] {
        let mut roof = advised(tear_off, vec![]);
        let letter = roof.history.letters[0].id;
        if let Some(came) = outcome {
            roof.outcome(Some(letter), came, "2017-07-01", "");
        } else {
            let house = WorkOn::Structure(roof.house);
            roof.work_on(house, remedy("tear-off"), By::NotUs, "2017-07-01", None);
        }
        let request = asks(&[("pipe-boot", Some("new-boot"))]);
        let doorstep = roof.doorstep(Some(&request), "2018-05-02");
        assert!(!doorstep.then_and_now.as_ref().unwrap().contradicts);
        assert_eq!(
            read(&doorstep, Tells::Request),
            ["What we advised on 11 April 2017 has been done since."]
        );
    }
}

#[test]
fn without_a_letter_the_last_visit_speaks() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let request = asks(&[("pipe-boot", Some("sealant"))]);
    let doorstep = roof.doorstep(Some(&request), "2018-05-02");
    let then = doorstep.then_and_now.as_ref().unwrap();
    assert_eq!(
        said(&then.said),
        named("{kind-pipe-boot} A1: {rung-failing}. Advised: {remedy-new-boot}.")
    );
    assert!(then.contradicts, "sealant only buys time");

    roof.history.marks[0].advised = vec!["boot-collar".into()];
    let request = asks(&[("pipe-boot", Some("new-boot"))]);
    let then = roof
        .doorstep(Some(&request), "2018-05-02")
        .then_and_now
        .unwrap();
    assert_eq!(
        said(&then.said),
        named("{kind-pipe-boot} A1: {rung-failing}. Advised: {remedy-boot-collar}.")
    );
    assert!(!then.contradicts);

    let second = roof.visit("2019-04-11");
    roof.mark(second, boot, near(Sound), NOTHING);
    assert_eq!(
        roof.doorstep(Some(&request), "2020-05-02").then_and_now,
        None
    );
}

#[test]
fn structures_are_told_apart() {
    let mut roof = advised(repair, vec![]);
    let garage = roof.structure(StructureKind::DetachedGarage);
    let covering = roof.part_at(garage, None, "covering");
    let visit = roof.history.visits[0].id;
    roof.mark(visit, covering, near(Failed), &["covering-worn-out"]);
    roof.letter(
        visit,
        garage,
        vec![step(When::ThisSeason, Course::TearOff, &[])],
        vec![],
    );

    let gutters = asks(&[("downspout", None)]);
    let then = roof
        .doorstep(Some(&gutters), "2018-01-01")
        .then_and_now
        .unwrap();
    assert_eq!(
        said(&then.said),
        named(
            "{structure-house}. {when-this-season}: {course-repair}. {remedy-new-boot}. {structure-detached-garage}. {when-this-season}: {course-tear-off}."
        )
    );
    let boots = asks(&[("pipe-boot", Some("new-boot"))]);
    let then = roof
        .doorstep(Some(&boots), "2018-01-01")
        .then_and_now
        .unwrap();
    assert_eq!(
        said(&then.said),
        named("{structure-house}. {when-this-season}: {course-repair}. {remedy-new-boot}.")
    );
}
