//! Lengths, pitches and money as types: feet and inches in, metric too.

use crate::words::Said;
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::str::FromStr;

/// A length, held in whole nanometres so that 1/64 in and 1 mm are both exact.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[schemars(with = "String")]
pub struct Length(i64);

const NM_PER_INCH: i64 = 25_400_000;
const NM_PER_MM: i64 = 1_000_000;
const NM_PER_SIXTEENTH: i64 = NM_PER_INCH / 16;
/// Longest length taken in: a hundred kilometres is no roof.
const LONGEST: f64 = 1e14;

impl Length {
    /// No length.
    pub const ZERO: Self = Self(0);

    /// From whole inches.
    pub const fn inches(inches: i64) -> Self {
        Self(inches * NM_PER_INCH)
    }

    /// From whole feet.
    pub const fn feet(feet: i64) -> Self {
        Self::inches(feet * 12)
    }

    /// From whole millimetres.
    pub const fn millimetres(mm: i64) -> Self {
        Self(mm * NM_PER_MM)
    }

    /// From whole sixteenths of an inch.
    pub const fn sixteenths(sixteenths: i64) -> Self {
        Self(sixteenths * NM_PER_SIXTEENTH)
    }

    /// From whole thousandths of an inch, in which sheet metal is sold.
    pub const fn mils(mils: i64) -> Self {
        Self(mils * NM_PER_INCH / 1000)
    }

    /// From inches with a fraction, to the nearest nanometre.
    #[allow(clippy::cast_possible_truncation, clippy::cast_precision_loss)]
    pub fn from_inches(inches: f64) -> Self {
        Self((inches * NM_PER_INCH as f64).round() as i64)
    }

    /// In inches.
    #[allow(clippy::cast_precision_loss)]
    pub fn in_inches(self) -> f64 {
        self.0 as f64 / NM_PER_INCH as f64
    }

    /// In feet.
    pub fn in_feet(self) -> f64 {
        self.in_inches() / 12.0
    }

    /// In metres.
    #[allow(clippy::cast_precision_loss)]
    pub fn in_metres(self) -> f64 {
        self.0 as f64 / 1e9
    }

    /// From metres, to the nearest nanometre.
    #[allow(clippy::cast_possible_truncation)]
    pub fn from_metres(metres: f64) -> Self {
        Self((metres * 1e9).round() as i64)
    }

    /// From whole nanometres.
    pub const fn of_nanometres(nm: i64) -> Self {
        Self(nm)
    }

    /// In whole nanometres.
    pub const fn nanometres(self) -> i64 {
        self.0
    }

    /// The sum, or `None` where it does not fit.
    pub fn plus(self, other: Self) -> Option<Self> {
        self.0.checked_add(other.0).map(Self)
    }

    /// Times a factor, to the nearest nanometre.
    #[must_use]
    #[allow(clippy::cast_possible_truncation, clippy::cast_precision_loss)]
    pub fn scaled(self, factor: f64) -> Self {
        Self((self.0 as f64 * factor).round() as i64)
    }

    /// Feet, inches and the nearest sixteenth: `12' 6 1/2"`.
    pub fn imperial(self) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        let total = (self.0.abs() + NM_PER_SIXTEENTH / 2) / NM_PER_SIXTEENTH;
        let (feet, rest) = (total / 192, total % 192);
        let (inches, sixteenths) = (rest / 16, rest % 16);
        let fraction = match sixteenths {
            0 => String::new(),
            n => {
                let by = 1 << n.trailing_zeros();
                format!("{}/{}", n / by, 16 / by)
            }
        };
        let inches = match (inches, fraction.as_str()) {
            (0, "") => String::new(),
            (n, "") => format!("{n}\""),
            (0, f) => format!("{f}\""),
            (n, f) => format!("{n} {f}\""),
        };
        match (feet, inches.as_str()) {
            (0, "") => "0\"".to_owned(),
            (0, i) => format!("{sign}{i}"),
            (f, "") => format!("{sign}{f}'"),
            (f, i) => format!("{sign}{f}' {i}"),
        }
    }

    /// Metres or millimetres, to the nearest millimetre: `3.81 m`, `25 mm`.
    pub fn metric(self) -> String {
        let mm = (self.0 + self.0.signum() * NM_PER_MM / 2) / NM_PER_MM;
        if mm.abs() < 1000 {
            return format!("{mm} mm");
        }
        let sign = if mm < 0 { "-" } else { "" };
        let text = format!("{sign}{}.{:03}", mm.abs() / 1000, mm.abs() % 1000);
        format!("{} m", text.trim_end_matches('0').trim_end_matches('.'))
    }
}

