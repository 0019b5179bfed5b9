//! Flashings: when old ones may be kept, how thick, how wide (IRC R905.2.8, R908.5).

use super::measure::falls_short;
use super::sections::Irc;
use super::{Case, Completed, Found, Rule, reason};
use crate::faults::Fault;
use trade::catalogue::Family;
use trade::mark::MeasureOf;
use trade::units::Length;
use trade::verdict::{Reason, Source, StandsOn, Strength};

/// Thinnest metal of base and cap flashing: 0.019 in (R905.2.8.1).
pub const LEAST_THICKNESS: Length = Length::mils(19);
/// Narrowest metal lining of an open valley: 24 in (R905.2.8.2).
pub const LEAST_VALLEY: Length = Length::inches(24);
/// Sidewall flashing: at least so high and so wide (R905.2.8.3).
pub const SIDEWALL: Length = Length::inches(4);

const FLASHINGS: &[&str] = &[
    "chimney-flashing",
    "sidewall-flashing",
    "headwall-flashing",
    "skylight-flashing",
    "kickout",
];

/// Why a new covering is not sold with the old flashings; code bars spoilt ones, trade practice any.
pub fn not_reused(case: &Case<'_>) -> Reason {
    let spoilt: Vec<StandsOn> = case
        .faults
        .iter()
        .filter(|fault| is_spoilt(fault))
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    if spoilt.is_empty() {
        reason(Rule::FlashingRenewed, Source::Practice, Strength::Advises)
    } else {
        reason(
            Rule::FlashingReuse,
            case.code(Irc::FlashingReuse),
            Strength::Forbids,
        )
        .on(spoilt)
    }
}

/// Rusted, damaged or deteriorated metal, as the section has it.
fn is_spoilt(fault: &Fault<'_>) -> bool {
    FLASHINGS.contains(&fault.part.kind.as_str())
        && fault
            .defect
            .is_some_and(|defect| matches!(defect.family, Family::Split | Family::Smothered))
}

/// Flashing metal that is too thin.
pub fn too_thin(case: &Case<'_>) -> Vec<Found> {
    case.looks_at(FLASHINGS)
        .filter_map(|standing| {
            let thickness = standing.mark.measure(MeasureOf::Thickness)?;
            falls_short(thickness, LEAST_THICKNESS).is_yes().then(|| {
                Found::at(
                    standing,
                    reason(
                        Rule::FlashingThin,
                        case.code(Irc::BaseFlashing),
                        Strength::Requires,
                    ),
                )
            })
        })
        .collect()
}

/// Open valleys whose lining is too narrow.
pub fn valley_narrow(case: &Case<'_>) -> Vec<Found> {
    case.looks_at(&["open-valley"])
        .filter_map(|standing| {
            let width = standing.mark.measure(MeasureOf::Width)?;
            falls_short(width, LEAST_VALLEY).is_yes().then(|| {
                Found::at(
                    standing,
                    reason(
                        Rule::ValleyNarrow,
                        case.code(Irc::ValleyLining),
                        Strength::Requires,
                    )
                    .with("width", width.value)
                    .with("needed", LEAST_VALLEY),
                )
            })
        })
        .collect()
}
