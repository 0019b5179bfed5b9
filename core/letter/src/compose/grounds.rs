//! Why we advise what we advise, what we don't sell, the look that could change it, cautions and limits.

use super::writer::Writer;
use super::{first_page, led, line};
use crate::content::{Block, Line, ReasonLine, Refused};
use trade::answer::Answer;
use trade::verdict::{self, Course, Narrowed, NextLook, Reason, Verdict};
use trade::words::Said;

/// What must be said for safety, over all structures, each said once.
pub fn cautions(writer: &Writer) -> Vec<Block> {
    let verdicts = writer.material.verdicts.iter();
    let mut cautions: Vec<&Reason> = verdicts.flat_map(|verdict| &verdict.cautions).collect();
    // What stops work comes first, whichever structure it is on.
    cautions.sort_by_key(|caution| caution.strength);
    reasons_block(writer.reasons(cautions))
}

/// The chain of reasons of each step, under the step.
pub fn why(writer: &Writer) -> Vec<Block> {
    let mut blocks = Vec::new();
    for verdict in writer.material.verdicts {
        for step in &verdict.steps {
            let when = first_page::when_and_where(
                writer,
                Some(verdict.structure),
                Said::new(step.when.key()),
            );
            let heading = Said::new("letter-why-step")
                .with("when", when)
                .with("course", writer.small(&Said::new(step.course.key())));
            let reasons = reasons_block(writer.reasons(&step.reasons));
            let work = first_page::work_explained(writer, &step.tasks);
            if reasons.is_empty() && work.is_empty() {
                continue;
            }
            blocks.push(Block::Heading {
                says: writer.say(&heading),
            });
            if !work.is_empty() {
                blocks.push(Block::List { lines: work });
            }
            blocks.extend(reasons);
        }
    }
    blocks
}

/// What is not sold: first what a rule forbids, then what judgement refuses.
pub fn refused(writer: &Writer) -> Vec<Block> {
    let each = |forbidden: bool| {
        writer.material.verdicts.iter().flat_map(move |verdict| {
            let refused = verdict
                .refused
                .iter()
                .filter(move |refused| refused.forbidden == forbidden)
                .filter(move |refused| is_not_sold(writer, verdict, refused));
            refused.map(move |refused| Block::Refused(refused_told(writer, verdict, refused)))
        })
    };
    each(true).chain(each(false)).collect()
}

fn refused_told(writer: &Writer, verdict: &Verdict, refused: &verdict::Refused) -> Refused {
    let course = writer.about_structure(verdict.structure, course_refused(refused));
    let how = if refused.forbidden {
        "letter-forbidden"
    } else {
        "letter-refused-by-judgement"
    };
    Refused {
        course: writer.say(&course),
        how: writer.text(how),
        reasons: writer.reasons(&refused.reasons),
    }
}

/// Whether a refused course is not offered all the same: if it is, it stands with its reasons among the offers.
pub fn is_not_sold(writer: &Writer, verdict: &Verdict, refused: &verdict::Refused) -> bool {
    !writer.is_offered_all_the_same(verdict.structure, refused.course, refused.narrowed)
}

/// What of a course is refused, by name.
pub fn course_refused(refused: &verdict::Refused) -> Said {
    course_narrowed(refused.course, refused.narrowed)
}

/// A course by name, narrowed to what of it is meant.
pub fn course_narrowed(course: Course, narrowed: Narrowed) -> Said {
    Said::new(narrowed.key().unwrap_or_else(|| course.key()))
}

/// The look that could change each verdict.
pub fn next_look(writer: &Writer) -> Vec<Block> {
    let looks = writer
        .material
        .verdicts
        .iter()
        .filter_map(|verdict| Some((verdict, verdict.next_look.as_ref()?)));
    looks
        .flat_map(|(verdict, next)| {
            let lines = next
                .looks
                .iter()
                .map(|look| look_line(writer, look))
                .collect();
            [
                Block::Words {
                    says: writer.say(&turns_to(writer, verdict, next)),
                },
                Block::List { lines },
            ]
        })
        .collect()
}

fn turns_to(writer: &Writer, verdict: &Verdict, next: &NextLook) -> Said {
    let count = i64::try_from(next.looks.len()).unwrap_or(i64::MAX);
    let says = Said::new("letter-turns-to")
        .with("count", count)
        .with("course", writer.small(&Said::new(next.turns_to.key())));
    writer.about_structure(verdict.structure, says)
}

fn look_line(writer: &Writer, look: &verdict::LookAt) -> Line {
    let place = match &look.stop {
        Some(stop) => writer.text(&stop.message()),
        None => writer.text("letter-look-asked"),
    };
    let key = look.question.key();
    let state = match look.answer {
        Answer::Yes => Said::new(format!("{key}.yes")),
        Answer::No => Said::new(format!("{key}.no")),
        Answer::Unknown => return led(place, writer.text(key)),
    };
    let says = Said::new("letter-look-if")
        .with("ask", Said::new(format!("{key}.ask")))
        .with("state", state);
    led(
        writer.say(&Said::new("letter-reason").with("why", place.to_string())),
        writer.say(&says),
    )
}

/// How far the letter reaches: the limits of each verdict and the questions that nobody has answered.
pub fn limits(writer: &Writer) -> Vec<Block> {
    let verdicts = writer.material.verdicts;
    let mut blocks =
        reasons_block(writer.reasons(verdicts.iter().flat_map(|verdict| &verdict.limits)));
    let mut open: Vec<Line> = Vec::new();
    for verdict in verdicts {
        for question in &verdict.unknown {
            let says = line(
                writer.say(&writer.about_structure(verdict.structure, Said::new(question.key()))),
            );
            if !open.contains(&says) {
                open.push(says);
            }
        }
    }
    if !open.is_empty() {
        blocks.push(Block::Words {
            says: writer.text("letter-open-questions"),
        });
        blocks.push(Block::List { lines: open });
    }
    blocks.push(Block::Words {
        says: writer.text("letter-limits-always"),
    });
    if !writer.material.profile.place.trim().is_empty() {
        let profile = writer.material.profile;
        let says = Said::new("letter-code-adopted")
            .with("place", profile.place.clone())
            .with("edition", profile.edition.year().to_string());
        blocks.push(Block::Words {
            says: writer.say(&says),
        });
    }
    blocks
}

fn reasons_block(reasons: Vec<ReasonLine>) -> Vec<Block> {
    if reasons.is_empty() {
        Vec::new()
    } else {
        vec![Block::Reasons { reasons }]
    }
}
