//! The takeoff against worked examples and against what must hold of any roof.

#![cfg(test)]

mod support;

use price::takeoff::{Basis, TakeoffError, cricket, ice_reach, net_free_area, one_in_300, takeoff};
use price::{Choices, Standing, Supplies, Supply};
use proptest::prelude::*;
use support::{counted, gable, icy, laid, line, mild, need, slope_id};
use trade::answer::Answer;
use trade::firm::{Edition, Profile};
use trade::laid::{Pieces, ValleyIs};
use trade::roof::LineKind;
use trade::stack::Covering;
use trade::takeoff::{Item, OrderAt, RoofTask, Spread};
use trade::units::{Area, Got, Length, Measured, Pitch};
use trade::verdict::Source;
use trade::worksheet::Ventilation;

/// 16 in over the wall at 6:12: (16 + 24) × 1.1180 = 44.72 in along the slope; no overhang at 8:12: 24 × 1.2019 = 28.84 in, so that since 2018
/// the 36 in along the slope govern (IRC R905.1.2; the products computed).
#[test]
fn the_ice_barrier_reaches_by_overhang_and_pitch() {
    let reach = |overhang, pitch, edition| ice_reach(Length::inches(overhang), pitch, edition);
    let six = reach(16, Pitch::rise(6), Edition::E2018);
    assert!((six.in_inches() - 44.72).abs() < 0.005, "{six}");
    let eight = reach(0, Pitch::rise(8), Edition::E2015);
    assert!((eight.in_inches() - 28.84).abs() < 0.005, "{eight}");
    assert_eq!(reach(0, Pitch::rise(8), Edition::E2018), Length::inches(36));
    let below = Pitch::from_rise(7.9).unwrap();
    assert!(reach(0, below, Edition::E2018) < Length::inches(36));
}

/// 44.72 in take a second course of a 36 in roll; 36 in do not (IRC R905.1.2).
#[test]
fn the_ice_barrier_is_counted_in_courses() {
    let choices = Choices::default();
    let supplies = Supplies::default();
    let long = 40.0;
    for (overhang, pitch, courses) in [(16, 6, 2.0), (0, 8, 1.0), (0, 3, 1.0)] {
        let plan = gable(long, 28.0, Pitch::rise(pitch), Length::inches(overhang));
        let takeoff = counted(&plan, &icy(Edition::E2018), &supplies, &choices);
        let ice = need(&takeoff, Item::IceBarrier);
        let end_laps = supplies.supply(Item::IceBarrier).end_lapped();
        let sheet = 2.0 * long * 3.0 * courses * end_laps;
        assert!((ice.amount.likely - sheet).abs() < 1e-6, "{pitch}:12");
        assert!(matches!(&ice.source, Source::Code(code) if code.section == "R905.1.2"));
    }
}

#[test]
fn no_ice_barrier_where_none_is_asked_for_or_the_garage_stands_alone_unheated() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::inches(12));
    let supplies = Supplies::default();
    let none = counted(&plan, &mild(), &supplies, &Choices::default());
    assert!(none.of(Item::IceBarrier).next().is_none());
    assert!(none.gaps.iter().all(|gap| gap.item != Item::IceBarrier));
    let unheated = Choices {
        unheated_accessory: true,
        ..Choices::default()
    };
    let garage = counted(&plan, &icy(Edition::E2018), &supplies, &unheated);
    assert!(garage.of(Item::IceBarrier).next().is_none());
    let unknown = counted(&plan, &Profile::default(), &supplies, &Choices::default());
    assert!(unknown.gaps.iter().any(|gap| gap.item == Item::IceBarrier));
}

#[test]
fn an_overhang_that_nobody_measured_is_asked_for() {
    let mut plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    for line in &mut plan.lines {
        line.overhang = None;
    }
    let supplies = Supplies::default();
    let profile = icy(Edition::E2018);
    let asked = counted(&plan, &profile, &supplies, &Choices::default());
    assert!(asked.of(Item::IceBarrier).next().is_none());
    assert!(asked.gaps.iter().any(|gap| gap.item == Item::IceBarrier));
    let told = Choices {
        overhang: Some(Length::inches(16)),
        ..Choices::default()
    };
    let told = counted(&plan, &profile, &supplies, &told);
    assert!(need(&told, Item::IceBarrier).amount.likely > 0.0);
}

