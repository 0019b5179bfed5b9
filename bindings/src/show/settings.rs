//! Settings: the firm, the code where it works, its own policy.

use crate::block::{Button, Form};
use crate::cross::mirror;

mirror! {
    /// The state of Settings.
    SettingsState of screens::Settings {
        /// The heading.
        title: String,
        /// The firm, the code, the policy.
        forms: Vec<Form>,
        /// Back to Arrive.
        back: Button,
    }
}
