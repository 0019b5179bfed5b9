//! What holds of water on any roof, and what is said of it.

#![cfg(test)]

mod roofs;

use proptest::prelude::*;
use roof::leak::{LeakError, suspects};
use roofs::{FOOT, gable, gable_planes, hip, hole, lean_to, plan, tee};
use trade::catalogue::StopKey;
use trade::ids::PartId;
use trade::leak::{Candidate, LetsIn, Lies, LookTo, Stain, Suspected, Why};
use trade::mark::Rung;
use trade::roof::{LineKind, Plane, RoofPlan};
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
use trade::units::{Got, Length, Pitch};
use trade::visit::WetWhen;
use trade::words::{Language, Said, Words};

const SIX: Pitch = Pitch::rise(6);

fn part(number: u128, plane: usize, lies: Lies) -> Candidate {
    Candidate {
        part: PartId(uuid::Uuid::from_u128(number)),
        name: Said::verbatim(format!("part {number}")),
        stop: StopKey::from("pipes"),
        plane,
        lies,
        rung: Some(Rung::Failing),
        lets_in: LetsIn::default(),
    }
}

fn spot(number: u128, plane: usize, at: (f64, f64)) -> Candidate {
    part(number, plane, Lies::Spot { at })
}

fn stain(at: (f64, f64), when: Option<WetWhen>) -> Stain {
    Stain {
        at,
        within: Length::feet(1),
        when,
        wind_from: None,
    }
}

fn numbers(found: &[Suspected]) -> Vec<u128> {
    found
        .iter()
        .filter_map(|one| match one.what {
            LookTo::Part { part } => Some(part.0.as_u128()),
            _ => None,
        })
        .collect()
}

fn lines(found: &[Suspected]) -> Vec<LineKind> {
    found
        .iter()
        .filter_map(|one| match one.what {
            LookTo::Line { kind, .. } => Some(kind),
            _ => None,
        })
        .collect()
}

/// 40 ft by 28 ft, ridge along the street.
fn house() -> RoofPlan {
    gable(40.0 * FOOT, 28.0 * FOOT, SIX)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    /// Water does not run up: what lies wholly below a stain on its plane is no suspect, so it never stands above one uphill.
    #[test]
    fn nothing_below_the_stain_is_suspected(
        stain_at in (4.3..7.8_f64, 0.5..4.0_f64),
        parts in prop::collection::vec((4.3..7.8_f64, 0.1..4.2_f64), 1..12),
        when in prop::option::of(prop_oneof![Just(WetWhen::AnyRain), Just(WetWhen::DrivenRain), Just(WetWhen::LongRain)]),
    ) {
        let plan = hip(40.0 * FOOT, 28.0 * FOOT, SIX);
        let parts: Vec<Candidate> = parts.iter().zip(1..).map(|(at, n)| spot(n, 0, *at)).collect();
        let found = suspects(&plan, &stain(stain_at, when), &parts).unwrap();
        let below = stain_at.1 - FOOT - 1e-6;
        for number in numbers(&found) {
            let Lies::Spot { at } = parts[usize::try_from(number).unwrap() - 1].lies else { unreachable!() };
            prop_assert!(at.1 >= below, "{at:?} for a stain at {stain_at:?}");
        }
        let whole: f64 = found.iter().map(|one| one.share).sum();
        prop_assert!(!found.is_empty() && (whole - 1.0).abs() < 1e-9);
        prop_assert!(found.windows(2).all(|pair| pair[0].share >= pair[1].share));
    }

    /// Wind from behind lowers what only driven rain brings in, at any angle.
    #[test]
    fn wind_from_the_other_side_lowers_what_it_drives(off in 0.0..80.0_f64, left in any::<bool>()) {
        let plan = house();
        let mut driven = spot(1, 0, (6.0, 2.6));
        driven.lets_in = LetsIn { rain: false, driven: true, thaw: false };
        let parts = [driven, spot(2, 0, (6.2, 2.5))];
        let share = |wind: f64| {
            let stain = Stain { wind_from: Some(wind), ..stain((6.1, 1.8), Some(WetWhen::DrivenRain)) };
            let found = suspects(&plan, &stain, &parts).unwrap();
            let one = found.iter().find(|one| numbers(std::slice::from_ref(one)) == [1]).cloned();
            one.unwrap()
        };
        let off = if left { -off } else { off };
        // Plane A faces the street, 180°.
        let (onto, away) = (share(180.0 + off), share(off));
        prop_assert!(onto.share > away.share);
        let square = off.abs().to_radians().cos() > 0.3;
        prop_assert_eq!(square, onto.why.contains(&Why::Windward));
        prop_assert_eq!(square, away.why.contains(&Why::Lee));
    }

    #[test]
    fn no_input_breaks_the_tracer(
        at in (-5.0..20.0_f64, -5.0..15.0_f64),
        ends in ((-5.0..20.0_f64, -5.0..15.0_f64), (-5.0..20.0_f64, -5.0..15.0_f64)),
        size in (0.0..5.0_f64, 0.0..5.0_f64),
        plane in 0_usize..5,
    ) {
        let plan = tee(40.0 * FOOT, 28.0 * FOOT, (10.0 * FOOT, 26.0 * FOOT), 8.0 * FOOT, SIX);
        let parts = [
            part(1, plane, Lies::Along { from: ends.0, to: ends.1 }),
            part(2, plane, Lies::Through { at: ends.0, wide: Length::from_metres(size.0), deep: Length::from_metres(size.1) }),
            spot(3, plane, ends.1),
        ];
        for when in [None, Some(WetWhen::Thaw), Some(WetWhen::DrivenRain), Some(WetWhen::DryCold)] {
            let stain = Stain { wind_from: Some(200.0), ..stain(at, when) };
            if let Ok(found) = suspects(&plan, &stain, &parts) {
                prop_assert!(found.iter().all(|one| one.share.is_finite()));
            }
        }
    }
}