/// A roll of 36 in × 144 ft nets 408 ft² at 2 in lap and 204 at 19 in (computed; the 19 in are IRC R905.1.1's half width and 1 in, NAVEDTRA
/// 14044's exposure of 17 in).
#[test]
fn a_roll_of_felt_covers_what_its_laps_leave() {
    let mut supplies = Supplies::default();
    let roll = Supply {
        lap: Length::inches(2),
        ..Supply::roll(Length::inches(36), Length::feet(144))
    };
    supplies.of.insert(Item::Underlayment, roll);
    let choices = Choices {
        order_at: OrderAt::Likely,
        ..Choices::default()
    };
    for (pitch, nets) in [(4.0, 408.0), (3.9, 204.0), (2.0, 204.0)] {
        let pitch = Pitch::from_rise(pitch).unwrap();
        // As much roof as three rolls net, on two slopes.
        let wide = 3.0 * nets / 20.0 / pitch.slope_factor();
        let plan = gable(20.0, wide, pitch, Length::ZERO);
        let felt = counted(&plan, &mild(), &supplies, &choices);
        let felt = need(&felt, Item::Underlayment);
        assert!(
            (felt.amount.likely / felt.pack - 3.0).abs() < 1e-9,
            "{pitch}"
        );
        assert_eq!(felt.order, 3, "{pitch}");
    }
}

#[test]
fn the_ice_barrier_stands_in_for_underlayment() {
    let supplies = Supplies::default();
    let choices = Choices::default();
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::inches(16));
    let bare = counted(&plan, &mild(), &supplies, &choices);
    let iced = counted(&plan, &icy(Edition::E2018), &supplies, &choices);
    let felt = |takeoff| -> f64 {
        let need = need(takeoff, Item::Underlayment);
        need.amount.likely * 34.0 / 36.0 / supplies.supply(Item::Underlayment).end_lapped()
    };
    // Two courses of 36 in with 4 in lap cover 68 in of each slope.
    let band = 2.0 * 40.0 * 68.0 / 12.0;
    assert!((felt(&bare) - felt(&iced) - band).abs() < 1e-6);
}

#[test]
fn shingles_lie_on_two_in_twelve_and_up() {
    let low = Pitch::from_rise(1.5).unwrap();
    let plan = gable(40.0, 28.0, low, Length::ZERO);
    let (profile, supplies) = (mild(), Supplies::default());
    let (standing, choices) = (Standing::default(), Choices::default());
    let basis = Basis {
        profile: &profile,
        supplies: &supplies,
        standing: &standing,
        choices: &choices,
    };
    let strips = laid(&plan, Pieces::strip(), 0.0);
    assert_eq!(
        takeoff(&plan, &strips, &basis),
        Err(TakeoffError::TooLow(vec![
            ("A".to_owned(), low),
            ("B".to_owned(), low)
        ]))
    );
    let mut slate = Pieces::strip();
    slate.covering = Covering::Slate;
    assert_eq!(
        takeoff(&plan, &laid(&plan, slate, 0.0), &basis),
        Err(TakeoffError::NoShingle(Covering::Slate))
    );
    let mut none = strips.clone();
    none.planes.clear();
    assert_eq!(
        takeoff(&plan, &none, &basis),
        Err(TakeoffError::NothingLaid)
    );
    let mut other = strips;
    other.planes[0].plane = 7;
    assert_eq!(
        takeoff(&plan, &other, &basis),
        Err(TakeoffError::OtherPlan(7))
    );
}

/// Roof 28 ft over both slopes by 46 ft: 1288 ft², 13 squares, 39 bundles of a third of a square (Habitat handbook). The strips of 36 in at 5 in go
/// 80 to the square, 27 to the bundle (NAVEDTRA 14044).
#[test]
fn a_handbook_roof_takes_thirty_nine_bundles() {
    let pitch = Pitch::rise(2);
    let plan = gable(46.0, 28.0 / pitch.slope_factor(), pitch, Length::ZERO);
    let mut strips = laid(&plan, Pieces::strip(), 0.0);
    (strips.starter, strips.cap) = (0, 0);
    let (profile, supplies) = (mild(), Supplies::default());
    let (standing, choices) = (Standing::default(), Choices::default());
    let basis = Basis {
        profile: &profile,
        supplies: &supplies,
        standing: &standing,
        choices: &choices,
    };
    let takeoff = takeoff(&plan, &strips, &basis).unwrap();
    assert!((takeoff.squares.likely - 12.88).abs() < 1e-9);
    let shingles = need(&takeoff, Item::StripShingle);
    assert_eq!(shingles.order, 39);
}

