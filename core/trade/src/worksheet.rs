//! A worksheet: what a person counted and chose for the offer of one structure, where neither the plan nor a mark says it.

use crate::answer::Answer;
use crate::catalogue::{Months, RemedyKey};
use crate::ids::{PartId, StructureId, WorksheetId};
use crate::laid::{StarterAt, ValleyIs};
use crate::takeoff::{OrderAt, Spread};
use crate::units::{Area, Length};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};

/// A whole number that lies somewhere in a range, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "[u16; 2]", into = "[u16; 2]")]
pub struct Between {
    /// The least.
    pub least: u16,
    /// The most.
    pub most: u16,
}

impl Between {
    /// As a range of numbers; it is most likely in the middle.
    pub fn spread(self) -> Spread {
        let (least, most) = (f64::from(self.least), f64::from(self.most));
        Spread {
            least,
            likely: f64::midpoint(least, most),
            most,
        }
    }
}

impl From<[u16; 2]> for Between {
    fn from([least, most]: [u16; 2]) -> Self {
        Self { least, most }
    }
}

impl From<Between> for [u16; 2] {
    fn from(between: Between) -> Self {
        [between.least, between.most]
    }
}

/// How much of a remedy a part takes, as he counted or measured it, in the unit of the remedy's row in the price list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Count {
    /// The part.
    pub part: PartId,
    /// The remedy.
    pub remedy: RemedyKey,
    /// How much.
    pub amount: Spread,
}

/// How large a chimney is on plan, where no mark holds it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ChimneySize {
    /// The chimney.
    pub part: PartId,
    /// Side to side, along the ridge.
    #[serde(default)]
    pub width: Option<Length>,
    /// Front to back, level.
    #[serde(default)]
    pub depth: Option<Length>,
}

/// How the attic is vented.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Ventilation {
    /// The vented space, on plan.
    pub area: Area,
    /// The share of the net free area that is high on the roof.
    pub high_share: f64,
    /// How far the high vents stand above those at the eave.
    #[serde(default)]
    pub above_eave_vents: Option<Length>,
    /// How far the high vents stand below the ridge.
    #[serde(default)]
    pub below_ridge: Option<Length>,
    /// Whether a vapour retarder lies on the warm side of the ceiling.
    #[serde(default)]
    pub retarder: Answer,
    /// Net free area of one high vent, in square inches, as its maker states it.
    pub high_vent: f64,
    /// Net free area of one intake vent, in square inches, as its maker states it.
    pub low_vent: f64,
    /// Net free area of high vents that stay, in square inches.
    #[serde(default)]
    pub high_stays: f64,
    /// Net free area of intake vents that stay, in square inches.
    #[serde(default)]
    pub low_stays: f64,
}

/// What was counted and chosen for one structure. Of two of one structure the later one counts, whole.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Worksheet {
    /// Identifier.
    pub id: WorksheetId,
    /// The structure.
    pub structure: StructureId,
    /// When it was last filled in.
    pub at: Timestamp,
    /// How many years a repair lasts here, by his own judgement of the roof around it.
    #[serde(default)]
    pub repair_lasts: Option<Between>,
    /// How long the patch holds that was asked for; `None` takes what the catalogue says.
    #[serde(default)]
    pub patch_holds: Option<Months>,
    /// Places, lengths and areas.
    #[serde(default)]
    pub counts: Vec<Count>,
    /// Chimneys.
    #[serde(default)]
    pub chimneys: Vec<ChimneySize>,
    /// The overhang of eaves where neither the plan nor a measure has one.
    #[serde(default)]
    pub overhang: Option<Length>,
    /// Counter flashing along walls, beside that of the chimneys.
    #[serde(default)]
    pub counter_flashing: Option<Length>,
    /// How valleys are made.
    #[serde(default)]
    pub valleys: ValleyIs,
    /// Where the starter course goes.
    #[serde(default)]
    pub starter: StarterAt,
    /// Sheets of deck allowed for; `None` takes what was found wet or soft.
    #[serde(default)]
    pub deck_sheets: Option<Between>,
    /// How the attic is vented; `None` renews the vents that stand there.
    #[serde(default)]
    pub vents: Option<Ventilation>,
    /// Nails in a strip; `None` takes the fewest that the code allows.
    #[serde(default)]
    pub nails_a_strip: Option<u8>,
    /// Tubes of sealant.
    #[serde(default)]
    pub sealant: u16,
    /// Cans of asphalt cement.
    #[serde(default)]
    pub cement: u16,
    /// By which end of the ranges it is ordered.
    #[serde(default)]
    pub order_at: OrderAt,
}

