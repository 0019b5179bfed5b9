//! A thread through many visits: patches counted, cures that come back, what was learned late, how it stands between visits. The rules are
//! common practice, no source.

mod roof;

use roof::{Books, Roof, day, found, near, not_seen, remedy, seen};
use trade::catalogue::{CauseKey, Months};
use trade::ids::PartId;
use trade::mark::{Condition, NotSeen, Rung, Seen};
use trade::thread::Became;
use trade::work::{By, Did, WorkOn};

use Rung::{Ageing, Failed, Failing, Sound};

const SPLIT: &[&str] = &["boot-split"];
const NOTHING: &[&str] = &[];

#[test]
fn not_seen_closes_nothing_however_many_visits_ago() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    for (on, why) in [
        ("2018-04-11", NotSeen::Wet),
        ("2019-04-11", NotSeen::Locked),
        ("2020-04-11", NotSeen::NotReached),
    ] {
        let visit = roof.visit(on);
        roof.mark(visit, boot, not_seen(why), NOTHING);
    }
    let now = roof.visit("2021-04-11");
    roof.mark(now, boot, near(Failing), SPLIT);
    let thread = roof.thread(boot, now).unwrap();
    assert_eq!(thread.became, Became::StillOpen);
    assert_eq!(thread.earlier, Some(roof.history.marks[0].id));
    assert_eq!(thread.marks.len(), 2, "only marks that saw it are real");
}

#[test]
fn what_was_never_seen_before_is_new() {
    let mut roof = Roof::new();
    let boot = roof.part("pipe-boot");
    let first = roof.visit("2018-04-11");
    roof.mark(first, boot, not_seen(NotSeen::Wet), NOTHING);
    let second = roof.visit("2021-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    let thread = roof.thread(boot, second).unwrap();
    assert_eq!(thread.became, Became::New);
    assert_eq!((thread.earlier, thread.cause), (None, None));
    assert_eq!(roof.thread(boot, first).unwrap().became, Became::New);
}

#[test]
fn later_visits_works_and_parts_are_left_out() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    let before = roof.thread(boot, second).unwrap();

    let third = roof.visit("2020-04-11");
    roof.mark(third, boot, near(Sound), NOTHING);
    roof.work(boot, remedy("new-boot"), By::Us, "2019-04-11");
    let told_later = WorkOn::Part(boot);
    roof.work_on(
        told_later,
        remedy("sealant"),
        By::NotUs,
        "2017-09-01",
        Some(third),
    );
    let born_later = roof.part("gutter");
    roof.mark(third, born_later, near(Sound), NOTHING);

    assert_eq!(roof.thread(boot, second).unwrap(), before);
    assert_eq!(roof.thread(born_later, second), None);
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Cured);
}

#[test]
fn of_two_marks_of_one_visit_the_later_counts_and_both_stay() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let now = roof.visit("2019-04-11");
    roof.mark(now, boot, near(Failed), SPLIT);
    let later = roof.mark(now, boot, near(Failing), SPLIT);
    let thread = roof.thread(boot, now).unwrap();
    assert_eq!(thread.became, Became::StillOpen);
    assert_eq!(thread.now, Some(later));
    assert_eq!(thread.marks.len(), 3);
}

