//! What the phone brings. Each port is asked once, blocks until it knows, and answers `None` where there is nothing to tell.

use std::sync::Arc;
use trade::words::{Said, Words};

use crate::Trouble;

/// Why a port did not answer.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum PortTrouble {
    /// The person did not allow it.
    #[error("not allowed")]
    NotAllowed,
    /// It did not work.
    #[error("{reason}")]
    Failed {
        /// What the phone says of it.
        reason: String,
    },
}

impl From<uniffi::UnexpectedUniFFICallbackError> for PortTrouble {
    fn from(error: uniffi::UnexpectedUniFFICallbackError) -> Self {
        Self::Failed {
            reason: error.reason,
        }
    }
}

impl PortTrouble {
    /// As a sentence: which port, by the key of its name, and what to do.
    pub(crate) fn says(&self, words: &Words, port: &str) -> Trouble {
        let port = Said::new(port);
        let said = match self {
            Self::NotAllowed => Said::new("phone-not-allowed").with("port", port),
            Self::Failed { reason } => Said::new("phone-failed")
                .with("port", port)
                .with("reason", reason.clone()),
        };
        Trouble::refused(words, &said)
    }
}

/// Where the key of the book is kept: sixty-four hexadecimal digits, out of reach of other programs.
#[uniffi::export(with_foreign)]
pub trait KeyStore: Send + Sync {
    /// The key; `None` on a phone that never held one.
    ///
    /// # Errors
    /// Where the store does not open.
    fn key(&self) -> Result<Option<String>, PortTrouble>;

    /// Keeps the key of a new book.
    ///
    /// # Errors
    /// Where the store does not take it: no book is begun then.
    fn keep(&self, key: String) -> Result<(), PortTrouble>;
}

/// The camera.
#[uniffi::export(with_foreign)]
pub trait Camera: Send + Sync {
    /// The file of the picture just taken. It is the book's from then on: it is removed once the picture is kept.
    ///
    /// # Errors
    /// Where the camera may not be used or broke.
    fn picture(&self) -> Result<Option<String>, PortTrouble>;
}

/// Degrees north and east.
#[derive(Clone, Copy, Debug, PartialEq, uniffi::Record)]
pub struct Fix {
    /// Degrees north.
    pub latitude: f64,
    /// Degrees east.
    pub longitude: f64,
}

/// Where the phone stands.
#[uniffi::export(with_foreign)]
pub trait Locator: Send + Sync {
    /// Where the phone stands.
    ///
    /// # Errors
    /// Where it may not be asked or broke.
    fn fix(&self) -> Result<Option<Fix>, PortTrouble>;
}

/// How steep the phone lies.
#[uniffi::export(with_foreign)]
pub trait Level: Send + Sync {
    /// Degrees above the horizontal along the phone's long edge, averaged while it lay still.
    ///
    /// # Errors
    /// Where the sensor broke.
    fn degrees(&self) -> Result<Option<f64>, PortTrouble>;
}

/// Where a file is handed on.
#[uniffi::export(with_foreign)]
pub trait ShareSheet: Send + Sync {
    /// Offers a file to other programs.
    ///
    /// # Errors
    /// Where no program takes it.
    fn share(&self, file: String, media_type: String) -> Result<(), PortTrouble>;
}

/// All ports of one phone.
#[derive(Clone, uniffi::Record)]
pub struct Ports {
    /// Where the key is kept.
    pub key_store: Arc<dyn KeyStore>,
    /// The camera.
    pub camera: Arc<dyn Camera>,
    /// Where it stands.
    pub locator: Arc<dyn Locator>,
    /// How steep it lies.
    pub level: Arc<dyn Level>,
    /// Where files are handed on.
    pub share_sheet: Arc<dyn ShareSheet>,
}
