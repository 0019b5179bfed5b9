//! Roofs and records made by hand, for the tests.

#![cfg(test)]
#![allow(
    dead_code,
    clippy::unwrap_used,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss
)]

use jiff::Timestamp;
use jiff::civil::date;
use price::{
    Asking, Basis, Choices, Reading, Standing, Supplies, Weights, offers, takeoff, tear_off,
};
use trade::answer::Answer;
use trade::catalogue::{Catalogue, KindKey, RemedyKey};
use trade::firm::{Edition, Profile};
use trade::history::History;
use trade::ids::{MarkId, PartId, PropertyId, SlopeId, StructureId, VisitId};
use trade::laid::{Laid, LaidPlane, Pieces, ValleyIs};
use trade::mark::{Condition, DefectSeen, Extent, Mark, Measure, MeasureOf, Rung, Seen};
use trade::offer::Offer;
use trade::price_list::PriceList;
use trade::property::{Address, Part, Property, Side, Slope, Structure, StructureKind};
use trade::roof::{Corner, LineKind, Plane, RoofLine, RoofPlan};
use trade::stack::Covering;
use trade::takeoff::{Item, Need, Spread, Takeoff, TearOff};
use trade::units::{Area, Got, Length, Measured, Pitch};
use trade::verdict::{Course, Step, Task, Verdict, When};
use uuid::Uuid;

const FOOT: f64 = 0.3048;

pub fn id<T: From<Uuid>>(number: u128) -> T {
    T::from(Uuid::from_u128(number))
}

pub fn slope_id(plane: usize) -> SlopeId {
    id(100 + plane as u128)
}

fn corner(x: f64, y: f64, z: f64) -> Corner {
    Corner {
        x: x * FOOT,
        y: y * FOOT,
        z: z * FOOT,
    }
}

/// A line between two corners in feet.
pub fn line(kind: LineKind, from: [f64; 3], to: [f64; 3], planes: &[usize]) -> RoofLine {
    let across = |axis: usize| (from[axis] - to[axis]).powi(2);
    let feet = (across(0) + across(1) + across(2)).sqrt();
    RoofLine {
        kind,
        from: corner(from[0], from[1], from[2]),
        to: corner(to[0], to[1], to[2]),
        length: Length::from_inches(feet * 12.0),
        planes: planes.to_vec(),
        overhang: None,
    }
}

/// A gable roof: so long along its eaves, so wide over both slopes, overhangs included, in feet.
pub fn gable(long: f64, wide: f64, pitch: Pitch, overhang: Length) -> RoofPlan {
    let half = wide / 2.0;
    let high = half * pitch.in_twelfths() / 12.0;
    let plane = |letter: &str, at: usize, rim: [[f64; 3]; 4], downhill| Plane {
        letter: letter.to_owned(),
        slope: Some(slope_id(at)),
        pitch,
        downhill,
        corners: rim.map(|[x, y, z]| corner(x, y, z)).to_vec(),
        holes: Vec::new(),
        plan_area: Area::square_feet(long * half),
        slope_area: Area::square_feet(long * half * pitch.slope_factor()),
    };
    let (a, b) = ([0.0, 0.0, 0.0], [long, 0.0, 0.0]);
    let (c, d) = ([long, wide, 0.0], [0.0, wide, 0.0]);
    let (left, right) = ([0.0, half, high], [long, half, high]);
    let mut lines = vec![
        line(LineKind::Eave, a, b, &[0]),
        line(LineKind::Eave, c, d, &[1]),
        line(LineKind::Ridge, left, right, &[0, 1]),
        line(LineKind::Rake, a, left, &[0]),
        line(LineKind::Rake, b, right, &[0]),
        line(LineKind::Rake, c, right, &[1]),
        line(LineKind::Rake, d, left, &[1]),
    ];
    for line in &mut lines {
        if line.kind == LineKind::Eave {
            line.overhang = Some(overhang);
        }
    }
    RoofPlan {
        structure: None,
        got: Got::Tape,
        length_within: 0.0,
        pitch_within: 0.0,
        planes: vec![
            plane("A", 0, [a, b, right, left], (0.0, -1.0)),
            plane("B", 1, [c, d, left, right], (0.0, 1.0)),
        ],
        lines,
        outlines: Vec::new(),
        walls: Vec::new(),
        height: Length::from_inches(high * 12.0),
    }
}

