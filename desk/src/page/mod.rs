//! The same screens as a local page: drawn on the server, for this computer only.

mod arrive;
mod block;
mod doorstep;
mod guard;
mod ladder;
mod layout;
mod leak;
mod letter;
mod mark;
mod offer;
mod outcome;
mod property;
mod reminders;
mod roof;
mod safety;
mod server;
mod settings;
mod then_and_now;
mod tray;
mod verdict;
mod walk;

pub(crate) use server::hex;
pub use server::{Serving, serve};

use maud::Markup;
use screens::{FormOf, Place, Screen};

/// What every page needs beside its screen.
pub(crate) struct Frame<'a> {
    /// Where the page is.
    pub(crate) place: &'a Place,
    /// What the last tap did.
    pub(crate) notice: Option<&'a str>,
    /// What went wrong.
    pub(crate) trouble: Option<&'a str>,
    /// The form that was refused: it stays open.
    pub(crate) refused: Option<&'a FormOf>,
    /// The language of the page.
    pub(crate) language: &'a str,
}

/// Draws a screen.
pub(crate) fn draw(frame: &Frame<'_>, screen: &Screen) -> Markup {
    match screen {
        Screen::Arrive(state) => arrive::draw(frame, state),
        Screen::Doorstep(state) => doorstep::draw(frame, state),
        Screen::Property(state) => property::draw(frame, state),
        Screen::Safety(state) => safety::draw(frame, state),
        Screen::Walk(state) => walk::draw(frame, state),
        Screen::Mark(state) => mark::draw(frame, state),
        Screen::Tray(state) => tray::draw(frame, state),
        Screen::ThenAndNow(state) => then_and_now::draw(frame, state),
        Screen::Verdict(state) => verdict::draw(frame, state),
        Screen::Roof(state) => roof::draw(frame, state),
        Screen::Leak(state) => leak::draw(frame, state),
        Screen::Offer(state) => offer::draw(frame, state),
        Screen::Letter(state) => letter::draw(frame, state),
        Screen::Outcome(state) => outcome::draw(frame, state),
        Screen::Reminders(state) => reminders::draw(frame, state),
        Screen::Settings(state) => settings::draw(frame, state),
    }
}
