//! What a picture says of itself: when, where, in which direction and which way up it was taken.

use crate::error::{BookError, Result};
use ::exif::{Exif, In, Rational, Reader, Tag, Value};
use jiff::civil::{Date, DateTime, Time};
use jiff::tz::Offset;
use jiff::{SignedDuration, Timestamp};
use std::io::Cursor;
use trade::property::Position;

/// What a picture says of itself. What it does not say is `None`, never a guess.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Facts {
    /// When it was taken.
    pub taken: Option<Taken>,
    /// Where.
    pub position: Option<Position>,
    /// Compass direction of the lens in degrees from 0 to under 360, as written: from true or magnetic north.
    pub direction: Option<f64>,
    /// EXIF orientation, 1 to 8; 1 where it says none.
    pub orientation: u8,
}

/// When a picture was taken, as its camera wrote it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Taken {
    /// With its offset from UTC, or in UTC from the satellites.
    Exact(Timestamp),
    /// By the clock on the wall; nobody wrote which zone.
    Local(DateTime),
}

impl Taken {
    /// The moment, where a clock on the wall ran at `offset` from UTC.
    pub fn at(self, offset: Offset) -> Option<Timestamp> {
        match self {
            Self::Exact(at) => Some(at),
            Self::Local(local) => offset.to_timestamp(local).ok(),
        }
    }
}

/// Reads what a picture says of itself.
///
/// # Errors
/// [`BookError::NotAPicture`] where the bytes are no JPEG, PNG or HEIC, whatever the file was called.
pub(crate) fn read(bytes: &[u8]) -> Result<Facts> {
    if !is_picture(bytes) {
        return Err(BookError::NotAPicture);
    }
    let Some(exif) = fields(bytes) else {
        return Ok(Facts {
            taken: None,
            position: None,
            direction: None,
            orientation: 1,
        });
    };
    Ok(Facts {
        taken: taken(&exif),
        position: position(&exif),
        direction: direction(&exif),
        orientation: turned(&exif),
    })
}

/// Which way up a picture is; 1 where it does not say.
pub(crate) fn orientation(bytes: &[u8]) -> u8 {
    fields(bytes).map_or(1, |exif| turned(&exif))
}

/// Whether bytes are a picture that can be kept, by their first ones: JPEG (ISO/IEC 10918-1), PNG (RFC 2083) and HEIF (ISO/IEC 23008-12). A name can say anything.
pub fn is_picture(bytes: &[u8]) -> bool {
    const HEIF: [&[u8]; 7] = [
        b"heic", b"heix", b"heim", b"heis", b"mif1", b"msf1", b"avif",
    ];
    bytes.starts_with(&[0xff, 0xd8, 0xff])
        || bytes.starts_with(b"\x89PNG\r\n\x1a\n")
        || (bytes.get(4..8) == Some(b"ftyp")
            && bytes.get(8..12).is_some_and(|brand| HEIF.contains(&brand)))
}

fn fields(bytes: &[u8]) -> Option<Exif> {
    let mut reader = Reader::new();
    reader.continue_on_error(true);
    match reader.read_from_container(&mut Cursor::new(bytes)) {
        Ok(exif) => Some(exif),
        // What could be read of a damaged block still counts.
        Err(error) => error.distill_partial_result(|_| ()).ok(),
    }
}

fn taken(exif: &Exif) -> Option<Taken> {
    let local = text(exif, Tag::DateTimeOriginal)
        .or_else(|| text(exif, Tag::DateTimeDigitized))
        .or_else(|| text(exif, Tag::DateTime))
        .and_then(|text| date_time(&text));
    let offset = text(exif, Tag::OffsetTimeOriginal)
        .or_else(|| text(exif, Tag::OffsetTimeDigitized))
        .or_else(|| text(exif, Tag::OffsetTime))
        .and_then(|text| offset(&text));
    match (local, offset) {
        (Some(local), Some(offset)) => offset.to_timestamp(local).ok().map(Taken::Exact),
        (local, _) => by_satellite(exif)
            .map(Taken::Exact)
            .or(local.map(Taken::Local)),
    }
}