#[test]
fn a_patch_has_its_usual_life_and_its_number_over_all_visits() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("sealant"), By::NotUs, "2017-08-01");
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Sound), NOTHING);
    let third = roof.visit("2019-04-11");
    roof.mark(third, boot, near(Failing), SPLIT);
    roof.work(boot, Did::Something, By::Unknown, "2019-09-01");
    roof.work(boot, remedy("sealant"), By::Us, "2020-02-01");
    let fourth = roof.visit("2020-04-11");
    roof.mark(fourth, boot, near(Ageing), SPLIT);

    let thread = roof.thread(boot, second).unwrap();
    assert_eq!(thread.became, Became::Patched);
    assert_eq!(thread.by, Some(By::NotUs));
    assert_eq!(thread.patches.len(), 1);
    assert_eq!(thread.patches[0].usual, Some(Months { least: 6, most: 24 }));

    let thread = roof.thread(boot, third).unwrap();
    assert_eq!(
        thread.became,
        Became::Worse,
        "the patch gave out, no work since"
    );
    assert_eq!(thread.patches.len(), 1);

    let thread = roof.thread(boot, fourth).unwrap();
    assert_eq!(thread.became, Became::Patched);
    assert_eq!(thread.cause, Some(CauseKey::from("boot-perished")));
    assert_eq!(thread.by, Some(By::Us));
    let days: Vec<_> = thread.patches.iter().map(|patch| patch.when).collect();
    assert_eq!(
        days,
        [day("2017-08-01"), day("2019-09-01"), day("2020-02-01")]
    );
    assert_eq!(thread.patches[1].remedy, None);
    assert_eq!(thread.patches[1].usual, None);
}

#[test]
fn an_older_patch_goes_on_being_one() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("sealant"), By::NotUs, "2017-08-01");
    for on in ["2018-04-11", "2019-04-11", "2020-04-11"] {
        let visit = roof.visit(on);
        roof.mark(visit, boot, near(Sound), NOTHING);
        let thread = roof.thread(boot, visit).unwrap();
        assert_eq!(thread.became, Became::Patched, "{on}");
        assert_eq!((thread.patches.len(), thread.by), (1, Some(By::NotUs)));
    }
}

#[test]
fn a_cure_seen_sound_and_a_new_part_end_the_count() {
    let cause = CauseKey::from("boot-perished");
    for end in [remedy("new-boot"), Did::Replaced] {
        let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
        roof.work(boot, remedy("sealant"), By::NotUs, "2017-08-01");
        roof.work(boot, end, By::NotUs, "2017-10-01");
        let second = roof.visit("2018-04-11");
        roof.mark(second, boot, near(Sound), NOTHING);
        let third = roof.visit("2024-04-11");
        roof.mark(third, boot, near(Failing), SPLIT);
        assert_eq!(roof.thread(boot, third).unwrap().became, Became::Worse);
        roof.work(boot, remedy("sealant"), By::NotUs, "2024-08-01");
        let books = Books::new();
        let patches = judge::patches_on(&roof.history, boot, &cause, &books.rules());
        assert_eq!(patches.len(), 1);
        assert_eq!(patches[0].when, day("2024-08-01"));
    }
}

#[test]
fn a_patch_seen_on_the_first_visit_counts() {
    let mut roof = Roof::new();
    let boot = roof.part("pipe-boot");
    let first = roof.visit("2017-04-11");
    roof.mark(first, boot, near(Failing), SPLIT);
    let on = WorkOn::Part(boot);
    roof.work_on(on, remedy("sealant"), By::NotUs, "2017-04-11", Some(first));
    let thread = roof.thread(boot, first).unwrap();
    assert_eq!((thread.became, thread.by), (Became::New, Some(By::NotUs)));
    let cause = CauseKey::from("boot-perished");
    let books = Books::new();
    assert_eq!(
        judge::patches_on(&roof.history, boot, &cause, &books.rules()).len(),
        1
    );
}

#[test]
fn what_we_do_on_the_spot_comes_after_the_look() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    let on = WorkOn::Part(boot);
    roof.work_on(on, remedy("sealant"), By::Us, "2018-04-11", Some(second));
    let third = roof.visit("2018-06-11");
    roof.mark(third, boot, near(Sound), NOTHING);
    assert_eq!(roof.thread(boot, second).unwrap().became, Became::StillOpen);
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Patched);
}

#[test]
fn our_finished_work_is_documented_on_the_day() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("new-boot"), By::Us, "2018-04-11");
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Sound), NOTHING);
    let third = roof.visit("2019-04-11");
    roof.mark(third, boot, near(Sound), NOTHING);
    assert_eq!(roof.thread(boot, second).unwrap().became, Became::Cured);
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Quiet);
}

