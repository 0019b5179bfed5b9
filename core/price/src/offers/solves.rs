//! What a course does not cure, of all that the verdict found.

use super::Asking;
use super::remedies::last_real;
use trade::catalogue::Effect;
use trade::ids::PartId;
use trade::offer::Unsolved;
use trade::verdict::{Course, Step, Task};

/// The parts that the verdict has work for and that this course does not cure, each with the course of the verdict that does.
pub(super) fn unsolved(asking: &Asking<'_>, course: Course, tasks: &[Task]) -> Vec<Unsolved> {
    concerned(asking)
        .into_iter()
        .filter(|part| !cures_part(asking, course, tasks, *part))
        .map(|part| Unsolved {
            part,
            by: cured_by(asking, part),
        })
        .collect()
}

/// Every part that some step works on, once.
fn concerned(asking: &Asking<'_>) -> Vec<PartId> {
    let mut parts = Vec::new();
    for task in asking.verdict.steps.iter().flat_map(|step| &step.tasks) {
        if !parts.contains(&task.part) {
            parts.push(task.part);
        }
    }
    parts
}

fn cured_by(asking: &Asking<'_>, part: PartId) -> Option<Course> {
    let cures = |step: &&Step| cures_part(asking, step.course, &step.tasks, part);
    asking
        .verdict
        .steps
        .iter()
        .find(cures)
        .map(|step| step.course)
}

/// Making safe holds for weeks and a look only looks; a remedy that buys time leaves the cause.
fn cures_part(asking: &Asking<'_>, course: Course, tasks: &[Task], part: PartId) -> bool {
    let mut own = tasks.iter().filter(|task| task.part == part).peekable();
    let lasting = !matches!(course, Course::MakeSafe | Course::LookFirst | Course::Leave);
    lasting && own.peek().is_some() && own.all(|task| is_cure(asking, task))
}

fn is_cure(asking: &Asking<'_>, task: &Task) -> bool {
    let (Some(remedy), Some(part)) = (&task.remedy, asking.history.part(task.part)) else {
        return true;
    };
    let mut effects = last_real(asking, task.part)
        .into_iter()
        .flat_map(|mark| &mark.defects)
        .filter_map(|seen| asking.catalogue.defect(&seen.defect))
        .filter_map(|defect| defect.effect_on(&part.kind, remedy))
        .peekable();
    effects.peek().is_none() || effects.any(|effect| *effect == Effect::Cures)
}