/// What is wrong with a measure somebody typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum UnitError {
    /// It could not be read as a length.
    NotALength(String),
    /// It could not be read as a pitch.
    NotAPitch(String),
    /// The pitch is negative, or steeper than a wall.
    PitchOutOfRange,
}

impl UnitError {
    /// What to tell whoever typed it.
    pub fn says(&self) -> Said {
        match self {
            Self::NotALength(text) => Said::new("unit-not-a-length").with("text", text.as_str()),
            Self::NotAPitch(text) => Said::new("unit-not-a-pitch").with("text", text.as_str()),
            Self::PitchOutOfRange => Said::new("unit-pitch-out-of-range"),
        }
    }
}

impl fmt::Display for UnitError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}

impl std::error::Error for UnitError {}

impl FromStr for Length {
    type Err = UnitError;

    /// Reads feet, inches with fractions, metres, centimetres and millimetres. A bare number has no unit and is refused.
    fn from_str(text: &str) -> Result<Self, UnitError> {
        let refused = || UnitError::NotALength(text.to_owned());
        // A hyphen parts feet from inches; before them it would make a length that none of ours can be.
        if text.trim_start().starts_with(['-', '−', '–']) {
            return Err(refused());
        }
        let spaced = separate_units(text);
        let mut nanometres = 0.0_f64;
        let mut number: Option<f64> = None;
        let mut read_any = false;
        for word in spaced.split_whitespace() {
            if let Some(unit) = unit_in_nm(word) {
                nanometres += number.take().ok_or_else(refused)? * unit;
                read_any = true;
            } else {
                let value = read_number(word).ok_or_else(refused)?;
                // "6 1/2": a whole number may be followed by its fraction, by nothing else.
                number = match number {
                    None => Some(value),
                    Some(whole) if word.contains('/') && whole.fract() == 0.0 && value < 1.0 => {
                        Some(whole + value)
                    }
                    Some(_) => return Err(refused()),
                };
            }
        }
        if number.is_some() || !read_any || !nanometres.is_finite() || nanometres > LONGEST {
            return Err(refused());
        }
        #[allow(clippy::cast_possible_truncation)]
        Ok(Self(nanometres.round() as i64))
    }
}

fn separate_units(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 8);
    let mut last_numeric = false;
    for c in text.to_lowercase().replace("''", "\"").chars() {
        let c = match c {
            '′' | '’' => '\'',
            '″' | '”' => '"',
            '-' | '–' | ',' => ' ',
            other => other,
        };
        let numeric = c.is_ascii_digit() || matches!(c, '.' | '/');
        if numeric != last_numeric || matches!(c, '\'' | '"') {
            out.push(' ');
        }
        out.push(c);
        last_numeric = numeric;
    }
    out
}

#[allow(clippy::cast_precision_loss)]
fn unit_in_nm(word: &str) -> Option<f64> {
    let inch = NM_PER_INCH as f64;
    Some(match word {
        "'" | "ft" | "ft." | "feet" | "foot" | "pie" | "pies" => inch * 12.0,
        "\"" | "in" | "in." | "inch" | "inches" | "pulgada" | "pulgadas" => inch,
        "m" | "metre" | "metres" | "meter" | "meters" | "metro" | "metros" => 1e9,
        "cm" => 1e7,
        "mm" => 1e6,
        _ => return None,
    })
}

fn read_number(word: &str) -> Option<f64> {
    match word.split_once('/') {
        None => word.parse().ok(),
        Some((over, under)) => {
            let (over, under): (u32, u32) = (over.parse().ok()?, under.parse().ok()?);
            (under != 0).then(|| f64::from(over) / f64::from(under))
        }
    }
}

impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.imperial())
    }
}

impl Serialize for Length {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&format!("{} mm", Decimal::new(self.0, 6).normalize()))
    }
}

impl<'de> Deserialize<'de> for Length {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?
            .parse()
            .map_err(serde::de::Error::custom)
    }
}

/// An area, in square metres.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Area(f64);

const SQUARE_METRES_PER_SQUARE_FOOT: f64 = 0.3048 * 0.3048;

