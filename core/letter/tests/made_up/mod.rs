//! A made-up material: invented people, an invented street, a dormer wall that was smeared instead of flashed.
#![allow(dead_code, reason = "not every test needs all of it")]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

pub mod photo;
pub mod roof;

use jiff::Timestamp;
use jiff::civil::{Date, date};
use letter::{Material, Roofed};
use trade::answer::Answer;
use trade::catalogue::{Catalogue, KindKey, Months};
use trade::firm::{Edition, Firm, Profile};
use trade::history::History;
use trade::ids::{MarkId, PartId, PersonId, PhotoId, PropertyId, SlopeId, StructureId, VisitId};
use trade::mark::{
    Condition, Correction, DefectSeen, Extent, Mark, Measure, MeasureOf, NotSeen, Rung, Seen,
};
use trade::property::{
    Address, Part, Person, Property, Role, Side, Slope, Structure, StructureKind,
};
use trade::thread::{Became, Patch, Thread};
use trade::units::{Got, Length, Measured, Pitch};
use trade::verdict::{
    CodeSection, Course, LookAt, Narrowed, NextLook, Question, Reason, Refused, Source, StandsOn,
    Step, Strength, Task, Verdict, When,
};
use trade::visit::{Photo, Reach, Reached, Request, Scope, Visit, WetWhen};
use trade::words::{Language, Said};
use trade::work::By;
use uuid::Uuid;

const THEN: VisitId = VisitId(Uuid::from_u128(0x100));
pub const NOW: VisitId = VisitId(Uuid::from_u128(0x101));
pub const HOUSE: StructureId = StructureId(Uuid::from_u128(0x200));
pub const GARAGE: StructureId = StructureId(Uuid::from_u128(0x201));
pub const FRONT: SlopeId = SlopeId(Uuid::from_u128(0x300));
pub const REAR: SlopeId = SlopeId(Uuid::from_u128(0x301));
const GARAGE_FRONT: SlopeId = SlopeId(Uuid::from_u128(0x302));

/// Everything a letter needs, owned.
#[derive(Clone)]
pub struct MadeUp {
    pub firm: Firm,
    pub profile: Profile,
    pub history: History,
    pub threads: Vec<Thread>,
    pub verdicts: Vec<Verdict>,
}

impl MadeUp {
    pub fn material(&self) -> Material<'_> {
        self.with_roofs(&[])
    }

    pub fn with_roofs<'a>(&'a self, roofs: &'a [Roofed<'a>]) -> Material<'a> {
        Material {
            firm: &self.firm,
            profile: &self.profile,
            history: &self.history,
            visit: NOW,
            threads: &self.threads,
            verdicts: &self.verdicts,
            roofs,
            catalogue: Catalogue::standard(),
            language: Language::English,
            on: date(2025, 5, 8),
        }
    }
}

/// The house at 18 Teasel Row.
pub fn teasel_row() -> MadeUp {
    let mut history = History::of(property());
    history.structures = vec![
        structure(HOUSE, StructureKind::House),
        structure(GARAGE, StructureKind::DetachedGarage),
    ];
    history.slopes = vec![
        slope(FRONT, HOUSE, Side::Front, 'A', Some(Pitch::rise(6))),
        slope(REAR, HOUSE, Side::Rear, 'B', Some(Pitch::rise(8))),
        slope(GARAGE_FRONT, GARAGE, Side::Front, 'A', None),
    ];
    history.parts = parts();
    history.visits = vec![visit(THEN, date(2021, 9, 14)), visit(NOW, date(2025, 5, 6))];
    history.marks = marks();
    history.photos = (0..4).map(photo).collect();
    MadeUp {
        firm: firm(),
        profile: Profile {
            place: "Brackenford".to_owned(),
            edition: Edition::E2018,
            ..Profile::default()
        },
        history,
        threads: threads(),
        verdicts: vec![house_verdict(), garage_verdict()],
    }
}

fn firm() -> Firm {
    Firm {
        name: "Lantern Street Roofing".to_owned(),
        person: "Ottoline Marsh".to_owned(),
        phone: "555-0142".to_owned(),
        email: "office@lanternstreet.example".to_owned(),
        address: vec!["3 Lantern Street".to_owned(), "Brackenford".to_owned()],
        licence: "R-00417".to_owned(),
        ..Firm::default()
    }
}

