//! What can be known to be wrong with a visit file from the file alone.

use super::file::{
    LayerPart, PartPart, PersonPart, PropertyPart, StackPart, StructurePart, VERSION, VisitFile,
    VisitPart, WorkPart,
};
use super::problem::{Problem, Wrong};
use crate::mark;
use jiff::civil::Date;
use std::collections::BTreeSet;
use trade::catalogue::{Catalogue, Kind};
use trade::mark::{Rung, Seen};
use trade::property::Address;
use trade::stack::LayerIs;
use trade::units::Length;
use trade::visit::Reach;

/// A record before this year is a slip of the pen.
const OLDEST_YEAR: i16 = 1950;
/// Houses that stand are not older than this.
const OLDEST_HOUSE: i16 = 1600;

/// Everything that is wrong with a visit file, seen from a day.
pub fn check(file: &VisitFile, today: Date) -> Vec<Problem> {
    let mut found = Found(Vec::new());
    if file.ladderbook_visit != VERSION {
        found.add(
            Problem::new("/ladderbook-visit", Wrong::UnknownVersion)
                .with("known", VERSION)
                .with("found", file.ladderbook_visit),
        );
    }
    found.property(&file.property, today);
    found.visit(&file.visit, today);
    if file.structures.is_empty() {
        found.say("/structures", Wrong::NoStructure);
    }
    let mut seen = BTreeSet::new();
    for (at, structure) in file.structures.iter().enumerate() {
        let place = format!("/structures/{at}");
        if !seen.insert((structure.kind, structure.name.clone())) {
            found.say(&place, Wrong::StructureTwice);
        }
        found.structure(structure, &place, file.visit.on);
    }
    found.0
}

struct Found(Vec<Problem>);

impl Found {
    fn say(&mut self, at: impl Into<String>, wrong: Wrong) {
        self.add(Problem::new(at, wrong));
    }

    fn add(&mut self, problem: Problem) {
        self.0.push(problem);
    }

    fn property(&mut self, property: &PropertyPart, today: Date) {
        self.address(&property.address, "/property/address");
        let mut seen: Vec<&Address> = vec![&property.address];
        for (at, also) in property.also.iter().enumerate() {
            let place = format!("/property/also/{at}");
            self.address(also, &place);
            if seen.contains(&also) {
                self.say(place, Wrong::AddressTwice);
            }
            seen.push(also);
        }
        if let Some(position) = property.position {
            let on_earth = position.latitude.abs() <= 90.0 && position.longitude.abs() <= 180.0;
            if !on_earth {
                self.say("/property/position", Wrong::PositionOffTheEarth);
            }
        }
        if let Some(built) = property.built
            && !(OLDEST_HOUSE..=today.year()).contains(&built)
        {
            self.add(
                Problem::new("/property/built", Wrong::YearCannotBe)
                    .with("first", OLDEST_HOUSE.to_string())
                    .with("last", today.year().to_string()),
            );
        }
        for (at, person) in property.people.iter().enumerate() {
            self.person(person, &format!("/property/people/{at}"));
        }
    }

    fn address(&mut self, address: &Address, at: &str) {
        if !address.line.chars().any(char::is_alphanumeric) {
            self.say(format!("{at}/line"), Wrong::NoAddress);
        }
    }

    fn person(&mut self, person: &PersonPart, at: &str) {
        if person.name.trim().is_empty() && person.phones.is_empty() {
            self.say(format!("{at}/name"), Wrong::NobodyNamed);
        }
        for (n, phone) in person.phones.iter().enumerate() {
            if phone.chars().filter(char::is_ascii_digit).count() < 7 {
                self.say(item(at, "phones", n), Wrong::NotAPhone);
            }
        }
        if let Some(email) = &person.email
            && !email.contains('@')
        {
            self.say(format!("{at}/email"), Wrong::NotAMail);
        }
    }

    fn visit(&mut self, visit: &VisitPart, today: Date) {
        if visit.by.trim().is_empty() {
            self.say("/visit/by", Wrong::NoVisitor);
        }
        if visit.on > today {
            self.add(Problem::new("/visit/on", Wrong::DayAhead).with("today", today));
        }
        if visit.on.year() < OLDEST_YEAR {
            self.add(
                Problem::new("/visit/on", Wrong::DayTooOld).with("year", OLDEST_YEAR.to_string()),
            );
        }
        if let Some(celsius) = visit.weather.celsius
            && !(-50..=60).contains(&celsius)
        {
            self.say("/visit/weather/celsius", Wrong::TemperatureCannotBe);
        }
        let mut answered = BTreeSet::new();
        for (at, answer) in visit.safety.iter().enumerate() {
            if !answered.insert(answer.check) {
                self.say(format!("/visit/safety/{at}"), Wrong::SafetyTwice);
            }
        }
        for (at, ask) in visit.request.asks.iter().enumerate() {
            if Catalogue::standard().kind(&ask.kind).is_none() {
                self.unknown_kind(&format!("/visit/request/asks/{at}/kind"), &ask.kind.0);
            }
            if let Some(remedy) = &ask.remedy {
                self.remedy(&format!("/visit/request/asks/{at}/remedy"), remedy);
            }
        }
    }