impl Area {
    /// From square metres.
    pub const fn square_metres(area: f64) -> Self {
        Self(area)
    }

    /// From square feet.
    pub fn square_feet(area: f64) -> Self {
        Self(area * SQUARE_METRES_PER_SQUARE_FOOT)
    }

    /// In square metres.
    pub const fn in_square_metres(self) -> f64 {
        self.0
    }

    /// In square feet.
    pub fn in_square_feet(self) -> f64 {
        self.0 / SQUARE_METRES_PER_SQUARE_FOOT
    }

    /// In roofer's squares of 100 square feet.
    pub fn in_squares(self) -> f64 {
        self.in_square_feet() / 100.0
    }

    /// Times a factor.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

impl std::ops::Add for Area {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl std::iter::Sum for Area {
    fn sum<I: Iterator<Item = Self>>(areas: I) -> Self {
        areas.fold(Self::default(), |sum, area| sum + area)
    }
}

/// A pitch as rise over twelve, held in thousandths.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[schemars(with = "String")]
pub struct Pitch(u32);

impl Pitch {
    const STEEPEST: u32 = 60_000;

    /// From a whole rise over twelve.
    pub const fn rise(rise: u32) -> Self {
        Self(rise * 1000)
    }

    /// From a rise over twelve with a fraction.
    ///
    /// # Errors
    /// Where it is not between flat and 60:12.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    pub fn from_rise(rise: f64) -> Result<Self, UnitError> {
        let thousandths = (rise * 1000.0).round();
        if (0.0..=f64::from(Self::STEEPEST)).contains(&thousandths) {
            Ok(Self(thousandths as u32))
        } else {
            Err(UnitError::PitchOutOfRange)
        }
    }

    /// From degrees above the horizontal.
    ///
    /// # Errors
    /// Where it is not between flat and 60:12.
    pub fn from_degrees(degrees: f64) -> Result<Self, UnitError> {
        if (0.0..90.0).contains(&degrees) {
            Self::from_rise(12.0 * degrees.to_radians().tan())
        } else {
            Err(UnitError::PitchOutOfRange)
        }
    }

    /// Rise over twelve.
    pub fn in_twelfths(self) -> f64 {
        f64::from(self.0) / 1000.0
    }

    /// The nearest whole tenth of a rise over twelve.
    #[must_use]
    pub const fn to_tenth(self) -> Self {
        Self((self.0 + 50) / 100 * 100)
    }

    /// Degrees above the horizontal.
    pub fn in_degrees(self) -> f64 {
        (self.in_twelfths() / 12.0).atan().to_degrees()
    }

    /// Length on the slope for one unit in plan, √(rise² + 144) / 12 (NAVEDTRA 14044, ch. 2).
    pub fn slope_factor(self) -> f64 {
        (self.in_twelfths().powi(2) + 144.0).sqrt() / 12.0
    }
}

impl FromStr for Pitch {
    type Err = UnitError;

    fn from_str(text: &str) -> Result<Self, UnitError> {
        let refused = || UnitError::NotAPitch(text.to_owned());
        let text = text.trim();
        if let Some(degrees) = text.strip_suffix('°').or_else(|| text.strip_suffix("deg")) {
            return Self::from_degrees(degrees.trim().parse().map_err(|_| refused())?);
        }
        let (rise, run) = text.split_once(['/', ':']).ok_or_else(refused)?;
        let rise: f64 = rise.trim().parse().map_err(|_| refused())?;
        let run: f64 = run.trim().parse().map_err(|_| refused())?;
        if run <= 0.0 {
            return Err(refused());
        }
        Self::from_rise(rise * 12.0 / run)
    }
}

impl fmt::Display for Pitch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:12", Decimal::new(i64::from(self.0), 3).normalize())
    }
}

impl Serialize for Pitch {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.to_string())
    }
}

impl<'de> Deserialize<'de> for Pitch {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?
            .parse()
            .map_err(serde::de::Error::custom)
    }
}

/// How a number was got.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Got {
    /// With a tape.
    Tape,
    /// By pacing it out.
    Paced,
    /// From a picture.
    Picture,
    /// From a footprint or plan.
    Footprint,
    /// With the phone's inclination sensor.
    Inclination,
    /// By eye.
    Eye,
    /// Somebody said so.
    Told,
}

