//! What is said of a wrong outline is a sentence: it begins with a capital letter, in either language, whichever ring is wrong.

#![cfg(test)]

use roof::ShapeError;
use roof::error::{At, PlaceUnit, RingAt};
use trade::words::{Language, Words};

#[test]
fn a_sentence_about_a_ring_begins_with_a_capital() {
    let at = At {
        x: 3.0,
        y: 4.0,
        unit: PlaceUnit::Feet,
    };
    for (body, ring) in [(0, 0), (0, 2), (1, 0), (1, 3)] {
        let ring = RingAt { body, ring };
        for error in [
            ShapeError::Open { ring, end: at },
            ShapeError::TooFewCorners { ring, corners: 2 },
            ShapeError::HoleOutside { hole: ring, at },
            ShapeError::HoleInHole {
                hole: ring,
                within: ring,
                at,
            },
        ] {
            for language in Language::ALL {
                let says = Words::of(language).say(&error.says());
                assert!(says.starts_with(char::is_uppercase), "{says}");
                assert!(!says.contains(['{', '[']), "{says}");
            }
        }
    }
}

#[test]
fn one_corner_is_one_corner() {
    let of = |corners| ShapeError::TooFewCorners {
        ring: RingAt::default(),
        corners,
    };
    let english = |corners| Words::of(Language::English).say(&of(corners).says());
    assert!(english(1).starts_with("The outline has 1 corner. "));
    assert!(english(2).starts_with("The outline has 2 corners. "));
}
