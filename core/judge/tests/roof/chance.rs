//! Records thrown together by chance: a few parts, visits, marks and works in every order a life could bring.

use super::papers::{asks, refused, step};
use super::{Roof, at_minute, day};
use jiff::{Span, civil::Date};
use proptest::prelude::*;
use trade::answer::Answer;
use trade::catalogue::{Catalogue, DefectKey, KindKey, RemedyKey};
use trade::history::History;
use trade::ids::{PartId, VisitId};
use trade::mark::{Condition, DefectSeen, Extent, NotSeen, Rung, Seen};
use trade::outcome::Came;
use trade::property::{Part, StructureKind};
use trade::verdict::{Course, Narrowed, Refused, When};
use trade::visit::Request;
use trade::work::{By, Did, WorkOn};

/// Kinds whose parts are renewed, laid over, or left by a new covering, on a slope and on none.
const KINDS: [&str; 7] = [
    "pipe-boot",
    "covering",
    "sidewall-flashing",
    "deck",
    "gutter",
    "masonry-chimney",
    "ridge-cap",
];

/// How many defects of a kind are thrown.
const DEFECTS: usize = 3;

#[derive(Clone, Debug)]
pub struct ThrownMark {
    visit: usize,
    part: usize,
    condition: Condition,
    defects: Vec<(usize, Extent)>,
}

#[derive(Clone, Debug)]
pub struct ThrownWork {
    part: usize,
    /// 0 and 1: the part, 2: its slope, 3: its structure.
    reach: u8,
    /// 0 to 5: a remedy; then replaced, covered, taken down, something.
    did: u8,
    remedy: usize,
    by: By,
    /// The visit it was done after, and how many days.
    day: (usize, u16),
    /// The visit on which it was learned of.
    learned: Option<usize>,
}

#[derive(Clone, Debug)]
pub struct Thrown {
    parts: Vec<(usize, u8)>,
    gaps: Vec<u16>,
    marks: Vec<ThrownMark>,
    works: Vec<ThrownWork>,
    gone: Option<u16>,
}

/// A record built from what was thrown.
pub struct Chance {
    pub history: History,
    pub visits: Vec<VisitId>,
    pub parts: Vec<PartId>,
}

/// Any record. Where `timely`, every work is learned of on no visit or on the first that could have learned of it.
pub fn any_record(timely: bool) -> impl Strategy<Value = Thrown> {
    (
        prop::collection::vec((0..KINDS.len(), 0_u8..3), 1..=2),
        prop::collection::vec(prop_oneof![1 => Just(0_u16), 6 => 1_u16..600], 1..=5),
        prop::collection::vec(any_mark(), 1..=12),
        prop::collection::vec(any_work(timely), 0..=6),
        prop::option::weighted(0.1, 0_u16..1500),
    )
        .prop_map(|(parts, gaps, marks, works, gone)| Thrown {
            parts,
            gaps,
            marks,
            works,
            gone,
        })
}

fn any_mark() -> impl Strategy<Value = ThrownMark> {
    (
        0..5_usize,
        0..3_usize,
        any_condition(),
        prop_oneof![1 => 0..=0_usize, 4 => 1..=1_usize, 1 => 2..=2_usize]
            .prop_flat_map(|count| prop::collection::vec((0..DEFECTS, any_extent()), count)),
    )
        .prop_map(|(visit, part, condition, defects)| ThrownMark {
            visit,
            part,
            condition,
            defects,
        })
}

fn any_condition() -> impl Strategy<Value = Condition> {
    let rung = || prop::sample::select(&Rung::ALL[..]);
    let near = rung().prop_map(|rung| Condition::Seen {
        rung,
        seen: Seen::Near,
    });
    let somehow = (rung(), prop::sample::select(&Seen::ALL[..]))
        .prop_map(|(rung, seen)| Condition::Seen { rung, seen });
    let unseen = prop::sample::select(&NotSeen::ALL[..]).prop_map(|why| Condition::NotSeen { why });
    let sound = Just(Condition::Seen {
        rung: Rung::Sound,
        seen: Seen::Near,
    });
    prop_oneof![
        4 => sound,
        6 => near,
        3 => somehow,
        3 => unseen,
        1 => Just(Condition::Gone),
    ]
}

fn any_extent() -> impl Strategy<Value = Extent> {
    prop::sample::select(&[Extent::Spot, Extent::Several, Extent::Broad][..])
}

