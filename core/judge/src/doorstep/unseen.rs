//! What was never, or not again, seen.

use super::named;
use super::record::{Known, Record};
use trade::doorstep::{Line, Tells};
use trade::mark::{NotSeen, Rung};
use trade::property::Structure;
use trade::thread::Became;
use trade::verdict::StandsOn;
use trade::visit::Reach;
use trade::words::Said;

/// In what way a part is unseen.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Unseen {
    Never,
    NotAgain,
    Covered,
}

impl Unseen {
    const ALL: [Self; 3] = [Self::Never, Self::NotAgain, Self::Covered];

    fn key(self) -> &'static str {
        match self {
            Self::Never => "doorstep-never-seen",
            Self::NotAgain => "doorstep-not-seen-again",
            Self::Covered => "doorstep-covered",
        }
    }
}

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    let from_afar = record
        .history
        .structures
        .iter()
        .filter_map(|structure| only_from(record, structure));
    let parts = Unseen::ALL.into_iter().flat_map(|unseen| {
        NotSeen::ALL
            .into_iter()
            .filter_map(move |why| together(record, unseen, why))
    });
    from_afar.chain(parts).collect()
}

/// A structure that nobody came near to.
fn only_from(record: &Record<'_>, structure: &Structure) -> Option<Line> {
    if structure.gone.is_some_and(|gone| gone <= record.today()) {
        return None;
    }
    let reached: Vec<_> = record
        .timeline
        .visits()
        .iter()
        .filter_map(|visit| Some((visit.id, visit.reach(structure.id)?)))
        .collect();
    let nearest = reached.iter().map(|(_, how)| *how).min()?;
    let key = match nearest {
        Reach::OnRoof | Reach::Ladder | Reach::Pole => return None,
        Reach::Ground => "doorstep-only-from-ground",
        Reach::Inside => "doorstep-only-from-inside",
        Reach::NotReached => "doorstep-never-reached",
    };
    Some(Line {
        tells: Tells::NotSeen,
        says: Said::new(key).with("structure", named::structure(structure)),
        stands_on: reached
            .iter()
            .map(|(visit, _)| StandsOn::Visit(*visit))
            .collect(),
    })
}

/// The parts that are unseen in one way for one reason, in one line.
fn together(record: &Record<'_>, unseen: Unseen, why: NotSeen) -> Option<Line> {
    let parts: Vec<&Known<'_>> = record
        .parts
        .iter()
        .filter(|known| reading(known) == Some((unseen, why)))
        .collect();
    if parts.is_empty() {
        return None;
    }
    let names: Vec<Said> = parts
        .iter()
        .map(|known| named::part(record, known.standing.story.part))
        .collect();
    Some(Line {
        tells: Tells::NotSeen,
        says: Said::new(unseen.key())
            .with("parts", names)
            .with("why", Said::new(why.key())),
        stands_on: parts
            .iter()
            .map(|known| StandsOn::Mark(known.standing.last_mark.mark.id))
            .collect(),
    })
}

fn reading(known: &Known<'_>) -> Option<(Unseen, NotSeen)> {
    let why = known.standing.last_mark.mark.condition.not_seen();
    match known.became {
        Became::Hidden => Some((Unseen::Covered, NotSeen::Hidden)),
        Became::New => Some((Unseen::Never, why.unwrap_or(NotSeen::NotReached))),
        Became::NotSeenAgain if was_bad(known) => {
            Some((Unseen::NotAgain, why.unwrap_or(NotSeen::NotReached)))
        }
        _ => None,
    }
}

/// What was sound and was passed over this once asks for no line of its own.
fn was_bad(known: &Known<'_>) -> bool {
    let story = &known.standing.story;
    story.rung() > Some(Rung::Sound) || !story.open.is_empty()
}
