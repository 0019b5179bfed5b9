//! Hybrid logical time: the clock's milliseconds and a counter, so that every line has its place even where the clock went back
//! (Kulkarni, Demirbas and others, "Logical Physical Clocks", 2014).

use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use std::fmt;

/// Bits of a hybrid time that count lines within one millisecond.
const COUNTER_BITS: u32 = 16;
/// How far a clock may lie behind the last line before its line is flagged: small corrections of a clock are no news.
const BEHIND_MS: i64 = 60_000;
/// How far the clock may have run on since the last line before its line is flagged. A book may rest over a winter; it does not rest for a year.
const AHEAD_MS: i64 = 366 * 24 * 3_600_000;
/// How far a line of another device may lie ahead of this device's clock before it is flagged and no longer pushes this clock on.
const FOREIGN_AHEAD_MS: i64 = 24 * 3_600_000;

/// A hybrid time: milliseconds since 1970 in the upper 47 bits, a counter in the lower 16.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct HybridTime(i64);

impl HybridTime {
    /// Before everything.
    pub(crate) const ZERO: Self = Self(0);

    /// From the number that is stored.
    pub(crate) fn from_stored(stored: i64) -> Self {
        Self(stored)
    }

    /// The number that is stored; it sorts as the time does.
    pub fn stored(self) -> i64 {
        self.0
    }

    fn at(milliseconds: i64) -> Self {
        Self(milliseconds.clamp(0, i64::MAX >> COUNTER_BITS) << COUNTER_BITS)
    }

    fn milliseconds(self) -> i64 {
        self.0 >> COUNTER_BITS
    }
}

impl fmt::Display for HybridTime {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

/// In what way a clock was far off when a line was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ClockOdd {
    /// It stood before the last line.
    Behind,
    /// It ran more than a year past the last line or, for another device's line, more than a day past this device's clock.
    Ahead,
}

impl ClockOdd {
    pub(crate) fn stored(odd: Option<Self>) -> i64 {
        match odd {
            None => 0,
            Some(Self::Behind) => -1,
            Some(Self::Ahead) => 1,
        }
    }

    pub(crate) fn from_stored(stored: i64) -> Option<Self> {
        match stored {
            0 => None,
            n if n < 0 => Some(Self::Behind),
            _ => Some(Self::Ahead),
        }
    }
}

/// The clock of one book: gives times that only go forward.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Clock {
    last: HybridTime,
}

impl Clock {
    /// A clock that goes on after the last line.
    pub(crate) fn after(last: HybridTime) -> Self {
        Self { last }
    }

    /// The next time, and whether the clock was far off.
    pub(crate) fn tick(&mut self, now: Timestamp) -> (HybridTime, Option<ClockOdd>) {
        let (clock, last) = (now.as_millisecond(), self.last.milliseconds());
        let odd = if self.last == HybridTime::ZERO {
            None
        } else if clock + BEHIND_MS < last {
            Some(ClockOdd::Behind)
        } else if clock > last + AHEAD_MS {
            Some(ClockOdd::Ahead)
        } else {
            None
        };
        self.last = HybridTime::at(clock).max(HybridTime(self.last.0 + 1));
        (self.last, odd)
    }

    /// Takes note of another device's line; one that is far ahead is flagged and does not push this clock on.
    pub(crate) fn hear(&mut self, line: HybridTime, now: Timestamp) -> Option<ClockOdd> {
        if line.milliseconds() > now.as_millisecond() + FOREIGN_AHEAD_MS {
            return Some(ClockOdd::Ahead);
        }
        self.last = self.last.max(line);
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn at(milliseconds: i64) -> Timestamp {
        Timestamp::from_millisecond(milliseconds).unwrap()
    }

    #[test]
    fn a_clock_that_goes_back_is_flagged_and_time_still_goes_forward() {
        let mut clock = Clock::after(HybridTime::ZERO);
        let (first, odd) = clock.tick(at(10_000_000));
        assert_eq!(odd, None);
        let (second, odd) = clock.tick(at(9_999_000));
        assert_eq!(odd, None, "a second back is a correction, not a fault");
        assert!(second > first);
        let (third, odd) = clock.tick(at(1_000_000));
        assert_eq!(odd, Some(ClockOdd::Behind));
        assert!(third > second);
    }

    #[test]
    fn a_leap_of_more_than_a_year_is_flagged_a_winter_is_not() {
        let mut clock = Clock::after(HybridTime::ZERO);
        clock.tick(at(1_000));
        assert_eq!(clock.tick(at(150 * 24 * 3_600_000)).1, None);
        assert_eq!(
            clock.tick(at(600 * 24 * 3_600_000)).1,
            Some(ClockOdd::Ahead)
        );
    }

    #[test]
    fn a_far_line_of_another_device_does_not_push_the_clock() {
        let mut clock = Clock::after(HybridTime::ZERO);
        let (now, _) = clock.tick(at(1_000_000));
        let far = HybridTime::at(1_000_000 + 2 * FOREIGN_AHEAD_MS);
        assert_eq!(clock.hear(far, at(1_000_000)), Some(ClockOdd::Ahead));
        let (next, _) = clock.tick(at(1_000_001));
        assert!(next > now && next < far);
        let near = HybridTime::at(1_000_000 + 5_000);
        assert_eq!(clock.hear(near, at(1_000_002)), None);
        assert!(clock.tick(at(1_000_003)).0 > near);
    }

    proptest! {
        #[test]
        fn times_only_go_forward(clocks in prop::collection::vec(-1_000_i64..5_000_000_000_000, 1..60)) {
            let mut clock = Clock::after(HybridTime::ZERO);
            let mut last = HybridTime::ZERO;
            for now in clocks {
                let (time, _) = clock.tick(at(now));
                prop_assert!(time > last);
                last = time;
            }
        }
    }
}
