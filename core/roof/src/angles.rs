//! Angles as they are met on a roof: a pitch from readings, from rise and run, from a rafter; and how a ladder stands.

use trade::units::{Got, Length, Measured, Pitch, UnitError};
use trade::visit::LadderStood;
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
/// How high a ladder so set rests for a unit of its working length: √(1 − 1/16).
const STANDS_UP: f64 = 0.968_245_836_551_854_2;
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
    /// A reading is the lean of no ladder.
    #[error("{0}° is the lean of no ladder")]
    NoLean(f64),
    /// Neither its angle nor where it leads was measured of a ladder.
    #[error("of a ladder its length and base, its lean or its landing must be known")]
    NoLadder,
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
            Self::NoLean(degrees) => {
                Said::new("angle-no-lean").with("degrees", format!("{degrees:.1}"))
            }
            Self::NoLadder => Said::new("angle-no-ladder"),
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
    /// What the rule says of its base.
    pub tells: Base,
    /// How far out its base should stand, where its working length is known.
    pub base: Option<Length>,
    /// How high it rests as it stands, where its working length is known.
    pub reaches: Option<Length>,
    /// The least length of the ladder, so that its rails stand above the landing where it rests.
    pub ladder: Option<Length>,
}

/// What the rule says of a ladder's base.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Base {
    /// It stands out about a quarter of the working length.
    AsAsked,
    /// The ladder stands too flat: the base belongs farther in.
    MoveIn,
    /// The ladder stands too steep: the base belongs farther out.
    MoveOut,
}

impl Stands {
    /// The messages for a reader: they tell what the rule says, never that it may be climbed.
    pub fn says(&self) -> Vec<Said> {
        let key = match (self.tells, self.base) {
            (Base::AsAsked, _) => "ladder-as-asked",
            (Base::MoveIn, Some(_)) => "ladder-move-in",
            (Base::MoveIn, None) => "ladder-flat",
            (Base::MoveOut, Some(_)) => "ladder-move-out",
            (Base::MoveOut, None) => "ladder-steep",
        };
        let mut angle = Said::new(key).with("degrees", format!("{:.1}", self.degrees));
        if let Some(base) = self.base {
            angle = angle.with("base", to_the_inch(base));
        }
        let rails = self
            .ladder
            .map(|ladder| Said::new("ladder-rails").with("ladder", to_the_inch(ladder)));
        std::iter::once(angle).chain(rails).collect()
    }
}

/// A length to the next inch up: a ladder is set by eye and tape.
fn to_the_inch(length: Length) -> Length {
    Length::from_inches((length.in_inches() - 1e-6).ceil())
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
    leaning(share.acos().to_degrees(), Some(working))
}

/// How a ladder stands whose angle with the ground was read, in degrees.
///
/// # Errors
/// Where the angle is that of no ladder, or its working length is nothing.
pub fn leaning(degrees: f64, working: Option<Length>) -> Result<Stands, AngleError> {
    if !(1.0..=90.0).contains(&degrees) {
        return Err(AngleError::NoLean(degrees));
    }
    if working.is_some_and(|working| working <= Length::ZERO) {
        return Err(AngleError::NoLength);
    }
    let share = degrees.to_radians().cos();
    let rails = ABOVE_LANDING.scaled(1.0 / STANDS_UP);
    Ok(Stands {
        degrees,
        tells: if share > BASE * (1.0 + NEARLY) {
            Base::MoveIn
        } else if share < BASE * (1.0 - NEARLY) {
            Base::MoveOut
        } else {
            Base::AsAsked
        },
        base: working.map(|working| working.scaled(BASE)),
        reaches: working.map(|working| working.scaled(degrees.to_radians().sin())),
        ladder: working.and_then(|working| working.plus(rails)),
    })
}

/// What the rule asks of a ladder to a landing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ForLanding {
    /// Its working length.
    pub working: Length,
    /// How far out its base stands.
    pub base: Length,
    /// The least length of the ladder, so that its rails stand above the landing.
    pub ladder: Length,
}

/// What the rule asks of a ladder to a landing so high above its foot.
///
/// # Errors
/// Where the height is nothing.
pub fn for_landing(height: Length) -> Result<ForLanding, AngleError> {
    if height <= Length::ZERO {
        return Err(AngleError::NoLength);
    }
    let along = |height: Length| height.scaled(1.0 / STANDS_UP);
    let working = along(height);
    Ok(ForLanding {
        working,
        base: working.scaled(BASE),
        ladder: working.plus(along(ABOVE_LANDING)).unwrap_or(working),
    })
}

/// All that the rule says of a ladder as it was measured.
///
/// # Errors
/// Where too little was measured, or a measure is none.
pub fn ladder_says(stood: &LadderStood) -> Result<Vec<Said>, AngleError> {
    let stands = match (stood.working, stood.base, stood.leans) {
        (Some(working), Some(base), _) => Some(ladder(working, base)?),
        (working, _, Some(tenths)) => Some(leaning(f64::from(tenths) / 10.0, working)?),
        _ => None,
    };
    let landing = match stood.landing {
        Some(landing) => Some((landing, for_landing(landing)?)),
        None => None,
    };
    if stands.is_none() && landing.is_none() {
        return Err(AngleError::NoLadder);
    }
    let mut says = stands.as_ref().map_or_else(Vec::new, Stands::says);
    if let Some((landing, asked)) = landing {
        let reaches = stands.and_then(|stands| stands.reaches);
        says.extend(reaches.filter(|reaches| *reaches < landing).map(|reaches| {
            Said::new("ladder-too-low")
                .with("reaches", to_the_inch(reaches))
                .with("landing", landing)
        }));
        says.push(
            Said::new("ladder-for-landing")
                .with("landing", landing)
                .with("working", to_the_inch(asked.working))
                .with("base", to_the_inch(asked.base))
                .with("ladder", to_the_inch(asked.ladder)),
        );
    }
    Ok(says)
}