#[test]
fn starter_and_caps_are_cut_or_bought() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let choices = Choices::default();
    let cut = counted(&plan, &mild(), &Supplies::default(), &choices);
    assert!(cut.of(Item::Starter).next().is_none());
    assert!(cut.of(Item::Cap).next().is_none());
    let buys = Supplies {
        buys_starter: true,
        buys_caps: true,
        ..Supplies::default()
    };
    let bought = counted(&plan, &mild(), &buys, &choices);
    let strips = |takeoff| need(takeoff, Item::StripShingle).amount.likely;
    let laid = laid(&plan, Pieces::strip(), 0.05);
    assert!((strips(&cut) - strips(&bought) - f64::from(laid.starter + laid.cap)).abs() < 1e-9);
    assert!((need(&bought, Item::Starter).amount.likely - 80.0).abs() < 1e-6);
    assert!((need(&bought, Item::Cap).amount.likely - 40.0).abs() < 1e-6);
}

/// 10 ft pieces lapped 2 in cover 9 ft 10 in (IRC R905.2.8.5 of 2012 and later; before it is practice).
#[test]
fn drip_edge_runs_along_eaves_and_rakes() {
    let plan = gable(59.0, 24.0, Pitch::rise(12), Length::ZERO);
    let along = 2.0 * 59.0 + 4.0 * 12.0 * 2f64.sqrt();
    for (edition, by_code) in [(Edition::E2012, true), (Edition::E2009, false)] {
        let profile = Profile { edition, ..mild() };
        let takeoff = counted(&plan, &profile, &Supplies::default(), &Choices::default());
        let drip = need(&takeoff, Item::DripEdge);
        assert!((drip.amount.likely - along * 120.0 / 118.0).abs() < 1e-6);
        assert_eq!(drip.order, 19);
        assert_eq!(matches!(drip.source, Source::Code(_)), by_code);
    }
}

/// At least 4 a strip (IRC R905.2.6); 6 where he says so.
#[test]
fn nails_are_counted_by_the_strip() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let laid = laid(&plan, Pieces::strip(), 0.05);
    let nails = |a_strip: u8| {
        let choices = Choices {
            nails_a_strip: a_strip,
            ..Choices::default()
        };
        let takeoff = counted(&plan, &mild(), &Supplies::default(), &choices);
        need(&takeoff, Item::Nails).amount.likely
    };
    let strips = f64::from(laid.field + laid.starter);
    let caps = f64::from(laid.caps) * 2.0;
    assert!((nails(4) - strips * 4.0 - caps).abs() < 1e-9);
    assert!((nails(6) - strips * 6.0 - caps).abs() < 1e-9);
}

/// Cricket heights by Table R1003.20: the row for 12:12 seen, the others from memory; 30 in takes none (R903.2.2).
#[test]
fn crickets_by_the_table() {
    let width = Length::inches(48);
    for (rise, part) in [(12, 2), (8, 3), (6, 4), (4, 6), (3, 8)] {
        let cricket = cricket(width, Pitch::rise(rise)).unwrap();
        assert_eq!(cricket.height, Length::inches(48 / part), "{rise}:12");
    }
    assert_eq!(cricket(Length::inches(30), Pitch::rise(6)), None);
    assert!(cricket(Length::sixteenths(481), Pitch::rise(6)).is_some());
}