/// `2024:05:17 09:30:00`, as EXIF writes it; all zeros or blanks mean that the camera did not know.
fn date_time(text: &str) -> Option<DateTime> {
    let (day, time) = text.trim().split_once(' ')?;
    let mut day = day.splitn(3, ':');
    let date = Date::new(
        day.next()?.parse().ok()?,
        day.next()?.parse().ok()?,
        day.next()?.parse().ok()?,
    )
    .ok()?;
    let mut time = time.splitn(3, ':');
    let time = Time::new(
        time.next()?.parse().ok()?,
        time.next()?.parse().ok()?,
        time.next()?.parse().ok()?,
        0,
    )
    .ok()?;
    (date.year() > 0).then(|| date.to_datetime(time))
}

/// `-05:00`, as EXIF 2.31 writes it.
fn offset(text: &str) -> Option<Offset> {
    let text = text.trim();
    let (sign, rest) = match text.split_at_checked(1)? {
        ("+", rest) => (1, rest),
        ("-", rest) => (-1, rest),
        _ => return (text == "Z").then_some(Offset::UTC),
    };
    let (hours, minutes) = rest.split_once(':')?;
    let (hours, minutes): (i32, i32) = (hours.parse().ok()?, minutes.parse().ok()?);
    ((0..=14).contains(&hours) && (0..60).contains(&minutes))
        .then(|| Offset::from_seconds(sign * (hours * 3600 + minutes * 60)).ok())?
}

/// The satellites' date and time are UTC.
fn by_satellite(exif: &Exif) -> Option<Timestamp> {
    let day = text(exif, Tag::GPSDateStamp)?;
    let midnight = date_time(&format!("{} 0:0:0", day.trim()))?;
    let [hours, minutes, seconds] = three(exif, Tag::GPSTimeStamp)?;
    let seconds = hours * 3600.0 + minutes * 60.0 + seconds;
    if !(0.0..=86_400.0).contains(&seconds) {
        return None;
    }
    let at = midnight
        .checked_add(SignedDuration::from_secs_f64(seconds))
        .ok()?;
    Offset::UTC.to_timestamp(at).ok()
}

fn position(exif: &Exif) -> Option<Position> {
    let latitude = signed(exif, Tag::GPSLatitude, Tag::GPSLatitudeRef, "S")?;
    let longitude = signed(exif, Tag::GPSLongitude, Tag::GPSLongitudeRef, "W")?;
    // Cameras without a fix write zeros.
    let somewhere = latitude.abs() > f64::EPSILON || longitude.abs() > f64::EPSILON;
    (somewhere && latitude.abs() <= 90.0 && longitude.abs() <= 180.0).then_some(Position {
        latitude,
        longitude,
    })
}

fn signed(exif: &Exif, tag: Tag, reference: Tag, negative: &str) -> Option<f64> {
    let [degrees, minutes, seconds] = three(exif, tag)?;
    let value = degrees + minutes / 60.0 + seconds / 3600.0;
    let minus = text(exif, reference)?.trim().eq_ignore_ascii_case(negative);
    Some(if minus { -value } else { value })
}

fn direction(exif: &Exif) -> Option<f64> {
    match &exif.get_field(Tag::GPSImgDirection, In::PRIMARY)?.value {
        Value::Rational(values) => number(*values.first()?)
            .filter(|degrees| (0.0..=360.0).contains(degrees))
            .map(|degrees| degrees % 360.0),
        _ => None,
    }
}

fn turned(exif: &Exif) -> u8 {
    exif.get_field(Tag::Orientation, In::PRIMARY)
        .and_then(|field| field.value.get_uint(0))
        .and_then(|turned| u8::try_from(turned).ok())
        .filter(|turned| (1..=8).contains(turned))
        .unwrap_or(1)
}

fn text(exif: &Exif, tag: Tag) -> Option<String> {
    match &exif.get_field(tag, In::PRIMARY)?.value {
        Value::Ascii(lines) => lines
            .first()
            .map(|line| String::from_utf8_lossy(line).into_owned()),
        _ => None,
    }
}

fn three(exif: &Exif, tag: Tag) -> Option<[f64; 3]> {
    match &exif.get_field(tag, In::PRIMARY)?.value {
        Value::Rational(values) => Some([
            number(*values.first()?)?,
            number(*values.get(1)?)?,
            number(*values.get(2)?)?,
        ]),
        _ => None,
    }
}

fn number(rational: Rational) -> Option<f64> {
    (rational.denom != 0).then(|| rational.to_f64())
}
