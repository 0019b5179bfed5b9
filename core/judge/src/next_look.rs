//! The look that would change a verdict: the smallest set of unseen facts whose answer can turn the main course.
//!
//! The main course asks only what it turns on. A set of answers that turns it must therefore hold one of the unanswered
//! questions that it asked (or one from which such an answer follows): otherwise it would ask the same and end the same.
//! The search goes by those alone, one look more at a time.

use crate::course::{Situation, course_and_owed};
use crate::facts::{Answers, IMPLIED};
use std::collections::{BTreeMap, BTreeSet};
use trade::answer::Answer;
use trade::catalogue::{Catalogue, StopKey};
use trade::verdict::{Course, LookAt, NextLook, Question};

/// Where on the walk a question is settled.
#[derive(Clone, Copy, Debug)]
pub struct Walk<'a> {
    /// The stops, and the kinds of part that settle each question.
    pub catalogue: &'a Catalogue,
    /// Where on this structure, where that is known better.
    pub settled_at: &'a BTreeMap<Question, StopKey>,
}

impl Walk<'_> {
    /// The stop at which a question is settled; `None` where it is asked of a maker, an engineer or the owner.
    pub fn stop(&self, question: Question) -> Option<&StopKey> {
        self.settled_at
            .get(&question)
            .or_else(|| self.catalogue.stop_for(question))
    }

    /// Its place in the order of the walk; after all stops where there is none.
    fn place(&self, question: Question) -> usize {
        let stops = self.catalogue.stops();
        self.stop(question)
            .and_then(|key| stops.iter().position(|stop| &stop.key == key))
            .unwrap_or(stops.len())
    }
}

/// One supposed answer.
pub type Supposed = (Question, Answer);

/// What a set of looks costs; the least is taken. In order: how many facts; whether it only ends in looking further; how
/// many stops; the stops in the order of the walk, what is asked elsewhere last; the questions and answers in their order.
pub type Cost = (usize, bool, usize, Vec<usize>, Vec<Supposed>);

/// The cheapest set of unseen facts that can turn the main course; `None` where no answer can.
pub fn next_look(situation: &Situation, answers: &Answers, walk: &Walk<'_>) -> Option<NextLook> {
    let (now, owed) = course_and_owed(situation, answers);
    let mut level = vec![Supposing {
        answers: *answers,
        looks: Looks::default(),
        owed,
    }];
    while !level.is_empty() {
        let (turned, open) = one_look_more(situation, &level, now);
        let cheapest = turned
            .into_iter()
            .map(|(looks, turns_to)| (looks.supposed(), turns_to))
            .min_by_key(|(supposed, turns_to)| cost(supposed, *turns_to, walk));
        if let Some((supposed, turns_to)) = cheapest {
            return Some(NextLook {
                looks: looks_at(&supposed, walk),
                turns_to,
            });
        }
        level = open;
    }
    None
}

/// What a set of looks costs.
pub fn cost(supposed: &BTreeSet<Supposed>, turns_to: Course, walk: &Walk<'_>) -> Cost {
    let mut stops: Vec<usize> = supposed
        .iter()
        .map(|(question, _)| walk.place(*question))
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

fn looks_at(supposed: &BTreeSet<Supposed>, walk: &Walk<'_>) -> Vec<LookAt> {
    let mut looks: Vec<LookAt> = supposed
        .iter()
        .map(|(question, answer)| LookAt {
            question: *question,
            stop: walk.stop(*question).cloned(),
            answer: *answer,
        })
        .collect();
    looks.sort_by_key(|look| (walk.place(look.question), look.question));
    looks
}

/// Some answers supposed, and what the main course still asks under them.
struct Supposing {
    answers: Answers,
    looks: Looks,
    owed: Vec<Question>,
}

/// Supposed answers as one bit a question.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Looks {
    yes: u32,
    no: u32,
}

impl Looks {
    fn and(mut self, question: Question, answer: Answer) -> Self {
        let bit = 1 << question as u32;
        if answer.is_yes() {
            self.yes |= bit;
        } else {
            self.no |= bit;
        }
        self
    }

    fn supposed(self) -> BTreeSet<Supposed> {
        let of = move |bits: u32, answer: Answer| {
            Question::ALL
                .into_iter()
                .filter(move |question| bits & 1 << *question as u32 != 0)
                .map(move |question| (question, answer))
        };
        of(self.yes, Answer::Yes)
            .chain(of(self.no, Answer::No))
            .collect()
    }
}

/// Every way to suppose one answer more: those that turn the course, and those that leave it.
fn one_look_more(
    situation: &Situation,
    level: &[Supposing],
    now: Course,
) -> (Vec<(Looks, Course)>, Vec<Supposing>) {
    let mut tried = BTreeSet::new();
    let (mut turned, mut open) = (Vec::new(), Vec::new());
    for supposing in level {
        for question in with_relatives(&supposing.owed, &supposing.answers) {
            for answer in [Answer::Yes, Answer::No] {
                let looks = supposing.looks.and(question, answer);
                let Some(answers) = supposing.answers.with(question, answer) else {
                    continue;
                };
                if !tried.insert(looks) {
                    continue;
                }
                let (course, owed) = course_and_owed(situation, &answers);
                if course == now {
                    open.push(Supposing {
                        answers,
                        looks,
                        owed,
                    });
                } else {
                    turned.push((looks, course));
                }
            }
        }
    }
    (turned, open)
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
