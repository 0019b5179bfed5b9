//! Attic air (IRC R806.2, R806.3).

use trade::answer::Answer;
use trade::firm::Edition;
use trade::units::Length;

/// Air space kept open over insulation: 1 in (R806.3).
pub const AIR_SPACE: Length = Length::inches(1);

/// Square feet of vented space, in plan.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SquareFeet(pub f64);

/// Square inches of net free area.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SquareInches(pub f64);

/// The share of the vented space that must be net free area.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Share {
    /// 1/150.
    OneIn150,
    /// 1/300, where the edition's conditions hold.
    OneIn300,
}

/// Net free area that a vented space needs.
pub fn net_free_area(vented: SquareFeet, share: Share) -> SquareInches {
    let by = match share {
        Share::OneIn150 => 150.0,
        Share::OneIn300 => 300.0,
    };
    SquareInches(vented.0 * 144.0 / by)
}

/// How a vented space is built, as far as 1/300 depends on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vented {
    /// Share of the net free area that is in the upper part, 0 to 1.
    pub upper: f64,
    /// How far the upper vents stand above the eave vents.
    pub above_eave_vents: Length,
    /// How far the upper vents lie below the ridge or highest point.
    pub below_ridge: Length,
    /// Whether a vapour retarder lies on the warm side.
    pub vapour_retarder: Answer,
    /// Climate zone 1 to 8, if known.
    pub climate_zone: Option<u8>,
}

/// The share that holds under an edition: 1/300 under its conditions, else 1/150.
///
/// Up to 2009: 50 to 80 % up high and 3 ft above the eave vents, or a vapour barrier. From 2012: 40 to 50 % up high,
/// within 3 ft of the ridge, and in zones 6 to 8 a vapour retarder; in 2012 one of the two does, from 2015 both must hold
/// (the "one or more" of 2012 and the "both" of 2015 are from memory). What is not known does not hold.
pub fn share(edition: Edition, vented: &Vented) -> Share {
    let three_feet = Length::feet(3);
    let retarder = vented.vapour_retarder.is_yes();
    let cold = vented.climate_zone.is_some_and(|zone| zone >= 6);
    let warm = vented.climate_zone.is_some_and(|zone| zone < 6);
    let holds = if edition <= Edition::E2009 {
        let high = (0.5..=0.8).contains(&vented.upper) && vented.above_eave_vents >= three_feet;
        high || retarder
    } else {
        let balanced = (0.4..=0.5).contains(&vented.upper) && vented.below_ridge <= three_feet;
        if edition == Edition::E2012 {
            balanced || cold && retarder
        } else {
            balanced && (warm || retarder)
        }
    };
    if holds {
        Share::OneIn300
    } else {
        Share::OneIn150
    }
}
