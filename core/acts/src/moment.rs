//! The moment an act happens: handed in by the shell, which owns the clock.

use jiff::{Timestamp, civil::Date, tz::Offset};
use std::sync::atomic::{AtomicU32, Ordering};
use trade::ids::DeviceId;
use uuid::{NoContext, Uuid};

/// Counts identifiers, so that those of one millisecond sort as they were made (RFC 9562, 6.2, method 1).
static MADE: AtomicU32 = AtomicU32::new(0);

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

    /// What his clock showed at an instant, by the zone that it is in now: `14:05`.
    pub fn clock(&self, at: Timestamp) -> String {
        self.offset.to_datetime(at).strftime("%H:%M").to_string()
    }

    /// A new identifier that sorts by this moment (`UUIDv7`), and within it by the order in which they were asked for.
    pub fn id<I: From<Uuid>>(&self) -> I {
        let seconds = u64::try_from(self.at.as_second()).unwrap_or(0);
        let nanos = u32::try_from(self.at.subsec_nanosecond()).unwrap_or(0);
        let random = Uuid::new_v7(uuid::Timestamp::from_unix(NoContext, seconds, nanos));
        I::from(counted(random, MADE.fetch_add(1, Ordering::Relaxed)))
    }

    /// A new name for a device that starts to write.
    pub fn device(&self) -> DeviceId {
        self.id()
    }
}

/// Puts a counter of 26 bits into the highest random bits, between the version and the variant and after it.
fn counted(id: Uuid, count: u32) -> Uuid {
    let [_, _, high, low] = (count & 0x3fff).to_be_bytes();
    let [_, _, top, middle] = ((count >> 14) & 0xfff).to_be_bytes();
    let mut bytes = *id.as_bytes();
    bytes[6] = (bytes[6] & 0xf0) | top;
    bytes[7] = middle;
    bytes[8] = (bytes[8] & 0xc0) | high;
    bytes[9] = low;
    Uuid::from_bytes(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn identifiers_of_one_millisecond_sort_as_they_were_made() {
        let moment = Moment::new(
            Timestamp::from_millisecond(1_700_000_000_000).unwrap(),
            Offset::UTC,
        );
        let made: Vec<Uuid> = (0..20_000).map(|_| moment.id()).collect();
        assert!(made.is_sorted());
        assert!(made.iter().all(|id| id.get_version_num() == 7));
        let second = Moment::new(
            Timestamp::from_millisecond(1_700_000_000_001).unwrap(),
            Offset::UTC,
        );
        assert!(made.last() < Some(&second.id()));
    }
}