fn property() -> Property {
    Property {
        id: PropertyId(Uuid::from_u128(1)),
        address: Address {
            line: "18 Teasel Row".to_owned(),
            town: "Brackenford".to_owned(),
            region: "Westmark".to_owned(),
            postcode: "00418".to_owned(),
        },
        also: Vec::new(),
        position: None,
        people: vec![Person {
            id: PersonId(Uuid::from_u128(2)),
            name: "Perpetua Ames".to_owned(),
            role: Role::Owner,
            phones: vec!["555-0199".to_owned()],
            email: None,
        }],
        built: Some(1964),
        dangers: vec!["a dog".to_owned()],
        since: date(2021, 9, 1),
    }
}

fn structure(id: StructureId, kind: StructureKind) -> Structure {
    Structure {
        id,
        property: PropertyId(Uuid::from_u128(1)),
        kind,
        name: None,
        gone: None,
    }
}

fn slope(
    id: SlopeId,
    structure: StructureId,
    side: Side,
    letter: char,
    pitch: Option<Pitch>,
) -> Slope {
    Slope {
        id,
        structure,
        side,
        letter,
        pitch: pitch.map(|value| Measured {
            value,
            got: Got::Inclination,
            within: 0.05,
        }),
    }
}

pub fn part_id(number: u16) -> PartId {
    PartId(Uuid::from_u128(0x400 + u128::from(number)))
}

pub fn photo_id(number: u128) -> PhotoId {
    PhotoId(Uuid::from_u128(0x500 + number))
}

fn part(number: u16, slope: Option<SlopeId>, kind: &str, which: Option<&str>) -> Part {
    let in_garage = number >= 20;
    Part {
        id: part_id(number),
        structure: if in_garage { GARAGE } else { HOUSE },
        slope,
        kind: KindKey::from(kind),
        which: which.map(str::to_owned),
        number: if in_garage { number - 19 } else { number },
        at: None,
    }
}

fn parts() -> Vec<Part> {
    vec![
        part(1, Some(FRONT), "gutter", None),
        part(2, Some(FRONT), "covering", None),
        part(
            3,
            Some(REAR),
            "sidewall-flashing",
            Some("left of the dormer"),
        ),
        part(4, Some(REAR), "kickout", Some("left of the dormer")),
        part(
            5,
            Some(REAR),
            "headwall-flashing",
            Some("under the dormer window"),
        ),
        part(6, None, "ridge-cap", None),
        part(7, None, "attic-deck", None),
        part(8, Some(REAR), "soffit", None),
        part(9, Some(REAR), "gutter", None),
        part(10, Some(FRONT), "rake-edge", None),
        part(20, Some(GARAGE_FRONT), "covering", None),
        part(21, Some(GARAGE_FRONT), "fascia", None),
    ]
}

fn visit(id: VisitId, on: Date) -> Visit {
    Visit {
        id,
        property: PropertyId(Uuid::from_u128(1)),
        on,
        by: "Ottoline Marsh".to_owned(),
        request: Request {
            words: "There is a stain over the stairs again.".to_owned(),
            leaking: Answer::Yes,
            room: Some("ceiling over the stairs".to_owned()),
            wet_when: vec![WetWhen::DrivenRain],
            ..Request::default()
        },
        scope: Scope::WholeRoof,
        structures: vec![HOUSE, GARAGE],
        weather: trade::visit::Weather::default(),
        safety: Vec::new(),
        reached: vec![
            Reached {
                structure: HOUSE,
                how: Reach::OnRoof,
            },
            Reached {
                structure: GARAGE,
                how: Reach::Ground,
            },
        ],
        ladder: None,
        closed: Some(noon(on)),
    }
}

fn noon(on: Date) -> Timestamp {
    on.at(12, 0, 0, 0)
        .in_tz("UTC")
        .map_or(Timestamp::UNIX_EPOCH, |zoned| zoned.timestamp())
}

fn mark(
    id: u128,
    visit: VisitId,
    part: u16,
    condition: Condition,
    defects: &[(&str, Extent)],
) -> Mark {
    let on = if visit == NOW {
        date(2025, 5, 6)
    } else {
        date(2021, 9, 14)
    };
    Mark {
        id: MarkId(Uuid::from_u128(0x600 + id)),
        visit,
        part: part_id(part),
        at: noon(on),
        condition,
        defects: defects
            .iter()
            .map(|&(defect, extent)| DefectSeen {
                defect: defect.into(),
                extent,
            })
            .collect(),
        advised: Vec::new(),
        answers: Vec::new(),
        measures: Vec::new(),
        photos: Vec::new(),
        words: String::new(),
        corrected: None,
    }
}

fn seen(rung: Rung, seen: Seen) -> Condition {
    Condition::Seen { rung, seen }
}