#[test]
fn the_part_straight_up_comes_before_one_aside_and_one_farther_up() {
    let parts = [
        spot(1, 0, (6.0, 3.0)),
        spot(2, 0, (7.6, 3.0)),
        spot(3, 0, (6.0, 4.2)),
    ];
    let found = suspects(&house(), &stain((6.0, 1.8), None), &parts).unwrap();
    assert_eq!(numbers(&found)[0], 1);
    assert!(found[0].why.contains(&Why::UpTheSlope {
        far: Length::feet(4)
    }));
    let aside = found
        .iter()
        .find(|one| numbers(std::slice::from_ref(one)) == [2])
        .unwrap();
    assert!(aside.why.contains(&Why::ToTheSide {
        far: Length::feet(5)
    }));
}

#[test]
fn a_worse_part_comes_first_of_two_in_like_places() {
    let mut parts = [spot(1, 0, (5.9, 2.8)), spot(2, 0, (6.1, 2.8))];
    parts[1].rung = Some(Rung::Failed);
    let found = suspects(&house(), &stain((6.0, 1.8), None), &parts).unwrap();
    assert_eq!(numbers(&found), [2, 1]);
    assert!(found[0].why.contains(&Why::Found { rung: Rung::Failed }));
}

#[test]
fn ridges_are_crossed_by_wind_alone() {
    // Behind the ridge at 14 ft, a foot down the rear plane.
    let beyond = spot(1, 1, (6.0, 15.0 * FOOT));
    let under = (6.0, 12.5 * FOOT);
    let still = suspects(
        &house(),
        &stain(under, Some(WetWhen::AnyRain)),
        std::slice::from_ref(&beyond),
    );
    assert!(numbers(&still.unwrap()).is_empty());
    let wind = |from: f64| Stain {
        wind_from: Some(from),
        ..stain(under, Some(WetWhen::DrivenRain))
    };
    let pushed = suspects(&house(), &wind(0.0), std::slice::from_ref(&beyond)).unwrap();
    assert_eq!(numbers(&pushed), [1]);
    assert!(pushed[0].why.contains(&Why::OverTheRidge));
    let from_the_street = suspects(&house(), &wind(180.0), &[beyond]).unwrap();
    assert!(numbers(&from_the_street).is_empty());
}

