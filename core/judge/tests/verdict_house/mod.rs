//! A house that was looked over whole and closely, as a base for the cases.

#![allow(dead_code, reason = "each test file asks what it needs")]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use crate::roof::{Books, Roof, day, near};
use trade::answer::Answer;
use trade::ids::{MarkId, PartId, SlopeId, StackId, StructureId, VisitId};
use trade::mark::{Condition, Measure, MeasureOf, Rung};
use trade::stack::{Covering, Layer, LayerIs, Learned, Stack};
use trade::units::{Got, Length, Measured, Pitch};
use trade::verdict::{Answered, Course, Narrowed, Question, Reason, Refused, Step, Verdict};
use trade::words::{Arg, Language, Said, Words};

/// The day of the visit, on which it is also judged.
pub const ON: &str = "2024-05-01";

/// A house with two slopes, all of it seen from near and sound, one layer on a dry deck.
pub struct House {
    pub roof: Roof,
    pub books: Books,
    pub visit: VisitId,
}

impl House {
    /// Not looked at yet.
    pub fn unseen() -> Self {
        let mut roof = Roof::new();
        roof.history.slopes.iter_mut().for_each(|slope| {
            slope.pitch = Some(Measured {
                value: Pitch::rise(6),
                got: Got::Inclination,
                within: 0.0,
            });
        });
        let visit = roof.visit(ON);
        Self {
            roof,
            books: Books::new(),
            visit,
        }
    }

    /// Seen whole, from near, and sound.
    pub fn sound() -> Self {
        let mut house = Self::unseen();
        for slope in [house.roof.front, house.roof.rear] {
            house.look_at_slope(slope, near(Rung::Sound));
        }
        for kind in [
            "frame-line",
            "ridge-cap",
            "attic-deck",
            "attic-frame",
            "attic-air",
        ] {
            house.look_at(None, kind, near(Rung::Sound), &[]);
        }
        house
    }

    fn look_at_slope(&mut self, slope: SlopeId, condition: Condition) {
        for kind in ["eave-edge", "gutter", "rake-edge", "covering", "deck"] {
            let mark = self.look_at(Some(slope), kind, condition, &[]);
            if kind == "covering" {
                self.answer(mark, Question::Brittle, Answer::No);
                self.answer(mark, Question::Unmatchable, Answer::No);
            }
        }
        let layers = self.look_at(Some(slope), "layers", condition, &[]);
        self.answer(layers, Question::FlashingStays, Answer::No);
        self.answer(layers, Question::MakerRefuses, Answer::No);
        self.stack(slope, &[Covering::AsphaltStrip]);
    }

    /// A part and its mark on this visit.
    pub fn look_at(
        &mut self,
        slope: Option<SlopeId>,
        kind: &str,
        condition: Condition,
        defects: &[&str],
    ) -> MarkId {
        let part = self.roof.part_at(self.roof.house, slope, kind);
        self.roof.mark(self.visit, part, condition, defects)
    }

    /// A part with one defect on the front slope, failing, seen from near.
    pub fn fault(&mut self, kind: &str, defect: &str) -> PartId {
        let front = self.roof.front;
        let mark = self.look_at(Some(front), kind, near(Rung::Failing), &[defect]);
        self.roof.history.mark(mark).unwrap().part
    }

    /// Marks a part of the sound house again, with a defect; the later mark counts.
    pub fn again(&mut self, slope: SlopeId, kind: &str, condition: Condition, defects: &[&str]) {
        let part = self.part(Some(slope), kind);
        self.roof.mark(self.visit, part, condition, defects);
    }

    /// A part of the house.
    pub fn part(&self, slope: Option<SlopeId>, kind: &str) -> PartId {
        self.roof
            .history
            .parts
            .iter()
            .find(|part| part.slope == slope && part.kind.as_str() == kind)
            .unwrap()
            .id
    }

    /// An answer given with a mark.
    pub fn answer(&mut self, mark: MarkId, question: Question, answer: Answer) {
        let marks = &mut self.roof.history.marks;
        let mark = marks.iter_mut().find(|known| known.id == mark).unwrap();
        mark.answers.retain(|known| known.question != question);
        mark.answers.push(Answered { question, answer });
    }

    /// The same answer with every mark of such parts.
    pub fn answers(&mut self, kind: &str, question: Question, answer: Answer) {
        let marks: Vec<MarkId> = self
            .roof
            .history
            .marks
            .iter()
            .filter(|mark| self.roof.history.part(mark.part).unwrap().kind.as_str() == kind)
            .map(|mark| mark.id)
            .collect();
        for mark in marks {
            self.answer(mark, question, answer);
        }
    }

