//! Numbers of the code and the trade, each with its source beside it.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use judge::profile::{bars_covering_over, hail_bars, layers_allowed};
use judge::rules::chimney::{above, chimney_height, cricket_height, needs_cricket};
use judge::rules::flashing::{LEAST_THICKNESS, LEAST_VALLEY, SIDEWALL};
use judge::rules::sections::{Irc, section};
use judge::rules::shingles::{
    NAIL_DEPTH, NAIL_HEAD, NAIL_SHANK, courses_of, doubled_overlap, ice_barrier_along_slope,
    needs_doubled_underlayment, too_low,
};
use judge::rules::ventilation::{Share, SquareFeet, Vented, net_free_area, share};
use judge::rules::vents::{gas_vent_height, gas_vent_height_by_older_codes, table_holds};
use judge::safety::{ladder_base, ladder_top};
use trade::answer::Answer::{self, No, Unknown, Yes};
use trade::firm::{Edition, Profile};
use trade::stack::Covering;
use trade::units::{Got, Length, Measured, Pitch};

type Taped = Option<Measured<Length>>;

fn rise(rise: f64) -> Pitch {
    Pitch::from_rise(rise).unwrap()
}

fn taped<T>(value: T) -> Measured<T> {
    within(value, 0.0)
}

fn within<T>(value: T, within: f64) -> Measured<T> {
    Measured {
        value,
        got: Got::Tape,
        within,
    }
}

fn near(length: Length, inches: f64) -> bool {
    (length.in_inches() - inches).abs() < 0.005
}

#[test]
fn slopes_for_shingles_and_their_underlayment() {
    // IRC R905.2.2: none below 2:12, doubled underlayment to under 4:12. Exactly 4:12 takes one layer: municipal R905.2.7
    // handout, MIL-HDBK-1001/5A.
    let rows = [
        (1.5, Yes, false),
        (1.999, Yes, false),
        (2.0, No, true),
        (3.9, No, true),
        (4.0, No, false),
        (12.0, No, false),
    ];
    for (pitch, low, doubled) in rows {
        assert_eq!(too_low(&taped(rise(pitch))), low, "{pitch}");
        assert_eq!(needs_doubled_underlayment(rise(pitch)), doubled, "{pitch}");
    }
    // A pitch judged by eye to a tenth does not settle 2:12.
    assert_eq!(too_low(&within(rise(2.1), 0.1)), Unknown);
    assert_eq!(too_low(&within(rise(1.9), 0.1)), Unknown);
    assert_eq!(too_low(&within(rise(1.7), 0.1)), Yes);
    assert_eq!(too_low(&within(rise(2.3), 0.1)), No);
}

#[test]
fn doubled_underlayment_overlaps_by_half_and_an_inch() {
    // R905.1.1 as a trade bulletin has it: 19 in for a 36 in sheet.
    assert_eq!(doubled_overlap(Length::inches(36)), Length::inches(19));
}

#[test]
fn ice_barrier_along_the_slope() {
    // R905.1.2: 24 in inside the exterior wall line in plan; from 8:12 at least 36 in along the slope (2018). Lengths computed.
    let rows = [
        (16, 6.0, Edition::E2018, 44.72, 2),
        (0, 8.0, Edition::E2018, 36.0, 1),
        (0, 8.0, Edition::E2012, 28.84, 1),
        (0, 7.99, Edition::E2018, 28.83, 1),
        (12, 12.0, Edition::E2021, 50.91, 2),
        (24, 0.0, Edition::E2018, 48.0, 2),
    ];
    for (overhang, pitch, edition, inches, courses) in rows {
        let reach = ice_barrier_along_slope(Length::inches(overhang), rise(pitch), edition);
        assert!(
            near(reach, inches),
            "{overhang} {pitch}: {}",
            reach.in_inches()
        );
        assert_eq!(
            courses_of(Length::inches(36), reach),
            courses,
            "{overhang} {pitch}"
        );
    }
}

#[test]
fn nails_and_metal() {
    // R905.2.5: 12 ga shank 0.105 in, head 3/8 in, 3/4 in into the deck. R905.2.8.1: 0.019 in. R905.2.8.2: 24 in.
    // R905.2.8.3: 4 in by 4 in.
    assert!((NAIL_SHANK.in_inches() - 0.105).abs() < 1e-9);
    assert!((NAIL_HEAD.in_inches() - 0.375).abs() < 1e-9);
    assert!((NAIL_DEPTH.in_inches() - 0.75).abs() < 1e-9);
    assert!((LEAST_THICKNESS.in_inches() - 0.019).abs() < 1e-9);
    assert_eq!(LEAST_VALLEY, Length::feet(2));
    assert_eq!(SIDEWALL, Length::inches(4));
}