#[test]
fn hips_are_not_crossed() {
    // Close under the hip of the right end, the stain close on the other side of it.
    let plan = hip(40.0 * FOOT, 28.0 * FOOT, SIX);
    let wide = 40.0 * FOOT;
    let beyond = spot(1, 1, (wide - 2.0, 3.6));
    let found = suspects(
        &plan,
        &stain((wide - 3.4, 2.0), Some(WetWhen::AnyRain)),
        &[beyond],
    )
    .unwrap();
    assert!(numbers(&found).is_empty());
}

#[test]
fn a_valley_brings_water_from_both_planes() {
    let plan = tee(
        40.0 * FOOT,
        28.0 * FOOT,
        (10.0 * FOOT, 26.0 * FOOT),
        8.0 * FOOT,
        SIX,
    );
    let reach = 8.0 * FOOT;
    let valley_at = |share: f64| (10.0 * FOOT + reach * share, reach * share);
    let under = valley_at(0.3);
    // On the main roof straight up from the valley's upper part; its water meets the valley and runs down it.
    let high = valley_at(0.6);
    let parts = [
        spot(1, 0, (high.0, high.1 + 0.3)),
        spot(2, 2, (high.0 + 0.3, high.1)),
    ];
    let found = suspects(&plan, &stain(under, Some(WetWhen::AnyRain)), &parts).unwrap();
    assert_eq!(numbers(&found).len(), 2);
    assert!(
        found
            .iter()
            .all(|one| one.why.contains(&Why::DownTheValley)),
        "{found:?}"
    );
}

#[test]
fn water_goes_round_a_chimney() {
    let chimney = |number| {
        let mut chimney = part(
            number,
            0,
            Lies::Through {
                at: (6.0, 2.5),
                wide: Length::feet(4),
                deep: Length::feet(3),
            },
        );
        chimney.name = Said::verbatim("chimney");
        chimney
    };
    // Under the chimney's right lower corner: the chimney itself, and a pipe straight above it whose water it turns aside.
    let under = (6.0 + 2.2 * FOOT, 1.7);
    let found = suspects(
        &house(),
        &stain(under, None),
        &[chimney(1), spot(2, 0, (6.1, 3.4))],
    )
    .unwrap();
    let why = |number: u128| {
        let one = found
            .iter()
            .find(|one| numbers(std::slice::from_ref(one)) == [number]);
        one.unwrap().why.clone()
    };
    assert!(why(1).contains(&Why::BehindIt), "{found:?}");
    assert!(why(2).contains(&Why::RoundIt {
        name: Some(Said::verbatim("chimney"))
    }));
    let alone = suspects(&house(), &stain(under, None), &[spot(2, 0, (6.1, 3.4))]).unwrap();
    assert!(
        !alone[0]
            .why
            .iter()
            .any(|why| matches!(why, Why::RoundIt { .. }))
    );
}

#[test]
fn water_runs_down_along_a_side_wall() {
    let plan = lean_to(20.0 * FOOT, 12.0 * FOOT, SIX);
    let wide = 20.0 * FOOT;
    let flashing = part(
        1,
        0,
        Lies::Along {
            from: (wide, 2.0),
            to: (wide, 3.0),
        },
    );
    let found = suspects(
        &plan,
        &stain((wide - 0.2, 1.2), Some(WetWhen::AnyRain)),
        &[flashing],
    )
    .unwrap();
    assert_eq!(numbers(&found), [1]);
    assert!(found[0].why.contains(&Why::DownTheWall));
}

#[test]
fn ice_holds_water_back_above_the_wall() {
    // Eaves stand out 16 in: ice holds water back to 40 in from the edge on plan.
    let mut eave = part(
        1,
        0,
        Lies::Along {
            from: (4.0, 0.0),
            to: (8.0, 0.0),
        },
    );
    eave.lets_in = LetsIn {
        rain: false,
        driven: false,
        thaw: true,
    };
    let inside_the_wall = (6.0, 30.0 * 0.0254);
    let found = suspects(
        &house(),
        &stain(inside_the_wall, Some(WetWhen::Thaw)),
        &[eave.clone()],
    )
    .unwrap();
    assert_eq!(numbers(&found), [1]);
    assert!(found[0].why.contains(&Why::IceHoldsIt));
    let in_rain = suspects(
        &house(),
        &stain((6.0, 1.2), Some(WetWhen::AnyRain)),
        &[eave],
    )
    .unwrap();
    assert!(numbers(&in_rain).is_empty());
}

