//! The main course of a structure: from the least that truly works upward.
//!
//! A pure function of the answers and of what the marks call for. It asks a question only when the answer matters, so
//! that whoever listens to the questions learns which unknown ones could turn it.

use crate::facts::Answers;
use std::cell::Cell;
use trade::answer::Answer;
use trade::verdict::{Course, Question};

/// What was seen of a structure on the visit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sight {
    /// Nothing.
    #[default]
    Nothing,
    /// Something, none of it closely.
    Afar,
    /// Some of it closely.
    Close,
}

/// What was found of water and its way in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Water {
    /// No fresh trace, and no fault through which it can come.
    #[default]
    NothingFound,
    /// Fresh traces, and no fault through which it can come.
    Traced,
    /// A fault through which it can come.
    WayInFound,
}

/// What the marks call for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[allow(clippy::struct_excessive_bools)] // five independent yes-or-no facts about the faults
pub struct Needs {
    /// Something needs upkeep.
    pub upkeep: bool,
    /// Something of ours needs repair.
    pub repair: bool,
    /// A repair must lift shingles.
    pub lifts: bool,
    /// A repair needs shingles that match.
    pub matches: bool,
    /// Something failing is cured by a new covering alone.
    pub covering: bool,
}

/// What code, amendments and the firm say of a re-cover and of repairing over layers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Allowed {
    /// Whether the firm sells a re-cover.
    pub sells_recover: bool,
    /// Layers of covering that may lie in all.
    pub layers: u8,
    /// Whether hail exposure bars a re-cover.
    pub hail_bars: Answer,
    /// Layers from which the firm makes safe and repairs no more.
    pub no_repair_layers: u8,
}

/// All that the main course depends on besides the answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Situation {
    /// What was seen.
    pub sight: Sight,
    /// What the marks call for.
    pub needs: Needs,
    /// What was found of water.
    pub water: Water,
    /// Whether some field of covering is wearing out.
    pub field_worn: bool,
    /// Whether the owner needs the roof to last.
    pub must_last: Answer,
    /// Whether all that is wrong was built in lately, and is the installer's to answer for.
    pub installer_answers: bool,
    /// Layers counted at the worst spot.
    pub layers_counted: u8,
    /// What code and the firm allow.
    pub allowed: Allowed,
}

/// Why a structure, or its repair, is beyond repairing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ground {
    /// A question answered with yes.
    Is(Question),
    /// So many layers that the firm repairs no more.
    Layers,
    /// The field is wearing out and the owner needs it to last.
    MustLast,
    /// A new covering alone cures what is failing.
    OnlyACovering,
}

/// Whatever else is wrong, these are past repairing.
pub const PAST_REPAIR: [Question; 4] = [
    Question::CoveringDone,
    Question::DeckWetBroad,
    Question::RebuiltStep,
    Question::TooLow,
];

/// What a re-cover leaves as it is.
const NOT_CURED_BY_RECOVER: [Question; 3] = [
    Question::DeckWetBroad,
    Question::RebuiltStep,
    Question::TooLow,
];

/// Conditions of a re-cover besides the count of layers: each must be known not to be so.
pub const RECOVER_NEEDS_NO: [Question; 6] = [
    Question::BarredBase,
    Question::DeckWet,
    Question::NotFlat,
    Question::FlashingStays,
    Question::FrameWeak,
    Question::MakerRefuses,
];

/// The main course, and the questions it turned on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Decision {
    /// The main course.
    pub course: Course,
    /// Why not less: the grounds against a repair, where it came to more than one.
    pub grounds: Vec<Ground>,
    /// The questions it asked that nobody has answered.
    pub owed: Vec<Question>,
}

/// Decides the main course.
pub fn decide(situation: &Situation, answers: &Answers) -> Decision {
    let (course, owed) = course_and_owed(situation, answers);
    let ask = |question| answers.get(question);
    let grounds = if matches!(course, Course::Recover | Course::TearOff) {
        past_repair(&ask)
            .chain(against_this_repair(situation, &ask))
            .collect()
    } else {
        Vec::new()
    };
    Decision {
        course,
        grounds,
        owed,
    }
}

/// The main course, and the unanswered questions on which it turned.
pub fn course_and_owed(situation: &Situation, answers: &Answers) -> (Course, Vec<Question>) {
    let asked = Cell::new(0_u32);
    let ask = |question: Question| {
        asked.set(asked.get() | 1 << question as u32);
        answers.get(question)
    };
    let course = course(situation, &ask);
    let owed = Question::ALL
        .into_iter()
        .filter(|question| asked.get() & 1 << *question as u32 != 0)
        .filter(|question| answers.get(*question).is_unknown())
        .collect();
    (course, owed)
}

