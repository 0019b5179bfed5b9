//! The verdict: what to do with a structure, in order of time, why, and what is refused.

use crate::answer::Answer;
use crate::catalogue::{RemedyKey, StopKey};
use crate::ids::{MarkId, PartId, SlopeId, StackId, StructureId, VisitId, WorkId};
use crate::words::Said;
use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// When a thing must be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum When {
    /// Before the next rain.
    Now,
    /// Before the season is over.
    ThisSeason,
    /// Not yet.
    Later,
}

impl When {
    /// All three, soonest first.
    pub const ALL: [Self; 3] = [Self::Now, Self::ThisSeason, Self::Later];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Now => "when-now",
            Self::ThisSeason => "when-this-season",
            Self::Later => "when-later",
        }
    }
}

/// What can be done with a structure, from the least upward.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Course {
    /// Leave it; look again later.
    Leave,
    /// Upkeep.
    Maintain,
    /// Cover or seal for weeks.
    MakeSafe,
    /// Repair the causes where they are.
    Repair,
    /// Lay a new covering over the old one.
    Recover,
    /// Take everything off to the deck and cover anew.
    TearOff,
    /// Another trade's work.
    Refer,
    /// Go and look: what was seen supports no more than that.
    LookFirst,
}

impl Course {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Leave,
        Self::Maintain,
        Self::MakeSafe,
        Self::Repair,
        Self::Recover,
        Self::TearOff,
        Self::Refer,
        Self::LookFirst,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Leave => "course-leave",
            Self::Maintain => "course-maintain",
            Self::MakeSafe => "course-make-safe",
            Self::Repair => "course-repair",
            Self::Recover => "course-recover",
            Self::TearOff => "course-tear-off",
            Self::Refer => "course-refer",
            Self::LookFirst => "course-look-first",
        }
    }
}

/// The trades that a roofer refers to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LicensedTrade {
    /// Masonry.
    Mason,
    /// Fuel-burning appliances, their vents and liners.
    FuelVent,
    /// Wiring and service drops.
    Electrician,
    /// Framing and structure.
    Structural,
    /// Asbestos and vermiculite.
    Asbestos,
    /// Plumbing.
    Plumber,
    /// Trees.
    Arborist,
    /// Protected birds and bats.
    Wildlife,
    /// Siding, windows, stucco.
    Siding,
}

impl LicensedTrade {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Mason,
        Self::FuelVent,
        Self::Electrician,
        Self::Structural,
        Self::Asbestos,
        Self::Plumber,
        Self::Arborist,
        Self::Wildlife,
        Self::Siding,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Mason => "trade-mason",
            Self::FuelVent => "trade-fuel-vent",
            Self::Electrician => "trade-electrician",
            Self::Structural => "trade-structural",
            Self::Asbestos => "trade-asbestos",
            Self::Plumber => "trade-plumber",
            Self::Arborist => "trade-arborist",
            Self::Wildlife => "trade-wildlife",
            Self::Siding => "trade-siding",
        }
    }
}

/// The questions of fact about a structure on which the rules stand.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Question {
    /// Water comes in now.
    WaterComesIn,
    /// Something is open so that water will come in at the next rain.
    OpenToRain,
    /// Something may fall.
    MayFall,
    /// The covering is done: failing all over.
    CoveringDone,
    /// The covering no longer bends: lifted tabs crack.
    Brittle,
    /// The old covering does not lie flat enough to be laid over.
    NotFlat,
    /// There are two or more layers of covering somewhere.
    TwoLayers,
    /// There are three or more.
    ThreeLayers,
    /// The deck or base is wet or soft somewhere.
    DeckWet,
    /// The deck is wet or soft beyond a spot.
    DeckWetBroad,
    /// There are many separate places on one slope.
    ManyPlaces,
    /// The slope is too low for its covering.
    TooLow,
    /// Sections were rebuilt at another height, so that they trap or step water.
    RebuiltStep,
    /// One cause was patched as often as house policy allows.
    PatchedOften,
    /// Nothing that matches in exposure and thickness is to be had.
    Unmatchable,
    /// The top covering is one that no covering may be laid over.
    BarredBase,
    /// Some flashing or edge cannot be renewed in a re-cover.
    FlashingStays,
    /// The frame may not carry another layer.
    FrameWeak,
    /// The maker of the new covering does not accept it over the old one.
    MakerRefuses,
    /// Suspect asbestos.
    Asbestos,
    /// Suspect vermiculite.
    Vermiculite,
}

