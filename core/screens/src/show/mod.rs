//! The state of each screen, one file a screen.

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

use crate::place::Place;
use crate::screens::Context;
use acts::ActError;
use serde::Serialize;

/// The state of one screen, ready to draw.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case", tag = "screen")]
pub enum Screen {
    /// Find the address.
    Arrive(arrive::Arrive),
    /// Before he climbs.
    Doorstep(doorstep::Doorstep),
    /// What stands there.
    Property(Box<property::Property>),
    /// May he climb at all.
    Safety(safety::Safety),
    /// The round.
    Walk(Box<walk::Walk>),
    /// One part.
    Mark(Box<mark::Mark>),
    /// What is not yet tied to a part.
    Tray(tray::Tray),
    /// What changed.
    ThenAndNow(then_and_now::ThenAndNow),
    /// What to do.
    Verdict(verdict::Verdict),
    /// The roof as it was measured.
    Roof(Box<roof::Roof>),
    /// Where water comes in.
    Leak(leak::Leak),
    /// What it costs.
    Offer(Box<offer::Offer>),
    /// What the owner gets.
    Letter(letter::Letter),
    /// What came of it.
    Outcome(outcome::Outcome),
    /// What to come back to.
    Reminders(reminders::Reminders),
    /// The firm, the code, the policy.
    Settings(settings::Settings),
}

pub(crate) fn show(context: &Context<'_>, place: &Place) -> Result<Screen, ActError> {
    Ok(match place {
        Place::Arrive { find } => Screen::Arrive(arrive::show(context, find)?),
        Place::Doorstep { property } => Screen::Doorstep(doorstep::show(context, *property, None)?),
        Place::Property { property, like } => {
            Screen::Property(Box::new(property::show(context, *property, like)?))
        }
        Place::Safety { visit } => Screen::Safety(safety::show(context, *visit)?),
        Place::Walk {
            visit,
            structure,
            stop,
        } => Screen::Walk(Box::new(walk::show(
            context,
            *visit,
            *structure,
            stop.as_ref(),
        )?)),
        Place::Mark {
            visit,
            spot,
            family,
        } => Screen::Mark(Box::new(mark::show(context, *visit, spot, *family)?)),
        Place::Tray { visit } => Screen::Tray(tray::show(context, *visit)?),
        Place::ThenAndNow { visit } => Screen::ThenAndNow(then_and_now::show(context, *visit)?),
        Place::Verdict { visit, structure } => {
            Screen::Verdict(verdict::show(context, *visit, *structure)?)
        }
        Place::Roof { structure } => Screen::Roof(Box::new(roof::show(context, *structure)?)),
        Place::Leak { structure, stain } => {
            Screen::Leak(leak::show(context, *structure, stain.as_ref())?)
        }
        Place::Offer { visit, structure } => {
            Screen::Offer(Box::new(offer::show(context, *visit, *structure)?))
        }
        Place::Letter { visit } => Screen::Letter(letter::show(context, *visit)?),
        Place::Outcome { property } => Screen::Outcome(outcome::show(context, *property)?),
        Place::Reminders => Screen::Reminders(reminders::show(context)?),
        Place::Settings => Screen::Settings(settings::show(context)?),
    })
}
