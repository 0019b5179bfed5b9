//! Dangers known from before.

use super::named;
use super::record::{Known, Record};
use trade::doorstep::{Line, Tells};
use trade::thread::Became;
use trade::verdict::{Question, StandsOn};
use trade::visit::{SafetyCheck, Visit};
use trade::words::Said;

/// What a part may show that is a danger to who climbs.
const SIGNS: [Question; 4] = [
    Question::Asbestos,
    Question::Vermiculite,
    Question::MayFall,
    Question::DeckWetBroad,
];

/// What does not pass with the weather of one day.
const LASTING: [SafetyCheck; 5] = [
    SafetyCheck::LadderStands,
    SafetyCheck::LinesClear,
    SafetyCheck::PitchSafe,
    SafetyCheck::DeckBears,
    SafetyCheck::NoSuspectFibres,
];

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    let noted = record.history.property.dangers.iter().map(|danger| Line {
        tells: Tells::Danger,
        says: Said::verbatim(danger.as_str()),
        stands_on: Vec::new(),
    });
    let met = LASTING.into_iter().filter_map(|check| met(record, check));
    let found = record.parts.iter().flat_map(|known| found(record, known));
    noted.chain(met).chain(found).collect()
}

/// A safety check that did not hold when it was last answered.
fn met(record: &Record<'_>, check: SafetyCheck) -> Option<Line> {
    let (visit, holds) = record
        .timeline
        .visits()
        .iter()
        .rev()
        .find_map(|visit| Some((*visit, last_answer(visit, check)?)))?;
    (!holds).then(|| Line {
        tells: Tells::Danger,
        says: Said::new("doorstep-danger-met")
            .with("on", visit.on)
            .with("what", Said::new(format!("{}.stop", check.key()))),
        stands_on: vec![StandsOn::Visit(visit.id)],
    })
}

fn last_answer(visit: &Visit, check: SafetyCheck) -> Option<bool> {
    visit
        .safety
        .iter()
        .rev()
        .find(|answer| answer.check == check && !answer.holds.is_unknown())
        .map(|answer| answer.holds.is_yes())
}

/// What a part showed, as long as the part stands.
fn found(record: &Record<'_>, known: &Known<'_>) -> Vec<Line> {
    let story = &known.standing.story;
    let Some(last) = story.last else {
        return Vec::new();
    };
    if matches!(known.became, Became::Gone | Became::Replaced) {
        return Vec::new();
    }
    SIGNS
        .into_iter()
        .filter(|question| shows(record, known, *question))
        .map(|question| Line {
            tells: Tells::Danger,
            says: Said::new("doorstep-danger-found")
                .with("part", named::part(record, story.part))
                .with("on", last.visit.on)
                .with("what", Said::new(format!("{}.yes", question.key()))),
            stands_on: vec![StandsOn::Mark(last.mark.id)],
        })
        .collect()
}

fn shows(record: &Record<'_>, known: &Known<'_>, question: Question) -> bool {
    let story = &known.standing.story;
    let by_defect = story
        .open
        .iter()
        .flat_map(|open| &open.finding.defects)
        .filter_map(|seen| record.rules.catalogue.defect(&seen.defect))
        .any(|defect| defect.signs.contains(&question));
    let answered = story.last.is_some_and(|look| {
        look.mark
            .answers
            .iter()
            .rev()
            .find(|answered| answered.question == question)
            .is_some_and(|answered| answered.answer.is_yes())
    });
    by_defect || answered
}
