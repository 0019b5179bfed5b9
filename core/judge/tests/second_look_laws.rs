//! The laws of the second look, over ten thousand records thrown together by chance for each.

mod roof;

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use roof::Books;
use roof::chance::{Chance, any_record};
use roof::oracle;
use std::collections::{BTreeMap, BTreeSet};
use trade::catalogue::{Catalogue, Effect};
use trade::history::History;
use trade::ids::{PartId, VisitId};
use trade::mark::{Condition, Mark, Rung, Seen};
use trade::property::Part;
use trade::thread::{Became, Thread};
use trade::work::{Did, WorkOn};

/// The parts that were gone by a visit: told so by then, or no longer told of.
fn gone_by(record: &Chance, visit: VisitId) -> BTreeSet<PartId> {
    let told = threads(&record.history, visit);
    let stands = |part: &PartId| {
        told.iter()
            .any(|thread| thread.part == *part && thread.became != Became::Gone)
    };
    record
        .parts
        .iter()
        .copied()
        .filter(|part| !stands(part))
        .collect()
}

const RECORDS: u32 = 10_000;

fn threads(history: &History, visit: VisitId) -> Vec<Thread> {
    judge::threads(history, visit, &Books::new().rules())
}

fn mark<'a>(record: &'a Chance, thread: &Thread) -> Option<&'a Mark> {
    thread.now.and_then(|id| record.history.mark(id))
}

/// Whether somebody saw the part on this visit.
fn was_seen(mark: Option<&Mark>) -> bool {
    mark.is_some_and(|mark| match mark.condition {
        Condition::Seen { seen, .. } => !matches!(seen, Seen::Told | Seen::Inferred),
        Condition::Gone => true,
        Condition::NotSeen { .. } => false,
    })
}

/// Whether a remedy known by then cures one of the defects that the part ever showed.
fn had_a_cure(record: &Chance, part: &Part) -> bool {
    let shown: BTreeSet<_> = record
        .history
        .marks
        .iter()
        .filter(|mark| mark.part == part.id)
        .flat_map(|mark| mark.defects.iter().map(|seen| &seen.defect))
        .collect();
    record.history.works.iter().any(|work| {
        let here = match work.on {
            WorkOn::Part(id) => id == part.id,
            WorkOn::Slope(id) => part.slope == Some(id),
            WorkOn::Structure(id) => id == part.structure,
        };
        let Did::Remedy(remedy) = &work.did else {
            return false;
        };
        here && shown.iter().any(|defect| {
            Catalogue::standard()
                .defect(defect)
                .and_then(|known| known.effect_on(&part.kind, remedy))
                == Some(&Effect::Cures)
        })
    })
}