/// An attic of 1500 ft² at 1/150 takes 10 ft² = 1440 in² (IRC R806.2; the product computed).
#[test]
fn vents_by_net_free_area() {
    let vents = Ventilation {
        area: Area::square_feet(1500.0),
        high_share: 0.5,
        above_eave_vents: None,
        below_ridge: None,
        retarder: Answer::Unknown,
        high_vent: 50.0,
        low_vent: 65.0,
        high_stays: 0.0,
        low_stays: 0.0,
    };
    let profile = mild();
    assert!((net_free_area(&vents, &profile) - 1440.0).abs() < 1e-6);
    let choices = Choices {
        vents: Some(vents),
        ..Choices::default()
    };
    let plan = gable(50.0, 30.0, Pitch::rise(6), Length::ZERO);
    let takeoff = counted(&plan, &profile, &Supplies::default(), &choices);
    // 720 in² high at 50 and 720 low at 65.
    assert_eq!(need(&takeoff, Item::HighVent).order, 15);
    assert_eq!(need(&takeoff, Item::LowVent).order, 12);
    let near_ridge = Ventilation {
        below_ridge: Some(Length::feet(2)),
        ..vents
    };
    let warm = Profile {
        climate_zone: Some(4),
        ..mild()
    };
    assert!((net_free_area(&near_ridge, &warm) - 720.0).abs() < 1e-6);
}

/// The conditions of IRC R806.2 by edition; "one or more" in 2012 and "both" later are from memory.
#[test]
fn one_in_three_hundred_by_edition() {
    let vents = Ventilation {
        area: Area::square_feet(1500.0),
        high_share: 0.6,
        above_eave_vents: Some(Length::feet(3)),
        below_ridge: Some(Length::feet(3)),
        retarder: Answer::No,
        high_vent: 50.0,
        low_vent: 50.0,
        high_stays: 0.0,
        low_stays: 0.0,
    };
    let at = |edition, zone| Profile {
        edition,
        climate_zone: zone,
        ..Profile::default()
    };
    assert_eq!(one_in_300(&vents, &at(Edition::E2009, None)), Answer::Yes);
    // 60 % high is too much since 2012.
    assert_eq!(one_in_300(&vents, &at(Edition::E2012, Some(4))), Answer::No);
    let half = Ventilation {
        high_share: 0.5,
        ..vents
    };
    assert_eq!(one_in_300(&half, &at(Edition::E2012, Some(7))), Answer::Yes);
    assert_eq!(one_in_300(&half, &at(Edition::E2018, Some(7))), Answer::No);
    assert_eq!(one_in_300(&half, &at(Edition::E2018, Some(5))), Answer::Yes);
    assert_eq!(
        one_in_300(&half, &at(Edition::E2018, None)),
        Answer::Unknown
    );
    let unmeasured = Ventilation {
        below_ridge: None,
        ..half
    };
    assert_eq!(
        one_in_300(&unmeasured, &at(Edition::E2018, Some(5))),
        Answer::Unknown
    );
    let retarded = Ventilation {
        retarder: Answer::Yes,
        ..vents
    };
    assert_eq!(
        one_in_300(&retarded, &at(Edition::E2012, Some(6))),
        Answer::Yes
    );
}

/// One piece a course along a side wall (IRC R905.2.8.3), a kick-out where it starts at an eave (R903.2.1).
#[test]
fn walls_take_steps_kick_outs_and_head_flashing() {
    let mut plan = gable(40.0, 24.0, Pitch::rise(12), Length::ZERO);
    // The left rake of slope A runs along a wall: 12 ft of run are 203.6 in up the slope, 41 courses at 5 in.
    let rake = plan
        .lines
        .iter_mut()
        .find(|line| line.kind == LineKind::Rake)
        .unwrap();
    rake.kind = LineKind::Step;
    plan.lines.push(line(
        LineKind::Wall,
        [10.0, 12.0, 12.0],
        [16.0, 12.0, 12.0],
        &[0],
    ));
    let takeoff = counted(&plan, &mild(), &Supplies::default(), &Choices::default());
    assert!((need(&takeoff, Item::StepFlashing).amount.likely - 41.0).abs() < 1e-9);
    assert!((need(&takeoff, Item::KickOut).amount.likely - 1.0).abs() < 1e-9);
    let head = need(&takeoff, Item::HeadFlashing).amount.likely;
    assert!((head - 6.0 * 120.0 / 118.0).abs() < 1e-6);
}

