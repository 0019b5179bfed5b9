//! Verdict: read in time. What is refused is struck through with its reason; then the look that could change it.

use crate::block::{Button, Reason, Row};
use crate::cross::{Cross, mirror};

mirror! {
    /// What is refused.
    RefusedBlock of screens::RefusedBlock {
        /// "Not allowed" or "not sold".
        label: String,
        /// What.
        what: String,
        /// By rule or by judgement, and why.
        why: Vec<Reason>,
    }

    /// The state of Verdict.
    VerdictState of screens::Verdict {
        /// Address and structure.
        under: String,
        /// The heading.
        title: String,
        /// The structures.
        structures: Vec<Button>,
        /// What to do, in order of time.
        steps: Vec<StepBlock>,
        /// What is refused.
        refused: Vec<RefusedBlock>,
        /// The heading over the look that could change it.
        look_title: String,
        /// The look that could change it.
        look: Vec<Row>,
        /// What the verdict would turn to.
        turns_to: Option<String>,
        /// The heading over cautions.
        cautions_title: String,
        /// Cautions.
        cautions: Vec<String>,
        /// How far it reaches.
        limits: Vec<String>,
        /// The heading over what was not seen.
        unseen_title: String,
        /// What was not seen.
        unseen: Vec<String>,
        /// What it costs.
        offer: Button,
        /// Going to look, or back.
        back: Button,
        /// The main act.
        main: Button,
    }
}

/// One step in time.
#[derive(Clone, Debug, uniffi::Record)]
pub struct StepBlock {
    /// When.
    pub when: String,
    /// What.
    pub what: String,
    /// On which parts.
    pub tasks: Vec<String>,
    /// By when.
    pub until: Option<String>,
    /// The first reasons.
    pub why: Vec<Reason>,
    /// Over the other reasons, where there are more.
    pub why_more: Option<String>,
    /// The other reasons.
    pub why_rest: Vec<Reason>,
}

impl Cross<StepBlock> for screens::StepBlock {
    fn cross(self) -> StepBlock {
        let Self {
            when,
            what,
            tasks,
            until,
            mut why,
            why_more,
        } = self;
        let rest = why.split_off(why.len().min(screens::WHY_FIRST));
        StepBlock {
            when,
            what,
            tasks,
            until,
            why: why.cross(),
            why_more,
            why_rest: rest.cross(),
        }
    }
}
