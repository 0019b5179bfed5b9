//! What do you advise? What can wait? How long will it last? Do I need a permit?

use super::{few, line};
use crate::compose::led;
use crate::compose::writer::Writer;
use crate::content::Line;
use crate::plain::Plain;
use trade::ids::StructureId;
use trade::mark::Rung;
use trade::verdict::{Course, Step, Task, Verdict, When};
use trade::words::Said;

/// Pieces of work that page one names in one step.
const TASKS_NAMED: usize = 3;
/// The rules whose limits say how long a roof will do: the next covering, and what a sale asks of it.
const TELL_HOW_LONG: [&str; 3] = [
    "limit-next-is-tear-off",
    "sale-under-two-years",
    "sale-not-seen",
];

/// Every step of every verdict, in order of time.
pub fn steps(writer: &Writer) -> Vec<Line> {
    let verdicts = writer.material.verdicts;
    let lines: Vec<Line> = When::ALL
        .into_iter()
        .flat_map(|when| {
            verdicts
                .iter()
                .flat_map(move |verdict| steps_at(writer, verdict, when))
        })
        .collect();
    if lines.is_empty() {
        vec![line(writer.text("letter-advice-none"))]
    } else {
        lines
    }
}

fn steps_at(writer: &Writer, verdict: &Verdict, when: When) -> Vec<Line> {
    let steps = verdict.steps.iter().filter(|step| step.when == when);
    steps
        .map(|step| priced_step(writer, verdict, step))
        .collect()
}

/// A step with when and where before it, and what it costs after it where it is offered.
fn priced_step(writer: &Writer, verdict: &Verdict, step: &Step) -> Line {
    let offered = writer.offered_for(verdict, step);
    Line {
        price: offered.and_then(|(offer, course)| writer.price(offer, course)),
        ..step_told(writer, verdict, step)
    }
}

/// A step with when and where before it.
pub fn step_told(writer: &Writer, verdict: &Verdict, step: &Step) -> Line {
    let when = when_and_where(writer, Some(verdict.structure), Said::new(step.when.key()));
    led(writer.say(&when), writer.say(&in_words(writer, step)))
}

/// When, and on which structure where there are several: "Now, house:".
pub fn when_and_where(writer: &Writer, structure: Option<StructureId>, when: Said) -> Said {
    match structure.filter(|_| writer.has_many_structures()) {
        Some(structure) => Said::new("letter-when-structure")
            .with("when", when)
            .with("structure", writer.small_structure(structure)),
        None => Said::new("letter-reason").with("why", when),
    }
}

/// A step as a sentence: the course, its work part by part, and the day by which.
fn in_words(writer: &Writer, step: &Step) -> Said {
    let course = Said::new(step.course.key());
    let work = work(writer, &step.tasks);
    let said = if work.is_empty() {
        let what = Said::new(format!("{}.what", step.course.key()));
        Said::new("letter-step-alone")
            .with("course", course)
            .with("what", what)
    } else {
        Said::new("letter-step-with-work")
            .with("course", course)
            .with("work", few(work, TASKS_NAMED))
    };
    match step.until {
        Some(until) => {
            let key = match step.course {
                Course::Leave => "letter-step-look-by",
                Course::MakeSafe => "letter-step-holds-until",
                _ => "letter-step-until",
            };
            Said::new(key).with("step", said).with("date", until)
        }
        None => said,
    }
}

/// A step by its course and its work alone.
fn briefly(writer: &Writer, step: &Step) -> Said {
    let course = writer.small(&Said::new(step.course.key()));
    let work = work(writer, &step.tasks);
    if work.is_empty() {
        course
    } else {
        Said::new("letter-step-briefly")
            .with("course", course)
            .with("work", few(work, TASKS_NAMED))
    }
}

/// The work of a step in a few words: each remedy once, with its parts and the trade where it is not ours.
pub fn work(writer: &Writer, tasks: &[Task]) -> Vec<Said> {
    grouped(writer, tasks)
        .into_iter()
        .map(|(task, places)| one_work(writer, task, places))
        .collect()
}

/// The same a line each, with what is done.
pub fn work_explained(writer: &Writer, tasks: &[Task]) -> Vec<Line> {
    let groups = grouped(writer, tasks).into_iter();
    let lines = groups.map(|(task, places)| {
        let what = task
            .remedy
            .as_ref()
            .and_then(|remedy| writer.text_if_any(&format!("{}.what", remedy.message())));
        let work = writer.sentence(&one_work(writer, task, places)).to_string();
        match what {
            Some(what) => led(
                writer.say(&Said::new("letter-work-lead").with("work", work)),
                what,
            ),
            None => line(Plain::new(&work)),
        }
    });
    lines.collect()
}

