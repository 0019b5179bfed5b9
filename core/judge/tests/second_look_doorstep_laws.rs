//! The laws of the doorstep, over ten thousand records thrown together by chance for each.

mod roof;

use jiff::civil::Date;
use proptest::prelude::*;
use roof::Books;
use roof::chance::{Chance, any_papers, any_record};
use roof::papers::said;
use std::collections::BTreeSet;
use trade::doorstep::Doorstep;
use trade::history::History;
use trade::visit::Request;
use trade::words::Said;

const RECORDS: u32 = 10_000;

fn doorstep(history: &History, request: &Request, today: Date) -> Doorstep {
    judge::doorstep(history, Some(request), today, &Books::new().rules())
}

/// A day after each visit, and one long after all.
fn days(record: &Chance) -> Vec<Date> {
    let visits = record
        .visits
        .iter()
        .filter_map(|id| record.history.visit(*id));
    let mut days: Vec<Date> = visits.map(|visit| visit.on).collect();
    days.push(roof::day("2026-01-01"));
    days
}

/// Everything that is to be read.
fn all_said(doorstep: &Doorstep) -> Vec<&Said> {
    let lines = doorstep.lines.iter().map(|line| &line.says);
    let again = doorstep.look_again.iter().map(|again| &again.says);
    let then = doorstep.then_and_now.iter();
    let then = then.flat_map(|then| std::iter::once(&then.said).chain(&then.why));
    lines.chain(again).chain(then).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: RECORDS, ..ProptestConfig::default() })]

    #[test]
    fn every_line_can_be_read_and_stands_in_its_order(
        thrown in any_record(false),
        papers in any_papers(),
    ) {
        let mut record = thrown.build();
        let request = record.receive(&papers);
        for today in days(&record) {
            let doorstep = doorstep(&record.history, &request, today);
            prop_assert!(doorstep.lines.is_sorted_by_key(|line| line.tells));
            for one in all_said(&doorstep) {
                let text = said(one);
                prop_assert!(!text.contains(['[', '{']) && !text.is_empty(), "{}", text);
            }
        }
    }

    #[test]
    fn the_order_of_independent_lines_does_not_matter(
        thrown in any_record(false),
        papers in any_papers(),
    ) {
        let mut record = thrown.build();
        let request = record.receive(&papers);
        let shuffled = record.shuffled();
        for today in days(&record) {
            prop_assert_eq!(
                doorstep(&record.history, &request, today),
                doorstep(&shuffled, &request, today)
            );
        }
    }

    #[test]
    fn what_comes_later_changes_nothing(thrown in any_record(false), papers in any_papers()) {
        let mut record = thrown.build();
        let request = record.receive(&papers);
        for today in days(&record) {
            let then = record.cut_after_day(today);
            prop_assert_eq!(
                doorstep(&record.history, &request, today),
                doorstep(&then, &request, today)
            );
        }
    }

    #[test]
    fn whatever_stands_open_is_to_be_looked_at_again(
        thrown in any_record(false),
        papers in any_papers(),
    ) {
        let mut record = thrown.build();
        let request = record.receive(&papers);
        for today in days(&record) {
            let doorstep = doorstep(&record.history, &request, today);
            let again: BTreeSet<_> = doorstep.look_again.iter().map(|one| one.part).collect();
            prop_assert_eq!(again.len(), doorstep.look_again.len());
            for thread in judge::standing(&record.history, today, &Books::new().rules()) {
                if judge::must_answer(&thread) {
                    prop_assert!(again.contains(&thread.part), "{:?}", thread);
                }
            }
            let rungs = doorstep.look_again.iter().map(|one| one.rung);
            prop_assert!(rungs.rev().is_sorted(), "worst first");
        }
    }

    #[test]
    fn only_what_is_asked_for_can_go_against_a_verdict(
        thrown in any_record(false),
        papers in any_papers(),
    ) {
        let mut record = thrown.build();
        let request = record.receive(&papers);
        for today in days(&record) {
            let doorstep = doorstep(&record.history, &request, today);
            let Some(then) = doorstep.then_and_now else {
                continue;
            };
            prop_assert!(!then.contradicts || !request.asks.is_empty());
            prop_assert!(then.on <= today);
        }
    }
}