impl Question {
    /// All of them.
    pub const ALL: [Self; 21] = [
        Self::WaterComesIn,
        Self::OpenToRain,
        Self::MayFall,
        Self::CoveringDone,
        Self::Brittle,
        Self::NotFlat,
        Self::TwoLayers,
        Self::ThreeLayers,
        Self::DeckWet,
        Self::DeckWetBroad,
        Self::ManyPlaces,
        Self::TooLow,
        Self::RebuiltStep,
        Self::PatchedOften,
        Self::Unmatchable,
        Self::BarredBase,
        Self::FlashingStays,
        Self::FrameWeak,
        Self::MakerRefuses,
        Self::Asbestos,
        Self::Vermiculite,
    ];

    /// Its key in the message files: a question a person can answer yes or no.
    pub fn key(self) -> &'static str {
        match self {
            Self::WaterComesIn => "question-water-comes-in",
            Self::OpenToRain => "question-open-to-rain",
            Self::MayFall => "question-may-fall",
            Self::CoveringDone => "question-covering-done",
            Self::Brittle => "question-brittle",
            Self::NotFlat => "question-not-flat",
            Self::TwoLayers => "question-two-layers",
            Self::ThreeLayers => "question-three-layers",
            Self::DeckWet => "question-deck-wet",
            Self::DeckWetBroad => "question-deck-wet-broad",
            Self::ManyPlaces => "question-many-places",
            Self::TooLow => "question-too-low",
            Self::RebuiltStep => "question-rebuilt-step",
            Self::PatchedOften => "question-patched-often",
            Self::Unmatchable => "question-unmatchable",
            Self::BarredBase => "question-barred-base",
            Self::FlashingStays => "question-flashing-stays",
            Self::FrameWeak => "question-frame-weak",
            Self::MakerRefuses => "question-maker-refuses",
            Self::Asbestos => "question-asbestos",
            Self::Vermiculite => "question-vermiculite",
        }
    }
}

/// A question that was answered on the spot, beside what the defects say.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Answered {
    /// The question.
    pub question: Question,
    /// The answer.
    pub answer: Answer,
}

/// A section of a code.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct CodeSection {
    /// The document: "IRC", "29 CFR".
    pub document: String,
    /// The edition, where it has one.
    #[serde(default)]
    pub edition: Option<u16>,
    /// The section as that edition numbers it.
    pub section: String,
}

/// What a reason stands on.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "source")]
pub enum Source {
    /// A code as the jurisdiction's profile adopts it.
    Code(CodeSection),
    /// A local amendment named in the profile.
    LocalAmendment {
        /// The jurisdiction.
        place: String,
    },
    /// What was seen.
    Evidence,
    /// Trade practice, which no document settles.
    Practice,
    /// The firm's own policy.
    HousePolicy,
    /// What the owner or caller said.
    Owner,
}

/// How strong a reason is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Strength {
    /// It rules something out.
    Forbids,
    /// It makes something necessary.
    Requires,
    /// It speaks for or against.
    Advises,
}

/// A record that a reason stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "on", content = "id")]
pub enum StandsOn {
    /// A mark.
    Mark(MarkId),
    /// A reading of layers.
    Stack(StackId),
    /// Work done.
    Work(WorkId),
    /// What was said or noted on a visit.
    Visit(VisitId),
}

/// One link of the chain of reasons.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reason {
    /// The rule that gives it, by its name in the rules.
    pub rule: String,
    /// What it says.
    pub says: Said,
    /// What it stands on.
    pub source: Source,
    /// How strong it is.
    pub strength: Strength,
    /// The records behind it.
    #[serde(default)]
    pub stands_on: Vec<StandsOn>,
}