#[test]
fn where_no_part_is_known_the_roof_itself_is_named() {
    let bare = suspects(&house(), &stain((6.0, 2.0), Some(WetWhen::AnyRain)), &[]).unwrap();
    assert_eq!(lines(&bare), [LineKind::Ridge]);
    assert_eq!(bare[0].stop, StopKey::from("ridge"));
    let ice = suspects(&house(), &stain((6.0, 0.8), Some(WetWhen::Thaw)), &[]).unwrap();
    assert_eq!(lines(&ice), [LineKind::Eave, LineKind::Ridge]);
    let plan_of_tee = tee(
        40.0 * FOOT,
        28.0 * FOOT,
        (10.0 * FOOT, 26.0 * FOOT),
        8.0 * FOOT,
        SIX,
    );
    let valley = suspects(&plan_of_tee, &stain((12.0 * FOOT, 3.0 * FOOT), None), &[]).unwrap();
    assert_eq!(lines(&valley), [LineKind::Valley, LineKind::Ridge]);
    let mut planes = gable_planes(40.0 * FOOT, 28.0 * FOOT, SIX);
    planes[0].holes.push(hole((5.5, 2.5), (6.5, 3.2)));
    let holed = suspects(&plan(&planes, &[]), &stain((6.0, 1.5), None), &[]).unwrap();
    assert_eq!(holed[0].what, LookTo::Opening { plane: 0, hole: 0 });
    assert_eq!(lines(&holed), [LineKind::Ridge]);
    let wall = suspects(
        &lean_to(20.0 * FOOT, 12.0 * FOOT, SIX),
        &stain((2.0, 2.0), None),
        &[],
    )
    .unwrap();
    assert_eq!(lines(&wall), [LineKind::Wall]);
}

#[test]
fn water_in_dry_cold_is_no_rain() {
    let found = suspects(
        &house(),
        &stain((6.0, 2.0), Some(WetWhen::DryCold)),
        &[spot(1, 0, (6.0, 2.5))],
    )
    .unwrap();
    assert_eq!(found[0].what, LookTo::Attic);
    assert_eq!(numbers(&found), [1]);
}

#[test]
fn what_can_not_be_traced_is_refused() {
    let plan = house();
    let outside = suspects(&plan, &stain((60.0, 60.0), None), &[]);
    assert_eq!(outside, Err(LeakError::Outside((60.0, 60.0))));
    let nowhere = suspects(&plan, &stain((6.0, 2.0), None), &[spot(1, 7, (6.0, 3.0))]);
    assert!(matches!(nowhere, Err(LeakError::NoPlane { .. })));
    let no_place = suspects(
        &plan,
        &stain((6.0, 2.0), None),
        &[spot(1, 0, (f64::NAN, 3.0))],
    );
    assert!(matches!(no_place, Err(LeakError::NoPlace { .. })));
    assert_eq!(
        suspects(&plan, &stain((f64::NAN, 0.0), None), &[]).map_err(|error| error.says().key),
        Err("leak-outside".to_owned())
    );
}

/// A storey stands on the front of a low roof: its eave hangs over the slope below.
fn two_levels() -> RoofPlan {
    let edge = |x: i64, y: i64, is: EdgeIs| SketchEdge {
        x: Length::feet(x),
        y: Length::feet(y),
        is,
        pitch: None,
        overhang: None,
        slope: None,
    };
    let (hip, gable) = (EdgeIs::Hip, EdgeIs::Gable);
    let body = |rim: Vec<SketchEdge>, above: Option<Length>| Body {
        rings: vec![rim],
        of: OutlineOf::Walls,
        pitch: SIX,
        overhang: Length::inches(12),
        raised: Length::ZERO,
        above_roof: above,
    };
    let low = vec![
        edge(0, 0, hip),
        edge(40, 0, gable),
        edge(40, 30, hip),
        edge(0, 30, gable),
    ];
    let high = vec![
        edge(8, 8, hip),
        edge(32, 8, gable),
        edge(32, 22, hip),
        edge(8, 22, gable),
    ];
    let bodies = vec![body(low, None), body(high, Some(Length::feet(7)))];
    roof::plan_of(&Drawn::Outlines { bodies }, Got::Tape, Got::Tape).unwrap()
}

