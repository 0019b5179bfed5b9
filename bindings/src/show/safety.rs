//! Safety: may he climb at all. These stop work; they never replace training, local law or a licensed trade.

use crate::block::{Button, Form, Row};
use crate::cross::mirror;

mirror! {
    /// One safety question with its answers.
    CheckRow of screens::CheckRow {
        /// The question.
        asks: String,
        /// Yes, it holds.
        yes: Button,
        /// No, it does not.
        no: Button,
    }

    /// How one structure is reached.
    ReachRow of screens::ReachRow {
        /// The structure.
        structure: String,
        /// The ways.
        ways: Vec<Button>,
    }

    /// How the ladder stands.
    LadderCheck of screens::LadderCheck {
        /// What the numbers do not say: it comes before them.
        caution: String,
        /// What to measure.
        form: Form,
        /// What the rule says of the ladder as it was measured.
        says: Vec<String>,
    }

    /// The state of Safety.
    SafetyState of screens::Safety {
        /// The address.
        address: String,
        /// The heading.
        title: String,
        /// Dangers known from before.
        dangers: Vec<String>,
        /// The questions.
        checks: Vec<CheckRow>,
        /// The sky.
        sky_title: String,
        /// The sky's choices, and the wind.
        sky: Vec<Button>,
        /// How warm it is.
        temperature: Form,
        /// How the ladder stands, and what the rule says of it.
        ladder: LadderCheck,
        /// What forbids climbing now.
        stops: Vec<Row>,
        /// The heading over how the structures are reached.
        reach_title: String,
        /// How the structures are reached.
        reach: Vec<ReachRow>,
        /// What is said at all times.
        always: String,
        /// The way back.
        back: Button,
        /// The main act.
        main: Button,
    }
}
