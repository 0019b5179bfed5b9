//! The moment an act happens: handed in by the shell, which owns the clock.

use jiff::{Timestamp, civil::Date, tz::Offset};
use trade::ids::DeviceId;
use uuid::{NoContext, Uuid};

/// When something happens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Moment {
    /// The instant.
    pub at: Timestamp,
    /// The day it is where the roofer stands.
    pub today: Date,
    /// How far his clock is from UTC: cameras often write no zone.
    pub offset: Offset,
}

impl Moment {
    /// The moment at an instant, where the clock is `offset` from UTC.
    pub fn new(at: Timestamp, offset: Offset) -> Self {
        Self {
            at,
            today: offset.to_datetime(at).date(),
            offset,
        }
    }

    /// A new identifier that sorts by this moment (`UUIDv7`).
    pub fn id<I: From<Uuid>>(&self) -> I {
        let seconds = u64::try_from(self.at.as_second()).unwrap_or(0);
        let nanos = u32::try_from(self.at.subsec_nanosecond()).unwrap_or(0);
        I::from(Uuid::new_v7(uuid::Timestamp::from_unix(
            NoContext, seconds, nanos,
        )))
    }

    /// A new name for a device that starts to write.
    pub fn device(&self) -> DeviceId {
        self.id()
    }
}
