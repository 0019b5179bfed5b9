//! What was advised last for a structure: by a letter's verdict, or, where there never was a letter, by the marks of the last visit.

use super::named;
use super::record::{Known, Record};
use crate::thread::touch::LAID_OVER;
use jiff::civil::Date;
use trade::catalogue::{RemedyKey, RemedySize};
use trade::ids::{StructureId, VisitId};
use trade::letter::Letter;
use trade::mark::{Mark, Rung};
use trade::outcome::Came;
use trade::property::Structure;
use trade::verdict::{Course, Reason, Refused, Step, Task, Verdict};
use trade::words::Said;
use trade::work::{Did, WorkOn};

/// How many parts or remedies a sentence names: more is not taken in at a door.
const NAMED: usize = 3;
/// How many steps are told where nothing is asked for.
const STEPS: usize = 2;

/// One thing that was advised.
pub(super) struct Advised<'a> {
    /// What.
    pub course: Course,
    /// On which parts, with which remedy.
    pub tasks: Vec<Task>,
    /// By when.
    pub until: Option<Date>,
    /// Why.
    pub reasons: &'a [Reason],
}

/// What was advised last for one structure.
pub(super) struct Advice<'a> {
    /// The structure.
    pub structure: StructureId,
    /// The day.
    pub on: Date,
    /// The visit it came from.
    pub visit: VisitId,
    /// What was advised, in order of time.
    pub steps: Vec<Advised<'a>>,
    /// The course that decides the future of the structure.
    pub main: Option<Course>,
    /// What was refused.
    pub refused: &'a [Refused],
    /// What it was, in a sentence.
    pub said: Said,
    /// Whether it has been done since, by whomever.
    pub done: bool,
    /// Whether the owner said no.
    pub declined: bool,
}

/// The last advice on each structure that still stands.
pub(super) fn all<'a>(record: &Record<'a>) -> Vec<Advice<'a>> {
    let standing: Vec<&Structure> = record
        .history
        .structures
        .iter()
        .filter(|structure| structure.gone.is_none_or(|gone| gone > record.today()))
        .collect();
    let by_letter: Vec<Advice<'_>> = standing
        .iter()
        .filter_map(|structure| by_letter(record, structure.id))
        .collect();
    if by_letter.is_empty() {
        standing
            .iter()
            .filter_map(|structure| by_marks(record, structure.id))
            .collect()
    } else {
        by_letter
    }
}

fn by_letter<'a>(record: &Record<'a>, structure: StructureId) -> Option<Advice<'a>> {
    let (letter, verdict) = record.last_verdict(structure)?;
    let steps = verdict
        .steps
        .iter()
        .map(|step| Advised {
            course: step.course,
            tasks: step.tasks.clone(),
            until: step.until,
            reasons: &step.reasons,
        })
        .collect();
    Some(Advice {
        structure,
        on: letter.on,
        visit: letter.visit,
        steps,
        main: verdict.main_course(),
        refused: &verdict.refused,
        said: sentence(record, verdict),
        done: was_done(record, letter, structure),
        declined: record
            .outcome_of(letter.id)
            .is_some_and(|outcome| outcome.came == Came::Declined),
    })
}

/// A verdict in a sentence for each step: "Now: … This season: …". Where something is asked for, only the steps that touch such parts are
/// told, and the one that renews the whole: the rest is for the letter.
fn sentence(record: &Record<'_>, verdict: &Verdict) -> Said {
    let main = verdict.main_course();
    let is_whole = |step: &Step| step.tasks.is_empty() && Some(step.course) == main;
    let meant: Vec<(&Step, Vec<&RemedyKey>)> = verdict
        .steps
        .iter()
        .filter(|step| is_whole(step) || step.tasks.iter().any(|task| is_asked(record, task)))
        .map(|step| (step, remedies_of(step, |task| is_asked(record, task))))
        .collect();
    let told = if meant.is_empty() {
        let steps = verdict.steps.iter().take(STEPS);
        steps
            .map(|step| (step, remedies_of(step, |_| true)))
            .collect()
    } else {
        meant
    };
    named::sentences(
        told.into_iter()
            .map(|(step, remedies)| in_time(step, &remedies)),
    )
    .unwrap_or_else(|| Said::new("doorstep-no-verdict"))
}

/// Whether an advice touches such parts as are asked about, or renews the whole.
pub(super) fn speaks_of_what_is_asked(record: &Record<'_>, advice: &Advice<'_>) -> bool {
    advice
        .steps
        .iter()
        .any(|step| step.tasks.is_empty() || step.tasks.iter().any(|task| is_asked(record, task)))
}

fn is_asked(record: &Record<'_>, task: &Task) -> bool {
    record
        .history
        .part(task.part)
        .is_some_and(|part| record.asks_about(&part.kind))
}

/// The remedies of some of a step's tasks, each once.
fn remedies_of(step: &Step, told: impl Fn(&Task) -> bool) -> Vec<&RemedyKey> {
    let mut remedies: Vec<&RemedyKey> = Vec::new();
    for task in step.tasks.iter().filter(|task| told(task)) {
        remedies.extend(
            task.remedy
                .as_ref()
                .filter(|remedy| !remedies.contains(remedy)),
        );
    }
    remedies.truncate(NAMED);
    remedies
}