#[test]
fn a_cure_that_comes_back_within_the_years_of_house_policy_is_a_callback() {
    // House policy of two years; the day on which they end still counts.
    let rows = [
        (By::Us, "2019-12-01", Some(By::Us)),
        (By::NotUs, "2019-12-01", Some(By::NotUs)),
        (By::Us, "2020-02-01", Some(By::Us)),
        (By::Us, "2020-02-02", None),
    ];
    for did in [remedy("new-boot"), Did::Replaced] {
        for (by, on, callback) in rows {
            let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
            roof.work(boot, did.clone(), by, "2018-02-01");
            let second = roof.visit("2018-04-11");
            roof.mark(second, boot, near(Sound), NOTHING);
            let third = roof.visit(on);
            roof.mark(third, boot, near(Failing), SPLIT);
            assert_eq!(roof.thread(boot, second).unwrap().callback, None);
            assert_eq!(
                roof.thread(boot, third).unwrap().callback,
                callback,
                "{by:?} {on}"
            );
            assert_eq!(
                roof.standing(boot, "2021-01-01").unwrap().callback,
                callback
            );
        }
    }
}

#[test]
fn another_cause_or_a_patch_that_gives_out_is_no_callback() {
    let (mut roof, covering) = found("covering", Failing, &["shingle-missing"]);
    roof.work(covering, remedy("replace-shingles"), By::Us, "2018-02-01");
    let second = roof.visit("2018-04-11");
    roof.mark(second, covering, near(Failing), &["tabs-unsealed"]);
    assert_eq!(roof.thread(covering, second).unwrap().callback, None);

    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("sealant"), By::Us, "2018-02-01");
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    assert_eq!(roof.thread(boot, second).unwrap().callback, None);
}

#[test]
fn a_corrected_record_counts_as_corrected() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let now = roof.visit("2019-04-11");
    roof.mark(now, boot, near(Sound), NOTHING);
    assert_eq!(roof.thread(boot, now).unwrap().became, Became::Better);
    roof.history.marks[0].condition = near(Sound);
    roof.history.marks[0].defects.clear();
    roof.history.marks[0].corrected = Some(trade::mark::Correction {
        on: day("2017-05-01"),
        why: "It was the neighbour's pipe.".to_owned(),
    });
    assert_eq!(roof.thread(boot, now).unwrap().became, Became::Quiet);
}

#[test]
fn a_cause_that_is_not_listed_again_stays_where_nothing_is_said_of_why() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), NOTHING);
    roof.work(boot, remedy("sealant"), By::NotUs, "2018-09-01");
    let third = roof.visit("2019-04-11");
    roof.mark(third, boot, near(Sound), NOTHING);
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Patched);
}

#[test]
fn hearsay_loses_no_finding() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, seen(Sound, Seen::Told), NOTHING);
    let third = roof.visit("2019-04-11");
    roof.mark(third, boot, not_seen(NotSeen::Wet), NOTHING);
    let thread = roof.thread(boot, third).unwrap();
    assert_eq!(thread.became, Became::NotSeenAgain);
    assert_eq!(thread.rung_then, Some(Failing));
    assert_eq!(thread.cause, Some(CauseKey::from("boot-perished")));
}

#[test]
fn as_it_stands_between_visits() {
    let rows = [
        ("nothing done", None, Became::StillOpen),
        ("patched", Some(remedy("sealant")), Became::Patched),
        (
            "cured, and nobody has seen it",
            Some(remedy("new-boot")),
            Became::StillOpen,
        ),
        ("replaced", Some(Did::Replaced), Became::Replaced),
        ("covered", Some(Did::Covered), Became::Hidden),
        ("taken down", Some(Did::TakenDown), Became::Gone),
    ];
    for (rule, did, became) in rows {
        let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
        if let Some(did) = did {
            roof.work(boot, did, By::NotUs, "2018-04-11");
        }
        let thread = roof.standing(boot, "2019-01-01").unwrap();
        assert_eq!(thread.became, became, "{rule}");
        assert_eq!(
            (thread.now, thread.rung_then),
            (None, Some(Failing)),
            "{rule}"
        );
    }
    let (mut roof, boot) = found("pipe-boot", Sound, NOTHING);
    assert_eq!(
        roof.standing(boot, "2019-01-01").unwrap().became,
        Became::Quiet
    );
    let second = roof.visit("2019-04-11");
    roof.mark(second, boot, not_seen(NotSeen::Wet), NOTHING);
    assert_eq!(
        roof.standing(boot, "2020-01-01").unwrap().became,
        Became::NotSeenAgain
    );
    let third = roof.visit("2020-04-11");
    roof.mark(third, boot, not_seen(NotSeen::Hidden), NOTHING);
    assert_eq!(
        roof.standing(boot, "2021-01-01").unwrap().became,
        Became::Hidden
    );
}