impl Worksheet {
    /// One with nothing in it yet.
    pub fn blank(id: WorksheetId, structure: StructureId, at: Timestamp) -> Self {
        Self {
            id,
            structure,
            at,
            repair_lasts: None,
            patch_holds: None,
            counts: Vec::new(),
            chimneys: Vec::new(),
            overhang: None,
            counter_flashing: None,
            valleys: ValleyIs::default(),
            starter: StarterAt::default(),
            deck_sheets: None,
            vents: None,
            nails_a_strip: None,
            sealant: 0,
            cement: 0,
            order_at: OrderAt::default(),
        }
    }

    /// How much of a remedy was counted for a part.
    pub fn count(&self, part: PartId, remedy: &RemedyKey) -> Option<Spread> {
        self.counts
            .iter()
            .find(|count| count.part == part && count.remedy == *remedy)
            .map(|count| count.amount)
    }

    /// Counts a remedy for a part anew; `None` takes the count back.
    pub fn set_count(&mut self, part: PartId, remedy: RemedyKey, amount: Option<Spread>) {
        self.counts
            .retain(|count| count.part != part || count.remedy != remedy);
        self.counts.extend(amount.map(|amount| Count {
            part,
            remedy,
            amount,
        }));
    }

    /// How large a chimney is, as far as it was told here.
    pub fn chimney(&self, part: PartId) -> ChimneySize {
        let told = self.chimneys.iter().find(|chimney| chimney.part == part);
        told.copied().unwrap_or(ChimneySize {
            part,
            width: None,
            depth: None,
        })
    }

    /// Tells the size of a chimney anew.
    pub fn set_chimney(&mut self, size: ChimneySize) {
        self.chimneys.retain(|chimney| chimney.part != size.part);
        if size.width.is_some() || size.depth.is_some() {
            self.chimneys.push(size);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uuid::Uuid;

    fn sheet() -> Worksheet {
        Worksheet::blank(
            Uuid::from_u128(1).into(),
            Uuid::from_u128(2).into(),
            Timestamp::UNIX_EPOCH,
        )
    }

    #[test]
    fn a_count_takes_the_place_of_the_one_before_and_can_be_taken_back() {
        let mut sheet = sheet();
        let (part, other) = (Uuid::from_u128(3).into(), Uuid::from_u128(4).into());
        let boot = RemedyKey::from("new-boot");
        sheet.set_count(part, boot.clone(), Some(Spread::exactly(2.0)));
        sheet.set_count(other, boot.clone(), Some(Spread::exactly(5.0)));
        sheet.set_count(part, boot.clone(), Some(Spread::exactly(3.0)));
        assert_eq!(sheet.counts.len(), 2);
        assert_eq!(sheet.count(part, &boot), Some(Spread::exactly(3.0)));
        sheet.set_count(part, boot.clone(), None);
        assert_eq!(sheet.count(part, &boot), None);
        assert_eq!(sheet.count(other, &boot), Some(Spread::exactly(5.0)));
    }

    #[test]
    fn a_chimney_with_no_size_left_is_not_kept() {
        let mut sheet = sheet();
        let part = Uuid::from_u128(3).into();
        let size = ChimneySize {
            part,
            width: Some(Length::inches(36)),
            depth: None,
        };
        sheet.set_chimney(size);
        assert_eq!(sheet.chimney(part), size);
        sheet.set_chimney(ChimneySize {
            width: None,
            ..size
        });
        assert!(sheet.chimneys.is_empty());
    }

    /// A worksheet that an earlier program kept holds less, and still reads.
    #[test]
    fn what_is_not_written_down_is_as_it_was_before() {
        let sheet = sheet();
        let json =
            serde_json::json!({ "id": sheet.id, "structure": sheet.structure, "at": sheet.at });
        assert_eq!(serde_json::from_value::<Worksheet>(json).unwrap(), sheet);
    }
}
