//! The clock: the only place that asks what time it is.

use acts::Moment;
use jiff::ZonedDateTime;
use jiff::civil::Date;
use jiff::tz::TimeZone;

/// The clock that an act's moment is read from.
#[derive(Clone, Copy, Debug, Default)]
pub struct Clock {
    /// The day it is to be, for the demo and for tests; the hour still goes on.
    pub today: Option<Date>,
}

impl Clock {
    /// Now.
    pub fn now(self) -> Moment {
        let now = ZonedDateTime::now();
        let Some(today) = self.today else {
            return Moment::new(now.timestamp(), now.offset());
        };
        let then = today
            .to_datetime(now.time())
            .to_zoned_datetime(TimeZone::system())
            .unwrap_or(now);
        Moment::new(then.timestamp(), then.offset())
    }
}
