//! Angles as they are met on a roof: a pitch from readings, from rise and run, from a rafter; and how a ladder stands.

use trade::units::{Got, Length, Measured, Pitch, UnitError};
use trade::words::Said;

/// A phone laid on a slope is off by about so many degrees, however often it is read. Common practice, no source.
const SENSOR: f64 = 0.5;
/// A reading farther from the middle one than so many median distances is a slip.
const SLIP: f64 = 4.0;
/// The least median distance in degrees that slips are told by: readings that all agree leave no other room.
const STEADY: f64 = 0.25;
/// The inclination of 60:12, in degrees.
const STEEPEST: f64 = 78.7;
/// The base of a ladder stands out a quarter of its working length (29 CFR 1926.1053(b)(5)(i)).
const BASE: f64 = 0.25;
/// Side rails reach at least three feet above the landing (29 CFR 1926.1053(b)(1)).
const ABOVE_LANDING: Length = Length::feet(3);
/// How far off a quarter the base may be before it is said: one foot in ten. Common practice, no source.
const NEARLY: f64 = 0.1;

/// Why an angle cannot be told.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum AngleError {
    /// Nothing was read.
    #[error("no reading was taken")]
    NoReading,
    /// A reading is no inclination of a roof.
    #[error("{0}° is no inclination of a roof")]
    NoInclination(f64),
    /// A run, rafter or ladder has no length.
    #[error("a length must be more than nothing")]
    NoLength,
    /// A rafter is shorter than its run, or a ladder than the distance of its base.
    #[error("the sloping length is shorter than the level one")]
    TooShort,
    /// The pitch is steeper than any roof.
    #[error("a pitch lies between flat and 60:12")]
    TooSteep,
}

impl AngleError {
    /// The message for a reader.
    pub fn says(&self) -> Said {
        match self {
            Self::NoReading => Said::new("angle-no-reading"),
            Self::NoInclination(degrees) => {
                Said::new("angle-no-inclination").with("degrees", format!("{degrees:.1}"))
            }
            Self::NoLength => Said::new("angle-no-length"),
            Self::TooShort => Said::new("angle-too-short"),
            Self::TooSteep => Said::new("angle-too-steep"),
        }
    }
}

impl From<UnitError> for AngleError {
    fn from(_: UnitError) -> Self {
        Self::TooSteep
    }
}

/// The pitch of a slope from readings of its inclination in degrees: slips are left out, the rest is averaged. Its tolerance is the spread of
/// the mean, and never less than that of the sensor.
///
/// # Errors
/// Where there is no reading, or one is no inclination of a roof.
pub fn from_readings(degrees: &[f64]) -> Result<Measured<Pitch>, AngleError> {
    if let Some(odd) = degrees.iter().find(|one| !(0.0..=STEEPEST).contains(*one)) {
        return Err(AngleError::NoInclination(*odd));
    }
    let kept = without_slips(degrees).ok_or(AngleError::NoReading)?;
    let mean = mean(&kept);
    let value = Pitch::from_degrees(mean)?;
    Ok(Measured {
        value,
        got: Got::Inclination,
        within: share(mean, error_of_mean(&kept, mean).max(SENSOR)),
    })
}

/// A tolerance in degrees as a share of the rise.
fn share(degrees: f64, within: f64) -> f64 {
    let rise = |degrees: f64| degrees.to_radians().tan();
    let least = rise((degrees - within).max(0.0));
    let most = rise(degrees + within);
    if degrees <= 0.0 {
        return 0.0;
    }
    (most - least) / 2.0 / rise(degrees)
}

fn without_slips(degrees: &[f64]) -> Option<Vec<f64>> {
    let middle = median(degrees.to_vec())?;
    let away: Vec<f64> = degrees.iter().map(|one| (one - middle).abs()).collect();
    let usual = median(away)?.max(STEADY);
    Some(
        degrees
            .iter()
            .copied()
            .filter(|one| (one - middle).abs() <= SLIP * usual)
            .collect(),
    )
}

fn median(mut of: Vec<f64>) -> Option<f64> {
    of.sort_by(f64::total_cmp);
    let half = of.len() / 2;
    let upper = *of.get(half)?;
    if of.len() % 2 == 1 {
        return Some(upper);
    }
    Some(f64::midpoint(of[half - 1], upper))
}

#[allow(clippy::cast_precision_loss, reason = "few readings are taken")]
fn mean(of: &[f64]) -> f64 {
    of.iter().sum::<f64>() / of.len() as f64
}

/// Twice the standard error of the mean; nothing where there is but one reading.
#[allow(clippy::cast_precision_loss, reason = "few readings are taken")]
fn error_of_mean(of: &[f64], mean: f64) -> f64 {
    if of.len() < 2 {
        return 0.0;
    }
    let count = of.len() as f64;
    let squares: f64 = of.iter().map(|one| (one - mean).powi(2)).sum();
    2.0 * (squares / (count - 1.0) / count).sqrt()
}

/// The pitch from a rise over a run, measured with a level and a tape.
///
/// # Errors
/// Where the run has no length, or the pitch is steeper than any roof.
pub fn from_rise(rise: Length, run: Length) -> Result<Measured<Pitch>, AngleError> {
    if run <= Length::ZERO || rise < Length::ZERO {
        return Err(AngleError::NoLength);
    }
    taped(12.0 * rise.in_inches() / run.in_inches())
}

/// The pitch from the length of a rafter over its run: the overhang left out on both.
///
/// # Errors
/// Where a length is nothing, or the rafter is shorter than its run.
pub fn from_rafter(rafter: Length, run: Length) -> Result<Measured<Pitch>, AngleError> {
    if run <= Length::ZERO || rafter <= Length::ZERO {
        return Err(AngleError::NoLength);
    }
    let (rafter, run) = (rafter.in_inches(), run.in_inches());
    if rafter < run {
        return Err(AngleError::TooShort);
    }
    taped(12.0 * (rafter * rafter - run * run).sqrt() / run)
}