#[test]
fn crickets() {
    // R903.2.2: wider than 30 in, unless it straddles the ridge; exactly 30 in needs none.
    let width = |inches: i64| taped(Length::inches(inches));
    assert_eq!(needs_cricket(&width(30), false), No);
    assert_eq!(
        needs_cricket(&taped(Length::sixteenths(30 * 16 + 1)), false),
        Yes
    );
    assert_eq!(needs_cricket(&width(48), true), No);
    assert_eq!(
        needs_cricket(&within(Length::inches(31), 0.05), false),
        Unknown
    );
    // Table R1003.20: 12:12 W/2 seen; the other rows from memory, and they agree with H = W × rise / 24 (computed).
    for (pitch, share) in [(12.0, 2), (8.0, 3), (6.0, 4), (4.0, 6), (3.0, 8)] {
        assert_eq!(
            cricket_height(Length::inches(48), rise(pitch)),
            Length::sixteenths(48 * 16 / share),
            "{pitch}"
        );
    }
}

#[test]
fn chimney_tops() {
    // R1003.9: 2 ft above anything within 10 ft, never less than 3 ft; heights computed.
    let rows = [
        (6, 8.0, 72.0),
        (14, 8.0, 104.0),
        (2, 4.0, 36.0),
        (10, 8.0, 104.0),
        (0, 12.0, 36.0),
    ];
    for (feet, pitch, inches) in rows {
        let height = chimney_height(Length::feet(feet), rise(pitch));
        assert!(near(height, inches), "{feet} ft at {pitch}: {height}");
    }
    assert_eq!(above(Length::feet(4)), Length::feet(6));
    assert_eq!(above(Length::inches(6)), Length::feet(3));
}

#[test]
fn gas_vents() {
    // 2018 IRC Figure G2427.6; over 20 to 21:12 from an older list.
    let rows = [
        (0.0, 1.0),
        (6.0, 1.0),
        (6.1, 1.25),
        (7.0, 1.25),
        (8.0, 1.5),
        (8.1, 2.0),
        (9.0, 2.0),
        (10.0, 2.5),
        (11.0, 3.25),
        (12.0, 4.0),
        (14.0, 5.0),
        (16.0, 6.0),
        (18.0, 7.0),
        (20.0, 7.5),
        (21.0, 8.0),
    ];
    for (pitch, feet) in rows {
        let height = gas_vent_height(rise(pitch)).unwrap();
        assert!((height.in_feet() - feet).abs() < 1e-9, "{pitch}: {height}");
    }
    assert_eq!(gas_vent_height(rise(21.1)), None);
    // Older codes: 1.0 ft up to 7:12.
    assert_eq!(
        gas_vent_height_by_older_codes(rise(7.0)),
        Some(Length::feet(1))
    );
    assert_eq!(
        gas_vent_height_by_older_codes(rise(7.1)),
        gas_vent_height(rise(7.1))
    );
}

#[test]
fn where_the_gas_vent_table_holds() {
    // Cap 12 in or smaller, 8 ft or more from a vertical wall.
    let inches = |inches: i64| taped(Length::inches(inches));
    let feet = |feet: i64| taped(Length::feet(feet));
    let rows: [(Taped, Taped, Answer); 5] = [
        (Some(inches(12)), Some(feet(8)), Yes),
        (Some(inches(13)), Some(feet(8)), No),
        (Some(inches(12)), Some(feet(7)), No),
        (Some(inches(13)), None, No),
        (Some(inches(6)), None, Unknown),
    ];
    for (cap, wall, holds) in rows {
        assert_eq!(table_holds(cap.as_ref(), wall.as_ref()), holds);
    }
}

#[test]
fn attic_vents() {
    // R806.2: 1500 ft² at 1/150 is 10 ft², 1440 in² (computed).
    assert!((net_free_area(SquareFeet(1500.0), Share::OneIn150).0 - 1440.0).abs() < 1e-9);
    assert!((net_free_area(SquareFeet(1500.0), Share::OneIn300).0 - 720.0).abs() < 1e-9);
}

#[test]
fn when_half_the_vent_area_does() {
    let far_below = Length::feet(5);
    let near_ridge = Length::feet(2);
    let vented = |upper, below_ridge, retarder, zone| Vented {
        upper,
        above_eave_vents: Length::feet(4),
        below_ridge,
        vapour_retarder: retarder,
        climate_zone: zone,
    };
    let rows = [
        // Up to 2009: 50 to 80 % high, 3 ft above the eave vents, or a vapour barrier.
        (
            Edition::E2006,
            vented(0.5, far_below, No, None),
            Share::OneIn300,
        ),
        (
            Edition::E2009,
            vented(0.8, far_below, No, None),
            Share::OneIn300,
        ),
        (
            Edition::E2009,
            vented(0.45, far_below, No, None),
            Share::OneIn150,
        ),
        (
            Edition::E2009,
            vented(0.45, far_below, Yes, None),
            Share::OneIn300,
        ),
        // 2012: one of the two (from memory).
        (
            Edition::E2012,
            vented(0.45, near_ridge, Unknown, None),
            Share::OneIn300,
        ),
        (
            Edition::E2012,
            vented(0.6, near_ridge, Yes, Some(7)),
            Share::OneIn300,
        ),
        (
            Edition::E2012,
            vented(0.6, near_ridge, Yes, Some(4)),
            Share::OneIn150,
        ),
        // 2015 and later: both, the retarder in zones 6 to 8 (from memory).
        (
            Edition::E2018,
            vented(0.45, near_ridge, No, Some(4)),
            Share::OneIn300,
        ),
        (
            Edition::E2018,
            vented(0.45, near_ridge, No, Some(6)),
            Share::OneIn150,
        ),
        (
            Edition::E2018,
            vented(0.45, near_ridge, Yes, Some(6)),
            Share::OneIn300,
        ),
        (
            Edition::E2018,
            vented(0.45, far_below, Yes, Some(6)),
            Share::OneIn150,
        ),
        // What is not known does not hold.
        (
            Edition::E2018,
            vented(0.45, near_ridge, Unknown, None),
            Share::OneIn150,
        ),
    ];
    for (edition, vented, expected) in rows {
        assert_eq!(share(edition, &vented), expected, "{edition:?} {vented:?}");
    }
}

