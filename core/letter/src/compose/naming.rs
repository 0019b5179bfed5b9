//! How the letter names structures, slopes and parts, and how it shows a condition.

use super::writer::Writer;
use crate::content::{PartName, Rated};
use crate::plain::Plain;
use trade::ids::{PartId, StructureId};
use trade::ladder::Ladder;
use trade::mark::{Condition, Rung};
use trade::property::{Part, Slope, Structure};
use trade::words::Said;

impl Writer<'_> {
    /// Whether the letter tells of more than one structure, so that each must be named.
    pub fn has_many_structures(&self) -> bool {
        self.structures.len() > 1
    }

    /// A structure's name: its own, or that of its kind.
    pub fn structure(&self, id: StructureId) -> Said {
        match self.material.history.structure(id) {
            Some(structure) => {
                own_name(structure).unwrap_or_else(|| Said::new(structure.kind.key()))
            }
            None => Said::new("letter-structure-unknown"),
        }
    }

    /// A slope's name: "Slope B, rear, 6:12".
    pub fn slope_heading(&self, slope: &Slope) -> Plain {
        let named = Said::new("letter-slope")
            .with("letter", slope.letter.to_string())
            .with("side", self.small(&Said::new(slope.side.key())));
        match slope.pitch {
            Some(pitch) => self.say(
                &Said::new("letter-slope-pitch")
                    .with("slope", named)
                    .with("pitch", pitch.value),
            ),
            None => self.say(&named),
        }
    }

    /// A part's address: "B 3"; its number alone where it belongs to no one slope.
    pub fn address(&self, part: &Part) -> Plain {
        match self.letter(part) {
            Some(letter) => Plain::new(&format!("{letter} {}", part.number)),
            None => Plain::new(&part.number.to_string()),
        }
    }

    /// What a part is and which one.
    fn kind(part: &Part) -> Said {
        let kind = Said::new(part.kind.message());
        match part
            .which
            .as_deref()
            .map(Plain::new)
            .filter(|which| !which.is_empty())
        {
            Some(which) => Said::new("letter-part-which")
                .with("kind", kind)
                .with("which", which.to_string()),
            None => kind,
        }
    }

    /// A part as it heads a block.
    pub fn name(&self, part: &Part) -> PartName {
        PartName {
            address: self.address(part),
            name: self.say(&Self::kind(part)),
        }
    }

    /// A part as a sentence names it: "chimney flashing (B 3)", with its structure where there are several.
    pub fn named(&self, part: &Part) -> Said {
        let address = self.address(part).to_string();
        let kind = self.small(&Self::kind(part));
        if self.has_many_structures() {
            Said::new("letter-part-in-structure")
                .with("kind", kind)
                .with("address", address)
                .with("structure", self.small_structure(part.structure))
        } else {
            Said::new("letter-part")
                .with("kind", kind)
                .with("address", address)
        }
    }

    /// A structure in the middle of a sentence; a name of its own stays as it is.
    pub fn small_structure(&self, id: StructureId) -> Said {
        let own = self.material.history.structure(id).and_then(own_name);
        own.unwrap_or_else(|| self.small(&self.structure(id)))
    }

    /// The same by its identifier.
    pub fn named_by_id(&self, id: PartId) -> Option<Said> {
        self.material.history.part(id).map(|part| self.named(part))
    }

    /// Something small, with its structure behind it where there are several.
    pub fn on_structure(&self, id: StructureId, what: Said) -> Said {
        if self.has_many_structures() {
            Said::new("letter-on-structure")
                .with("what", what)
                .with("structure", self.small_structure(id))
        } else {
            what
        }
    }

    /// A line that is led by its structure's name where there are several.
    pub fn about_structure(&self, id: StructureId, says: Said) -> Said {
        if self.has_many_structures() {
            Said::new("letter-of-structure")
                .with("structure", self.structure(id))
                .with("says", says)
        } else {
            says
        }
    }

    /// A ladder and its word for a condition.
    pub fn rated(&self, condition: Condition) -> Rated {
        let word = match condition {
            Condition::Seen { rung, .. } => rung.key(),
            Condition::NotSeen { .. } => "condition-not-seen",
            Condition::Gone => "condition-gone",
        };
        Rated {
            ladder: condition.into(),
            word: self.small_text(word),
        }
    }

    /// A ladder and its word for a rung; dotted where there is none.
    pub fn rated_rung(&self, rung: Option<Rung>) -> Rated {
        match rung {
            Some(rung) => Rated {
                ladder: rung.into(),
                word: self.small_text(rung.key()),
            },
            None => Rated {
                ladder: Ladder::NotSeen,
                word: self.small_text("condition-not-seen"),
            },
        }
    }

    /// The letter of the slope a part is on.
    pub fn letter(&self, part: &Part) -> Option<char> {
        let slope = self.material.history.slope(part.slope?);
        slope.map(|slope| slope.letter)
    }
}

fn own_name(structure: &Structure) -> Option<Said> {
    let name = Plain::new(structure.name.as_deref()?);
    (!name.is_empty()).then(|| Said::verbatim(name.to_string()))
}