/// How a ladder leans, in tenths of a degree, from readings of a phone on its rail: slips are left out, the rest is averaged.
///
/// # Errors
/// Where there is no reading, or one is that of no ladder.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "between 10 and 900"
)]
pub fn lean_of_readings(degrees: &[f64]) -> Result<u16, AngleError> {
    if let Some(odd) = degrees.iter().find(|one| !(1.0..=90.0).contains(*one)) {
        return Err(AngleError::NoLean(*odd));
    }
    let kept = without_slips(degrees).ok_or(AngleError::NoReading)?;
    Ok((mean(&kept) * 10.0).round() as u16)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use trade::words::{Language, Words};

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

    /// 29 CFR 1926.1053(b)(5)(i): a foot out for every four of working length; then it stands at 75.5° (acos 1/4). How high it rests, and how long it must be
    /// for rails 3 ft above that (b)(1), computed: √(1 − 1/16) and 3 ft / √(1 − 1/16) = 3.098 ft.
    #[test]
    fn ladders_at_a_quarter() {
        for (working, base, reaches, ladder) in [
            (8, 2, 7.746, 11.098),
            (12, 3, 11.619, 15.098),
            (16, 4, 15.492, 19.098),
            (20, 5, 19.365, 23.098),
            (24, 6, 23.238, 27.098),
            (28, 7, 27.111, 31.098),
        ] {
            let stands = super::ladder(Length::feet(working), Length::feet(base)).unwrap();
            assert_eq!(stands.tells, Base::AsAsked);
            assert!((stands.degrees - 75.52).abs() < 0.005, "{}", stands.degrees);
            assert_eq!(stands.base, Some(Length::feet(base)));
            assert!((stands.reaches.unwrap().in_feet() - reaches).abs() < 0.001);
            assert!((stands.ladder.unwrap().in_feet() - ladder).abs() < 0.001);
            let back = for_landing(stands.reaches.unwrap()).unwrap();
            assert!(
                (back.working.in_feet() - stands.reaches.unwrap().in_feet() / 0.968_245_8).abs()
                    < 1e-4
            );
            assert!((back.base.in_feet() - f64::from(i32::try_from(base).unwrap())).abs() < 1e-4);
        }
    }

    /// The mean of 120 ladders measured in the field was 67.7° (published field study): too flat.
    #[test]
    fn a_ladder_as_most_stand() {
        let base = Length::feet(20).scaled(67.7_f64.to_radians().cos());
        let stands = super::ladder(Length::feet(20), base).unwrap();
        assert_eq!(stands.tells, Base::MoveIn);
        let read = leaning(67.7, None).unwrap();
        assert_eq!((read.tells, read.base), (Base::MoveIn, None));
        let steep = super::ladder(Length::feet(20), Length::feet(3)).unwrap();
        assert_eq!(steep.tells, Base::MoveOut);
        assert!(super::ladder(Length::feet(20), Length::feet(21)).is_err());
        assert!(leaning(0.0, None).is_err() && leaning(f64::NAN, None).is_err());
    }

    #[test]
    fn a_phone_on_the_rail_is_read_without_its_slips() {
        assert_eq!(lean_of_readings(&[75.4, 75.6, 75.5, 12.0]), Ok(755));
        assert_eq!(lean_of_readings(&[]), Err(AngleError::NoReading));
        assert!(lean_of_readings(&[91.0]).is_err());
    }

    /// What is told names the rule and its numbers, and never calls a ladder safe.
    #[test]
    fn what_is_told_of_a_ladder() {
        let stood = LadderStood {
            working: Some(Length::feet(20)),
            base: Some(Length::feet(8)),
            leans: None,
            landing: Some(Length::feet(20)),
        };
        let keys = |stood: &LadderStood| {
            let says = ladder_says(stood).unwrap();
            says.into_iter().map(|said| said.key).collect::<Vec<_>>()
        };
        assert_eq!(
            keys(&stood),
            [
                "ladder-move-in",
                "ladder-rails",
                "ladder-too-low",
                "ladder-for-landing"
            ]
        );
        let read = LadderStood {
            leans: Some(800),
            ..LadderStood::default()
        };
        assert_eq!(keys(&read), ["ladder-steep"]);
        assert_eq!(
            ladder_says(&LadderStood::default()),
            Err(AngleError::NoLadder)
        );
        for language in Language::ALL {
            for said in ladder_says(&stood)
                .unwrap()
                .into_iter()
                .chain(ladder_says(&read).unwrap())
            {
                let text = Words::of(language).say(&said);
                assert!(
                    !text.to_lowercase().contains("safe") && !text.contains("segur"),
                    "{text}"
                );
                assert!(!text.contains(['{', '[']), "{text}");
            }
        }
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