/// Work on one part within a step.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Task {
    /// The part.
    pub part: PartId,
    /// The remedy; `None` where the whole course covers it.
    #[serde(default)]
    pub remedy: Option<RemedyKey>,
    /// The trade that must do it, where it is not a roofer's.
    #[serde(default)]
    pub trade: Option<LicensedTrade>,
}

/// One step of a verdict.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Step {
    /// When.
    pub when: When,
    /// What.
    pub course: Course,
    /// On which parts.
    #[serde(default)]
    pub tasks: Vec<Task>,
    /// The slopes that a new covering goes over, where it does not go over all.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub slopes: Vec<SlopeId>,
    /// The date by which it must be done, or by which a temporary cover must be made good.
    #[serde(default)]
    pub until: Option<Date>,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// What of a course is refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Narrowed {
    /// All of it.
    Whole,
    /// A repair by sealant alone.
    SealantAlone,
    /// A re-cover with the old flashings.
    OldFlashings,
    /// A repair beyond making safe.
    BeyondMakingSafe,
}

impl Narrowed {
    /// All of them.
    pub const ALL: [Self; 4] = [
        Self::Whole,
        Self::SealantAlone,
        Self::OldFlashings,
        Self::BeyondMakingSafe,
    ];

    /// Its key in the message files, where the course alone does not say it.
    pub fn key(self) -> Option<&'static str> {
        match self {
            Self::Whole => None,
            Self::SealantAlone => Some("narrowed-sealant-alone"),
            Self::OldFlashings => Some("narrowed-old-flashings"),
            Self::BeyondMakingSafe => Some("narrowed-beyond-making-safe"),
        }
    }
}

/// A course that is not offered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Refused {
    /// The course.
    pub course: Course,
    /// What of it.
    pub narrowed: Narrowed,
    /// Whether a rule forbids it, so that it is never offered; otherwise judgement refuses it.
    pub forbidden: bool,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// A question that nobody has answered, and where to answer it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct LookAt {
    /// The question.
    pub question: Question,
    /// The stop to visit; `None` where it is asked of a maker, an engineer or the owner.
    pub stop: Option<StopKey>,
    /// The answer that helps to turn the verdict.
    pub answer: Answer,
}

/// The look that would change a verdict: the smallest set of unseen facts that can turn it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct NextLook {
    /// The facts to look at, all of them.
    pub looks: Vec<LookAt>,
    /// The main course that the verdict would turn to.
    pub turns_to: Course,
}

/// What to do with one structure.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Verdict {
    /// The structure.
    pub structure: StructureId,
    /// The day it was judged.
    pub on: Date,
    /// What to do, in order of time. Empty only where nothing was seen.
    pub steps: Vec<Step>,
    /// What is not offered.
    pub refused: Vec<Refused>,
    /// The parts that were not seen.
    pub unseen: Vec<PartId>,
    /// The questions that nobody has answered and that a rule asked.
    pub unknown: Vec<Question>,
    /// The look that could change it.
    pub next_look: Option<NextLook>,
    /// What must be said for safety.
    pub cautions: Vec<Reason>,
    /// How far it reaches: from where the structure was seen, and what it says of a later covering.
    pub limits: Vec<Reason>,
}

impl Verdict {
    /// The slopes that its new covering goes over; empty where that is all of them, or where it means none.
    pub fn covered_slopes(&self) -> &[SlopeId] {
        self.steps
            .iter()
            .find(|step| matches!(step.course, Course::Recover | Course::TearOff))
            .map_or(&[], |step| &step.slopes)
    }

    /// The course that decides the future of the structure: the greatest that the roofer does himself, making safe apart; where there is none,
    /// another trade's work.
    pub fn main_course(&self) -> Option<Course> {
        self.steps
            .iter()
            .map(|step| step.course)
            .filter(|course| !matches!(course, Course::MakeSafe | Course::Refer))
            .max()
            .or_else(|| self.steps.iter().map(|step| step.course).max())
    }
}