/// Tasks of one remedy and one trade together, with their places.
fn grouped<'t>(writer: &Writer, tasks: &'t [Task]) -> Vec<(&'t Task, Vec<Said>)> {
    let mut grouped: Vec<(&Task, Vec<Said>)> = Vec::new();
    for task in tasks {
        let Some(part) = writer.material.history.part(task.part) else {
            continue;
        };
        let place = match task.remedy {
            Some(_) => Said::verbatim(writer.address(part).to_string()),
            None => writer.named(part),
        };
        match grouped
            .iter_mut()
            .find(|(known, _)| (&known.remedy, known.trade) == (&task.remedy, task.trade))
        {
            Some((_, places)) => places.push(place),
            None => grouped.push((task, vec![place])),
        }
    }
    grouped
}

fn one_work(writer: &Writer, task: &Task, places: Vec<Said>) -> Said {
    let work = match &task.remedy {
        Some(remedy) => Said::new("letter-work")
            .with("remedy", writer.small(&Said::new(remedy.message())))
            .with("places", places),
        None => Said::new("letter-list").with("each", places),
    };
    match task.trade {
        Some(trade) => Said::new("letter-work-for")
            .with("work", work)
            .with("who", Said::new(format!("{}.who", trade.key()))),
        None => work,
    }
}

/// What can wait, and what comes of waiting with the rest.
pub fn waiting(writer: &Writer) -> Vec<Line> {
    let steps = || {
        writer
            .material
            .verdicts
            .iter()
            .flat_map(|verdict| verdict.steps.iter().map(move |step| (verdict, step)))
    };
    let mut can_wait: Vec<Said> = steps()
        .filter(|(_, step)| step.when == When::Later && is_work(step.course))
        .map(|(verdict, step)| writer.on_structure(verdict.structure, briefly(writer, step)))
        .collect();
    can_wait.extend(worn_but_working(writer));
    let says = if can_wait.is_empty() {
        Said::new("letter-can-wait-rest")
    } else {
        few(can_wait, TASKS_NAMED)
    };
    let mut lines = vec![led(writer.text("letter-can-wait"), writer.say(&says))];
    let soonest = steps()
        .filter(|(_, step)| is_work(step.course))
        .map(|(_, step)| step.when)
        .min();
    let key = match soonest {
        Some(When::Now) => "letter-wait-now",
        Some(When::ThisSeason) => "letter-wait-season",
        Some(When::Later) | None => "letter-wait-later",
    };
    lines.push(led(writer.text("letter-if-you-wait"), writer.text(key)));
    lines
}

/// Parts that are worn, still do their work, and that no step names.
fn worn_but_working(writer: &Writer) -> Vec<Said> {
    let named = |part| {
        writer
            .material
            .verdicts
            .iter()
            .flat_map(|verdict| &verdict.steps)
            .flat_map(|step| &step.tasks)
            .any(|task| task.part == part)
    };
    let marks = writer.marks().into_iter();
    let worn =
        marks.filter(|(part, mark)| mark.condition.rung() == Some(Rung::Ageing) && !named(part.id));
    worn.map(|(part, _)| writer.named(part)).collect()
}

/// Whether a course is work on the roof, and not leaving it or looking at it.
fn is_work(course: Course) -> bool {
    !matches!(course, Course::Leave | Course::LookFirst)
}

/// How long it will last: what the main course says of that, and no number that nobody can know.
pub fn lasting(writer: &Writer) -> Vec<Line> {
    let mut lines: Vec<Line> = writer
        .material
        .verdicts
        .iter()
        .filter_map(|verdict| {
            let course = verdict.main_course()?;
            let says = Said::new(format!("letter-lasts-{}", course.key()));
            Some(line(
                writer.say(&writer.about_structure(verdict.structure, says)),
            ))
        })
        .collect();
    let limits = writer
        .material
        .verdicts
        .iter()
        .flat_map(|verdict| &verdict.limits);
    let how_long = limits.filter(|limit| TELL_HOW_LONG.contains(&limit.rule.as_str()));
    lines.extend(
        writer
            .reasons(how_long)
            .into_iter()
            .map(|reason| line(reason.says)),
    );
    lines.push(line(writer.text("letter-lasts-no-number")));
    lines
}

/// Whether a permit is likely needed: by the greatest course advised.
pub fn permit(writer: &Writer) -> Vec<Line> {
    let courses: Vec<Course> = writer
        .material
        .verdicts
        .iter()
        .filter_map(Verdict::main_course)
        .collect();
    let covering = courses
        .iter()
        .any(|course| matches!(course, Course::TearOff | Course::Recover));
    let repair = courses
        .iter()
        .any(|course| matches!(course, Course::Repair | Course::MakeSafe));
    let key = if covering {
        "letter-permit-covering"
    } else if repair {
        "letter-permit-repair"
    } else {
        "letter-permit-none"
    };
    vec![line(writer.text(key))]
}