/// Strips laid over every plane, with so much of the opened cover on the ground.
pub fn laid(plan: &RoofPlan, pieces: Pieces, waste: f64) -> Laid {
    let all: Vec<usize> = (0..plan.planes.len()).collect();
    laid_on(plan, &all, pieces, waste)
}

/// The same over some planes, with the lines that bound them.
pub fn laid_on(plan: &RoofPlan, planes: &[usize], pieces: Pieces, waste: f64) -> Laid {
    let shown = pieces.width.in_feet() * pieces.exposure.in_feet();
    let count = |feet: f64| (feet / shown / (1.0 - waste)).ceil() as u32;
    let length = |kind| {
        plan.lines
            .iter()
            .filter(|line| line.kind == kind && line.planes.iter().any(|at| planes.contains(at)))
            .fold(Length::ZERO, |sum, line| sum.plus(line.length).unwrap())
    };
    let area = |at: &usize| plan.planes[*at].slope_area;
    let covered: Area = planes.iter().map(area).sum();
    let eaves = length(LineKind::Eave);
    let caps = length(LineKind::Ridge).plus(length(LineKind::Hip)).unwrap();
    let cap_pieces = (caps.in_inches() / 5.0).ceil() as u32;
    Laid {
        valleys: ValleyIs::Open,
        planes: planes
            .iter()
            .map(|plane| LaidPlane {
                plane: *plane,
                courses: 0,
                opened: count(area(plane).in_square_feet()),
                reused: 0,
                covered: area(plane),
                lapped: Area::default(),
            })
            .collect(),
        field: count(covered.in_square_feet()),
        starter: (eaves.in_inches() / pieces.width.in_inches()).ceil() as u32,
        starter_length: eaves,
        cap: cap_pieces.div_ceil(3),
        cap_length: caps,
        caps: cap_pieces,
        bundles: 0,
        covered,
        lapped: Area::default(),
        dropped: Area::default(),
        waste,
        extra: 0.0,
        handbook: (0.05, None),
        pieces,
    }
}

/// A profile of one edition that asks for an ice barrier.
pub fn icy(edition: Edition) -> Profile {
    Profile {
        edition,
        ice_barrier: Answer::Yes,
        ..Profile::default()
    }
}

/// A profile that asks for none.
pub fn mild() -> Profile {
    Profile {
        ice_barrier: Answer::No,
        ..Profile::default()
    }
}

/// Counts a roof with strips, nothing standing through it.
pub fn counted(
    plan: &RoofPlan,
    profile: &Profile,
    supplies: &Supplies,
    choices: &Choices,
) -> Takeoff {
    let laid = laid(plan, Pieces::strip(), 0.05);
    let standing = Standing::default();
    let basis = Basis {
        profile,
        supplies,
        standing: &standing,
        choices,
    };
    takeoff(plan, &laid, &basis).unwrap()
}

/// The one need of an item.
pub fn need(takeoff: &Takeoff, item: Item) -> &Need {
    let mut of = takeoff.of(item);
    let need = of.next().expect("a need");
    assert!(of.next().is_none(), "one row of {item:?}");
    need
}

/// The list of docs/price-list-example.csv.
pub fn example_list() -> PriceList {
    price::read_list(include_bytes!("../../../../docs/price-list-example.csv")).unwrap()
}

pub fn structure() -> StructureId {
    id(1)
}

pub fn visit() -> VisitId {
    id(2)
}

/// A property with one house and two slopes at a pitch.
pub fn history(pitch: Pitch) -> History {
    let property = Property {
        id: id::<PropertyId>(3),
        address: Address::default(),
        also: Vec::new(),
        position: None,
        people: Vec::new(),
        built: None,
        dangers: Vec::new(),
        since: date(2026, 1, 1),
    };
    let mut history = History::of(property);
    history.structures.push(Structure {
        id: structure(),
        property: id(3),
        kind: StructureKind::House,
        name: None,
        gone: None,
    });
    for (at, letter) in ['A', 'B'].into_iter().enumerate() {
        history.slopes.push(Slope {
            id: slope_id(at),
            structure: structure(),
            side: Side::Front,
            letter,
            pitch: Some(Measured {
                value: pitch,
                got: Got::Tape,
                within: 0.0,
            }),
        });
    }
    history
}

