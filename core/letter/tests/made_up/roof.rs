//! The roof of 18 Teasel Row as it was taped, laid, counted and offered for: an L with a wing to the street.

use super::{FRONT, HOUSE, MadeUp, REAR, part_id, task};
use jiff::civil::date;
use letter::{Planned, Roofed};
use price::{Asking, Basis, Choices, Patch, Reading, Standing, Supplies, Wanted, Weights};
use roof::draw::{Marks, PHONE, Picture, Placed};
use trade::answer::Answer;
use trade::catalogue::Catalogue;
use trade::ids::OfferId;
use trade::laid::{Pieces, ValleyIs};
use trade::offer::Offer;
use trade::price_list::PriceList;
use trade::property::Part;
use trade::roof::{LineKind, RoofPlan};
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
use trade::stack::Covering;
use trade::takeoff::{Spread, Takeoff, TearOff};
use trade::units::{Got, Length, Pitch};
use trade::verdict::{Course, Narrowed, When};
use trade::words::{Language, Said, Words};
use trade::worksheet::Count;
use uuid::Uuid;

/// What a letter is handed of one roof, owned.
pub struct MadeRoof {
    pub plan: RoofPlan,
    pub picture: Picture,
    pub takeoff: Takeoff,
    pub tear_off: TearOff,
    pub offer: Offer,
}

impl MadeRoof {
    pub fn roofed(&self) -> Roofed<'_> {
        Roofed {
            structure: HOUSE,
            planned: Some(Planned {
                plan: &self.plan,
                drawing: &self.picture.drawing,
                left_out: &self.picture.left_out,
            }),
            takeoff: Some(&self.takeoff),
            tear_off: Some(&self.tear_off),
            offer: Some(&self.offer),
        }
    }
}

/// The list that the price room publishes as its example.
pub fn list() -> PriceList {
    price::read_list(include_bytes!("../../../../docs/price-list-example.csv")).unwrap()
}

/// The L: 46 by 26 feet along the street, its left end running 14 feet farther to the street, a gable there, hips elsewhere.
pub fn plan() -> RoofPlan {
    let corners = [(0, -14), (20, -14), (20, 0), (46, 0), (46, 26), (0, 26)];
    let ring = corners
        .into_iter()
        .enumerate()
        .map(|(at, (x, y))| SketchEdge {
            x: Length::feet(x),
            y: Length::feet(y),
            is: if at == 0 {
                EdgeIs::Gable
            } else {
                EdgeIs::default()
            },
            pitch: (at == 4).then(|| Pitch::rise(8)),
            overhang: None,
            slope: match at {
                2 => Some(FRONT),
                4 => Some(REAR),
                _ => None,
            },
        });
    let drawn = Drawn::Outlines {
        bodies: vec![Body {
            rings: vec![ring.collect()],
            of: OutlineOf::default(),
            pitch: Pitch::rise(6),
            overhang: Length::inches(12),
            raised: Length::ZERO,
            above_roof: None,
        }],
    };
    let mut plan = roof::plan_of(&drawn, Got::Tape, Got::Inclination).unwrap();
    let mut others = 'C'..='Z';
    for plane in &mut plan.planes {
        plane.letter = match plane.slope {
            Some(slope) if slope == FRONT => "A".to_owned(),
            Some(slope) if slope == REAR => "B".to_owned(),
            _ => others.next().unwrap().to_string(),
        };
    }
    plan.structure = Some(HOUSE);
    plan
}

fn placed(made_up: &MadeUp, part: &Part) -> Option<Placed> {
    let slope = made_up.history.slope(part.slope?)?;
    let near = match part.kind.as_str() {
        "gutter" | "soffit" | "kickout" => Some(LineKind::Eave),
        "rake-edge" => Some(LineKind::Rake),
        _ => None,
    };
    Some(Placed {
        letter: slope.letter.to_string(),
        number: u32::from(part.number),
        at: None,
        near,
        chosen: false,
    })
}