#[test]
fn the_second_look_asks_for_what_stands_open_worst_first() {
    let mut roof = Roof::new();
    let kinds = ["pipe-boot", "covering", "gutter", "ridge-cap"];
    let parts = kinds.map(|kind| roof.part(kind));
    let first = roof.visit("2017-04-11");
    let then = [Ageing, Failed, Sound, Failing];
    for (part, rung) in parts.into_iter().zip(then) {
        roof.mark(first, part, near(rung), NOTHING);
    }
    let second = roof.visit("2019-04-11");
    let threads = judge::threads(&roof.history, second, &Books::new().rules());
    let asked: Vec<PartId> = judge::second_look(&threads)
        .iter()
        .map(|thread| thread.part)
        .collect();
    assert_eq!(asked, [parts[1], parts[3], parts[0]]);
}

#[test]
fn a_cure_learned_of_late_cures_what_looked_patched() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    roof.work(boot, remedy("sealant"), By::NotUs, "2017-08-01");
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Sound), NOTHING);
    let third = roof.visit("2019-04-11");
    roof.mark(third, boot, near(Sound), NOTHING);
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Patched);
    let on = WorkOn::Part(boot);
    roof.work_on(on, remedy("new-boot"), By::NotUs, "2017-12-01", Some(third));
    assert_eq!(roof.thread(boot, second).unwrap().became, Became::Patched);
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Cured);
}

#[test]
fn a_cure_done_before_the_cause_was_last_seen_cures_nothing() {
    let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
    let second = roof.visit("2018-04-11");
    roof.mark(second, boot, near(Failing), SPLIT);
    let third = roof.visit("2019-04-11");
    roof.mark(third, boot, near(Sound), NOTHING);
    let on = WorkOn::Part(boot);
    roof.work_on(on, remedy("new-boot"), By::NotUs, "2017-12-01", Some(third));
    roof.work_on(on, Did::Replaced, By::NotUs, "2017-12-01", Some(third));
    assert_eq!(roof.thread(boot, third).unwrap().became, Became::Better);
}

#[test]
fn small_things_noted_on_a_sound_part_are_no_finding() {
    let (mut roof, covering) = found("covering", Sound, &["moss-growing"]);
    let second = roof.visit("2018-04-11");
    roof.mark(second, covering, near(Sound), &["moss-growing"]);
    let thread = roof.thread(covering, second).unwrap();
    assert_eq!((thread.became, thread.cause), (Became::Quiet, None));
}

#[test]
fn what_is_gone_is_told_once() {
    for by_work in [false, true] {
        let (mut roof, boot) = found("pipe-boot", Failing, SPLIT);
        let second = roof.visit("2018-04-11");
        if by_work {
            roof.work(boot, Did::TakenDown, By::NotUs, "2017-09-01");
        } else {
            roof.mark(second, boot, Condition::Gone, NOTHING);
        }
        let third = roof.visit("2019-04-11");
        assert_eq!(roof.thread(boot, second).unwrap().became, Became::Gone);
        assert_eq!(roof.thread(boot, third), None);
        roof.mark(third, boot, near(Sound), NOTHING);
        assert_eq!(roof.thread(boot, third).unwrap().became, Became::Replaced);
    }
}