fn in_time(step: &Step, remedies: &[&RemedyKey]) -> Said {
    let key = if remedies.is_empty() {
        "doorstep-step"
    } else {
        "doorstep-step-with"
    };
    Said::new(key)
        .with("when", Said::new(step.when.key()))
        .with("course", named::course(step.course))
        .with(
            "remedies",
            remedies
                .iter()
                .map(|remedy| named::remedy(remedy))
                .collect::<Vec<_>>(),
        )
}

/// Whether the owner's answer, or work on the whole structure since, says that it was done.
fn was_done(record: &Record<'_>, letter: &Letter, structure: StructureId) -> bool {
    let answered = record
        .outcome_of(letter.id)
        .is_some_and(|outcome| matches!(outcome.came, Came::DoneByUs | Came::DoneByOthers));
    let renewed = record.timeline.works().iter().any(|work| {
        let whole = match &work.did {
            Did::Replaced | Did::TakenDown => true,
            Did::Remedy(remedy) => record.size(remedy) == Some(RemedySize::Covering),
            Did::Covered | Did::Something => false,
        };
        whole && work.on == WorkOn::Structure(structure) && work.when >= letter.on
    });
    answered || renewed
}

/// What the last visit found bad on a structure, and what it advised for it.
fn by_marks<'a>(record: &Record<'a>, structure: StructureId) -> Option<Advice<'a>> {
    let visit = record.last_visit()?;
    let mut bad: Vec<(&Known<'_>, Vec<RemedyKey>)> = record
        .parts
        .iter()
        .filter(|known| known.standing.story.part.structure == structure)
        .filter(|known| is_bad_on(known, visit.id))
        .map(|known| (known, remedies(record, known)))
        .collect();
    bad.sort_by_key(|(known, _)| std::cmp::Reverse(known.standing.story.rung()));
    let steps: Vec<Advised<'_>> = bad
        .iter()
        .map(|(known, remedies)| advised(record, known, remedies))
        .collect();
    let said = named::sentences(
        bad.iter()
            .take(NAMED)
            .map(|(known, remedies)| found(record, known, remedies)),
    )?;
    Some(Advice {
        structure,
        on: visit.on,
        visit: visit.id,
        main: steps.iter().map(|step| step.course).max(),
        steps,
        refused: &[],
        said,
        done: false,
        declined: false,
    })
}

fn is_bad_on(known: &Known<'_>, visit: VisitId) -> bool {
    let story = &known.standing.story;
    story.rung() > Some(Rung::Sound) && story.last.is_some_and(|look| look.visit.id == visit)
}

/// The remedies that a mark advises; where it names none, the best cure of each of its defects.
pub(super) fn remedies(record: &Record<'_>, known: &Known<'_>) -> Vec<RemedyKey> {
    let story = &known.standing.story;
    let Some(mark) = story.last.map(|look| look.mark) else {
        return Vec::new();
    };
    if !mark.advised.is_empty() {
        return mark.advised.clone();
    }
    cures(record, known, mark)
}

fn cures(record: &Record<'_>, known: &Known<'_>, mark: &Mark) -> Vec<RemedyKey> {
    let mut cures: Vec<RemedyKey> = Vec::new();
    for seen in &mark.defects {
        let best = record
            .rules
            .catalogue
            .defect(&seen.defect)
            .and_then(|defect| defect.cures_on(&known.standing.story.part.kind).next());
        cures.extend(best.filter(|best| !cures.contains(best)).cloned());
    }
    cures
}

fn advised<'a>(record: &Record<'a>, known: &Known<'_>, remedies: &[RemedyKey]) -> Advised<'a> {
    let part = known.standing.story.part.id;
    let course = remedies
        .iter()
        .filter_map(|remedy| course_of(record, remedy))
        .max()
        .unwrap_or(Course::LookFirst);
    let task = |remedy: &RemedyKey| Task {
        part,
        remedy: Some(remedy.clone()),
        trade: None,
    };
    Advised {
        course,
        tasks: remedies.iter().map(task).collect(),
        until: None,
        reasons: &[],
    }
}

fn found(record: &Record<'_>, known: &Known<'_>, remedies: &[RemedyKey]) -> Said {
    let story = &known.standing.story;
    let rung = story.rung().map(Rung::key).unwrap_or_default();
    let key = if remedies.is_empty() {
        "doorstep-found"
    } else {
        "doorstep-found-advised"
    };
    Said::new(key)
        .with("part", named::part(record, story.part))
        .with("rung", Said::new(rung))
        .with(
            "remedies",
            remedies.iter().map(named::remedy).collect::<Vec<_>>(),
        )
}

/// The course that a remedy amounts to.
pub(super) fn course_of(record: &Record<'_>, remedy: &RemedyKey) -> Option<Course> {
    Some(match record.size(remedy)? {
        RemedySize::Upkeep => Course::Maintain,
        RemedySize::MakeSafe => Course::MakeSafe,
        RemedySize::Repair => Course::Repair,
        RemedySize::Covering if remedy.as_str() == LAID_OVER => Course::Recover,
        RemedySize::Covering => Course::TearOff,
        RemedySize::Referred => Course::Refer,
    })
}