/// Adds a part with a mark on slope A.
pub fn add_part(
    history: &mut History,
    number: u16,
    kind: &str,
    defect: Option<(&str, Extent)>,
    measures: Vec<Measure>,
) -> PartId {
    let part: PartId = id(1000 + u128::from(number));
    history.parts.push(Part {
        id: part,
        structure: structure(),
        slope: Some(slope_id(0)),
        kind: KindKey::from(kind),
        which: None,
        number,
        at: None,
    });
    history.marks.push(Mark {
        id: id::<MarkId>(2000 + u128::from(number)),
        visit: visit(),
        part,
        at: Timestamp::UNIX_EPOCH,
        condition: Condition::Seen {
            rung: Rung::Failing,
            seen: Seen::Touched,
        },
        defects: defect
            .into_iter()
            .map(|(defect, extent)| DefectSeen {
                defect: defect.into(),
                extent,
            })
            .collect(),
        advised: Vec::new(),
        answers: Vec::new(),
        measures,
        photos: Vec::new(),
        words: String::new(),
        corrected: None,
    });
    part
}

pub fn task(part: PartId, remedy: Option<&str>) -> Task {
    Task {
        part,
        remedy: remedy.map(RemedyKey::from),
        trade: None,
    }
}

pub fn step(when: When, course: Course, tasks: Vec<Task>) -> Step {
    Step {
        when,
        course,
        tasks,
        slopes: Vec::new(),
        until: None,
        reasons: Vec::new(),
    }
}

pub fn verdict(steps: Vec<Step>) -> Verdict {
    Verdict {
        structure: structure(),
        on: date(2026, 6, 1),
        steps,
        refused: Vec::new(),
        unseen: Vec::new(),
        unknown: Vec::new(),
        next_look: None,
        cautions: Vec::new(),
        limits: Vec::new(),
    }
}

/// Strips as a layer.
pub const STRIP: Covering = Covering::AsphaltStrip;

/// What an offer is made from, with nothing beside the verdict.
pub fn asking<'a>(verdict: &'a Verdict, history: &'a History, list: &'a PriceList) -> Asking<'a> {
    Asking {
        verdict,
        history,
        catalogue: Catalogue::standard(),
        list,
        takeoff: None,
        tear_off: None,
        counts: &[],
        wanted: &[],
        patch: None,
        repair_lasts: None,
    }
}

pub fn made(asking: &Asking<'_>) -> Offer {
    offers(id(77), date(2026, 6, 2), asking).expect("an offer")
}

/// A covering and its tear-off on a gable of two layers.
pub fn covering(long: f64, wide: f64, pitch: Pitch, within: f64) -> (Takeoff, TearOff) {
    let mut plan = gable(long, wide, pitch, Length::inches(12));
    plan.length_within = within;
    let list = example_list();
    let choices = Choices {
        deck_sheets: Some(Spread {
            least: 1.0,
            likely: 2.0,
            most: 4.0,
        }),
        ..Choices::default()
    };
    let takeoff = counted(&plan, &icy(Edition::E2018), &Supplies::of(&list), &choices);
    let readings: Vec<Reading> = (0..2)
        .map(|plane| Reading {
            slope: Some(slope_id(plane)),
            coverings: vec![STRIP, STRIP],
            layers: 2,
            sheathing: 0.0,
        })
        .collect();
    let trailer = list.disposal.trailer.expect("a trailer");
    let down =
        tear_off(&plan, &[0, 1], &readings, &Weights::default(), &trailer).expect("a tear-off");
    (takeoff, down)
}

pub fn boot() -> (History, PartId) {
    let mut history = history(Pitch::rise(6));
    let pipe = Measure {
        of: MeasureOf::Diameter,
        value: Measured {
            value: Length::inches(3),
            got: Got::Tape,
            within: 0.0,
        },
    };
    let part = add_part(
        &mut history,
        1,
        "pipe-boot",
        Some(("boot-split", Extent::Spot)),
        vec![pipe],
    );
    (history, part)
}