fn marks() -> Vec<Mark> {
    use Rung::{Ageing, Failing, Sound};
    use Seen::{Afar, Near, Touched};
    let spot = Extent::Spot;
    let mut wall = mark(
        11,
        NOW,
        3,
        seen(Failing, Touched),
        &[("sealant-for-flashing", Extent::Broad)],
    );
    wall.photos = vec![photo_id(1), photo_id(2)];
    wall.words =
        String::from("The bead is cracked along its whole length; a knife goes in behind it.");
    wall.measures = vec![Measure {
        of: MeasureOf::Run,
        value: Measured {
            value: Length::inches(94),
            got: Got::Tape,
            within: 0.01,
        },
    }];
    let mut wall_then = mark(
        1,
        THEN,
        3,
        seen(Failing, Touched),
        &[("step-flashing-missing", Extent::Broad)],
    );
    wall_then.photos = vec![photo_id(0)];
    let mut gutter = mark(
        12,
        NOW,
        1,
        seen(Ageing, Near),
        &[("gutter-clogged", Extent::Several)],
    );
    gutter.corrected = Some(Correction {
        on: date(2025, 5, 7),
        why: "it was the front gutter, not the rear one".to_owned(),
    });
    gutter.photos = vec![photo_id(3)];
    vec![
        wall_then,
        mark(
            2,
            THEN,
            4,
            seen(Failing, Touched),
            &[("kickout-missing", spot)],
        ),
        mark(
            3,
            THEN,
            5,
            seen(Ageing, Near),
            &[("head-flashing-short", spot)],
        ),
        mark(4, THEN, 2, seen(Sound, Near), &[]),
        mark(5, THEN, 7, seen(Ageing, Touched), &[("deck-stained", spot)]),
        gutter,
        mark(13, NOW, 2, seen(Sound, Near), &[]),
        wall,
        mark(14, NOW, 4, seen(Sound, Touched), &[]),
        mark(
            15,
            NOW,
            5,
            Condition::NotSeen {
                why: NotSeen::Hidden,
            },
            &[],
        ),
        mark(16, NOW, 6, seen(Sound, Near), &[]),
        mark(
            17,
            NOW,
            7,
            Condition::NotSeen {
                why: NotSeen::Locked,
            },
            &[],
        ),
        mark(18, NOW, 8, seen(Sound, Near), &[]),
        mark(19, NOW, 9, seen(Sound, Near), &[]),
        mark(20, NOW, 10, seen(Sound, Near), &[]),
        mark(
            21,
            NOW,
            20,
            seen(Ageing, Afar),
            &[("moss-growing", Extent::Several)],
        ),
        mark(22, NOW, 21, seen(Sound, Afar), &[]),
    ]
}

fn photo(number: u128) -> Photo {
    let (visit, caption) = match number {
        0 => (
            THEN,
            "The joint left of the dormer, a shingle lifted: no metal",
        ),
        1 => (NOW, "The joint left of the dormer, smeared with sealant"),
        2 => (NOW, "A knife behind the cracked bead"),
        _ => (NOW, "Leaves to the brim at the front corner"),
    };
    Photo {
        id: photo_id(number),
        property: PropertyId(Uuid::from_u128(1)),
        visit,
        sha256: String::new(),
        taken: noon(date(2025, 5, 6)),
        position: None,
        direction: None,
        orientation: 1,
        caption: caption.to_owned(),
    }
}

fn thread(
    part: u16,
    became: Became,
    earlier: Option<u128>,
    now: u128,
    rungs: (Option<Rung>, Option<Rung>),
) -> Thread {
    let id = |id| MarkId(Uuid::from_u128(0x600 + id));
    Thread {
        part: part_id(part),
        marks: Vec::new(),
        became,
        earlier: earlier.map(id),
        now: Some(id(now)),
        rung_then: rungs.0,
        rung_now: rungs.1,
        cause: None,
        patches: Vec::new(),
        by: None,
        callback: None,
    }
}

fn threads() -> Vec<Thread> {
    use Rung::{Ageing, Failing, Sound};
    let mut wall = thread(
        3,
        Became::Patched,
        Some(1),
        11,
        (Some(Failing), Some(Failing)),
    );
    wall.patches = vec![patch(date(2019, 6, 30)), patch(date(2023, 3, 2))];
    wall.by = Some(By::NotUs);
    let mut kickout = thread(4, Became::Cured, Some(2), 14, (Some(Failing), Some(Sound)));
    kickout.by = Some(By::Us);
    vec![
        wall,
        kickout,
        thread(5, Became::Hidden, Some(3), 15, (Some(Ageing), None)),
        thread(7, Became::NotSeenAgain, Some(5), 17, (Some(Ageing), None)),
        thread(2, Became::Quiet, Some(4), 13, (Some(Sound), Some(Sound))),
        thread(1, Became::New, None, 12, (None, Some(Ageing))),
        thread(20, Became::New, None, 21, (None, Some(Ageing))),
    ]
}

