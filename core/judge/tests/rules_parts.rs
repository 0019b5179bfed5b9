//! What the rules find about single parts, and what a new covering needs: through the verdict, from recorded measures and defects.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod roof;
mod verdict_house;

use roof::near;
use trade::answer::Answer;
use trade::firm::Edition;
use trade::mark::{MeasureOf, Rung};
use trade::property::StructureKind;
use trade::units::Length;
use trade::verdict::{Course, LicensedTrade, Source, Verdict};
use trade::words::Arg;
use verdict_house::{House, reason, said, step};

fn arg<'a>(verdict: &'a Verdict, rule: &str, name: &str) -> &'a Arg {
    let reason = reason(verdict, rule).unwrap_or_else(|| panic!("no {rule}"));
    let found = reason.says.args.iter().find(|(known, _)| known == name);
    &found.unwrap().1
}

fn section(verdict: &Verdict, rule: &str) -> Option<String> {
    match &reason(verdict, rule)?.source {
        Source::Code(section) => Some(section.section.clone()),
        _ => None,
    }
}

#[test]
fn a_wide_chimney_has_a_cricket() {
    // R903.2.2: wider than 30 in, unless it straddles the ridge. Height: W × rise / 24 (Table R1003.20).
    let chimney = |width: i64, distance: Option<i64>| {
        let mut house = House::sound();
        let part = house.fault("masonry-chimney", "mortar-washed-out");
        house.measure(part, MeasureOf::Width, Length::inches(width));
        if let Some(distance) = distance {
            house.measure(part, MeasureOf::Distance, Length::feet(distance));
        }
        house
    };
    assert!(reason(&chimney(30, Some(6)).verdict(), "cricket").is_none());
    let verdict = chimney(48, Some(6)).verdict();
    // 48 in at 6:12.
    assert_eq!(
        arg(&verdict, "cricket", "height"),
        &Arg::Length(Length::inches(12))
    );
    assert_eq!(section(&verdict, "cricket"), Some("R903.2.2".to_owned()));
    assert!(
        reason(&chimney(48, Some(0)).verdict(), "cricket").is_none(),
        "astride the ridge"
    );
    let mut has_one = chimney(48, Some(6));
    let front = has_one.roof.front;
    has_one.look_at(Some(front), "cricket", near(Rung::Sound), &[]);
    assert!(reason(&has_one.verdict(), "cricket").is_none());
    let mut unmeasured = chimney(48, Some(6));
    unmeasured
        .roof
        .history
        .slopes
        .iter_mut()
        .for_each(|slope| slope.pitch = None);
    assert!(reason(&unmeasured.verdict(), "cricket-unmeasured").is_some());
}

#[test]
fn a_chimney_stands_high_enough() {
    // R1003.9: 6 ft (in plan) below the ridge at 8:12: 6 ft; 14 ft below: 8.67 ft; 2 ft below at 4:12: 3 ft.
    let rows = [(8.0, 6, 72), (8.0, 14, 104), (4.0, 2, 36)];
    for (pitch, feet, needed) in rows {
        for (inches, low) in [(needed - 1, true), (needed, false)] {
            let mut house = House::sound();
            let front = house.roof.front;
            house.set_pitch(front, pitch);
            house.look_at(Some(front), "masonry-chimney", near(Rung::Sound), &[]);
            let part = house.part(Some(front), "masonry-chimney");
            house.measure(part, MeasureOf::Distance, Length::feet(feet));
            house.measure(part, MeasureOf::Height, Length::inches(inches));
            let verdict = house.verdict();
            assert_eq!(
                reason(&verdict, "chimney-low").is_some(),
                low,
                "{pitch} {feet}"
            );
            if low {
                let refer = step(&verdict, Course::Refer);
                assert_eq!(refer.tasks[0].trade, Some(LicensedTrade::Mason));
            }
        }
    }
    // A measured drop goes before the pitch: 3 ft 6 in below what stands within 10 ft.
    let mut house = House::sound();
    let front = house.roof.front;
    house.look_at(Some(front), "masonry-chimney", near(Rung::Sound), &[]);
    let part = house.part(Some(front), "masonry-chimney");
    house.measure(part, MeasureOf::Distance, Length::feet(9));
    house.measure(part, MeasureOf::Drop, Length::inches(42));
    house.measure(part, MeasureOf::Height, Length::feet(5));
    assert_eq!(
        arg(&house.verdict(), "chimney-low", "needed"),
        &Arg::Length(Length::inches(66))
    );
}

