//! Sheets of deck: an allowance, because the deck is judged when it is bare.

use super::Counted;
use super::site::Site;
use trade::catalogue::{Catalogue, Effect, RemedyKey};
use trade::history::History;
use trade::ids::{PartId, StructureId};
use trade::mark::{DefectSeen, Extent, Mark};
use trade::property::Part;
use trade::takeoff::{Item, Spread};
use trade::verdict::{Question, Source};
use trade::words::Said;

/// The remedy whose defects are wet or soft wood.
const CUT_OUT: &str = "cut-out-deck";

/// The sheets he allows for.
pub(super) fn sheets(site: &Site<'_>) -> Counted {
    let Some(sheets) = site.basis.choices.deck_sheets else {
        return Counted::default();
    };
    if sheets.is_nothing() {
        return Counted::default();
    }
    let sheets = sheets.map(f64::ceil);
    Counted {
        needs: vec![site.need(
            Item::DeckSheet,
            sheets,
            Said::new("need-deck-sheets"),
            Source::Evidence,
        )],
        ..Counted::default()
    }
}

/// Sheets of deck by what was found wet or soft: a sheet a place, from one place to two or three; `None` where nothing was, or where it
/// reaches further than places can be counted, so that he must set the allowance himself. Common practice, no source.
pub fn deck_sheets(
    history: &History,
    structure: StructureId,
    catalogue: &Catalogue,
) -> Option<Spread> {
    let found: Vec<Extent> = history
        .parts_of(structure)
        .filter_map(|part| {
            let seen = &last_real(history, part.id)?.defects;
            let reaches = seen.iter().filter_map(|seen| wet(part, seen, catalogue));
            reaches.max()
        })
        .collect();
    if found.is_empty() || found.contains(&Extent::Broad) {
        return None;
    }
    Some(found.into_iter().map(sheets_in).sum())
}

/// How far a defect of wet or soft wood reaches; `None` for any other.
fn wet(part: &Part, seen: &DefectSeen, catalogue: &Catalogue) -> Option<Extent> {
    let defect = catalogue.defect(&seen.defect)?;
    if defect.signs.contains(&Question::DeckWetBroad) {
        return Some(Extent::Broad);
    }
    let cut_out = defect.effect_on(&part.kind, &RemedyKey::from(CUT_OUT));
    (cut_out == Some(&Effect::Cures)).then_some(seen.extent)
}

fn last_real(history: &History, part: PartId) -> Option<&Mark> {
    history
        .marks
        .iter()
        .rev()
        .find(|mark| mark.part == part && mark.is_real())
}

fn sheets_in(extent: Extent) -> Spread {
    match extent {
        Extent::Spot => Spread {
            least: 1.0,
            likely: 1.0,
            most: 2.0,
        },
        Extent::Several | Extent::Broad => Spread {
            least: 2.0,
            likely: 3.0,
            most: 4.0,
        },
    }
}
