//! What stands through a roof and is flashed anew: read from the parts of the record and their measures.

use serde::{Deserialize, Serialize};
use trade::answer::Answer;
use trade::catalogue::KindKey;
use trade::history::History;
use trade::ids::{PartId, SlopeId, StructureId};
use trade::mark::{Condition, MeasureOf};
use trade::property::Part;
use trade::units::{Got, Length, Measured};
use trade::worksheet::Worksheet;

/// A pipe.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Pipe {
    /// The part.
    pub part: PartId,
    /// The slope it stands on.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// Across the outside.
    #[serde(default)]
    pub diameter: Option<Length>,
}

/// A chimney.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Chimney {
    /// The part.
    pub part: PartId,
    /// The slope it stands on.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// Side to side, parallel to the ridge.
    #[serde(default)]
    pub width: Option<Measured<Length>>,
    /// Front to back, level. No mark holds it: it stands on the worksheet.
    #[serde(default)]
    pub depth: Option<Length>,
    /// Whether it stands astride the ridge, so that no water comes at it from above.
    #[serde(default)]
    pub astride_ridge: Answer,
}

/// Another part. Which of them a new covering renews is the takeoff's to say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Other {
    /// The part.
    pub part: PartId,
    /// The slope it is on.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// Its kind.
    pub kind: KindKey,
}

/// What stands through one roof.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Standing {
    /// Its pipes.
    pub pipes: Vec<Pipe>,
    /// Its chimneys.
    pub chimneys: Vec<Chimney>,
    /// Vents high on it, one by one.
    pub high_vents: u32,
    /// The widest overhang that was measured at an eave.
    pub overhang: Option<Length>,
    /// All other parts: some are renewed along with the covering.
    pub others: Vec<Other>,
}

impl Standing {
    /// What the record knows of one structure, its worksheet where no mark says more; parts that are gone are left out.
    pub fn of(history: &History, structure: StructureId) -> Self {
        let mut standing = Self::default();
        let sheet = history.worksheet_of(structure);
        for part in history.parts_of(structure) {
            if is_gone(history, part) {
                continue;
            }
            let measure = |of| measured(history, part, of);
            let overhang = measure(MeasureOf::Overhang).map(|measured| measured.value);
            standing.overhang = standing.overhang.max(overhang);
            match part.kind.as_str() {
                "pipe-boot" => standing.pipes.push(Pipe {
                    part: part.id,
                    slope: part.slope,
                    diameter: measure(MeasureOf::Diameter).map(|measured| measured.value),
                }),
                "masonry-chimney" | "prefab-chimney" => standing.chimneys.push(Chimney {
                    part: part.id,
                    slope: part.slope,
                    width: measure(MeasureOf::Width).or_else(|| told_width(sheet, part.id)),
                    depth: sheet.and_then(|sheet| sheet.chimney(part.id).depth),
                    astride_ridge: measure(MeasureOf::Distance)
                        .map_or(Answer::Unknown, |distance| {
                            Answer::from(distance.value == Length::ZERO)
                        }),
                }),
                "roof-vent" => standing.high_vents += 1,
                _ => standing.others.push(Other {
                    part: part.id,
                    slope: part.slope,
                    kind: part.kind.clone(),
                }),
            }
        }
        standing
    }
}

/// A width that stands on the worksheet was taped.
fn told_width(sheet: Option<&Worksheet>, part: PartId) -> Option<Measured<Length>> {
    let got = Got::Tape;
    Some(Measured {
        value: sheet?.chimney(part).width?,
        got,
        within: got.within(),
    })
}

fn is_gone(history: &History, part: &Part) -> bool {
    history
        .marks
        .iter()
        .rev()
        .find(|mark| mark.part == part.id && mark.is_real())
        .is_some_and(|mark| mark.condition == Condition::Gone)
}

/// The last measure of one kind, on whatever visit it was taken.
pub(crate) fn measured(history: &History, part: &Part, of: MeasureOf) -> Option<Measured<Length>> {
    history
        .marks
        .iter()
        .rev()
        .filter(|mark| mark.part == part.id)
        .find_map(|mark| mark.measure(of).copied())
}