fn any_work(timely: bool) -> impl Strategy<Value = ThrownWork> {
    let learned = if timely {
        prop::option::of(Just(0_usize)).boxed()
    } else {
        prop::option::of(0..5_usize).boxed()
    };
    (
        0..3_usize,
        0_u8..4,
        prop_oneof![3 => 0_u8..6, 1 => 6_u8..10],
        0..12_usize,
        prop::sample::select(&By::ALL[..]),
        (0..5_usize, prop_oneof![1 => Just(0_u16), 5 => 1_u16..400]),
        learned,
    )
        .prop_map(|(part, reach, did, remedy, by, day, learned)| ThrownWork {
            part,
            reach,
            did,
            remedy,
            by,
            day,
            learned,
        })
}

fn after(days: u16) -> Date {
    day("2015-01-01").saturating_add(Span::new().days(i64::from(days)))
}

impl Thrown {
    /// Builds the record.
    pub fn build(&self) -> Chance {
        let mut roof = Roof::new();
        let parts = self.place_parts(&mut roof);
        let mut days = 0;
        let visits: Vec<VisitId> = self
            .gaps
            .iter()
            .map(|gap| {
                days += gap;
                roof.visit(&after(days).to_string())
            })
            .collect();
        for (minute, thrown) in self.marks.iter().enumerate() {
            let part = parts[thrown.part % parts.len()];
            let visit = visits[thrown.visit % visits.len()];
            lay_mark(&mut roof, thrown, part, visit, minute);
        }
        for thrown in &self.works {
            let part = parts[thrown.part % parts.len()];
            lay_work(&mut roof, thrown, part, &visits);
        }
        Chance {
            history: roof.history,
            visits,
            parts,
        }
    }

    fn place_parts(&self, roof: &mut Roof) -> Vec<PartId> {
        let garage = roof.structure(StructureKind::DetachedGarage);
        roof.history.structures[1].gone = self.gone.map(after);
        let mut parts = Vec::new();
        for (at, (kind, place)) in self.parts.iter().enumerate() {
            let (structure, slope) = match place {
                0 => (roof.house, Some(roof.front)),
                1 => (roof.house, None),
                _ => (garage, None),
            };
            let part = roof.part_at(structure, slope, KINDS[*kind]);
            let laid = roof.history.parts.last_mut().unwrap();
            laid.which = Some(format!("number {at}"));
            parts.push(part);
        }
        parts
    }
}

fn lay_mark(roof: &mut Roof, thrown: &ThrownMark, part: PartId, visit: VisitId, minute: usize) {
    roof.mark(visit, part, thrown.condition, &[]);
    let kind = roof.history.part(part).unwrap().kind.clone();
    let known: Vec<DefectKey> = Catalogue::standard()
        .defects_of(&kind)
        .take(DEFECTS)
        .map(|defect| defect.key.clone())
        .collect();
    let on = roof.history.visit(visit).unwrap().on;
    let mark = roof.history.marks.last_mut().unwrap();
    mark.at = at_minute(on, 480 + minute);
    if thrown.condition.rung().is_some() {
        for (defect, extent) in &thrown.defects {
            let defect = known[defect % known.len()].clone();
            if !mark.defects.iter().any(|seen| seen.defect == defect) {
                mark.defects.push(DefectSeen {
                    defect,
                    extent: *extent,
                });
            }
        }
    }
}

fn lay_work(roof: &mut Roof, thrown: &ThrownWork, part: PartId, visits: &[VisitId]) {
    let part = roof.history.part(part).unwrap().clone();
    let on = match (thrown.reach, part.slope) {
        (2, Some(slope)) => WorkOn::Slope(slope),
        (3, _) => WorkOn::Structure(part.structure),
        _ => WorkOn::Part(part.id),
    };
    let did = match thrown.did {
        0..=5 => Did::Remedy(some_remedy(&part, thrown.remedy)),
        6 => Did::Replaced,
        7 => Did::Covered,
        8 => Did::TakenDown,
        _ => Did::Something,
    };
    let (when, visit) = timed(roof, thrown, visits);
    roof.work_on(on, did, thrown.by, &when.to_string(), visit);
}

/// The day of a work, never later than the visit that learned of it. Index 0 stands for the first visit that could.
fn timed(roof: &Roof, thrown: &ThrownWork, visits: &[VisitId]) -> (Date, Option<VisitId>) {
    let on = |visit: &VisitId| roof.history.visit(*visit).unwrap().on;
    let (at, days) = thrown.day;
    let when = on(&visits[at % visits.len()]).saturating_add(Span::new().days(i64::from(days)));
    match thrown.learned {
        None => (when, None),
        Some(0) => (when, visits.iter().find(|visit| on(visit) >= when).copied()),
        Some(at) => {
            let visit = visits[at % visits.len()];
            (when.min(on(&visit)), Some(visit))
        }
    }
}

