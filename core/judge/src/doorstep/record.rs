//! What the doorstep reads: the record as it stands today, and what the caller asks.

use crate::Rules;
use crate::thread::Standing;
use crate::thread::timeline::Timeline;
use jiff::civil::Date;
use trade::catalogue::{KindKey, RemedyKey, RemedySize};
use trade::history::History;
use trade::ids::{LetterId, StructureId};
use trade::letter::Letter;
use trade::outcome::Outcome;
use trade::thread::Became;
use trade::verdict::Verdict;
use trade::visit::{Ask, Request, Visit};

/// One part as it stands, with what became of it.
pub(super) struct Known<'a> {
    /// Its story, and what was done since.
    pub standing: Standing<'a>,
    /// How it stands.
    pub became: Became,
}

/// The record of one property as it stands on a day.
pub(super) struct Record<'a> {
    /// The record.
    pub history: &'a History,
    /// The record up to the day.
    pub timeline: Timeline<'a>,
    /// What is judged by.
    pub rules: Rules<'a>,
    /// What the caller asks, if anybody asked.
    pub request: Option<&'a Request>,
    /// Every part that was ever marked, as it stands.
    pub parts: Vec<Known<'a>>,
    /// The letters, oldest first.
    pub letters: Vec<&'a Letter>,
}

impl<'a> Record<'a> {
    /// Reads a history on a day.
    pub fn read(
        history: &'a History,
        request: Option<&'a Request>,
        today: Date,
        rules: Rules<'a>,
    ) -> Self {
        let timeline = Timeline::on(history, today);
        let parts = history
            .parts
            .iter()
            .filter_map(|part| Standing::of(&timeline, part, rules))
            .map(|standing| Known {
                became: standing.became(&timeline),
                standing,
            })
            .collect();
        let mut letters: Vec<&Letter> = history
            .letters
            .iter()
            .filter(|letter| letter.on <= today)
            .collect();
        letters.sort_by_key(|letter| (letter.on, letter.made, letter.id));
        Self {
            history,
            timeline,
            rules,
            request,
            parts,
            letters,
        }
    }

    /// The day.
    pub fn today(&self) -> Date {
        self.timeline.today
    }

    /// What the caller asks for.
    pub fn asks(&self) -> &'a [Ask] {
        self.request.map_or(&[], |request| request.asks.as_slice())
    }

    /// Whether the caller asks about a kind of part.
    pub fn asks_about(&self, kind: &KindKey) -> bool {
        self.asks().iter().any(|ask| &ask.kind == kind)
    }

    /// The last visit that came to an end.
    pub fn last_visit(&self) -> Option<&'a Visit> {
        self.timeline.visits().last().copied()
    }

    /// The last verdict on a structure that a letter gave.
    pub fn last_verdict(&self, structure: StructureId) -> Option<(&'a Letter, &'a Verdict)> {
        self.letters.iter().rev().find_map(|letter| {
            let verdict = letter
                .verdicts
                .iter()
                .find(|verdict| verdict.structure == structure)?;
            Some((*letter, verdict))
        })
    }

    /// The last thing that came of a letter.
    pub fn outcome_of(&self, letter: LetterId) -> Option<&'a Outcome> {
        self.outcomes()
            .filter(|outcome| outcome.letter == Some(letter))
            .last()
    }

    /// What came of letters up to today, oldest first.
    pub fn outcomes(&self) -> impl Iterator<Item = &'a Outcome> {
        let today = self.today();
        let mut outcomes: Vec<&Outcome> = self
            .history
            .outcomes
            .iter()
            .filter(|outcome| outcome.on <= today)
            .collect();
        outcomes.sort_by_key(|outcome| (outcome.on, outcome.id));
        outcomes.into_iter()
    }

    /// How much work a remedy is.
    pub fn size(&self, remedy: &RemedyKey) -> Option<RemedySize> {
        self.rules.catalogue.remedy(remedy).map(|known| known.size)
    }

    /// Whether the property has more than one structure, so that each must be named.
    pub fn has_several_structures(&self) -> bool {
        self.history.structures.len() > 1
    }
}