    /// A measure taken with the last mark of a part.
    pub fn measure(&mut self, part: PartId, of: MeasureOf, value: Length) {
        let marks = &mut self.roof.history.marks;
        let mark = marks
            .iter_mut()
            .rev()
            .find(|mark| mark.part == part)
            .unwrap();
        mark.measures.push(Measure {
            of,
            value: Measured {
                value,
                got: Got::Tape,
                within: 0.0,
            },
        });
    }

    /// A cut edge with these coverings over the deck.
    pub fn stack(&mut self, slope: SlopeId, coverings: &[Covering]) -> StackId {
        let id = StackId::from(self.roof.id());
        let layers = coverings
            .iter()
            .map(|covering| LayerIs::Covering(*covering))
            .chain([LayerIs::Membrane, LayerIs::Deck])
            .map(|is| Layer {
                is,
                colour: None,
                thickness: None,
            })
            .collect();
        self.roof.history.stacks.push(Stack {
            id,
            visit: self.visit,
            structure: self.roof.house,
            slope: Some(slope),
            spot: "rake edge".to_owned(),
            rebuilt: false,
            layers,
            edge: None,
            learned: Learned::CutEdge,
        });
        id
    }

    pub fn set_pitch(&mut self, slope: SlopeId, rise: f64) {
        let slopes = &mut self.roof.history.slopes;
        let slope = slopes.iter_mut().find(|known| known.id == slope).unwrap();
        slope.pitch = Some(Measured {
            value: Pitch::from_rise(rise).unwrap(),
            got: Got::Inclination,
            within: 0.0,
        });
    }

    pub fn visit_mut(&mut self) -> &mut trade::visit::Visit {
        let visit = self.visit;
        self.roof
            .history
            .visits
            .iter_mut()
            .find(|known| known.id == visit)
            .unwrap()
    }

    pub fn verdict(&self) -> Verdict {
        self.verdict_of(self.roof.house)
    }

    pub fn verdict_of(&self, structure: StructureId) -> Verdict {
        judge::verdict(
            &self.roof.history,
            structure,
            self.visit,
            day(ON),
            &self.books.rules(),
        )
    }

    pub fn course(&self) -> Course {
        self.verdict().main_course().unwrap()
    }
}

/// The courses of the steps, in order.
pub fn courses(verdict: &Verdict) -> Vec<Course> {
    verdict.steps.iter().map(|step| step.course).collect()
}

/// The first step of a course.
pub fn step(verdict: &Verdict, course: Course) -> &Step {
    verdict
        .steps
        .iter()
        .find(|step| step.course == course)
        .unwrap_or_else(|| panic!("no {course:?} in {:?}", courses(verdict)))
}

/// What is refused of a course.
pub fn refusal(verdict: &Verdict, course: Course, narrowed: Narrowed) -> Option<&Refused> {
    verdict
        .refused
        .iter()
        .find(|refused| refused.course == course && refused.narrowed == narrowed)
}

/// Every reason that a verdict gives.
pub fn reasons(verdict: &Verdict) -> Vec<&Reason> {
    let steps = verdict.steps.iter().flat_map(|step| &step.reasons);
    let refused = verdict.refused.iter().flat_map(|refused| &refused.reasons);
    steps
        .chain(refused)
        .chain(&verdict.cautions)
        .chain(&verdict.limits)
        .collect()
}

/// The reason that a rule gives, wherever it stands.
pub fn reason<'a>(verdict: &'a Verdict, rule: &str) -> Option<&'a Reason> {
    reasons(verdict)
        .into_iter()
        .find(|reason| reason.rule == rule)
}

/// The names of the rules of some reasons.
pub fn rules(reasons: &[Reason]) -> Vec<&str> {
    reasons.iter().map(|reason| reason.rule.as_str()).collect()
}

/// A sentence in English; panics where a word is missing or an argument was left out.
pub fn said(said: &Said) -> String {
    let words = Words::of(Language::English);
    let text = words.say(said);
    assert!(words.has(&said.key), "no words for {}", said.key);
    assert!(!text.contains(['{', '}', '[']), "left over in {text}");
    for (_, arg) in &said.args {
        if let Arg::List(list) = arg {
            for one in list {
                assert!(words.has(&one.key), "{}", one.key);
            }
        }
    }
    text
}