/// A remedy for such parts, or, last in the list, one that has nothing to do with them.
fn some_remedy(part: &Part, at: usize) -> RemedyKey {
    let mut remedies: Vec<RemedyKey> = Catalogue::standard()
        .defects_of(&part.kind)
        .take(DEFECTS)
        .flat_map(|defect| defect.remedies.iter())
        .filter(|treats| treats.fits(&part.kind))
        .map(|treats| treats.remedy.clone())
        .collect();
    remedies.push("clean-gutter".into());
    remedies[at % remedies.len()].clone()
}

impl Chance {
    /// The same record with its lines in another order.
    pub fn shuffled(&self) -> History {
        let mut history = self.history.clone();
        history.visits.reverse();
        history.marks.reverse();
        history.works.reverse();
        let by = history.marks.len() / 3;
        history.marks.rotate_left(by);
        let by = history.works.len() / 2;
        history.works.rotate_left(by);
        history
    }

    /// The record as it was on one visit: all that came later cut off.
    pub fn cut_after(&self, visit: VisitId) -> History {
        let mut history = self.history.clone();
        let at = self.visits.iter().position(|id| *id == visit).unwrap();
        let known = &self.visits[..=at];
        let on = history.visit(visit).unwrap().on;
        history.visits.retain(|visit| known.contains(&visit.id));
        history.marks.retain(|mark| known.contains(&mark.visit));
        history
            .works
            .retain(|work| work.when <= on && work.visit.is_none_or(|id| known.contains(&id)));
        history
    }

    pub fn part(&self, id: PartId) -> &Part {
        self.history.part(id).unwrap()
    }
}

/// A letter with a verdict, an answer to it, and a request, thrown onto a record.
#[derive(Clone, Debug)]
pub struct Papers {
    visit: usize,
    course: Course,
    refused: Option<(Course, Narrowed, bool)>,
    came: Option<Came>,
    asked: Option<(usize, usize)>,
    leaking: Answer,
}

pub fn any_papers() -> impl Strategy<Value = Papers> {
    let narrowed = [
        Narrowed::Whole,
        Narrowed::SealantAlone,
        Narrowed::OldFlashings,
        Narrowed::BeyondMakingSafe,
    ];
    let course = || prop::sample::select(&Course::ALL[..]);
    let answers = vec![Answer::Yes, Answer::No, Answer::Unknown];
    (
        0..5_usize,
        course(),
        prop::option::of((
            course(),
            prop::sample::select(narrowed.to_vec()),
            any::<bool>(),
        )),
        prop::option::of(prop::sample::select(&Came::ALL[..])),
        prop::option::of((0..3_usize, 0..12_usize)),
        prop::sample::select(answers),
    )
        .prop_map(|(visit, course, refused, came, asked, leaking)| Papers {
            visit,
            course,
            refused,
            came,
            asked,
            leaking,
        })
}

impl Chance {
    /// Lays the letter on the record; answers the request.
    pub fn receive(&mut self, papers: &Papers) -> Request {
        let visit = self.visits[papers.visit % self.visits.len()];
        let part = self.parts[0];
        let structure = self.part(part).structure;
        let mut roof = Roof::new();
        std::mem::swap(&mut roof.history, &mut self.history);
        let treated = some_remedy(roof.history.part(part).unwrap(), papers.visit);
        let steps = vec![step(
            When::ThisSeason,
            papers.course,
            &[(part, treated.as_str())],
        )];
        let no: Vec<Refused> = papers
            .refused
            .iter()
            .map(|(course, narrowed, forbidden)| refused(*course, *narrowed, *forbidden))
            .collect();
        let letter = roof.letter(visit, structure, steps, no);
        if let Some(came) = papers.came {
            let on = roof.history.visit(visit).unwrap().on.to_string();
            roof.outcome(Some(letter), came, &on, "");
        }
        self.history = roof.history;
        let asked: Vec<(KindKey, RemedyKey)> = papers
            .asked
            .iter()
            .map(|(at, remedy)| {
                let part = self.part(self.parts[at % self.parts.len()]);
                (part.kind.clone(), some_remedy(part, *remedy))
            })
            .collect();
        let asked: Vec<(&str, Option<&str>)> = asked
            .iter()
            .map(|(kind, remedy)| (kind.as_str(), Some(remedy.as_str())))
            .collect();
        Request {
            leaking: papers.leaking,
            ..asks(&asked)
        }
    }

    /// The record as it was on one day: all that came later cut off.
    pub fn cut_after_day(&self, today: Date) -> History {
        let mut history = self.history.clone();
        history.visits.retain(|visit| visit.on <= today);
        let known: Vec<VisitId> = history.visits.iter().map(|visit| visit.id).collect();
        history.marks.retain(|mark| known.contains(&mark.visit));
        history
            .works
            .retain(|work| work.when <= today && work.visit.is_none_or(|id| known.contains(&id)));
        history.letters.retain(|letter| letter.on <= today);
        history.outcomes.retain(|outcome| outcome.on <= today);
        history
    }
}