fn taped(rise: f64) -> Result<Measured<Pitch>, AngleError> {
    Ok(Measured {
        value: Pitch::from_rise(rise)?,
        got: Got::Tape,
        within: Got::Tape.within(),
    })
}

/// How a ladder stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stands {
    /// Its angle with the ground, in degrees.
    pub degrees: f64,
    /// How far out its base should stand.
    pub base: Length,
    /// How high it then reaches where it rests.
    pub reaches: Length,
    /// The least length of the ladder, so that its rails stand above the landing.
    pub ladder: Length,
    /// What to do about its base.
    pub tells: Base,
}

/// What to do about a ladder's base.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Base {
    /// It stands well.
    Well,
    /// It stands too flat: move it in.
    MoveIn,
    /// It stands too steep: move it out.
    MoveOut,
}

impl Stands {
    /// The message for a reader.
    pub fn says(&self) -> Said {
        let key = match self.tells {
            Base::Well => "ladder-stands-well",
            Base::MoveIn => "ladder-move-in",
            Base::MoveOut => "ladder-move-out",
        };
        Said::new(key)
            .with("degrees", format!("{:.0}", self.degrees))
            .with("base", self.base)
            .with("ladder", self.ladder)
    }
}

/// How a ladder stands whose working length, from the ground to where it rests, and whose base were measured.
///
/// # Errors
/// Where a length is nothing, or the base is farther out than the ladder is long.
pub fn ladder(working: Length, base: Length) -> Result<Stands, AngleError> {
    if working <= Length::ZERO || base < Length::ZERO {
        return Err(AngleError::NoLength);
    }
    let share = base.in_inches() / working.in_inches();
    if share >= 1.0 {
        return Err(AngleError::TooShort);
    }
    let wanted = working.scaled(BASE);
    Ok(Stands {
        degrees: share.acos().to_degrees(),
        base: wanted,
        reaches: working.scaled((1.0 - BASE * BASE).sqrt()),
        ladder: working.plus(ABOVE_LANDING).unwrap_or(working),
        tells: if share > BASE * (1.0 + NEARLY) {
            Base::MoveIn
        } else if share < BASE * (1.0 - NEARLY) {
            Base::MoveOut
        } else {
            Base::Well
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn readings_are_averaged_and_a_slip_is_left_out() {
        let measured = from_readings(&[26.4, 26.7, 26.6, 26.5, 61.0]).unwrap();
        assert!((measured.value.in_degrees() - 26.55).abs() < 0.01);
        assert!(measured.within > 0.0 && measured.within < 0.03);
        let scattered = from_readings(&[22.0, 31.0, 26.0, 28.0]).unwrap();
        assert!(scattered.within > 5.0 * measured.within);
    }

    #[test]
    fn what_is_no_inclination_is_refused() {
        assert_eq!(from_readings(&[]), Err(AngleError::NoReading));
        for odd in [-1.0, 89.0, f64::INFINITY, f64::NAN] {
            assert!(from_readings(&[26.0, odd]).is_err(), "{odd}");
        }
    }

    /// NAVEDTRA 14044, ch. 2: a common rafter at 7:12 over a span of 16 ft is 111 1/8 in.
    #[test]
    fn a_worked_rafter() {
        let pitch = from_rafter(Length::sixteenths(111 * 16 + 2), Length::feet(8)).unwrap();
        assert!((pitch.value.in_twelfths() - 7.0).abs() < 0.01);
    }

    /// 29 CFR 1926.1053(b)(5)(i): of 20 ft of working length the base stands out 5.0 ft; the top is then 19.36 ft up, at 75.5° (computed).
    #[test]
    fn a_ladder_at_a_quarter() {
        let stands = ladder(Length::feet(20), Length::feet(5)).unwrap();
        assert_eq!(stands.base, Length::feet(5));
        assert_eq!(stands.tells, Base::Well);
        assert!((stands.degrees - 75.5).abs() < 0.05);
        assert!((stands.reaches.in_feet() - 19.36).abs() < 0.01);
        assert_eq!(stands.ladder, Length::feet(23));
    }

    /// The mean of 120 ladders measured in the field was 67.7° (published field study): too flat.
    #[test]
    fn a_ladder_as_most_stand() {
        let base = Length::feet(20).scaled(67.7_f64.to_radians().cos());
        assert_eq!(ladder(Length::feet(20), base).unwrap().tells, Base::MoveIn);
        let steep = ladder(Length::feet(20), Length::feet(3)).unwrap();
        assert_eq!(steep.tells, Base::MoveOut);
        assert!(ladder(Length::feet(20), Length::feet(21)).is_err());
    }

    proptest! {
        #[test]
        fn rise_and_rafter_agree(rise in 1_i64..240, run in 12_i64..240) {
            let (rise, run) = (Length::inches(rise), Length::inches(run));
            let rafter = Length::from_inches(rise.in_inches().hypot(run.in_inches()));
            let one = from_rise(rise, run);
            let other = from_rafter(rafter, run);
            match (one, other) {
                (Ok(one), Ok(other)) => {
                    prop_assert!((one.value.in_twelfths() - other.value.in_twelfths()).abs() < 0.002);
                }
                (one, other) => prop_assert_eq!(one.is_err(), other.is_err()),
            }
        }

        #[test]
        fn one_reading_is_its_own_mean(degrees in 1.0_f64..75.0) {
            let measured = from_readings(&[degrees]).unwrap();
            prop_assert!((measured.value.in_degrees() - degrees).abs() < 0.01);
        }
    }
}
