//! What became of a part: each rule of the second look by table. The rules are common practice, no source.

mod roof;

use roof::{Roof, day, near, not_seen, remedy, seen};
use trade::catalogue::{CauseKey, Months};
use trade::ids::PartId;
use trade::mark::{Condition, Extent, NotSeen, Rung, Seen};
use trade::property::StructureKind;
use trade::thread::Became;
use trade::work::{By, Did, WorkOn};

use Rung::{Ageing, Failed, Failing, Sound};

/// One transition of a pipe boot: then, the work between, now.
struct Row {
    rule: &'static str,
    then: (Condition, &'static [&'static str]),
    works: Vec<Did>,
    now: Option<(Condition, &'static [&'static str])>,
    became: Became,
}

const SPLIT: &[&str] = &["boot-split"];
const NOTHING: &[&str] = &[];

fn row(
    rule: &'static str,
    then: (Condition, &'static [&'static str]),
    works: Vec<Did>,
    now: Option<(Condition, &'static [&'static str])>,
    became: Became,
) -> Row {
    Row {
        rule,
        then,
        works,
        now,
        became,
    }
}

fn between(then: &Row) -> Became {
    let mut roof = Roof::new();
    let boot = roof.part("pipe-boot");
    let first = roof.visit("2019-05-03");
    roof.mark(first, boot, then.then.0, then.then.1);
    for (at, did) in then.works.iter().enumerate() {
        roof.work(
            boot,
            did.clone(),
            By::NotUs,
            &format!("2020-0{}-10", at + 1),
        );
    }
    let second = roof.visit("2022-06-20");
    if let Some((condition, defects)) = then.now {
        roof.mark(second, boot, condition, defects);
    }
    roof.thread(boot, second).unwrap().became
}