fn holds(plane: &Plane, at: (f64, f64)) -> bool {
    std::iter::once(&plane.corners)
        .chain(&plane.holes)
        .flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)))
        .filter(|(a, b)| {
            (a.y > at.1) != (b.y > at.1) && at.0 < a.x + (at.1 - a.y) / (b.y - a.y) * (b.x - a.x)
        })
        .count()
        % 2
        == 1
}

/// Which plane is seen from above at a place.
fn seen_at(plan: &RoofPlan, at: (f64, f64)) -> usize {
    let height = |plane: &Plane| {
        let eave = plane.corners[0];
        let down = (at.0 - eave.x) * plane.downhill.0 + (at.1 - eave.y) * plane.downhill.1;
        eave.z - down * plane.pitch.in_twelfths() / 12.0
    };
    (0..plan.planes.len())
        .filter(|plane| holds(&plan.planes[*plane], at))
        .max_by(|a, b| height(&plan.planes[*a]).total_cmp(&height(&plan.planes[*b])))
        .unwrap()
}

#[test]
fn an_upper_roof_drains_onto_a_lower_one() {
    let plan = two_levels();
    let middle = 20.0 * FOOT;
    let above = (middle, 9.0 * FOOT);
    let parts = [spot(1, seen_at(&plan, above), above)];
    // Under the low slope, between its eave and the wall of the storey.
    let under = (middle, 5.5 * FOOT);
    let found = suspects(&plan, &stain(under, Some(WetWhen::AnyRain)), &parts).unwrap();
    assert_eq!(numbers(&found), [1]);
    assert!(found[0].why.contains(&Why::FromTheRoofAbove));
    // What lies straight up on the low slope itself is suspected before it.
    let near = (middle, 6.2 * FOOT);
    let parts = [
        spot(1, seen_at(&plan, above), above),
        spot(2, seen_at(&plan, near), near),
    ];
    let found = suspects(&plan, &stain(under, Some(WetWhen::AnyRain)), &parts).unwrap();
    assert_eq!(numbers(&found), [2, 1]);
    // The rear half of the upper roof drains to the rear.
    let rear = (middle, 20.0 * FOOT);
    let parts = [spot(1, seen_at(&plan, rear), rear)];
    let found = suspects(&plan, &stain(under, Some(WetWhen::AnyRain)), &parts).unwrap();
    assert!(numbers(&found).is_empty());
}

#[test]
fn with_no_known_part_the_wall_above_is_looked_at() {
    let plan = two_levels();
    let under = (20.0 * FOOT, 5.0 * FOOT);
    let found = suspects(&plan, &stain(under, Some(WetWhen::AnyRain)), &[]).unwrap();
    assert_eq!(lines(&found), [LineKind::Wall]);
}

#[test]
fn every_reason_is_said_in_both_languages() {
    let far = Length::feet(4);
    let when = WetWhen::Thaw;
    let name = Some(Said::verbatim("chimney"));
    let reasons = [
        Why::RightAbove,
        Why::UpTheSlope { far },
        Why::ToTheSide { far },
        Why::DownTheValley,
        Why::DownTheWall,
        Why::FromTheRoofAbove,
        Why::RoundIt { name },
        Why::RoundIt { name: None },
        Why::BehindIt,
        Why::OverTheRidge,
        Why::IceHoldsIt,
        Why::Found { rung: Rung::Ageing },
        Why::NotSeen,
        Why::FitsTheWeather { when },
        Why::NotTheWeather { when },
        Why::Windward,
        Why::Lee,
        Why::NoKnownPart,
        Why::DryCold,
    ];
    let troubles = [
        LeakError::Outside((0.0, 0.0)).says(),
        LeakError::NoPlane {
            name: Said::verbatim("x"),
        }
        .says(),
        LeakError::NoPlace {
            name: Said::verbatim("x"),
        }
        .says(),
    ];
    for language in Language::ALL {
        for said in reasons.iter().map(Why::says).chain(troubles.clone()) {
            let text = Words::of(language).say(&said);
            assert!(!text.contains(['[', '{']), "{text}");
        }
    }
}
