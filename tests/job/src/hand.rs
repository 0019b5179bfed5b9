//! A hand that taps only what is shown: it finds a button, a row or a form by its words.

use crate::scene;
use jiff::civil::Date;
use screens::{
    Action, Button, FieldKind, Form, Next, Place, Row, Screen, Screens, Shutter, Trouble,
};
use trade::ids::PhotoId;
use trade::words::{Language, Said, Words};

/// A hand before a screen.
pub struct Hand {
    /// What it taps on.
    pub screens: Screens,
    /// Where it is.
    pub at: Place,
    day: Date,
    seconds: i64,
}

impl Hand {
    /// A hand before the first screen, at noon of a day.
    pub fn new(screens: Screens, day: Date) -> Self {
        Self {
            screens,
            at: Place::start(),
            day,
            seconds: 0,
        }
    }

    /// The words on the screens.
    pub fn words(&self) -> &'static Words {
        Words::of(Language::English)
    }

    /// What a message says.
    pub fn text(&self, key: &str) -> String {
        self.words().text(key)
    }

    /// What something said is in words.
    pub fn say(&self, said: &Said) -> String {
        self.words().say(said)
    }

    /// The present moment.
    pub fn now(&self) -> acts::Moment {
        scene::after_noon(self.day, self.seconds)
    }

    /// The screen before it.
    pub fn look(&self) -> Screen {
        self.screens
            .show(&self.at, self.now())
            .unwrap_or_else(|trouble| panic!("{} is not shown: {trouble}", self.at))
    }

    /// Carries out an action that a screen offered, and follows it.
    pub fn act(&mut self, action: &Action) -> Next {
        self.try_act(action)
            .unwrap_or_else(|trouble| panic!("at {}: {trouble}", self.at))
    }

    /// The same, where it may be refused.
    ///
    /// # Errors
    /// What the screens say.
    pub fn try_act(&mut self, action: &Action) -> Result<Next, Trouble> {
        self.seconds += 1;
        let next = self.screens.act(action, self.now())?;
        self.at = next.place.clone();
        Ok(next)
    }

    /// Taps the button that says so.
    pub fn tap(&mut self, buttons: &[Button], label: &str) -> Next {
        let action = button(buttons, label).action.clone();
        self.act(&action)
    }

    /// Taps the row with this title.
    pub fn tap_row(&mut self, rows: &[Row], title: &str) -> Next {
        let row = rows
            .iter()
            .find(|row| row.title == title)
            .unwrap_or_else(|| panic!("no row says {title:?}; there are {:?}", titles(rows)));
        let action = row
            .action
            .clone()
            .unwrap_or_else(|| panic!("the row {title:?} leads nowhere"));
        self.act(&action)
    }

    /// Fills fields of a form by name, a choice by the words it shows, and sends it; the other fields stay as they are shown.
    pub fn send(&mut self, form: &Form, filled: &[(&str, &str)]) -> Next {
        for (name, _) in filled {
            assert!(
                form.fields.iter().any(|field| field.name == *name),
                "{:?} has no field {name}",
                form.title
            );
        }
        let values = form
            .fields
            .iter()
            .map(|field| {
                let typed = filled.iter().find(|(name, _)| *name == field.name);
                let value = match (typed, &field.kind) {
                    // A list shows its first choice where nothing is chosen.
                    (None, FieldKind::OneOf { choices })
                        if !choices.iter().any(|choice| choice.value == field.value) =>
                    {
                        choices
                            .first()
                            .map(|choice| choice.value.clone())
                            .unwrap_or_default()
                    }
                    (None, _) => field.value.clone(),
                    (Some((name, label)), FieldKind::OneOf { choices }) => choices
                        .iter()
                        .find(|choice| choice.label == *label)
                        .unwrap_or_else(|| panic!("{name} offers no {label:?}"))
                        .value
                        .clone(),
                    (Some((_, text)), _) => (*text).to_owned(),
                };
                (field.name.clone(), value)
            })
            .collect();
        let form = form.form.clone();
        self.act(&Action::Submit { form, values })
    }

    /// Takes a picture with a shutter that is shown.
    pub fn shoot(&mut self, shutter: &Shutter, bytes: &[u8]) -> PhotoId {
        self.seconds += 1;
        let now = self.now();
        self.screens
            .shoot(shutter, bytes, now)
            .unwrap_or_else(|trouble| panic!("the picture is not taken: {trouble}"))
    }
}

/// The button that says so.
pub fn button<'a>(buttons: &'a [Button], label: &str) -> &'a Button {
    let mut found = buttons.iter().filter(|button| button.label == label);
    let first = found.next().unwrap_or_else(|| {
        let labels: Vec<_> = buttons.iter().map(|button| &button.label).collect();
        panic!("no button says {label:?}; there are {labels:?}")
    });
    assert!(
        found.next().is_none(),
        "two buttons say {label:?}: nobody can tell them apart"
    );
    first
}

fn titles(rows: &[Row]) -> Vec<&String> {
    rows.iter().map(|row| &row.title).collect()
}

macro_rules! shown_as {
    ($($name:ident: $variant:ident -> $state:ty),+ $(,)?) => {$(
        impl Hand {
            #[doc = concat!("The screen, which must be ", stringify!($variant), ".")]
            pub fn $name(&self) -> $state {
                match self.look() {
                    Screen::$variant(state) => state,
                    other => panic!("{} is on the screen: {other:?}", self.at),
                }
            }
        }
    )+};
}

shown_as! {
    arrive: Arrive -> screens::Arrive,
    doorstep: Doorstep -> screens::Doorstep,
    property: Property -> Box<screens::Property>,
    safety: Safety -> screens::Safety,
    walk: Walk -> Box<screens::Walk>,
    mark: Mark -> Box<screens::Mark>,
    tray: Tray -> screens::Tray,
    then_and_now: ThenAndNow -> screens::ThenAndNow,
    verdict: Verdict -> screens::Verdict,
    roof: Roof -> Box<screens::Roof>,
    leak: Leak -> screens::Leak,
    offer: Offer -> Box<screens::Offer>,
    letter: Letter -> screens::Letter,
    outcome: Outcome -> screens::Outcome,
}