fn patch(when: Date) -> Patch {
    Patch {
        remedy: Some("sealant".into()),
        when,
        by: By::NotUs,
        usual: Some(Months { least: 6, most: 24 }),
    }
}

fn reason(says: &str, source: Source, on: &[u128]) -> Reason {
    Reason {
        rule: "made-up".to_owned(),
        says: Said::verbatim(says),
        source,
        strength: Strength::Advises,
        stands_on: on
            .iter()
            .map(|&id| StandsOn::Mark(MarkId(Uuid::from_u128(0x600 + id))))
            .collect(),
    }
}

fn code(section: &str) -> Source {
    Source::Code(CodeSection {
        document: "IRC".to_owned(),
        edition: Some(2018),
        section: section.to_owned(),
    })
}

pub fn task(part: u16, remedy: &str) -> Task {
    Task {
        part: part_id(part),
        remedy: Some(remedy.into()),
        trade: None,
    }
}

fn house_verdict() -> Verdict {
    Verdict {
        structure: HOUSE,
        on: date(2025, 5, 6),
        steps: vec![
            Step {
                when: When::Now,
                course: Course::MakeSafe,
                tasks: vec![task(3, "temporary-cover")],
                slopes: Vec::new(),
                until: Some(date(2025, 6, 17)),
                reasons: vec![reason(
                    "Water comes in at the dormer wall in driven rain.",
                    Source::Owner,
                    &[11],
                )],
            },
            Step {
                when: When::ThisSeason,
                course: Course::Repair,
                tasks: vec![task(3, "new-step-flashing"), task(1, "clean-gutter")],
                slopes: Vec::new(),
                until: None,
                reasons: vec![
                    reason(
                        "The wall has no metal steps; sealant alone does not keep water out for long.",
                        Source::Practice,
                        &[11],
                    ),
                    reason(
                        "Where a roof meets a side wall, flashing at least 4 inches high and 4 inches wide is required.",
                        code("R905.2.8.3"),
                        &[11],
                    ),
                    reason(
                        "The shingles around it lie flat and still bend, so that a repair can be woven in.",
                        Source::Evidence,
                        &[13],
                    ),
                ],
            },
            Step {
                when: When::Later,
                course: Course::Leave,
                tasks: Vec::new(),
                slopes: Vec::new(),
                until: Some(date(2028, 5, 6)),
                reasons: vec![reason(
                    "The rest of the covering is sound.",
                    Source::Evidence,
                    &[13, 16],
                )],
            },
        ],
        refused: vec![Refused {
            course: Course::Repair,
            narrowed: Narrowed::SealantAlone,
            forbidden: false,
            reasons: vec![reason(
                "It would be the third patch on the same cause; we stop at two.",
                Source::HousePolicy,
                &[11],
            )],
        }],
        unseen: vec![part_id(5), part_id(7)],
        unknown: vec![Question::DeckWet, Question::WaterComesIn],
        next_look: Some(NextLook {
            looks: vec![LookAt {
                question: Question::DeckWetBroad,
                stop: Some("attic".into()),
                answer: Answer::Yes,
            }],
            turns_to: Course::TearOff,
        }),
        cautions: vec![reason(
            "Paint from before 1978 may hold lead. Whoever cuts into the painted wall works by the lead rules.",
            Source::Code(CodeSection {
                document: "40 CFR".to_owned(),
                edition: None,
                section: "745".to_owned(),
            }),
            &[],
        )],
        limits: vec![reason(
            "The attic was locked: the underside of the deck was not seen.",
            Source::Evidence,
            &[17],
        )],
    }
}

fn garage_verdict() -> Verdict {
    Verdict {
        structure: GARAGE,
        on: date(2025, 5, 6),
        steps: vec![Step {
            when: When::Later,
            course: Course::LookFirst,
            tasks: Vec::new(),
            slopes: Vec::new(),
            until: None,
            reasons: vec![reason(
                "It was seen only from the ground.",
                Source::Evidence,
                &[21],
            )],
        }],
        refused: vec![Refused {
            course: Course::Recover,
            narrowed: Narrowed::Whole,
            forbidden: true,
            reasons: vec![reason(
                "There are two layers already.",
                code("R908.3.1.1"),
                &[21],
            )],
        }],
        unseen: Vec::new(),
        unknown: vec![Question::Brittle],
        next_look: None,
        cautions: Vec::new(),
        limits: Vec::new(),
    }
}