/// A sound gas vent on a slope of this pitch, measured.
fn vent(pitch: f64, height: i64, cap: Option<i64>, wall: Option<i64>) -> Verdict {
    let mut house = House::sound();
    let front = house.roof.front;
    house.set_pitch(front, pitch);
    house.look_at(Some(front), "fuel-vent", near(Rung::Sound), &[]);
    let part = house.part(Some(front), "fuel-vent");
    house.measure(part, MeasureOf::Height, Length::inches(height));
    if let Some(cap) = cap {
        house.measure(part, MeasureOf::Diameter, Length::inches(cap));
    }
    if let Some(wall) = wall {
        house.measure(part, MeasureOf::Distance, Length::feet(wall));
    }
    house.verdict()
}

#[test]
fn a_gas_vent_stands_high_enough() {
    // 2018 IRC Figure G2427.6: 8/12 1.5 ft, 8.1/12 2.0 ft.
    for (pitch, needed) in [(8.0, 18), (8.1, 24), (6.0, 12), (12.0, 48)] {
        let low = vent(pitch, needed - 1, Some(6), Some(12));
        assert!(reason(&low, "gas-vent-low").is_some(), "{pitch}");
        assert_eq!(
            step(&low, Course::Refer).tasks[0].trade,
            Some(LicensedTrade::FuelVent)
        );
        let high = vent(pitch, needed, Some(6), Some(12));
        assert!(reason(&high, "gas-vent-low").is_none(), "{pitch}");
    }
    // Older codes took 1 ft up to 7/12.
    let older = vent(7.0, 12, Some(6), Some(12));
    assert!(reason(&older, "gas-vent-low").is_none());
    assert!(reason(&older, "gas-vent-older-codes").is_some());
    // Near a wall, or with a large cap, the table does not settle it: advise, and refer.
    for verdict in [
        vent(6.0, 20, Some(6), Some(5)),
        vent(6.0, 20, Some(14), Some(12)),
    ] {
        assert!(reason(&verdict, "gas-vent-not-in-table").is_some());
        assert!(
            verdict
                .steps
                .iter()
                .any(|step| step.course == Course::Refer)
        );
    }
    // Cap or wall not measured: low only where it is low by either rule (the table, or 2 ft).
    assert!(reason(&vent(12.0, 30, None, None), "gas-vent-low").is_none());
    assert!(reason(&vent(12.0, 20, None, None), "gas-vent-low").is_some());
    assert!(reason(&vent(6.0, 11, None, None), "gas-vent-low").is_some());
}

#[test]
fn metal_that_is_too_thin_or_too_narrow() {
    // R905.2.8.1: 0.019 in. R905.2.8.2: 24 in.
    let mut house = House::sound();
    let flashing = house.fault("chimney-flashing", "chimney-flashing-rusted");
    house.measure(flashing, MeasureOf::Thickness, Length::mils(18));
    let verdict = house.verdict();
    assert_eq!(
        section(&verdict, "flashing-thin"),
        Some("R905.2.8.1".to_owned())
    );
    let mut house = House::sound();
    let flashing = house.fault("chimney-flashing", "chimney-flashing-rusted");
    house.measure(flashing, MeasureOf::Thickness, Length::mils(19));
    assert!(reason(&house.verdict(), "flashing-thin").is_none());

    for (inches, narrow) in [(18, true), (24, false)] {
        let mut house = House::sound();
        let front = house.roof.front;
        house.look_at(Some(front), "open-valley", near(Rung::Sound), &[]);
        let valley = house.part(Some(front), "open-valley");
        house.measure(valley, MeasureOf::Width, Length::inches(inches));
        let verdict = house.verdict();
        assert_eq!(reason(&verdict, "valley-narrow").is_some(), narrow);
        // Nothing is done about it now, so it is told among the limits.
        assert!(
            !narrow
                || verdict
                    .limits
                    .iter()
                    .any(|limit| limit.rule == "valley-narrow")
        );
    }
}

#[test]
fn what_code_says_of_a_defect_depends_on_the_edition() {
    let with = |edition: Edition, kind: &str, defect: &str| {
        let mut house = House::sound();
        house.books.profile.edition = edition;
        house.fault(kind, defect);
        house.verdict()
    };
    for edition in Edition::ALL {
        // R905.2.8.3: step only up to 2009.
        let verdict = with(edition, "sidewall-flashing", "step-flashing-missing");
        let step_only = reason(&verdict, "sidewall-step").is_some();
        assert_eq!(step_only, edition <= Edition::E2009);
        assert_ne!(reason(&verdict, "sidewall-flashing").is_some(), step_only);
        // R905.2.8.5 from 2012; before that good practice.
        let verdict = with(edition, "drip-edge", "no-drip-edge");
        let required = section(&verdict, "drip-edge").is_some();
        assert_eq!(required, edition >= Edition::E2012);
        assert_ne!(reason(&verdict, "drip-edge-practice").is_some(), required);
        // R903.2.1 from 2012.
        let verdict = with(edition, "kickout", "kickout-missing");
        assert_eq!(
            section(&verdict, "kick-out").is_some(),
            edition >= Edition::E2012
        );
        // R905.2.6: at least four nails.
        let verdict = with(edition, "fastening", "nails-too-few");
        assert_eq!(arg(&verdict, "nails", "nails"), &Arg::Count(4));
    }
}