    fn structure(&mut self, structure: &StructurePart, at: &str, on: Date) {
        let mut letters = BTreeSet::new();
        for (n, slope) in structure.slopes.iter().enumerate() {
            let place = item(at, "slopes", n);
            if !slope.letter.is_ascii_uppercase() {
                self.say(format!("{place}/letter"), Wrong::NotASlopeLetter);
            }
            if !letters.insert(slope.letter) {
                self.say(format!("{place}/letter"), Wrong::SlopeTwice);
            }
            self.works(&slope.work, &place, on);
        }
        for (n, stack) in structure.layers.iter().enumerate() {
            self.stack(stack, &item(at, "layers", n), &letters);
        }
        let mut parts = BTreeSet::new();
        for (n, part) in structure.parts.iter().enumerate() {
            let place = item(at, "parts", n);
            if !parts.insert((&part.kind, part.slope, &part.which)) {
                self.say(&place, Wrong::PartTwice);
            }
            self.part(part, &place, structure.reached, &letters, on);
        }
        self.works(&structure.work, at, on);
    }

    fn stack(&mut self, stack: &StackPart, at: &str, letters: &BTreeSet<char>) {
        self.slope(stack.slope, &format!("{at}/slope"), letters);
        if stack.layers.is_empty() && stack.butts.is_empty() {
            self.say(at, Wrong::NothingRead);
        }
        if !stack.butts.is_empty() && stack.exposure.is_none() {
            self.say(format!("{at}/exposure"), Wrong::ExposureMissing);
        }
        for (n, butt) in stack.butts.iter().enumerate() {
            if *butt < Length::ZERO {
                self.length(&item(at, "butts", n));
            }
        }
        if let Some(exposure) = stack.exposure
            && exposure <= Length::ZERO
        {
            self.length(&format!("{at}/exposure"));
        }
        self.layers(&stack.layers, at);
    }

    fn layers(&mut self, layers: &[LayerPart], at: &str) {
        let deck = layers.iter().position(|layer| layer.layer == LayerIs::Deck);
        if let Some(deck) = deck
            && deck + 1 != layers.len()
        {
            self.say(format!("{at}/layers/{}", deck + 1), Wrong::UnderTheDeck);
        }
        for (n, layer) in layers.iter().enumerate() {
            if layer
                .thickness
                .is_some_and(|thickness| thickness <= Length::ZERO)
            {
                self.length(&format!("{at}/layers/{n}/thickness"));
            }
        }
    }

    fn length(&mut self, at: &str) {
        self.say(at, Wrong::LengthCannotBe);
    }

    fn slope(&mut self, slope: Option<char>, at: &str, letters: &BTreeSet<char>) {
        if let Some(letter) = slope
            && !letters.contains(&letter)
        {
            self.add(Problem::new(at, Wrong::NoSuchSlope).with("letter", letter.to_string()));
        }
    }

    fn unknown_kind(&mut self, at: &str, kind: &str) {
        self.add(Problem::new(at, Wrong::UnknownKind).with("kind", kind));
    }

    fn remedy(&mut self, at: &str, remedy: &trade::catalogue::RemedyKey) {
        if Catalogue::standard().remedy(remedy).is_none() {
            self.add(Problem::new(at, Wrong::UnknownRemedy).with("remedy", remedy.to_string()));
        }
    }

    fn part(
        &mut self,
        part: &PartPart,
        at: &str,
        reached: Reach,
        letters: &BTreeSet<char>,
        on: Date,
    ) {
        self.slope(part.slope, &format!("{at}/slope"), letters);
        match Catalogue::standard().kind(&part.kind) {
            None => self.unknown_kind(&format!("{at}/kind"), &part.kind.0),
            Some(kind) => {
                if kind.on_slope && part.slope.is_none() {
                    self.say(format!("{at}/slope"), Wrong::SlopeNeeded);
                }
                self.defects(part, at, kind);
                self.answers(part, at, kind);
            }
        }
        self.condition(part, at, reached);
        self.measures(part, at);
        for (n, remedy) in part.advised.iter().enumerate() {
            self.remedy(&item(at, "advised", n), remedy);
        }
        for (n, photo) in part.photos.iter().enumerate() {
            if leaves_folder(&photo.file) {
                self.say(format!("{at}/photos/{n}/file"), Wrong::PictureElsewhere);
            }
        }
        self.works(&part.work, at, on);
    }