/// The main course. Asks no more than it must.
pub fn course(situation: &Situation, ask: &dyn Fn(Question) -> Answer) -> Course {
    if situation.installer_answers && situation.sight == Sight::Close {
        return if situation.needs.upkeep {
            Course::Maintain
        } else {
            Course::Refer
        };
    }
    if past_repair(ask).next().is_some() {
        return new_covering(situation, ask);
    }
    if situation.sight != Sight::Close && !ask(Question::CoveringDone).is_no() {
        return Course::LookFirst;
    }
    if is_unexplained(situation, ask) {
        return Course::LookFirst;
    }
    if needs_repair(situation, ask) {
        return if against_this_repair(situation, ask).next().is_some() {
            new_covering(situation, ask)
        } else {
            Course::Repair
        };
    }
    if situation.needs.upkeep {
        return Course::Maintain;
    }
    if ask(Question::CoveringDone).is_no() {
        Course::Leave
    } else {
        Course::LookFirst
    }
}

/// Water comes in, or did lately, and nothing that was seen explains it: the cause is found first.
fn is_unexplained(situation: &Situation, ask: &dyn Fn(Question) -> Answer) -> bool {
    match situation.water {
        Water::WayInFound => false,
        Water::Traced => true,
        Water::NothingFound => ask(Question::WaterComesIn).is_yes(),
    }
}

fn needs_repair(situation: &Situation, ask: &dyn Fn(Question) -> Answer) -> bool {
    situation.needs.repair || situation.needs.covering || ask(Question::DeckWet).is_yes()
}

fn past_repair(ask: &dyn Fn(Question) -> Answer) -> impl Iterator<Item = Ground> {
    PAST_REPAIR
        .into_iter()
        .filter(|question| ask(*question).is_yes())
        .map(Ground::Is)
}

/// Why what is wrong here is not repaired. Each is asked only when the one before it does not hold.
fn against_this_repair<'a>(
    situation: &'a Situation,
    ask: &'a dyn Fn(Question) -> Answer,
) -> impl Iterator<Item = Ground> + use<'a> {
    type Against = fn(&Situation, &dyn Fn(Question) -> Answer) -> Option<Ground>;
    const ALL: [Against; 7] = [
        |situation, _| situation.needs.covering.then_some(Ground::OnlyACovering),
        |situation, _| {
            (situation.field_worn && situation.must_last.is_yes()).then_some(Ground::MustLast)
        },
        |_, ask| is(ask, Question::PatchedOften),
        |_, ask| is(ask, Question::ManyPlaces),
        |situation, ask| situation.needs.lifts.then(|| is(ask, Question::Brittle))?,
        |situation, ask| {
            situation
                .needs
                .matches
                .then(|| is(ask, Question::Unmatchable))?
        },
        |situation, ask| too_many_layers(situation, ask).then_some(Ground::Layers),
    ];
    let wrong = needs_repair(situation, ask);
    ALL.into_iter()
        .filter(move |_| wrong)
        .filter_map(|against| against(situation, ask))
}

fn is(ask: &dyn Fn(Question) -> Answer, question: Question) -> Option<Ground> {
    ask(question).is_yes().then_some(Ground::Is(question))
}

fn too_many_layers(situation: &Situation, ask: &dyn Fn(Question) -> Answer) -> bool {
    match situation.allowed.no_repair_layers {
        0 | 1 => true,
        2 => ask(Question::TwoLayers).is_yes(),
        3 => ask(Question::ThreeLayers).is_yes(),
        more => situation.layers_counted >= more,
    }
}

fn new_covering(situation: &Situation, ask: &dyn Fn(Question) -> Answer) -> Course {
    if may_recover(situation, ask) {
        Course::Recover
    } else {
        Course::TearOff
    }
}

/// A re-cover needs every one of its conditions known; a tear-off always works.
fn may_recover(situation: &Situation, ask: &dyn Fn(Question) -> Answer) -> bool {
    situation.allowed.sells_recover
        && situation.sight == Sight::Close
        && situation.allowed.hail_bars.is_no()
        && NOT_CURED_BY_RECOVER
            .into_iter()
            .all(|question| !ask(question).is_yes())
        && too_many_to_recover(situation.allowed.layers, ask).is_no()
        && RECOVER_NEEDS_NO
            .into_iter()
            .all(|question| ask(question).is_no())
}

/// Whether one more layer would be more than may lie in all.
pub fn too_many_to_recover(allowed: u8, ask: &dyn Fn(Question) -> Answer) -> Answer {
    match allowed {
        0 | 1 => Answer::Yes,
        2 => ask(Question::TwoLayers),
        3 => ask(Question::ThreeLayers),
        _ => Answer::No,
    }
}
