//! Builds a property's record line by line, the way a season of visits would.

#![allow(dead_code, reason = "each test file builds with what it needs")]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

pub mod chance;
pub mod oracle;
pub mod papers;

use jiff::{Timestamp, civil::Date};
use judge::Rules;
use trade::catalogue::{Catalogue, KindKey, RemedyKey};
use trade::firm::{HousePolicy, Profile};
use trade::history::History;
use trade::ids::{MarkId, PartId, SlopeId, StructureId, VisitId, WorkId};
use trade::mark::{Condition, DefectSeen, Extent, Mark, NotSeen, Rung, Seen};
use trade::property::{Address, Part, Property, Side, Slope, Structure, StructureKind};
use trade::thread::Thread;
use trade::visit::{Request, Scope, Visit, Weather};
use trade::work::{By, Did, Evidence, Work, WorkOn};
use uuid::Uuid;

/// What the tests judge by.
pub struct Books {
    pub profile: Profile,
    pub policy: HousePolicy,
}

impl Books {
    pub fn new() -> Self {
        Self {
            profile: Profile::default(),
            policy: HousePolicy::default(),
        }
    }

    pub fn rules(&self) -> Rules<'_> {
        Rules {
            profile: &self.profile,
            policy: &self.policy,
            catalogue: Catalogue::standard(),
        }
    }
}

/// A day as `2019-05-03`.
pub fn day(text: &str) -> Date {
    text.parse().unwrap()
}

/// A minute of a day, in UTC.
pub fn at_minute(on: Date, minute: usize) -> Timestamp {
    format!("{on}T{:02}:{:02}:00Z", minute / 60, minute % 60)
        .parse()
        .unwrap()
}

/// A condition seen from near.
pub fn near(rung: Rung) -> Condition {
    Condition::Seen {
        rung,
        seen: Seen::Near,
    }
}

/// A condition seen in some other way.
pub fn seen(rung: Rung, seen: Seen) -> Condition {
    Condition::Seen { rung, seen }
}

/// Not seen.
pub fn not_seen(why: NotSeen) -> Condition {
    Condition::NotSeen { why }
}

/// A remedy done.
pub fn remedy(key: &str) -> Did {
    Did::Remedy(RemedyKey::from(key))
}

/// One property with a house, a garage, and slopes to hang parts on.
pub struct Roof {
    pub history: History,
    pub house: StructureId,
    pub front: SlopeId,
    pub rear: SlopeId,
    next: u128,
}

impl Roof {
    pub fn new() -> Self {
        let property = Property {
            id: Uuid::from_u128(1).into(),
            address: Address::default(),
            also: Vec::new(),
            position: None,
            people: Vec::new(),
            built: None,
            dangers: Vec::new(),
            since: day("2010-01-01"),
        };
        let mut roof = Self {
            history: History::of(property),
            house: Uuid::nil().into(),
            front: Uuid::nil().into(),
            rear: Uuid::nil().into(),
            next: 100,
        };
        roof.house = roof.structure(StructureKind::House);
        roof.front = roof.slope(roof.house, Side::Front, 'A');
        roof.rear = roof.slope(roof.house, Side::Rear, 'B');
        roof
    }

    pub fn id(&mut self) -> Uuid {
        self.next += 1;
        Uuid::from_u128(self.next)
    }

    pub fn structure(&mut self, kind: StructureKind) -> StructureId {
        let id = self.id().into();
        self.history.structures.push(Structure {
            id,
            property: self.history.property.id,
            kind,
            name: None,
            gone: None,
        });
        id
    }

    pub fn slope(&mut self, structure: StructureId, side: Side, letter: char) -> SlopeId {
        let id = self.id().into();
        self.history.slopes.push(Slope {
            id,
            structure,
            side,
            letter,
            pitch: None,
        });
        id
    }

    /// A part on the front slope of the house.
    pub fn part(&mut self, kind: &str) -> PartId {
        self.part_at(self.house, Some(self.front), kind)
    }

    pub fn part_at(
        &mut self,
        structure: StructureId,
        slope: Option<SlopeId>,
        kind: &str,
    ) -> PartId {
        let id = self.id().into();
        let number = u16::try_from(self.history.parts_of(structure).count() + 1).unwrap();
        self.history.parts.push(Part {
            id,
            structure,
            slope,
            kind: KindKey::from(kind),
            which: None,
            number,
            at: None,
        });
        id
    }

    /// A closed visit.
    pub fn visit(&mut self, on: &str) -> VisitId {
        let id = self.id().into();
        let on = day(on);
        self.history.visits.push(Visit {
            id,
            property: self.history.property.id,
            on,
            by: "R. Quill".to_owned(),
            request: Request::default(),
            scope: Scope::WholeRoof,
            structures: self.history.structures.iter().map(|one| one.id).collect(),
            weather: Weather::default(),
            safety: Vec::new(),
            reached: Vec::new(),
            ladder: None,
            closed: Some(at_minute(on, 18 * 60)),
        });
        id
    }

    /// A mark with defects of one place each.
    pub fn mark(
        &mut self,
        visit: VisitId,
        part: PartId,
        condition: Condition,
        defects: &[&str],
    ) -> MarkId {
        let spots: Vec<(&str, Extent)> = defects.iter().map(|key| (*key, Extent::Spot)).collect();
        self.mark_reaching(visit, part, condition, &spots)
    }

    /// A mark with defects that reach so far.
    pub fn mark_reaching(
        &mut self,
        visit: VisitId,
        part: PartId,
        condition: Condition,
        defects: &[(&str, Extent)],
    ) -> MarkId {
        let id = self.id().into();
        let on = self.history.visit(visit).unwrap().on;
        let at = at_minute(on, 8 * 60 + self.history.marks.len());
        self.history.marks.push(Mark {
            id,
            visit,
            part,
            at,
            condition,
            defects: defects
                .iter()
                .map(|(key, extent)| DefectSeen {
                    defect: (*key).into(),
                    extent: *extent,
                })
                .collect(),
            advised: Vec::new(),
            answers: Vec::new(),
            measures: Vec::new(),
            photos: Vec::new(),
            words: String::new(),
            corrected: None,
        });
        id
    }

    /// Work on one part, learned of on no visit.
    pub fn work(&mut self, part: PartId, did: Did, by: By, when: &str) -> WorkId {
        self.work_on(WorkOn::Part(part), did, by, when, None)
    }

    pub fn work_on(
        &mut self,
        on: WorkOn,
        did: Did,
        by: By,
        when: &str,
        visit: Option<VisitId>,
    ) -> WorkId {
        let id = self.id().into();
        self.history.works.push(Work {
            id,
            property: self.history.property.id,
            visit,
            on,
            did,
            by,
            when: day(when),
            exact: true,
            evidence: Evidence::Seen,
        });
        id
    }

    /// The thread of one part as of a visit.
    pub fn thread(&self, part: PartId, visit: VisitId) -> Option<Thread> {
        judge::threads(&self.history, visit, &Books::new().rules())
            .into_iter()
            .find(|thread| thread.part == part)
    }

    /// The thread of one part as it stands on a day.
    pub fn standing(&self, part: PartId, today: &str) -> Option<Thread> {
        judge::standing(&self.history, day(today), &Books::new().rules())
            .into_iter()
            .find(|thread| thread.part == part)
    }
}

/// A roof with one part and a first visit that found it so.
pub fn found(kind: &str, rung: Rung, defects: &[&str]) -> (Roof, PartId) {
    let mut roof = Roof::new();
    let part = roof.part(kind);
    let first = roof.visit("2017-04-11");
    roof.mark(first, part, near(rung), defects);
    (roof, part)
}
