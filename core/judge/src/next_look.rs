//! The look that would change a verdict: the smallest set of unseen facts whose answer can turn the main course.
//!
//! The main course asks only what it turns on. A set of answers that turns it must therefore hold one of the unanswered
//! questions that it asked (or one from which such an answer follows): otherwise it would ask the same and end the same.
//! The search branches on those alone, fewest looks first.

use crate::course::{Situation, course_and_owed};
use crate::facts::{Answers, IMPLIED};
use std::collections::BTreeSet;
use trade::answer::Answer;
use trade::catalogue::Catalogue;
use trade::verdict::{Course, LookAt, NextLook, Question};

/// One supposed answer.
pub type Supposed = (Question, Answer);

/// What a set of looks costs; the least is taken. In order: how many facts; whether it only ends in looking further; how
/// many stops; the stops in the order of the walk, what is asked elsewhere last; the questions and answers in their order.
pub type Cost = (usize, bool, usize, Vec<usize>, Vec<Supposed>);

/// The cheapest set of unseen facts that can turn the main course; `None` where no answer can.
pub fn next_look(
    situation: &Situation,
    answers: &Answers,
    catalogue: &Catalogue,
) -> Option<NextLook> {
    let (now, _) = course_and_owed(situation, answers);
    let unknown = Question::ALL
        .into_iter()
        .filter(|question| answers.get(*question).is_unknown())
        .count();
    (1..=unknown).find_map(|looks| {
        let mut search = Search {
            situation,
            now,
            turning: Vec::new(),
            seen: BTreeSet::new(),
        };
        search.suppose(answers, &BTreeSet::new(), looks);
        search
            .turning
            .into_iter()
            .min_by_key(|(supposed, course)| cost(supposed, *course, catalogue))
            .map(|(supposed, turns_to)| NextLook {
                looks: looks_at(&supposed, catalogue),
                turns_to,
            })
    })
}

/// What a set of looks costs.
pub fn cost(supposed: &BTreeSet<Supposed>, turns_to: Course, catalogue: &Catalogue) -> Cost {
    let mut stops: Vec<usize> = supposed
        .iter()
        .map(|(question, _)| place_on_walk(*question, catalogue))
        .collect();
    stops.sort_unstable();
    stops.dedup();
    (
        supposed.len(),
        turns_to == Course::LookFirst,
        stops.len(),
        stops,
        supposed.iter().copied().collect(),
    )
}

fn place_on_walk(question: Question, catalogue: &Catalogue) -> usize {
    let stops = catalogue.stops();
    catalogue
        .stop_for(question)
        .and_then(|key| stops.iter().position(|stop| &stop.key == key))
        .unwrap_or(stops.len())
}

fn looks_at(supposed: &BTreeSet<Supposed>, catalogue: &Catalogue) -> Vec<LookAt> {
    let mut looks: Vec<LookAt> = supposed
        .iter()
        .map(|(question, answer)| LookAt {
            question: *question,
            stop: catalogue.stop_for(*question).cloned(),
            answer: *answer,
        })
        .collect();
    looks.sort_by_key(|look| (place_on_walk(look.question, catalogue), look.question));
    looks
}

struct Search<'a> {
    situation: &'a Situation,
    now: Course,
    turning: Vec<(BTreeSet<Supposed>, Course)>,
    seen: BTreeSet<BTreeSet<Supposed>>,
}

impl Search<'_> {
    fn suppose(&mut self, answers: &Answers, supposed: &BTreeSet<Supposed>, looks: usize) {
        let (course, owed) = course_and_owed(self.situation, answers);
        if course != self.now {
            self.turning.push((supposed.clone(), course));
            return;
        }
        if looks == 0 {
            return;
        }
        for question in with_relatives(&owed, answers) {
            for answer in [Answer::Yes, Answer::No] {
                let Some(next) = answers.with(question, answer) else {
                    continue;
                };
                let mut more = supposed.clone();
                more.insert((question, answer));
                if self.seen.insert(more.clone()) {
                    self.suppose(&next, &more, looks - 1);
                }
            }
        }
    }
}

/// The questions asked, and the unanswered ones from whose answer theirs follows.
fn with_relatives(owed: &[Question], answers: &Answers) -> BTreeSet<Question> {
    let mut all: BTreeSet<Question> = owed.iter().copied().collect();
    for (greater, lesser) in IMPLIED {
        for (one, other) in [(greater, lesser), (lesser, greater)] {
            if owed.contains(&one) && answers.get(other).is_unknown() {
                all.insert(other);
            }
        }
    }
    all
}
