//! What screens are built of: buttons, fields, rows. What a tap or a form means stays inside: a phone only hands it back.

use crate::cross::{Cross, mirror};
use std::sync::Arc;

/// What a tap does. It came on a button or a row and is handed back as it came.
#[derive(Debug, uniffi::Object)]
pub struct Tap(pub(crate) screens::Action);

impl Cross<Arc<Tap>> for screens::Action {
    fn cross(self) -> Arc<Tap> {
        Arc::new(Tap(self))
    }
}

/// What a form is for. It came with the form and is handed back with what was typed.
#[derive(Debug, uniffi::Object)]
pub struct FormOf(pub(crate) screens::FormOf);

impl Cross<Arc<FormOf>> for screens::FormOf {
    fn cross(self) -> Arc<FormOf> {
        Arc::new(FormOf(self))
    }
}

/// What a picture lands on. It came with the shutter and is handed back with the picture.
#[derive(Debug, uniffi::Object)]
pub struct Onto(pub(crate) screens::Onto);

impl Cross<Arc<Onto>> for screens::Onto {
    fn cross(self) -> Arc<Onto> {
        Arc::new(Onto(self))
    }
}

/// The picture of a condition: a small ladder.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Enum)]
pub enum Ladder {
    /// Three whole rungs.
    Sound,
    /// One sagging.
    Ageing,
    /// One snapped.
    Failing,
    /// Two snapped, one gone.
    Failed,
    /// Dotted rails without rungs.
    NotSeen,
    /// Rails alone.
    Gone,
}

impl Cross<Ladder> for trade::ladder::Ladder {
    fn cross(self) -> Ladder {
        match self {
            Self::Sound => Ladder::Sound,
            Self::Ageing => Ladder::Ageing,
            Self::Failing => Ladder::Failing,
            Self::Failed => Ladder::Failed,
            Self::NotSeen => Ladder::NotSeen,
            Self::Gone => Ladder::Gone,
        }
    }
}

/// Something to tap.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Button {
    /// What it says.
    pub label: String,
    /// A second, smaller line.
    pub note: Option<String>,
    /// A ladder on it.
    pub ladder: Option<Ladder>,
    /// What the tap does.
    pub tap: Arc<Tap>,
    /// Whether it shows what is chosen.
    pub chosen: bool,
    /// Whether the tap takes a while: then it is begun with `Book.begin`, and carried out with `Book.act` otherwise.
    pub long: bool,
}

impl Cross<Button> for screens::Button {
    fn cross(self) -> Button {
        let Self {
            label,
            note,
            ladder,
            action,
            chosen,
        } = self;
        Button {
            label,
            note,
            ladder: ladder.cross(),
            long: matches!(action, screens::Action::WriteLetter { .. }),
            tap: action.cross(),
            chosen,
        }
    }
}

/// A line of a list.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Row {
    /// What it is.
    pub title: String,
    /// What is said of it.
    pub says: String,
    /// A ladder beside it.
    pub ladder: Option<Ladder>,
    /// What a tap on it does.
    pub tap: Option<Arc<Tap>>,
}

impl Cross<Row> for screens::Row {
    fn cross(self) -> Row {
        let Self {
            title,
            says,
            ladder,
            action,
        } = self;
        Row {
            title,
            says,
            ladder: ladder.cross(),
            tap: action.cross(),
        }
    }
}

/// What a field takes.
#[derive(Clone, Debug, uniffi::Enum)]
pub enum FieldKind {
    /// One line.
    Line,
    /// Several lines; dictation fills it too.
    Words,
    /// A telephone number.
    Phone,
    /// A day: year, month, day, as 2026-09-14.
    Day,
    /// Inclinations in degrees, one beside the other; a phone laid on the slope adds to them.
    Inclination,
    /// One line that the phone can fill with where it stands.
    Position {
        /// What the button says that fills it.
        here: String,
        /// What to say where the phone does not know where it is.
        failed: String,
    },
    /// One of several.
    OneOf {
        /// The choices.
        choices: Vec<Choice>,
    },
}

impl Cross<FieldKind> for screens::FieldKind {
    fn cross(self) -> FieldKind {
        match self {
            Self::Line => FieldKind::Line,
            Self::Words => FieldKind::Words,
            Self::Phone => FieldKind::Phone,
            Self::Day => FieldKind::Day,
            Self::Inclination => FieldKind::Inclination,
            Self::Position { here, failed } => FieldKind::Position { here, failed },
            Self::OneOf { choices } => FieldKind::OneOf {
                choices: choices.cross(),
            },
        }
    }
}

mirror! {
    /// One choice of a field.
    Choice of screens::Choice {
        /// The value it stands for.
        value: String,
        /// What it says.
        label: String,
    }

    /// A field to fill in.
    Field of screens::Field {
        /// Its name in the form.
        name: String,
        /// What it asks.
        label: String,
        /// What stands in it: half-typed words where there are any.
        value: String,
        /// What it takes.
        kind: FieldKind,
    }

    /// Fields with a button.
    Form of screens::Form {
        /// What it is for.
        form: Arc<FormOf>,
        /// Its heading.
        title: String,
        /// The fields.
        fields: Vec<Field>,
        /// What the button says.
        submit: String,
    }

    /// The shutter: always there on the roof.
    Shutter of screens::Shutter {
        /// What it says.
        label: String,
        /// What sends the picture off where it does not go by itself.
        keep: String,
        /// What the picture lands on.
        onto: Arc<Onto>,
    }

    /// A picture to show.
    Picture of screens::Picture {
        /// Which: for `Book.thumbnail` and `Book.original`.
        photo: String,
        /// What it shows, for those who do not see it.
        alt: String,
    }

    /// Where a tap leads, and what to say of it.
    Next of screens::Next {
        /// The address of the place to show.
        place: String,
        /// What to say: a save is felt and heard, so it has words.
        notice: Option<String>,
    }
}

/// A reason and where it comes from.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Reason {
    /// The reason.
    pub says: String,
    /// The document, the house's policy, or common practice.
    pub source: String,
}

impl Cross<Reason> for (String, String) {
    fn cross(self) -> Reason {
        let (says, source) = self;
        Reason { says, source }
    }
}

/// What stands in a field when its form is sent.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Filled {
    /// The field's name.
    pub name: String,
    /// What stands in it.
    pub value: String,
}

/// A picture that was taken in.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Shot {
    /// Which.
    pub photo: String,
    /// What to say of it.
    pub notice: String,
}
