//! Numbers as a person types them: one, or a range from the least to the most.

use trade::takeoff::{Spread, plain};
use trade::units::Length;
use trade::words::Said;
use trade::worksheet::Between;

/// The most that anything is counted.
const MOST: f64 = 1e6;
/// What stands between the ends of a range.
const BETWEEN: [&str; 5] = ["–", " to ", " hasta ", " a ", "-"];

/// Both ends of what was typed; one number is both.
fn ends(text: &str) -> (&str, &str) {
    BETWEEN
        .into_iter()
        .find_map(|between| text.split_once(between))
        .map_or((text, text), |(least, most)| (least.trim(), most.trim()))
}

/// A range as it is typed: "5-8", or "5" where both ends are alike.
pub(super) fn typed(range: Spread) -> String {
    let (least, most) = (plain(range.least, 2), plain(range.most, 2));
    if least == most {
        least
    } else {
        format!("{least}-{most}")
    }
}

/// Whole numbers within bounds; `None` where nothing was typed.
pub(super) fn between(
    text: &str,
    (low, high): (u16, u16),
    problem: &'static str,
) -> Result<Option<Between>, Said> {
    if text.is_empty() {
        return Ok(None);
    }
    let (least, most) = ends(text);
    let number = |text: &str| text.parse::<u16>().ok();
    number(least)
        .zip(number(most))
        .filter(|(least, most)| low <= *least && least <= most && *most <= high)
        .map(|(least, most)| Some(Between { least, most }))
        .ok_or_else(|| Said::new(problem))
}

/// A whole number within bounds; `None` where nothing was typed.
pub(super) fn whole(
    text: &str,
    bounds: (u16, u16),
    problem: &'static str,
) -> Result<Option<u16>, Said> {
    match between(text, bounds, problem)? {
        Some(range) if range.least != range.most => Err(Said::new(problem)),
        range => Ok(range.map(|range| range.least)),
    }
}

/// An amount above nothing, or a range of amounts; where it is counted by the foot, lengths with their units too.
pub(super) fn amount(text: &str, by_the_foot: bool) -> Result<Option<Spread>, Said> {
    if text.is_empty() {
        return Ok(None);
    }
    let (least, most) = ends(text);
    number(least)
        .zip(number(most))
        .or_else(|| feet(least).zip(feet(most)).filter(|_| by_the_foot))
        .filter(|(least, most)| *least > 0.0 && least <= most && *most <= MOST)
        .map(|(least, most)| {
            Some(Spread {
                least,
                likely: f64::midpoint(least, most),
                most,
            })
        })
        .ok_or_else(|| {
            Said::new(if by_the_foot {
                "wrong-length-counted"
            } else {
                "wrong-amount-counted"
            })
        })
}

/// A number; commas part its thousands.
pub(super) fn number(text: &str) -> Option<f64> {
    let number: f64 = text.replace(',', "").parse().ok()?;
    number.is_finite().then_some(number)
}

fn feet(text: &str) -> Option<f64> {
    text.parse::<Length>().ok().map(Length::in_feet)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn range(text: &str) -> Option<(f64, f64)> {
        let range = amount(text, true).ok()??;
        Some((range.least, range.most))
    }

    #[test]
    fn one_number_or_two_ends() {
        for (text, wanted) in [
            ("42", (42.0, 42.0)),
            ("40-42", (40.0, 42.0)),
            ("40 – 42.5", (40.0, 42.5)),
            ("40 to 42", (40.0, 42.0)),
            ("40 a 42", (40.0, 42.0)),
            ("1,240", (1240.0, 1240.0)),
            ("12' 6\"", (12.5, 12.5)),
            ("10 ft - 12 ft 6 in", (10.0, 12.5)),
        ] {
            assert_eq!(range(text), Some(wanted), "{text}");
        }
    }

    /// Three and a half metres are not three feet to so many metres.
    #[test]
    fn what_is_no_amount_is_refused() {
        for text in [
            "0", "-4", "8-5", "a lot", "3-4 m", "5-", "NaN", "inf", "1e9",
        ] {
            assert!(amount(text, true).is_err(), "{text}");
        }
        assert!(amount("12 ft", false).is_err(), "places have no feet");
    }

    #[test]
    fn whole_numbers_keep_their_bounds() {
        let years = |text| between(text, (1, 100), "wrong-years");
        assert_eq!(years(""), Ok(None));
        assert_eq!(years("5-8"), Ok(Some(Between { least: 5, most: 8 })));
        for text in ["0", "101", "8-5", "5.5", "five"] {
            assert_eq!(years(text), Err(Said::new("wrong-years")), "{text}");
        }
        assert!(whole("4-6", (4, 12), "wrong-nails").is_err());
        assert_eq!(whole("6", (4, 12), "wrong-nails"), Ok(Some(6)));
    }

    #[test]
    fn what_was_typed_is_shown_again() {
        for text in ["5", "5-8", "12.5", "40-42.25"] {
            assert_eq!(typed(amount(text, false).unwrap().unwrap()), text);
        }
    }
}