#[test]
fn what_a_new_covering_needs_here() {
    let done = |pitch: f64| {
        let mut house = House::sound();
        let (front, rear) = (house.roof.front, house.roof.rear);
        for slope in [front, rear] {
            house.set_pitch(slope, pitch);
            house.again(
                slope,
                "covering",
                near(Rung::Failed),
                &["covering-worn-out"],
            );
            let eave = house.part(Some(slope), "eave-edge");
            house.measure(eave, MeasureOf::Overhang, Length::inches(16));
        }
        house.books.profile.ice_barrier = Answer::Yes;
        house
    };
    // R905.1.2: overhang 16 in at 6:12: 44.72 in along the slope (computed).
    let verdict = done(6.0).verdict();
    let Arg::Length(reach) = arg(&verdict, "ice-barrier", "reach") else {
        panic!("not a length");
    };
    assert!((reach.in_inches() - 44.72).abs() < 0.005);
    assert_eq!(
        section(&verdict, "ice-barrier"),
        Some("R905.1.2".to_owned())
    );
    let Arg::List(slopes) = arg(&verdict, "ice-barrier", "slopes") else {
        panic!("no list");
    };
    assert_eq!(slopes.len(), 2, "both slopes reach as far");
    // R905.2.2, R905.1.1: doubled from 2:12 to under 4:12.
    assert!(reason(&verdict, "underlayment-doubled").is_none());
    assert!(reason(&done(3.9).verdict(), "underlayment-doubled").is_some());
    assert!(reason(&done(4.0).verdict(), "underlayment-doubled").is_none());
    // Not designated, or not known.
    let mut house = done(6.0);
    house.books.profile.ice_barrier = Answer::No;
    assert!(reason(&house.verdict(), "ice-barrier").is_none());
    house.books.profile.ice_barrier = Answer::Unknown;
    assert!(reason(&house.verdict(), "ice-barrier-unknown").is_some());
    // Not measured: said in plan.
    let mut house = done(6.0);
    house
        .roof
        .history
        .slopes
        .iter_mut()
        .for_each(|slope| slope.pitch = None);
    assert!(reason(&house.verdict(), "ice-barrier-unmeasured").is_some());
    // A detached structure without heated floor is excepted; an attached garage is not (a code handout).
    for (kind, excepted) in [
        (StructureKind::DetachedGarage, true),
        (StructureKind::AttachedGarage, false),
    ] {
        let mut house = done(6.0);
        house.roof.history.structures[0].kind = kind;
        assert_eq!(reason(&house.verdict(), "ice-barrier").is_none(), excepted);
    }
}

#[test]
fn a_slope_too_low_for_shingles() {
    // R905.2.2: 1.5:12 none; 2:12 doubled underlayment.
    let at = |pitch: f64| {
        let mut house = House::sound();
        let front = house.roof.front;
        house.set_pitch(front, pitch);
        house.verdict()
    };
    let verdict = at(1.5);
    assert_eq!(verdict.main_course(), Some(Course::TearOff));
    assert_eq!(section(&verdict, "too-low"), Some("R905.2.2".to_owned()));
    assert_eq!(at(2.0).main_course(), Some(Course::Leave));
}

#[test]
fn attic_air() {
    // R806.2 and R806.3.
    let rows = [
        ("attic-air", "upper-vents-too-few", "attic-air", "R806.2"),
        ("attic-air", "baffles-missing", "air-space", "R806.3"),
    ];
    let catalogue = trade::catalogue::Catalogue::standard();
    for (_, defect, rule, in_section) in rows {
        let mut house = House::sound();
        let kind = catalogue.defect(&defect.into()).unwrap().parts[0].clone();
        house.fault(kind.as_str(), defect);
        let verdict = house.verdict();
        assert_eq!(
            section(&verdict, rule),
            Some(in_section.to_owned()),
            "{defect}"
        );
    }
}

#[test]
fn every_rule_has_its_sentence() {
    use trade::words::{Language, Words};
    let words = Words::of(Language::English);
    for rule in judge::rules::Rule::ALL {
        assert!(words.has(&rule.key()), "no words for {rule}");
    }
}

#[test]
fn what_is_said_of_one_roof() {
    let mut house = House::sound();
    let part = house.fault("masonry-chimney", "mortar-washed-out");
    house.measure(part, MeasureOf::Width, Length::inches(48));
    house.measure(part, MeasureOf::Distance, Length::feet(6));
    let verdict = house.verdict();
    assert_eq!(
        said(&reason(&verdict, "cricket").unwrap().says),
        "The chimney is 4' wide. Behind one wider than 30\" the roof needs a small saddle to turn the water aside, here 1' high."
    );
}
