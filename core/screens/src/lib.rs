//! Each screen as a typed state, each tap as a typed action.
//!
//! Where to start:
//! - [`Place`] says where a person is: a screen and identifiers. A web address is a place.
//! - [`Screens::show`] gives the state of a place, ready to draw: every word, order, flag and number is decided here.
//! - [`Screens::act`] carries out a tap and answers the place to show next.
//! - [`Screens::shoot`] takes a picture in.
//!
//! There is no hidden state: a killed process comes back where it was.

mod act;
mod action;
mod block;
mod filling;
mod form;
mod name;
mod place;
mod screens;
mod show;
mod worksheet;
mod writing;

pub use act::Next;
pub use action::Action;
pub use acts::measure::PlanFile;
pub use block::{Button, Choice, Field, FieldKind, Form, Onto, Picture, Row, Shutter};
pub use form::FormOf;
pub use place::{Place, PlaceError, Shows};
pub use screens::{Screens, Trouble};
pub use show::{
    Screen,
    arrive::Arrive,
    doorstep::{Asked, Doorstep, Then},
    leak::{Leak, Suspect},
    letter::{Letter, Sent},
    mark::{DefectRow, Mark, QuestionRow},
    offer::{CourseBlock, Offer},
    outcome::{Outcome, Told},
    property::{Property, Twin},
    reminders::Reminders,
    roof::{Drawn, EdgeRow, LaidRoof, Roof},
    safety::{CheckRow, LadderCheck, ReachRow, Safety},
    settings::Settings,
    then_and_now::{Changed, ThenAndNow},
    tray::{Loose, Tray},
    verdict::{RefusedBlock, StepBlock, Verdict, WHY_FIRST},
    walk::{Here, SpotRow, StopRow, Walk},
};
pub use writing::DrawnLetter;