#[test]
fn chance_brings_up_every_outcome() {
    let mut runner = TestRunner::deterministic();
    let mut brought: BTreeMap<Became, u32> = BTreeMap::new();
    for _ in 0..2_000 {
        let record = any_record(false)
            .new_tree(&mut runner)
            .unwrap()
            .current()
            .build();
        for visit in &record.visits {
            for thread in threads(&record.history, *visit) {
                *brought.entry(thread.became).or_default() += 1;
            }
        }
    }
    for became in Became::ALL {
        let times = brought.get(&became).copied().unwrap_or_default();
        assert!(times >= 20, "{became:?} came up {times} times only");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: RECORDS, ..ProptestConfig::default() })]

    #[test]
    fn every_part_marked_by_then_has_one_thread_with_one_outcome(thrown in any_record(false)) {
        let record = thrown.build();
        for (at, visit) in record.visits.iter().enumerate() {
            let known = &record.visits[..=at];
            let marked: BTreeSet<_> = record
                .history
                .marks
                .iter()
                .filter(|mark| known.contains(&mark.visit))
                .map(|mark| mark.part)
                .collect();
            let ended = at.checked_sub(1).map(|at| gone_by(&record, record.visits[at]));
            let mut told = BTreeSet::new();
            for thread in threads(&record.history, *visit) {
                prop_assert!(told.insert(thread.part), "one thread a part");
            }
            prop_assert!(told.is_subset(&marked));
            for part in marked.difference(&told) {
                prop_assert!(ended.as_ref().is_some_and(|ended| ended.contains(part)));
            }
        }
    }

    #[test]
    fn the_order_of_independent_lines_does_not_matter(thrown in any_record(false)) {
        let record = thrown.build();
        let shuffled = record.shuffled();
        for visit in &record.visits {
            prop_assert_eq!(threads(&record.history, *visit), threads(&shuffled, *visit));
        }
        let today = roof::day("2020-01-01");
        let books = Books::new();
        prop_assert_eq!(
            judge::standing(&record.history, today, &books.rules()),
            judge::standing(&shuffled, today, &books.rules())
        );
    }

    #[test]
    fn what_comes_later_changes_nothing(thrown in any_record(false)) {
        let record = thrown.build();
        for visit in &record.visits {
            let then = record.cut_after(*visit);
            prop_assert_eq!(threads(&record.history, *visit), threads(&then, *visit));
        }
    }

    #[test]
    fn cured_needs_a_curing_remedy_and_a_sound_part(thrown in any_record(false)) {
        let record = thrown.build();
        for visit in &record.visits {
            for thread in threads(&record.history, *visit) {
                if thread.became == Became::Cured {
                    prop_assert!(had_a_cure(&record, record.part(thread.part)));
                    prop_assert_eq!(thread.rung_now, Some(Rung::Sound));
                    prop_assert!(was_seen(mark(&record, &thread)));
                    prop_assert!(thread.earlier.is_some());
                }
            }
        }
    }

    #[test]
    fn nothing_that_nobody_saw_is_called_sound(thrown in any_record(false)) {
        let record = thrown.build();
        for visit in &record.visits {
            for thread in threads(&record.history, *visit) {
                if !was_seen(mark(&record, &thread)) {
                    let well = [Became::Quiet, Became::Cured, Became::Better];
                    prop_assert!(!well.contains(&thread.became), "{:?}", thread);
                }
            }
        }
    }

    #[test]
    fn an_open_finding_stays_open_until_it_is_answered(thrown in any_record(false)) {
        let record = thrown.build();
        for pair in record.visits.windows(2) {
            let after = threads(&record.history, pair[1]);
            for before in threads(&record.history, pair[0]) {
                if !judge::must_answer(&before) {
                    continue;
                }
                let now = after.iter().find(|thread| thread.part == before.part).unwrap();
                let answers = [Became::Gone, Became::Replaced, Became::Cured, Became::Better];
                prop_assert!(
                    judge::must_answer(now) || answers.contains(&now.became),
                    "{:?} then {:?}", before, now
                );
            }
        }
    }

    #[test]
    fn a_finding_of_a_new_part_must_be_answered_too(thrown in any_record(false)) {
        let record = thrown.build();
        for pair in record.visits.windows(2) {
            let after = threads(&record.history, pair[1]);
            for before in threads(&record.history, pair[0]) {
                let bad = before.rung_now > Some(Rung::Sound);
                if !(bad && matches!(before.became, Became::New | Became::Replaced | Became::Better)) {
                    continue;
                }
                let now = after.iter().find(|thread| thread.part == before.part).unwrap();
                let answers = [Became::Gone, Became::Replaced, Became::Cured, Became::Better];
                prop_assert!(
                    judge::must_answer(now) || answers.contains(&now.became),
                    "{:?} then {:?}", before, now
                );
            }
        }
    }

    #[test]
    fn the_outcome_is_that_of_the_second_telling(thrown in any_record(true)) {
        let record = thrown.build();
        for visit in &record.visits {
            let threads = threads(&record.history, *visit);
            for part in &record.parts {
                let told = threads.iter().find(|thread| thread.part == *part);
                let again = oracle::became(&record.history, record.part(*part), *visit);
                let gone = told.is_none() && again == Some(Became::Gone);
                prop_assert!(gone || told.map(|thread| thread.became) == again, "{:?} {:?}", told, again);
            }
        }
    }

    #[test]
    fn a_patched_thread_names_its_cause_and_counts_in_order(thrown in any_record(false)) {
        let record = thrown.build();
        for visit in &record.visits {
            for thread in threads(&record.history, *visit) {
                prop_assert!(thread.patches.is_sorted_by_key(|patch| patch.when));
                if thread.became == Became::Patched {
                    prop_assert!(thread.cause.is_some());
                    prop_assert!(thread.by.is_some() || thread.patches.is_empty());
                }
                prop_assert!(thread.patches.is_empty() || thread.cause.is_some());
            }
        }
    }
}