#[test]
fn each_outcome_by_its_rule() {
    let split = (near(Failing), SPLIT);
    let sound = Some((near(Sound), NOTHING));
    let rows = [
        row(
            "gone: taken down, nothing in its place",
            split,
            vec![],
            Some((Condition::Gone, NOTHING)),
            Became::Gone,
        ),
        row(
            "gone: known to be taken down, nothing seen there",
            split,
            vec![Did::TakenDown],
            None,
            Became::Gone,
        ),
        row(
            "gone comes before hidden",
            split,
            vec![Did::TakenDown],
            Some((not_seen(NotSeen::Hidden), NOTHING)),
            Became::Gone,
        ),
        row(
            "replaced: taken down, and something stands there now",
            split,
            vec![Did::TakenDown],
            sound,
            Became::Replaced,
        ),
        row(
            "replaced: gone at the last look, and something stands there now",
            (Condition::Gone, NOTHING),
            vec![],
            sound,
            Became::Replaced,
        ),
        row(
            "gone at the last look stays gone where nobody looks",
            (Condition::Gone, NOTHING),
            vec![],
            None,
            Became::Gone,
        ),
        row(
            "hidden: seen to be covered",
            split,
            vec![],
            Some((not_seen(NotSeen::Hidden), NOTHING)),
            Became::Hidden,
        ),
        row(
            "hidden: known to be covered",
            split,
            vec![Did::Covered],
            Some((not_seen(NotSeen::OutOfReach), NOTHING)),
            Became::Hidden,
        ),
        row(
            "hidden: covered, and only looked at from the ground",
            split,
            vec![Did::Covered],
            Some((seen(Sound, Seen::Afar), NOTHING)),
            Became::Hidden,
        ),
        row(
            "a close look at a later visit shows that the cover is off",
            split,
            vec![Did::Covered],
            Some((near(Failing), SPLIT)),
            Became::StillOpen,
        ),
        row(
            "hidden comes before replaced",
            split,
            vec![Did::Replaced, Did::Covered],
            None,
            Became::Hidden,
        ),
        row(
            "a new part ends the cover of the old one",
            split,
            vec![Did::Covered, Did::Replaced],
            sound,
            Became::Replaced,
        ),
        row(
            "not seen again",
            split,
            vec![],
            Some((not_seen(NotSeen::Wet), NOTHING)),
            Became::NotSeenAgain,
        ),
        row(
            "not seen again: no mark at all",
            split,
            vec![],
            None,
            Became::NotSeenAgain,
        ),
        row(
            "not seen again comes before replaced: nobody has seen the new part",
            split,
            vec![Did::Replaced],
            None,
            Became::NotSeenAgain,
        ),
        row(
            "not seen again comes before cured: nobody has seen it sound",
            split,
            vec![remedy("new-boot")],
            Some((not_seen(NotSeen::Locked), NOTHING)),
            Became::NotSeenAgain,
        ),
        row(
            "that it is said to be well is no look",
            split,
            vec![remedy("new-boot")],
            Some((seen(Sound, Seen::Told), NOTHING)),
            Became::NotSeenAgain,
        ),
        row(
            "that it is concluded to be better is no look",
            (near(Failed), SPLIT),
            vec![],
            Some((seen(Failing, Seen::Inferred), SPLIT)),
            Became::NotSeenAgain,
        ),
        row(
            "that it is said to be worse counts",
            split,
            vec![],
            Some((seen(Failed, Seen::Told), SPLIT)),
            Became::Worse,
        ),
        row(
            "replaced",
            split,
            vec![Did::Replaced],
            sound,
            Became::Replaced,
        ),
        row(
            "replaced, and bad already: its own condition is a fresh start",
            split,
            vec![Did::Replaced],
            Some((near(Failed), SPLIT)),
            Became::Replaced,
        ),
        row(
            "cured",
            split,
            vec![remedy("new-boot")],
            sound,
            Became::Cured,
        ),
        row(
            "cured: a collar over a sound base cures as well",
            split,
            vec![remedy("boot-collar")],
            sound,
            Became::Cured,
        ),
        row(
            "cured after a patch",
            split,
            vec![remedy("sealant"), remedy("new-boot")],
            sound,
            Became::Cured,
        ),
        row(
            "a cure that shows the same cause is none",
            split,
            vec![remedy("new-boot")],
            Some((near(Failing), SPLIT)),
            Became::StillOpen,
        ),
        row(
            "a cure that shows the same cause is none, though it looks less bad",
            (near(Failed), SPLIT),
            vec![remedy("new-boot")],
            Some((near(Failing), SPLIT)),
            Became::StillOpen,
        ),
        row(
            "patched, however good it looks today",
            split,
            vec![remedy("sealant")],
            sound,
            Became::Patched,
        ),
        row(
            "patched: something was done, nobody knows what",
            split,
            vec![Did::Something],
            sound,
            Became::Patched,
        ),
        row(
            "patched: a remedy that the cause does not know",
            split,
            vec![remedy("remove-moss")],
            sound,
            Became::Patched,
        ),
        row(
            "patched comes before worse",
            split,
            vec![remedy("sealant")],
            Some((near(Failed), SPLIT)),
            Became::Patched,
        ),
        row(
            "worse: a lower rung",
            split,
            vec![],
            Some((near(Failed), SPLIT)),
            Became::Worse,
        ),
        row(
            "worse: sound then, bad now",
            (near(Sound), NOTHING),
            vec![],
            Some((near(Failing), SPLIT)),
            Became::Worse,
        ),
        row(
            "unknown work on a part without a known cause patches nothing",
            (near(Ageing), NOTHING),
            vec![Did::Something],
            Some((near(Failing), SPLIT)),
            Became::Worse,
        ),
        row("still open", split, vec![], Some(split), Became::StillOpen),
        row(
            "still open: the same rung, nothing said of why",
            split,
            vec![],
            Some((near(Failing), NOTHING)),
            Became::StillOpen,
        ),
        row(
            "better: ask what changed",
            split,
            vec![],
            sound,
            Became::Better,
        ),
        row(
            "better: still not sound",
            split,
            vec![],
            Some((near(Ageing), SPLIT)),
            Became::Better,
        ),
        row(
            "quiet: sound then and now",
            (near(Sound), NOTHING),
            vec![],
            sound,
            Became::Quiet,
        ),
        row(
            "quiet: upkeep on a sound part is no patch",
            (near(Sound), NOTHING),
            vec![Did::Something],
            sound,
            Became::Quiet,
        ),
    ];
    for row in &rows {
        assert_eq!(between(row), row.became, "{}", row.rule);
    }
}

