//! Everything that a tap can do.

use crate::form::FormOf;
use crate::place::Place;
use acts::measure::EdgeAt;
use acts::walk::Spot;
use serde::{Deserialize, Serialize};
use trade::answer::Answer;
use trade::catalogue::{DefectKey, RemedyKey};
use trade::ids::{NoteId, PhotoId, PropertyId, ReminderId, SlopeId, StructureId, VisitId};
use trade::mark::{Extent, NotSeen, Rung, Seen};
use trade::property::{Side, StructureKind};
use trade::sketch::EdgeIs;
use trade::verdict::Question;
use trade::visit::{Reach, SafetyCheck, Scope, Sky};
use trade::words::Language;

/// One tap.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "do")]
pub enum Action {
    /// Go somewhere.
    Go {
        /// Where.
        to: Place,
    },
    /// Send a form.
    Submit {
        /// Which form.
        form: FormOf,
        /// What stands in its fields, by name.
        values: Vec<(String, String)>,
    },
    /// Keep half-typed words.
    Draft {
        /// Which form.
        form: FormOf,
        /// Which field.
        field: String,
        /// What stands in it.
        text: String,
    },
    /// Join a property that turned out to be the same place.
    Join {
        /// The one that leads from then on.
        kept: PropertyId,
        /// The other.
        other: PropertyId,
    },
    /// Part two that were joined by mistake.
    Part {
        /// The one that leads.
        kept: PropertyId,
        /// The one that goes its own way again.
        other: PropertyId,
    },
    /// Choose the scope.
    SetScope {
        /// The visit.
        visit: VisitId,
        /// The scope.
        scope: Scope,
    },
    /// Say what the sky is like.
    SetSky {
        /// The visit.
        visit: VisitId,
        /// The sky.
        sky: Sky,
    },
    /// Say whether the wind is too strong.
    SetWindy {
        /// The visit.
        visit: VisitId,
        /// Whether it is.
        windy: bool,
    },
    /// Answer a safety question.
    AnswerSafety {
        /// The visit.
        visit: VisitId,
        /// The question.
        check: SafetyCheck,
        /// Whether it holds.
        holds: Answer,
    },
    /// Say how a structure is reached.
    SetReach {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
        /// How.
        how: Reach,
    },
    /// Add a structure.
    AddStructure {
        /// The visit on which it was met.
        visit: VisitId,
        /// What it is.
        kind: StructureKind,
    },
    /// Add a slope.
    AddSlope {
        /// The visit on which it was met.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
        /// Where it faces.
        side: Side,
    },
    /// Sound, in one tap.
    Sound {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
    },
    /// Put a part on a rung.
    SetRung {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// The rung.
        rung: Rung,
    },
    /// Say how it was seen.
    SetSeen {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// How.
        seen: Seen,
    },
    /// Say why it was not seen.
    SetNotSeen {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// Why.
        why: NotSeen,
    },
    /// Say why nothing more at a stop was seen.
    StopNotSeen {
        /// The visit.
        visit: VisitId,
        /// Where.
        place: Box<Place>,
        /// Why.
        why: NotSeen,
    },
    /// Say that a part is gone.
    SetGone {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
    },
    /// Name a defect, or take it off.
    ToggleDefect {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// The defect.
        defect: DefectKey,
    },
    /// Say how far a defect reaches.
    SetExtent {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// The defect.
        defect: DefectKey,
        /// How far.
        extent: Extent,
    },
    /// Advise a remedy, or no longer.
    ToggleAdvised {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// The remedy.
        remedy: RemedyKey,
    },
    /// Answer a question on the spot.
    AnswerQuestion {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
        /// The question.
        question: Question,
        /// The answer.
        answer: Answer,
    },
    /// Tie a picture from the tray to a part.
    TiePhoto {
        /// The visit.
        visit: VisitId,
        /// The picture.
        photo: PhotoId,
        /// The part.
        spot: Spot,
    },
    /// Tie words from the tray to a part.
    TieNote {
        /// The visit.
        visit: VisitId,
        /// The words.
        note: NoteId,
        /// The part.
        spot: Spot,
    },
    /// Take back the last thing recorded.
    Undo {
        /// The visit.
        visit: VisitId,
        /// Where to stay.
        stay: Box<Place>,
    },
    /// Close the visit.
    Close {
        /// The visit.
        visit: VisitId,
        /// What to say of parts without a mark.
        rest: NotSeen,
    },
    /// Say what stands at an edge of a roof's outline.
    SetEdge {
        /// The structure.
        structure: StructureId,
        /// The edge.
        at: EdgeAt,
        /// What stands there.
        is: EdgeIs,
    },
    /// Take a dormer off a roof.
    TakeOffDormer {
        /// The structure.
        structure: StructureId,
        /// Which, by its place among those that stand on the roof.
        number: usize,
    },
    /// Put the offer to the owner.
    PutOffer {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
    },
    /// Write the letter.
    WriteLetter {
        /// The visit.
        visit: VisitId,
        /// In which language.
        language: Language,
    },
    /// End a reminder.
    ReminderDone {
        /// The property.
        property: PropertyId,
        /// The reminder.
        reminder: ReminderId,
    },
    /// A slope was covered anew: all its threads end.
    SlopeReplaced {
        /// The visit.
        visit: VisitId,
        /// The slope.
        slope: SlopeId,
        /// Whose work it was.
        by: trade::work::By,
    },
}
