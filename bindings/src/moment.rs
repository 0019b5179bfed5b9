//! The moment of a call: the phone owns the clock.

use crate::phone::words;
use crate::{Language, Trouble};
use jiff::{Timestamp, tz::Offset};

/// When a call is made.
#[derive(Clone, Copy, Debug, uniffi::Record)]
pub struct Moment {
    /// Milliseconds since 1970 began in Greenwich.
    pub millis: i64,
    /// How many seconds the phone's clock is ahead of Greenwich.
    pub offset_seconds: i32,
}

impl Moment {
    pub(crate) fn read(self) -> Result<acts::Moment, Trouble> {
        let at = Timestamp::from_millisecond(self.millis);
        let offset = Offset::from_seconds(self.offset_seconds);
        match (at, offset) {
            (Ok(at), Ok(offset)) => Ok(acts::Moment::new(at, offset)),
            _ => Err(Trouble::Refused {
                says: words(Language::English).text("phone-clock"),
            }),
        }
    }
}
