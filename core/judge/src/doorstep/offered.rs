//! What was offered, and how it was answered.

use super::named;
use super::record::Record;
use trade::doorstep::{Line, Tells};
use trade::letter::Letter;
use trade::outcome::Outcome;
use trade::verdict::StandsOn;
use trade::words::Said;

/// How many letters are told of, the last first.
const LETTERS: usize = 3;

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    let letters = record.letters.iter().rev().take(LETTERS);
    let of_no_letter = record
        .outcomes()
        .filter(|outcome| outcome.letter.is_none())
        .map(|outcome| Line {
            tells: Tells::Offered,
            says: answer(outcome),
            stands_on: Vec::new(),
        });
    letters
        .map(|letter| line(record, letter))
        .chain(of_no_letter)
        .collect()
}

fn line(record: &Record<'_>, letter: &Letter) -> Line {
    let offer = Said::new("doorstep-offered")
        .with("on", letter.on)
        .with("said", summed_up(record, letter));
    let answer = record
        .outcome_of(letter.id)
        .map_or_else(|| Said::new("doorstep-no-answer-yet"), answer);
    Line {
        tells: Tells::Offered,
        says: Said::new("doorstep-sentences")
            .with("first", offer)
            .with("next", answer),
        stands_on: vec![StandsOn::Visit(letter.visit)],
    }
}

/// The course advised for each structure: what it comes to in detail stands in the letter.
fn summed_up(record: &Record<'_>, letter: &Letter) -> Said {
    let each = letter.verdicts.iter().filter_map(|verdict| {
        let course = named::course(verdict.main_course()?);
        Some(if record.has_several_structures() {
            Said::new("doorstep-offered-for")
                .with(
                    "structure",
                    named::structure_by_id(record, verdict.structure),
                )
                .with("course", course)
        } else {
            Said::new("doorstep-offered-course").with("course", course)
        })
    });
    named::sentences(each).unwrap_or_else(|| Said::new("doorstep-no-verdict"))
}

fn answer(outcome: &Outcome) -> Said {
    let key = if outcome.words.is_empty() {
        "doorstep-answered"
    } else {
        "doorstep-answered-saying"
    };
    Said::new(key)
        .with("came", Said::new(outcome.came.key()))
        .with("on", outcome.on)
        .with("words", outcome.words.as_str())
}
