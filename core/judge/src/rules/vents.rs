//! Gas vents above the roof (IRC G2427.6, with its figure as printed in 2018).

use super::measure::{exceeds, falls_short};
use super::sections::Irc;
use super::{Case, Completed, Found, Rule, reason};
use crate::as_of::Standing;
use trade::answer::Answer;
use trade::mark::MeasureOf;
use trade::units::{Length, Measured, Pitch};
use trade::verdict::{Source, Strength};

/// The table holds for listed vents with a cap no larger than this.
pub const CAP_UP_TO: Length = Length::inches(12);
/// And no nearer than this to a vertical wall.
pub const FROM_WALL: Length = Length::feet(8);
/// Otherwise so high above the penetration and above any part of a building within 10 ft.
pub const OTHERWISE_ABOVE: Length = Length::feet(2);

/// Steepest rise over twelve, and quarters of a foot above the roof. The last row is of an older list.
const TABLE: [(u32, i64); 12] = [
    (6, 4),
    (7, 5),
    (8, 6),
    (9, 8),
    (10, 10),
    (11, 13),
    (12, 16),
    (14, 20),
    (16, 24),
    (18, 28),
    (20, 30),
    (21, 32),
];

/// Least height of a listed gas vent above the roof; `None` beyond 21:12.
pub fn gas_vent_height(pitch: Pitch) -> Option<Length> {
    TABLE
        .into_iter()
        .find(|(steepest, _)| pitch <= Pitch::rise(*steepest))
        .map(|(_, quarters)| Length::inches(quarters * 3))
}

/// The same by older codes, which took 1 ft up to 7:12.
pub fn gas_vent_height_by_older_codes(pitch: Pitch) -> Option<Length> {
    if pitch <= Pitch::rise(7) {
        Some(Length::feet(1))
    } else {
        gas_vent_height(pitch)
    }
}

/// Whether the table holds for a vent: cap 12 in or smaller, 8 ft or more from a vertical wall.
pub fn table_holds(cap: Option<&Measured<Length>>, from_wall: Option<&Measured<Length>>) -> Answer {
    let small = cap.map_or(Answer::Unknown, |cap| exceeds(cap, CAP_UP_TO).negated());
    let clear = from_wall.map_or(Answer::Unknown, |wall| {
        falls_short(wall, FROM_WALL).negated()
    });
    small.and(clear)
}

/// Gas vents whose height was measured and is short, or that the table does not settle.
pub fn too_low(case: &Case<'_>) -> Vec<Found> {
    case.looks_at(&["fuel-vent"])
        .filter_map(|standing| vent(case, standing))
        .collect()
}

fn vent(case: &Case<'_>, standing: &Standing<'_>) -> Option<Found> {
    let height = standing.mark.measure(MeasureOf::Height)?;
    let pitch = case.pitch_at(standing)?;
    let by_table = gas_vent_height(pitch);
    let holds = table_holds(
        standing.mark.measure(MeasureOf::Diameter),
        standing.mark.measure(MeasureOf::Distance),
    );
    let source = case.code(Irc::GasVentHeight);
    let found = match (holds, by_table) {
        (Answer::Yes, Some(needed)) => {
            return short(case, standing, height, pitch, needed);
        }
        // Unknown which of the two rules holds: it is short only where it is short by both.
        (Answer::Unknown, Some(needed)) => {
            let least = needed.min(OTHERWISE_ABOVE);
            return short(case, standing, height, pitch, least);
        }
        _ => {
            reason(Rule::GasVentNotInTable, source, Strength::Advises).with("height", height.value)
        }
    };
    Some(Found::at(standing, found))
}

fn short(
    case: &Case<'_>,
    standing: &Standing<'_>,
    height: &Measured<Length>,
    pitch: Pitch,
    needed: Length,
) -> Option<Found> {
    if !falls_short(height, needed).is_yes() {
        return None;
    }
    let older = gas_vent_height_by_older_codes(pitch)
        .is_some_and(|older| older < needed && falls_short(height, older).is_no());
    let found = if older {
        reason(Rule::GasVentOlderCodes, Source::Practice, Strength::Advises)
    } else {
        reason(
            Rule::GasVentLow,
            case.code(Irc::GasVentHeight),
            Strength::Requires,
        )
    };
    Some(Found::at(
        standing,
        found.with("height", height.value).with("needed", needed),
    ))
}
