//! The screens as records, one file a screen, as `screens` names them.

pub mod arrive;
pub mod doorstep;
pub mod leak;
pub mod letter;
pub mod mark;
pub mod offer;
pub mod outcome;
pub mod property;
pub mod reminders;
pub mod roof;
pub mod safety;
pub mod settings;
pub mod then_and_now;
pub mod tray;
pub mod verdict;
pub mod walk;

use crate::cross::Cross;

/// The state of one screen, ready to draw.
#[derive(Clone, Debug, uniffi::Enum)]
#[allow(
    clippy::large_enum_variant,
    reason = "one at a time, and it goes over the border at once"
)]
pub enum Screen {
    /// Find the address.
    Arrive {
        /// Its state.
        state: arrive::ArriveState,
    },
    /// Before he climbs.
    Doorstep {
        /// Its state.
        state: doorstep::DoorstepState,
    },
    /// What stands there.
    Property {
        /// Its state.
        state: property::PropertyState,
    },
    /// May he climb at all.
    Safety {
        /// Its state.
        state: safety::SafetyState,
    },
    /// The round.
    Walk {
        /// Its state.
        state: walk::WalkState,
    },
    /// One part.
    Mark {
        /// Its state.
        state: mark::MarkState,
    },
    /// What is not yet tied to a part.
    Tray {
        /// Its state.
        state: tray::TrayState,
    },
    /// What changed.
    ThenAndNow {
        /// Its state.
        state: then_and_now::ThenAndNowState,
    },
    /// What to do.
    Verdict {
        /// Its state.
        state: verdict::VerdictState,
    },
    /// The roof as it was measured.
    Roof {
        /// Its state.
        state: roof::RoofState,
    },
    /// Where water comes in.
    Leak {
        /// Its state.
        state: leak::LeakState,
    },
    /// What it costs.
    Offer {
        /// Its state.
        state: offer::OfferState,
    },
    /// What the owner gets.
    Letter {
        /// Its state.
        state: letter::LetterState,
    },
    /// What came of it.
    Outcome {
        /// Its state.
        state: outcome::OutcomeState,
    },
    /// What to come back to.
    Reminders {
        /// Its state.
        state: reminders::RemindersState,
    },
    /// The firm, the code, the policy.
    Settings {
        /// Its state.
        state: settings::SettingsState,
    },
}

impl Cross<Screen> for screens::Screen {
    fn cross(self) -> Screen {
        match self {
            Self::Arrive(state) => Screen::Arrive {
                state: state.cross(),
            },
            Self::Doorstep(state) => Screen::Doorstep {
                state: state.cross(),
            },
            Self::Property(state) => Screen::Property {
                state: (*state).cross(),
            },
            Self::Safety(state) => Screen::Safety {
                state: state.cross(),
            },
            Self::Walk(state) => Screen::Walk {
                state: (*state).cross(),
            },
            Self::Mark(state) => Screen::Mark {
                state: (*state).cross(),
            },
            Self::Tray(state) => Screen::Tray {
                state: state.cross(),
            },
            Self::ThenAndNow(state) => Screen::ThenAndNow {
                state: state.cross(),
            },
            Self::Verdict(state) => Screen::Verdict {
                state: state.cross(),
            },
            Self::Roof(state) => Screen::Roof {
                state: (*state).cross(),
            },
            Self::Leak(state) => Screen::Leak {
                state: state.cross(),
            },
            Self::Offer(state) => Screen::Offer {
                state: (*state).cross(),
            },
            Self::Letter(state) => Screen::Letter {
                state: state.cross(),
            },
            Self::Outcome(state) => Screen::Outcome {
                state: state.cross(),
            },
            Self::Reminders(state) => Screen::Reminders {
                state: state.cross(),
            },
            Self::Settings(state) => Screen::Settings {
                state: state.cross(),
            },
        }
    }
}
