//! Letters, answers and reminders, and how a doorstep reads aloud.

use super::{Books, Roof, at_minute, day, found};
use trade::doorstep::{Doorstep, Tells};
use trade::ids::{LetterId, PartId, StructureId, VisitId};
use trade::letter::Letter;
use trade::mark::Rung::Failing;
use trade::outcome::{Because, Came, Outcome, Reminder};
use trade::verdict::{
    Course, Narrowed, Reason, Refused, Source, StandsOn, Step, Strength, Task, Verdict, When,
};
use trade::visit::{Ask, Request};
use trade::words::{Language, Said, Words};

/// A step on some parts, each with its remedy.
pub fn step(when: When, course: Course, tasks: &[(PartId, &str)]) -> Step {
    Step {
        when,
        course,
        tasks: tasks
            .iter()
            .map(|(part, remedy)| Task {
                part: *part,
                remedy: Some((*remedy).into()),
                trade: None,
            })
            .collect(),
        slopes: Vec::new(),
        until: None,
        reasons: vec![because("the step's reason")],
    }
}

/// A course that is not offered.
pub fn refused(course: Course, narrowed: Narrowed, forbidden: bool) -> Refused {
    Refused {
        course,
        narrowed,
        forbidden,
        reasons: vec![because("the refusal's reason")],
    }
}

fn because(words: &str) -> Reason {
    Reason {
        rule: "test".to_owned(),
        says: Said::verbatim(words),
        source: Source::Practice,
        strength: Strength::Advises,
        stands_on: Vec::<StandsOn>::new(),
    }
}

/// Somebody asks for a remedy on a kind of part.
pub fn asks(asked: &[(&str, Option<&str>)]) -> Request {
    Request {
        words: "as they said it".to_owned(),
        asks: asked
            .iter()
            .map(|(kind, remedy)| Ask {
                kind: (*kind).into(),
                remedy: remedy.map(Into::into),
            })
            .collect(),
        ..Request::default()
    }
}

/// The lines of one sort, read aloud in English.
pub fn read(doorstep: &Doorstep, tells: Tells) -> Vec<String> {
    doorstep
        .lines
        .iter()
        .filter(|line| line.tells == tells)
        .map(|line| said(&line.says))
        .collect()
}

/// What is to be read, with the names that other message files give put in: `{remedy-new-boot}`.
pub fn named(template: &str) -> String {
    let words = Words::of(Language::English);
    let mut pieces = template.split('{');
    let mut text = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let (key, rest) = piece.split_once('}').unwrap();
        assert!(words.has(key), "no message {key}");
        text += &words.text(key);
        text += rest;
    }
    text
}

/// Several lines to be read.
pub fn lines<const N: usize>(templates: [&str; N]) -> Vec<String> {
    templates.into_iter().map(named).collect()
}

/// Read aloud in English.
pub fn said(said: &Said) -> String {
    Words::of(Language::English).say(said)
}

impl Roof {
    /// A letter about a visit, with its verdict on one structure.
    pub fn letter(
        &mut self,
        visit: VisitId,
        structure: StructureId,
        steps: Vec<Step>,
        refused: Vec<Refused>,
    ) -> LetterId {
        let id = self.id().into();
        let on = self.history.visit(visit).unwrap().on;
        self.history.letters.push(Letter {
            id,
            property: self.history.property.id,
            visit,
            made: at_minute(on, 19 * 60),
            on,
            language: Language::English,
            verdicts: vec![Verdict {
                structure,
                on,
                steps,
                refused,
                unseen: Vec::new(),
                unknown: Vec::new(),
                next_look: None,
                cautions: Vec::new(),
                limits: Vec::new(),
            }],
            sha256: String::new(),
            text: String::new(),
            out_of_date: None,
        });
        id
    }

    pub fn outcome(&mut self, letter: Option<LetterId>, came: Came, on: &str, words: &str) {
        let id = self.id().into();
        self.history.outcomes.push(Outcome {
            id,
            property: self.history.property.id,
            letter,
            came,
            on: day(on),
            amount: None,
            words: words.to_owned(),
            photos: Vec::new(),
        });
    }

    pub fn reminder(&mut self, because: Because, on: &str, words: &str) {
        let id = self.id().into();
        self.history.reminders.push(Reminder {
            id,
            property: self.history.property.id,
            visit: None,
            on: day(on),
            because,
            words: words.to_owned(),
            done: None,
        });
    }

    /// The doorstep on a day, where somebody asks or nobody does.
    pub fn doorstep(&self, request: Option<&Request>, today: &str) -> Doorstep {
        judge::doorstep(&self.history, request, day(today), &Books::new().rules())
    }
}

/// A roof whose boot was found split, and a letter of that day with its verdict.
pub fn advised(steps: impl Fn(&Roof) -> Vec<Step>, refused: Vec<Refused>) -> Roof {
    let (mut roof, _) = found("pipe-boot", Failing, &["boot-split"]);
    roof.part("covering");
    roof.part("gutter");
    let (visit, house) = (roof.history.visits[0].id, roof.house);
    let steps = steps(&roof);
    roof.letter(visit, house, steps, refused);
    roof
}

/// Cover the boot now, tear off this season.
pub fn tear_off(roof: &Roof) -> Vec<Step> {
    let boot = roof.history.parts[0].id;
    let mut cover = step(When::Now, Course::MakeSafe, &[(boot, "temporary-cover")]);
    cover.until = Some(day("2017-05-23"));
    vec![cover, step(When::ThisSeason, Course::TearOff, &[])]
}

/// A new boot this season.
pub fn repair(roof: &Roof) -> Vec<Step> {
    let boot = roof.history.parts[0].id;
    vec![step(
        When::ThisSeason,
        Course::Repair,
        &[(boot, "new-boot")],
    )]
}