/// Open: metal at least 24 in wide; closed: lined too (IRC R905.2.8.2).
#[test]
fn valleys_are_lined_open_or_closed() {
    let mut plan = gable(40.0, 24.0, Pitch::rise(6), Length::ZERO);
    plan.lines.push(line(
        LineKind::Valley,
        [0.0, 0.0, 0.0],
        [12.0, 12.0, 6.0],
        &[0, 1],
    ));
    let (profile, supplies) = (mild(), Supplies::default());
    let (standing, choices) = (Standing::default(), Choices::default());
    let basis = Basis {
        profile: &profile,
        supplies: &supplies,
        standing: &standing,
        choices: &choices,
    };
    let mut strips = laid(&plan, Pieces::strip(), 0.0);
    let open = takeoff(&plan, &strips, &basis).unwrap();
    let metal = need(&open, Item::ValleyMetal);
    // 12 ft of common run at 6:12: 18 ft in plan and height together, √(12² + 12² + 6²).
    assert!((metal.amount.likely - 18.0 * 120.0 / 114.0).abs() < 1e-6);
    assert_eq!(metal.size, Some(Length::inches(24)));
    strips.valleys = ValleyIs::ClosedCut;
    let closed = takeoff(&plan, &strips, &basis).unwrap();
    assert!(closed.of(Item::ValleyMetal).next().is_none());
    assert_eq!(
        need(&closed, Item::ValleySheet).size,
        Some(Length::inches(36))
    );
}

#[test]
fn boots_and_chimneys_from_what_stands_there() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let (profile, supplies, choices) = (mild(), Supplies::default(), Choices::default());
    let pipe = |part: u128, diameter| price::standing::Pipe {
        part: support::id(part),
        slope: Some(slope_id(0)),
        diameter,
    };
    let wide = Measured {
        value: Length::inches(36),
        got: Got::Tape,
        within: 0.01,
    };
    let standing = Standing {
        pipes: vec![
            pipe(1, Some(Length::inches(3))),
            pipe(2, Some(Length::inches(3))),
            pipe(3, Some(Length::inches(2))),
            pipe(4, None),
        ],
        chimneys: vec![price::standing::Chimney {
            part: support::id(5),
            slope: Some(slope_id(0)),
            width: Some(wide),
            depth: Some(Length::inches(24)),
            astride_ridge: Answer::No,
        }],
        high_vents: 3,
        ..Standing::default()
    };
    let basis = Basis {
        profile: &profile,
        supplies: &supplies,
        standing: &standing,
        choices: &choices,
    };
    let strips = laid(&plan, Pieces::strip(), 0.0);
    let counted = takeoff(&plan, &strips, &basis).unwrap();
    let boots: Vec<_> = counted
        .of(Item::PipeBoot)
        .map(|need| (need.size, need.order))
        .collect();
    assert_eq!(
        boots,
        [
            (Some(Length::inches(3)), 2),
            (Some(Length::inches(2)), 1),
            (None, 1)
        ]
    );
    assert_eq!(need(&counted, Item::Cricket).size, Some(Length::inches(36)));
    assert_eq!(need(&counted, Item::HighVent).order, 3);
    // 24 in level at 6:12 are 26.8 in up the slope: 6 courses at 5 in on each side.
    assert!((need(&counted, Item::StepFlashing).amount.likely - 12.0).abs() < 1e-9);
    // Astride the ridge no water comes at it from above (IRC R1003.20).
    let mut astride = standing.clone();
    astride.chimneys[0].astride_ridge = Answer::Yes;
    let basis = Basis {
        standing: &astride,
        ..basis
    };
    let counted = takeoff(&plan, &strips, &basis).unwrap();
    assert!(counted.of(Item::Cricket).next().is_none());
}

#[test]
fn only_what_is_laid_is_counted() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let (profile, supplies) = (mild(), Supplies::default());
    let (standing, choices) = (Standing::default(), Choices::default());
    let basis = Basis {
        profile: &profile,
        supplies: &supplies,
        standing: &standing,
        choices: &choices,
    };
    let mut one = laid(&plan, Pieces::strip(), 0.0);
    one.planes.truncate(1);
    let half = takeoff(&plan, &one, &basis).unwrap();
    assert_eq!(
        (half.planes, half.planes_left),
        (vec!["A".into()], vec!["B".into()])
    );
    let both = takeoff(&plan, &laid(&plan, Pieces::strip(), 0.0), &basis).unwrap();
    assert!((half.squares.likely * 2.0 - both.squares.likely).abs() < 1e-9);
}