impl Got {
    /// The half-width of the range that a value got in this way usually lies in, as a share of it. Common practice, no source.
    pub fn within(self) -> f64 {
        match self {
            Self::Tape => 0.01,
            Self::Inclination => 0.02,
            Self::Footprint | Self::Picture | Self::Paced => 0.05,
            Self::Eye | Self::Told => 0.2,
        }
    }

    /// All of them, in the order they are offered.
    pub const ALL: [Self; 7] = [
        Self::Tape,
        Self::Paced,
        Self::Picture,
        Self::Footprint,
        Self::Inclination,
        Self::Eye,
        Self::Told,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Tape => "got-tape",
            Self::Paced => "got-paced",
            Self::Picture => "got-picture",
            Self::Footprint => "got-footprint",
            Self::Inclination => "got-inclination",
            Self::Eye => "got-eye",
            Self::Told => "got-told",
        }
    }
}

/// A measured value: what it is, how it was got, how exact it is.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Measured<T> {
    /// The value.
    pub value: T,
    /// How it was got.
    pub got: Got,
    /// Half-width of the range it lies in, as a share of the value: 0.02 is two per cent.
    #[serde(default)]
    pub within: f64,
}

/// An amount of money in the firm's currency, decimal and never floating.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Money(pub Decimal);

impl fmt::Display for Money {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:.2}", self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn lengths_as_people_write_them() {
        let cases = [
            ("12' 6 1/2\"", Length::sixteenths(150 * 16 + 8)),
            ("12 ft 6 in", Length::inches(150)),
            ("5ft", Length::feet(5)),
            ("30 in", Length::inches(30)),
            ("3/8 in", Length::sixteenths(6)),
            ("5 5/8\"", Length::sixteenths(90)),
            ("12'-6\"", Length::inches(150)),
            ("3.2 m", Length::millimetres(3200)),
            ("320mm", Length::millimetres(320)),
            ("0.019 in", Length::mils(19)),
        ];
        for (text, length) in cases {
            assert_eq!(text.parse(), Ok(length), "{text}");
        }
    }

    #[test]
    fn what_is_no_length_is_refused() {
        for text in [
            "", "12", "-5 ft", "ft", "1/0 in", "6 7 in", "a in", "1e400 m", "6 3/2 in", "0x3 ft",
        ] {
            assert!(text.parse::<Length>().is_err(), "{text}");
        }
    }

    #[test]
    fn lengths_as_they_are_shown() {
        assert_eq!(Length::sixteenths(150 * 16 + 8).imperial(), "12' 6 1/2\"");
        assert_eq!(Length::feet(6).imperial(), "6'");
        assert_eq!(Length::ZERO.imperial(), "0\"");
        assert_eq!(Length::inches(150).metric(), "3.81 m");
        assert_eq!(Length::inches(1).metric(), "25 mm");
    }

    #[test]
    fn pitches() {
        assert_eq!("6/12".parse(), Ok(Pitch::rise(6)));
        assert_eq!("8.1:12".parse::<Pitch>().unwrap().to_string(), "8.1:12");
        assert_eq!("1/4".parse(), Ok(Pitch::rise(3)));
        assert!((Pitch::rise(12).in_degrees() - 45.0).abs() < 1e-9);
        assert!("90°".parse::<Pitch>().is_err());
        assert!("-1/12".parse::<Pitch>().is_err());
        assert!("6".parse::<Pitch>().is_err());
    }

    proptest! {
        #[test]
        fn a_length_survives_its_own_text(sixteenths in 0_i64..200_000) {
            let length = Length::sixteenths(sixteenths);
            prop_assert_eq!(length.imperial().parse(), Ok(length));
        }

        #[test]
        fn a_length_survives_storage(nm in 0_i64..10_000_000_000_000) {
            let length = Length(nm);
            let text = serde_json::to_string(&length).unwrap();
            prop_assert_eq!(serde_json::from_str::<Length>(&text).unwrap(), length);
        }

        #[test]
        fn no_text_breaks_the_reader(text in ".{0,24}") {
            let _ = text.parse::<Length>();
            let _ = text.parse::<Pitch>();
        }

        #[test]
        fn degrees_and_rise_agree(rise in 0_u32..24_000) {
            let pitch = Pitch(rise);
            prop_assert_eq!(Pitch::from_degrees(pitch.in_degrees()), Ok(pitch));
        }
    }
}