    fn condition(&mut self, part: &PartPart, at: &str, reached: Reach) {
        let given = usize::from(part.rung.is_some())
            + usize::from(part.not_seen.is_some())
            + usize::from(part.gone);
        match given {
            0 => self.say(at, Wrong::NoCondition),
            1 => {}
            _ => self.say(at, Wrong::TwoConditions),
        }
        match (part.rung, part.seen) {
            (Some(_), None) => self.say(format!("{at}/seen"), Wrong::HowSeenMissing),
            (None, Some(_)) => self.say(format!("{at}/seen"), Wrong::SeenWithoutRung),
            (Some(_), Some(seen)) => self.reach(at, seen, reached),
            (None, None) => {}
        }
        let findings =
            !part.defects.is_empty() || !part.answers.is_empty() || !part.measures.is_empty();
        if part.rung.is_none() && findings {
            self.say(at, Wrong::FindingsUnseen);
        }
        if part.rung == Some(Rung::Sound) && !part.defects.is_empty() {
            self.say(format!("{at}/rung"), Wrong::SoundWithDefect);
        }
    }

    fn reach(&mut self, at: &str, seen: Seen, reached: Reach) {
        let bodily = matches!(seen, Seen::Touched | Seen::Near | Seen::Zoomed | Seen::Afar);
        if reached == Reach::NotReached && bodily {
            self.say(format!("{at}/seen"), Wrong::SeenButNotReached);
        }
        if reached == Reach::Ground && matches!(seen, Seen::Touched | Seen::Near) {
            self.say(format!("{at}/seen"), Wrong::SeenNearerThanReached);
        }
    }

    fn defects(&mut self, part: &PartPart, at: &str, kind: &Kind) {
        let mut named = BTreeSet::new();
        for (n, seen) in part.defects.iter().enumerate() {
            let place = format!("{at}/defects/{n}/defect");
            if !named.insert(&seen.defect) {
                self.say(&place, Wrong::DefectTwice);
            }
            match Catalogue::standard().defect(&seen.defect) {
                None => self.add(
                    Problem::new(place, Wrong::UnknownDefect)
                        .with("defect", seen.defect.to_string()),
                ),
                Some(defect) if !defect.parts.contains(&kind.key) => self.add(
                    Problem::new(place, Wrong::DefectOfOtherPart)
                        .with("defect", defect.key.to_string())
                        .with("kind", kind.key.to_string()),
                ),
                Some(_) => {}
            }
        }
    }

    fn answers(&mut self, part: &PartPart, at: &str, kind: &Kind) {
        let mut given = BTreeSet::new();
        for (n, answered) in part.answers.iter().enumerate() {
            let place = format!("{at}/answers/{n}/question");
            if !given.insert(answered.question) {
                self.say(&place, Wrong::AnswerTwice);
            }
            if !mark::asked_of(kind).any(|question| question == answered.question) {
                self.add(
                    Problem::new(place, Wrong::QuestionOfOtherPart)
                        .with("kind", kind.key.to_string()),
                );
            }
        }
    }

    fn measures(&mut self, part: &PartPart, at: &str) {
        let mut measured = Vec::new();
        for (n, measure) in part.measures.iter().enumerate() {
            let place = item(at, "measures", n);
            if measure.value <= Length::ZERO {
                self.length(&format!("{place}/value"));
            }
            if measured.contains(&measure.of) {
                self.say(place, Wrong::MeasureTwice);
            }
            measured.push(measure.of);
        }
    }

    fn works(&mut self, works: &[WorkPart], at: &str, on: Date) {
        for (n, work) in works.iter().enumerate() {
            let place = item(at, "work", n);
            if let Some(remedy) = &work.remedy {
                self.remedy(&format!("{place}/remedy"), remedy);
            }
            if work.remedy.is_some() == work.did.is_some() {
                self.say(&place, Wrong::WorkUnclear);
            }
            if work.when > on {
                self.say(format!("{place}/when"), Wrong::WorkAhead);
            }
        }
    }
}

/// The place of one of several in a list that something holds.
fn item(at: &str, list: &str, number: usize) -> String {
    format!("{at}/{list}/{number}")
}

/// Whether a file name leads out of the folder that the visit file lies in.
fn leaves_folder(file: &str) -> bool {
    let path = std::path::Path::new(file);
    file.is_empty()
        || file.contains('\\')
        || path
            .components()
            .any(|part| !matches!(part, std::path::Component::Normal(_)))
}