#[test]
fn ladders() {
    // 29 CFR 1926.1053(b)(5)(i): base out a quarter of the working length; 20 ft: 5.0 ft out, 19.36 ft up (computed).
    assert_eq!(ladder_base(Length::feet(20)), Length::feet(5));
    assert!((ladder_top(Length::feet(20)).in_feet() - 19.36).abs() < 0.005);
    // 75.5° (seen).
    let angle = (ladder_top(Length::feet(20)).in_feet() / 5.0)
        .atan()
        .to_degrees();
    assert!((angle - 75.5).abs() < 0.05);
}

#[test]
fn what_no_covering_may_be_laid_over() {
    // R908.3.1.1 item 2; 2006 to 2012 list wood shake too (seen for 2006).
    for edition in Edition::ALL {
        for covering in [
            Covering::Slate,
            Covering::ClayTile,
            Covering::CementTile,
            Covering::AsbestosCement,
        ] {
            assert_eq!(bars_covering_over(covering, edition), Yes);
        }
        assert_eq!(bars_covering_over(Covering::AsphaltStrip, edition), No);
        assert_eq!(bars_covering_over(Covering::WoodShingle, edition), No);
        assert_eq!(bars_covering_over(Covering::Unclear, edition), Unknown);
        let shake = Answer::from(edition <= Edition::E2012);
        assert_eq!(bars_covering_over(Covering::WoodShake, edition), shake);
    }
}

#[test]
fn hail_bars_in_two_editions() {
    // R907.3 item 4 of 2006 (seen) and 2009 (memory).
    for edition in Edition::ALL {
        let profile = Profile {
            edition,
            hail: Yes,
            ..Profile::default()
        };
        let bars = matches!(edition, Edition::E2006 | Edition::E2009);
        assert_eq!(hail_bars(&profile), bars.into());
    }
    let unknown = Profile {
        edition: Edition::E2006,
        ..Profile::default()
    };
    assert_eq!(hail_bars(&unknown), Unknown);
}

#[test]
fn layers_that_may_lie_in_all() {
    assert_eq!(layers_allowed(&Profile::default()), 2);
    let amended = Profile {
        layers_allowed: Some(1),
        ..Profile::default()
    };
    assert_eq!(layers_allowed(&amended), 1);
}

#[test]
fn sections_move_with_the_edition() {
    // R907 up to 2012, R908 from 2015; underlayment and ice barrier moved from R905.2.7 to R905.1.1 and R905.1.2.
    let rows = [
        (Irc::RecoverLayers, "R907.3 item 3", "R908.3.1.1 item 3"),
        (Irc::RecoverBase, "R907.3 item 1", "R908.3.1.1 item 1"),
        (Irc::RecoverOverTile, "R907.3 item 2", "R908.3.1.1 item 2"),
        (Irc::FlashingReuse, "R907.5", "R908.5"),
        (Irc::Underlayment, "R905.2.7", "R905.1.1"),
        (Irc::IceBarrier, "R905.2.7.1", "R905.1.2"),
        (Irc::ShingleSlope, "R905.2.2", "R905.2.2"),
        (Irc::SidewallFlashing, "R905.2.8.3", "R905.2.8.3"),
        (Irc::DripEdge, "R905.2.8.5", "R905.2.8.5"),
        (Irc::Cricket, "R903.2.2", "R903.2.2"),
        (Irc::ChimneyHeight, "R1003.9", "R1003.9"),
        (Irc::GasVentHeight, "G2427.6", "G2427.6"),
        (Irc::VentArea, "R806.2", "R806.2"),
    ];
    for (rule, until_2012, from_2015) in rows {
        for edition in Edition::ALL {
            let expected = if edition <= Edition::E2012 {
                until_2012
            } else {
                from_2015
            };
            assert_eq!(section(rule, edition), expected, "{rule:?} {edition:?}");
        }
    }
}
