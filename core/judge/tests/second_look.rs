//! What became of a part: each rule of the second look by table. The rules are common practice, no source.

mod roof;

use roof::{Roof, day, found, near, not_seen, remedy, seen};
use trade::catalogue::CauseKey;
use trade::mark::{Condition, Extent, NotSeen, Rung, Seen};
use trade::property::StructureKind;
use trade::thread::Became;
use trade::work::{By, Did, WorkOn};

use Rung::{Ageing, Failing, Sound};

const NOTHING: &[&str] = &[];

/// Defects and how far each reaches.
type Reaching = &'static [(&'static str, Extent)];

/// The rule, what was found then, what is found now, what became of it.
type Grown = (&'static str, Reaching, Reaching, Became);

/// The rule, the remedies done, how it is now, its defects now, what became of it.
type Treated = (
    &'static str,
    &'static [&'static str],
    Condition,
    &'static [&'static str],
    Became,
);

/// A pipe boot then, the work between, the boot now, what became of it, and by which rule. "split" is the defect.
const OUTCOMES: &str = "
failing split | -                   | gone                  | gone           | taken down, nothing in its place
failing split | taken-down          | -                     | gone           | known to be taken down, nothing seen there
failing split | taken-down          | hidden                | gone           | gone comes before hidden
gone          | -                   | -                     | -              | gone at the last look: nothing is left to tell
failing split | -                   | hidden                | hidden         | seen to be covered
failing split | covered             | out-of-reach          | hidden         | known to be covered
failing split | covered             | sound afar            | hidden         | covered, and only looked at from the ground
failing split | replaced, covered   | -                     | hidden         | hidden comes before replaced
failing split | covered             | failing split         | still-open     | a close look on a later visit shows that the cover is off
failing split | -                   | wet                   | not-seen-again | not seen this time
failing split | -                   | -                     | not-seen-again | no mark at all
sound         | -                   | -                     | not-seen-again | sound then says nothing of now
failing split | replaced            | -                     | not-seen-again | comes before replaced: nobody has seen the new part
failing split | new-boot            | locked                | not-seen-again | comes before cured: nobody has seen it sound
failing split | new-boot            | sound told            | not-seen-again | that it is said to be well is no look
failed split  | -                   | failing inferred split| not-seen-again | that it is concluded to be better is no look
failing split | -                   | failed told split     | worse          | that it is said to be worse counts
failing split | replaced            | sound                 | replaced       | a new part stands there
failing split | replaced            | failed split          | replaced       | its own condition is a fresh start, and may be bad
failing split | covered, replaced   | sound                 | replaced       | a new part ends the cover of the old one
failing split | taken-down          | sound                 | replaced       | taken down, and something stands there now
gone          | -                   | sound                 | replaced       | gone at the last look, and something stands there now
failing split | new-boot            | sound                 | cured          | the remedy that the cause needs
failing split | boot-collar         | sound                 | cured          | a collar over a sound base cures as well
failing split | sealant, new-boot   | sound                 | cured          | cured after a patch
failing split | new-boot            | failing split         | still-open     | a cure that shows the same cause is none
failed split  | new-boot            | failing split         | still-open     | nor where it looks less bad
failing split | sealant             | sound                 | patched        | however good it looks today
failing split | something           | sound                 | patched        | something was done, nobody knows what
failing split | remove-moss         | sound                 | patched        | a remedy that has nothing to do with the cause
failing split | sealant             | failed split          | patched        | patched comes before worse
failing split | -                   | failed split          | worse          | a lower rung
sound         | -                   | failing split         | worse          | sound then, bad now
ageing        | something           | failing split         | worse          | unknown work patches nothing where no cause is known
failing split | -                   | failing split         | still-open     | the same
failing split | -                   | failing               | still-open     | the same rung, nothing said of why
failing split | -                   | sound                 | better         | ask what changed
failing split | -                   | ageing split          | better         | better, not yet sound
sound         | -                   | sound                 | quiet          | sound then and now
sound         | something           | sound                 | quiet          | upkeep on a sound part is no patch
";

#[allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]
/// A condition and its defects, from words: "failing split", "sound told", "wet".
fn assessed(words: &str) -> (Condition, Vec<&'static str>) {
    let words: Vec<&str> = words.split_whitespace().collect();
    let defects = if words.contains(&"split") {
        vec!["boot-split"]
    } else {
        Vec::new()
    };
    let how = |way: &&Seen| words.contains(&way.key().trim_start_matches("seen-"));
    let rung = |rung: &&Rung| rung.key() == format!("rung-{}", words[0]);
    let why = |why: &&NotSeen| why.key() == format!("not-seen-{}", words[0]);
    let condition = if words[0] == "gone" {
        Condition::Gone
    } else if let Some(rung) = Rung::ALL.iter().find(rung) {
        seen(*rung, *Seen::ALL.iter().find(how).unwrap_or(&Seen::Near))
    } else {
        not_seen(*NotSeen::ALL.iter().find(why).unwrap())
    };
    (condition, defects)
}

fn work(word: &str) -> Did {
    match word {
        "replaced" => Did::Replaced,
        "covered" => Did::Covered,
        "taken-down" => Did::TakenDown,
        "something" => Did::Something,
        key => remedy(key),
    }
}

#[test]
fn each_outcome_by_its_rule() {
    let rows: Vec<&str> = OUTCOMES.trim().lines().collect();
    for row in &rows {
        let cells: Vec<&str> = row.split('|').map(str::trim).collect();
        let [then, works, now, became, rule] = cells[..] else {
            panic!("{row}");
        };
        let mut roof = Roof::new();
        let boot = roof.part("pipe-boot");
        let first = roof.visit("2019-05-03");
        let (condition, defects) = assessed(then);
        roof.mark(first, boot, condition, &defects);
        for (at, word) in works.split(", ").filter(|word| *word != "-").enumerate() {
            roof.work(boot, work(word), By::NotUs, &format!("2020-0{}-10", at + 1));
        }
        let second = roof.visit("2022-06-20");
        if now != "-" {
            let (condition, defects) = assessed(now);
            roof.mark(second, boot, condition, &defects);
        }
        let thread = roof.thread(boot, second);
        let told = thread.map_or("-", |thread| thread.became.key());
        assert_eq!(told.trim_start_matches("became-"), became, "{rule}");
    }
    for became in Became::ALL.iter().filter(|became| **became != Became::New) {
        let key = became.key().trim_start_matches("became-");
        assert!(OUTCOMES.contains(&format!("| {key} ")), "{key} has no row");
    }
}

#[test]
fn the_same_rung_is_worse_with_a_new_or_larger_defect_of_the_same_cause_only() {
    let rows: [Grown; 5] = [
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
    let rows: [Treated; 5] = [
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