/// A roof with one part and a first visit that found it so.
fn found(kind: &str, rung: Rung, defects: &[&str]) -> (Roof, PartId) {
    let mut roof = Roof::new();
    let part = roof.part(kind);
    let first = roof.visit("2017-04-11");
    roof.mark(first, part, near(rung), defects);
    (roof, part)
}

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
fn the_same_rung_is_worse_with_a_new_or_larger_defect_of_the_same_cause_only() {
    let rows: [(&str, &[(&str, Extent)], &[(&str, Extent)], Became); 5] = [
        (
            "larger",
            &[("granules-lost", Extent::Spot)],
            &[("granules-lost", Extent::Broad)],
            Became::Worse,
        ),
        (
            "smaller",
            &[("granules-lost", Extent::Broad)],
            &[("granules-lost", Extent::Spot)],
            Became::StillOpen,
        ),
        (
            "another defect of the same cause",
            &[("granules-lost", Extent::Spot)],
            &[
                ("granules-lost", Extent::Spot),
                ("covering-brittle", Extent::Spot),
            ],
            Became::Worse,
        ),
        (
            "another cause",
            &[("granules-lost", Extent::Spot)],
            &[
                ("granules-lost", Extent::Spot),
                ("moss-growing", Extent::Broad),
            ],
            Became::StillOpen,
        ),
        (
            "fewer defects of the same cause",
            &[
                ("granules-lost", Extent::Spot),
                ("covering-brittle", Extent::Spot),
            ],
            &[("covering-brittle", Extent::Spot)],
            Became::StillOpen,
        ),
    ];
    for (rule, then, now, became) in rows {
        let mut roof = Roof::new();
        let covering = roof.part("covering");
        let first = roof.visit("2018-04-11");
        roof.mark_reaching(first, covering, near(Ageing), then);
        let second = roof.visit("2020-04-11");
        roof.mark_reaching(second, covering, near(Ageing), now);
        let thread = roof.thread(covering, second).unwrap();
        assert_eq!(thread.became, became, "{rule}");
        assert_eq!(thread.cause, Some(CauseKey::from("weathering")), "{rule}");
    }
}

#[test]
fn every_cause_needs_its_own_cure() {
    let both: &[&str] = &["shingle-missing", "tabs-unsealed"];
    let rows: [(&str, &[&str], Condition, &[&str], Became); 5] = [
        (
            "both cured",
            &["replace-shingles", "hand-seal-tabs"],
            near(Sound),
            NOTHING,
            Became::Cured,
        ),
        (
            "one cause left, though it looks sound",
            &["replace-shingles"],
            near(Sound),
            NOTHING,
            Became::Patched,
        ),
        (
            "one cured, the other seen as it was",
            &["replace-shingles"],
            near(Failing),
            &["tabs-unsealed"],
            Became::StillOpen,
        ),
        (
            "one cured, the other patched",
            &["hand-seal-tabs", "sealant"],
            near(Sound),
            NOTHING,
            Became::Patched,
        ),
        (
            "both gone without work on either",
            &[],
            near(Sound),
            NOTHING,
            Became::Better,
        ),
    ];
    for (rule, works, condition, defects, became) in rows {
        let (mut roof, covering) = found("covering", Failing, both);
        for key in works {
            roof.work(covering, remedy(key), By::Us, "2018-05-01");
        }
        let now = roof.visit("2019-04-11");
        roof.mark(now, covering, condition, defects);
        assert_eq!(roof.thread(covering, now).unwrap().became, became, "{rule}");
    }
}