pub fn picture(made_up: &MadeUp, plan: &RoofPlan, language: Language) -> Picture {
    let parts = made_up.history.parts_of(HOUSE);
    let marks = Marks {
        parts: parts.filter_map(|part| placed(made_up, part)).collect(),
        below: Some(Said::new("plan-street")),
        ..Marks::default()
    };
    roof::draw::plan(plan, &marks, Words::of(language), PHONE)
}

/// The whole roof counted in laminated shingles.
fn counted(made_up: &MadeUp, plan: &RoofPlan, list: &PriceList) -> Takeoff {
    let (laid, _) = roof::laying::lay(plan, &Pieces::laminated(), ValleyIs::Open).unwrap();
    let standing = Standing::of(&made_up.history, HOUSE);
    let basis = Basis {
        profile: &made_up.profile,
        supplies: &Supplies::of(list),
        standing: &standing,
        choices: &Choices {
            deck_sheets: Some(Spread::exactly(4.0)),
            ..Choices::default()
        },
    };
    price::takeoff(plan, &laid, &basis).unwrap()
}

fn comes_down(plan: &RoofPlan, list: &PriceList) -> TearOff {
    let readings = [Reading {
        slope: None,
        coverings: vec![Covering::AsphaltStrip],
        layers: 1,
        sheathing: 0.0,
    }];
    let planes: Vec<usize> = (0..plan.planes.len()).collect();
    price::tear_off(
        plan,
        &planes,
        &readings,
        &Weights::default(),
        &list.disposal.trailer.unwrap(),
    )
    .unwrap()
}

/// The steps of the house's verdict and, against advice, sealant once more.
pub fn offer(made_up: &MadeUp, takeoff: &Takeoff, tear_off: &TearOff, list: &PriceList) -> Offer {
    let wanted = [Wanted {
        course: Course::Repair,
        narrowed: Narrowed::SealantAlone,
        because: "The house is to be sold in June and the buyer knows.".to_owned(),
        when: When::Now,
        tasks: vec![task(3, "sealant")],
    }];
    let asking = Asking {
        verdict: &made_up.verdicts[0],
        history: &made_up.history,
        catalogue: Catalogue::standard(),
        list,
        takeoff: Some(takeoff),
        tear_off: Some(tear_off),
        counts: &counts(),
        wanted: &wanted,
        patch: Some(&Patch {
            part: part_id(3),
            remedy: "sealant".into(),
            holds: None,
        }),
        repair_lasts: None,
    };
    price::offers(OfferId(Uuid::from_u128(0x700)), date(2025, 5, 7), &asking).unwrap()
}

fn counts() -> Vec<Count> {
    let count = |part, remedy: &str| Count {
        part: part_id(part),
        remedy: remedy.into(),
        amount: Spread::exactly(1.0),
    };
    vec![
        count(3, "temporary-cover"),
        count(3, "new-step-flashing"),
        count(3, "sealant"),
        count(1, "clean-gutter"),
    ]
}

/// Everything of the house's roof, in English.
pub fn of(made_up: &MadeUp) -> MadeRoof {
    in_language(made_up, Language::English)
}

pub fn in_language(made_up: &MadeUp, language: Language) -> MadeRoof {
    priced_by(made_up, language, &list())
}

/// The same, priced by another list.
pub fn priced_by(made_up: &MadeUp, language: Language, list: &PriceList) -> MadeRoof {
    let plan = plan();
    let takeoff = counted(made_up, &plan, list);
    let tear_off = comes_down(&plan, list);
    MadeRoof {
        picture: picture(made_up, &plan, language),
        offer: offer(made_up, &takeoff, &tear_off, list),
        plan,
        takeoff,
        tear_off,
    }
}

/// The house is to be covered anew this season: everything of its roof is known that a new covering asks for.
pub fn to_be_covered_anew() -> MadeUp {
    let mut made_up = super::teasel_row();
    made_up.profile.ice_barrier = Answer::Yes;
    made_up.verdicts[0].steps[1].course = Course::TearOff;
    made_up
}