fn scale(plan: &trade::roof::RoofPlan, by: f64) -> trade::roof::RoofPlan {
    let mut plan = plan.clone();
    let corner = |corner: &mut trade::roof::Corner| {
        corner.x *= by;
        corner.y *= by;
        corner.z *= by;
    };
    for plane in &mut plan.planes {
        plane.corners.iter_mut().for_each(corner);
        plane.plan_area = plane.plan_area.scaled(by * by);
        plane.slope_area = plane.slope_area.scaled(by * by);
    }
    for line in &mut plan.lines {
        corner(&mut line.from);
        corner(&mut line.to);
        line.length = line.length.scaled(by);
    }
    plan
}

fn ordered(spread: Spread) -> bool {
    spread.least <= spread.likely && spread.likely <= spread.most
}

proptest! {
    /// Lengths double, areas and what lies on them are fourfold, what runs along lines is double.
    #[test]
    fn a_takeoff_scales(
        long in 10.0..120.0f64,
        wide in 10.0..80.0f64,
        rise in 2u32..16,
    ) {
        let plan = gable(long, wide, Pitch::rise(rise), Length::ZERO);
        let (profile, supplies, choices) = (mild(), Supplies::default(), Choices::default());
        let small = counted(&plan, &profile, &supplies, &choices);
        let large = counted(&scale(&plan, 2.0), &profile, &supplies, &choices);
        let ratio = |item| need(&large, item).amount.likely / need(&small, item).amount.likely;
        prop_assert!((large.squares.likely / small.squares.likely - 4.0).abs() < 1e-6);
        prop_assert!((ratio(Item::Underlayment) - 4.0).abs() < 1e-6);
        prop_assert!((ratio(Item::DripEdge) - 2.0).abs() < 1e-6);
    }

    /// Whatever the tolerance: least, likely and most stand in order, the packs hold what they are for, and the order follows its policy.
    #[test]
    fn orders_cover_needs(
        long in 10.0..120.0f64,
        wide in 10.0..80.0f64,
        rise in 2u32..16,
        within in 0.0..0.2f64,
        overhang in 0i64..30,
    ) {
        let mut plan = gable(long, wide, Pitch::rise(rise), Length::inches(overhang));
        plan.length_within = within;
        plan.pitch_within = within / 2.0;
        for order_at in OrderAt::ALL {
            let choices = Choices { order_at, ..Choices::default() };
            let takeoff = counted(&plan, &icy(Edition::E2018), &Supplies::default(), &choices);
            prop_assert!(ordered(takeoff.squares));
            for need in &takeoff.needs {
                prop_assert!(ordered(need.amount), "{need:?}");
                prop_assert!(ordered(need.packs.spread()), "{need:?}");
                let holds = need.pack * f64::from(need.order) * (1.0 + 2e-6);
                let wanted = match order_at {
                    OrderAt::Likely => need.amount.likely,
                    OrderAt::Most => need.amount.most,
                };
                prop_assert!(holds >= wanted, "{need:?}");
                prop_assert!(holds - need.pack < wanted * (1.0 + 1e-5), "no pack too many: {need:?}");
            }
            for task in &takeoff.tasks {
                prop_assert!(ordered(task.amount), "{task:?}");
            }
        }
    }

    /// The hours' squares are the roof's squares, whatever stands in the list.
    #[test]
    fn every_square_is_laid_once(long in 10.0..120.0f64, wide in 10.0..80.0f64, rise in 2u32..16) {
        let plan = gable(long, wide, Pitch::rise(rise), Length::ZERO);
        let takeoff = counted(&plan, &mild(), &Supplies::default(), &Choices::default());
        let of = |task| -> f64 {
            let tasks = takeoff.tasks.iter().filter(|row| row.task == task);
            tasks.map(|row| row.amount.likely).sum()
        };
        prop_assert!((of(RoofTask::LayShingles) - takeoff.squares.likely).abs() < 1e-6);
        prop_assert!((of(RoofTask::LayUnderlayment) - takeoff.squares.likely).abs() < 1e-6);
        prop_assert!((of(RoofTask::LayCap) - long).abs() < 1e-6);
    }
}