#[test]
fn two_parts_fixed_while_the_cause_is_a_third_is_a_patch() {
    let three: &[&str] = &["shingle-missing", "tabs-unsealed", "moss-growing"];
    let (mut roof, covering) = found("covering", Failing, three);
    roof.work(
        covering,
        remedy("replace-shingles"),
        By::NotUs,
        "2018-05-01",
    );
    roof.work(covering, remedy("hand-seal-tabs"), By::NotUs, "2018-05-01");
    let now = roof.visit("2019-04-11");
    roof.mark(now, covering, near(Sound), NOTHING);
    let thread = roof.thread(covering, now).unwrap();
    assert_eq!(thread.became, Became::Patched);
    assert_eq!(thread.cause, Some(CauseKey::from("shade-and-damp")));
    assert!(thread.patches.is_empty(), "none of it was about that cause");
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
        let books = roof::Books::new();
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
    let books = roof::Books::new();
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
fn a_new_covering_ends_the_threads_of_what_it_renews() {
    let rows = [
        ("covering", "granules-lost", "tear-off", Became::Replaced),
        ("pipe-boot", "boot-split", "tear-off", Became::Replaced),
        ("pipe-boot", "boot-split", "recover", Became::Replaced),
        ("deck", "deck-soft-spot", "tear-off", Became::Replaced),
        ("deck", "deck-soft-spot", "recover", Became::Hidden),
        (
            "masonry-chimney",
            "mortar-washed-out",
            "tear-off",
            Became::StillOpen,
        ),
        ("gutter", "gutter-clogged", "tear-off", Became::StillOpen),
    ];
    for (kind, defect, covering, became) in rows {
        for whole in [false, true] {
            let (mut roof, part) = found(kind, Failing, &[defect]);
            let on = if whole {
                WorkOn::Structure(roof.house)
            } else {
                WorkOn::Slope(roof.front)
            };
            roof.work_on(on, remedy(covering), By::NotUs, "2018-02-01", None);
            let now = roof.visit("2019-04-11");
            let condition = match became {
                Became::Hidden => seen(Failing, Seen::Afar),
                _ => near(Failing),
            };
            roof.mark(now, part, condition, &[defect]);
            let thread = roof.thread(part, now).unwrap();
            assert_eq!(thread.became, became, "{kind}, {covering}");
        }
    }
}

#[test]
fn a_slope_covered_anew_leaves_the_other_slope_alone() {
    let mut roof = Roof::new();
    let front = roof.part("covering");
    let rear = roof.part_at(roof.house, Some(roof.rear), "covering");
    let first = roof.visit("2017-04-11");
    for part in [front, rear] {
        roof.mark(first, part, near(Failing), &["granules-lost"]);
    }
    roof.work_on(
        WorkOn::Slope(roof.front),
        Did::Replaced,
        By::NotUs,
        "2018-04-11",
        None,
    );
    let second = roof.visit("2019-04-11");
    for part in [front, rear] {
        roof.mark(second, part, near(Failing), &["granules-lost"]);
    }
    assert_eq!(roof.thread(front, second).unwrap().became, Became::Replaced);
    assert_eq!(roof.thread(rear, second).unwrap().became, Became::StillOpen);
}

#[test]
fn a_structure_taken_down_takes_its_parts_with_it() {
    let mut roof = Roof::new();
    let garage = roof.structure(StructureKind::DetachedGarage);
    let covering = roof.part_at(garage, None, "covering");
    let first = roof.visit("2017-04-11");
    roof.mark(first, covering, near(Failing), &["granules-lost"]);
    let second = roof.visit("2019-04-11");
    let third = roof.visit("2021-04-11");
    roof.history.structures.iter_mut().for_each(|structure| {
        if structure.id == garage {
            structure.gone = Some(day("2020-01-15"));
        }
    });
    assert_eq!(
        roof.thread(covering, second).unwrap().became,
        Became::NotSeenAgain
    );
    assert_eq!(roof.thread(covering, third).unwrap().became, Became::Gone);
    roof.mark(third, covering, near(Sound), NOTHING);
    assert_eq!(
        roof.thread(covering, third).unwrap().became,
        Became::Replaced,
        "what is seen to stand there is not gone"
    );
}

#[test]
fn a_part_in_whose_place_another_was_seen_is_replaced() {
    let (mut roof, old) = found("skylight", Failing, &[]);
    let second = roof.visit("2019-04-11");
    roof.mark(second, old, Condition::Gone, NOTHING);
    let third = roof.visit("2021-04-11");
    let new = roof.part("skylight");
    roof.mark(third, new, near(Sound), NOTHING);
    assert_eq!(roof.thread(old, second).unwrap().became, Became::Gone);
    assert_eq!(roof.thread(old, third).unwrap().became, Became::Replaced);
    assert_eq!(roof.thread(new, third).unwrap().became, Became::New);
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
    let threads = judge::threads(&roof.history, second, &roof::Books::new().rules());
    let asked: Vec<PartId> = judge::second_look(&threads)
        .iter()
        .map(|thread| thread.part)
        .collect();
    assert_eq!(asked, [parts[1], parts[3], parts[0]]);
}
