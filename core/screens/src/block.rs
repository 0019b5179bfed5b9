//! What screens are built of: buttons, fields, rows. Every word is ready to draw.

use crate::action::Action;
use crate::form::FormOf;
use acts::walk::Spot;
use serde::{Deserialize, Serialize};
use trade::ids::{OutcomeId, PhotoId, PropertyId, VisitId};
use trade::ladder::Ladder;

/// Something to tap.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Button {
    /// What it says.
    pub label: String,
    /// A second, smaller line.
    pub note: Option<String>,
    /// A ladder on it.
    pub ladder: Option<Ladder>,
    /// What the tap does.
    pub action: Action,
    /// Whether it shows what is chosen.
    pub chosen: bool,
}

impl Button {
    /// A plain button.
    pub fn new(label: impl Into<String>, action: Action) -> Self {
        Self {
            label: label.into(),
            note: None,
            ladder: None,
            action,
            chosen: false,
        }
    }

    /// The same, shown as chosen or not.
    #[must_use]
    pub fn chosen(mut self, chosen: bool) -> Self {
        self.chosen = chosen;
        self
    }

    /// The same with a second line.
    #[must_use]
    pub fn note(mut self, note: Option<String>) -> Self {
        self.note = note;
        self
    }

    /// The same with a ladder.
    #[must_use]
    pub fn ladder(mut self, ladder: Ladder) -> Self {
        self.ladder = Some(ladder);
        self
    }
}

/// A line of a list; with a place to go to, it can be tapped.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Row {
    /// What it is.
    pub title: String,
    /// What is said of it.
    pub says: String,
    /// A ladder beside it.
    pub ladder: Option<Ladder>,
    /// What a tap does.
    pub action: Option<Action>,
}

/// What a field takes.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case", tag = "kind")]
pub enum FieldKind {
    /// One line.
    Line,
    /// Several lines; dictation fills it too.
    Words,
    /// A telephone number.
    Phone,
    /// A day.
    Day,
    /// One line that the phone can fill with degrees north and east.
    Position {
        /// What the button says that fills it.
        here: String,
        /// What to say where the phone does not know where it is.
        failed: String,
    },
    /// Inclinations in degrees, one beside the other; a phone laid on the slope adds to them.
    Inclination,
    /// One of several.
    OneOf {
        /// The choices.
        choices: Vec<Choice>,
    },
}

/// One choice of a field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Choice {
    /// The value it stands for.
    pub value: String,
    /// What it says.
    pub label: String,
}

/// A field to fill in.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Field {
    /// Its name in the form.
    pub name: String,
    /// What it asks.
    pub label: String,
    /// What stands in it: half-typed words where there are any.
    pub value: String,
    /// What it takes.
    pub kind: FieldKind,
}

/// Fields with a button.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Form {
    /// What it is for.
    pub form: FormOf,
    /// Its heading.
    pub title: String,
    /// The fields.
    pub fields: Vec<Field>,
    /// What the button says.
    pub submit: String,
}

/// The shutter: always there on the roof.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Shutter {
    /// What it says.
    pub label: String,
    /// What sends the picture off where it does not go by itself.
    pub keep: String,
    /// What the picture lands on.
    pub onto: Onto,
}

/// What a picture lands on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "onto")]
pub enum Onto {
    /// A part, on a visit that is open.
    Part {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
    },
    /// The tray.
    Tray {
        /// The visit.
        visit: VisitId,
    },
    /// The finished work.
    Outcome {
        /// The property.
        property: PropertyId,
        /// What came of the letter.
        outcome: OutcomeId,
    },
}

/// A picture to show.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Picture {
    /// Which.
    pub photo: PhotoId,
    /// What it shows, for those who do not see it.
    pub alt: String,
}
