//! The few words that a phone needs beside its screens.

use crate::Trouble;
use crate::cross::Cross;
use trade::words::Words;

/// A language that the words are kept in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Enum)]
pub enum Language {
    /// English.
    English,
    /// Spanish.
    Spanish,
}

impl Cross<trade::words::Language> for Language {
    fn cross(self) -> trade::words::Language {
        match self {
            Self::English => trade::words::Language::English,
            Self::Spanish => trade::words::Language::Spanish,
        }
    }
}

pub(crate) fn words(language: Language) -> &'static Words {
    Words::of(language.cross())
}

/// The words around the screens: what the phone itself does, and why it asks for something.
#[derive(Clone, Debug, uniffi::Record)]
pub struct PhoneWords {
    /// The language's tag, as `es`: to speak in and to listen for.
    pub tag: String,
    /// While the book is opened.
    pub opening: String,
    /// Trying once more.
    pub again: String,
    /// Back to where a day begins.
    pub start: String,
    /// Filling a field by voice.
    pub dictate: String,
    /// Why the camera is asked for.
    pub why_camera: String,
    /// Why the position is asked for.
    pub why_position: String,
    /// Why the microphone is asked for.
    pub why_microphone: String,
    /// What to do where the camera was refused.
    pub no_camera: String,
    /// What to do where the microphone was refused, or nothing was understood.
    pub no_dictation: String,
    /// Agreeing to be asked.
    pub go_on: String,
    /// Leaving it.
    pub leave: String,
    /// On the button that ends long work.
    pub give_up: String,
    /// Laying the phone on a slope to read its inclination.
    pub lay: String,
    /// Handing a letter on to another program.
    pub share: String,
    /// Drawn white on black, for after dusk.
    pub dusk: String,
    /// Drawn black on white.
    pub day: String,
}

impl PhoneWords {
    pub(crate) fn of(words: &Words, tag: &str) -> Self {
        let text = |key| words.text(key);
        Self {
            tag: tag.to_owned(),
            opening: text("phone-opening"),
            again: text("phone-again"),
            start: text("arrive-title"),
            dictate: text("phone-dictate"),
            why_camera: text("phone-why-camera"),
            why_position: text("phone-why-position"),
            why_microphone: text("phone-why-microphone"),
            no_camera: text("phone-no-camera"),
            no_dictation: text("phone-no-dictation"),
            go_on: text("phone-go-on"),
            leave: text("phone-leave"),
            give_up: text("phone-give-up"),
            lay: text("phone-lay"),
            share: text("phone-share"),
            dusk: text("phone-dusk"),
            day: text("phone-day"),
        }
    }
}

/// The words around the screens before a book is open.
///
/// # Errors
/// Never: every call answers with a result.
#[uniffi::export]
#[allow(
    clippy::unnecessary_wraps,
    reason = "every call that crosses answers with a result"
)]
pub fn phone_words(language: Language) -> Result<PhoneWords, Trouble> {
    let tag = Cross::<trade::words::Language>::cross(language).tag();
    Ok(PhoneWords::of(words(language), tag))
}
