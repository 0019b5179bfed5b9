//! The plan of a roof as a drawing, with the numbers of its parts.

use super::Drawn;
use crate::screens::Context;
use acts::measure;
use trade::history::History;
use trade::ids::StructureId;
use trade::roof::RoofPlan;
use trade::words::Said;

pub(super) fn drawn(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
) -> Drawn {
    let picture = measure::pictured(history, structure, plan, context.words);
    let slopes: Vec<Said> = plan
        .planes
        .iter()
        .map(|plane| {
            Said::new("roof-plan-slope")
                .with("letter", plane.letter.clone())
                .with("pitch", plane.pitch)
        })
        .collect();
    let count = i64::try_from(slopes.len()).unwrap_or(i64::MAX);
    let mut says = context.say(
        &Said::new("roof-plan-says")
            .with("count", count)
            .with("squares", plan.squares().says(1))
            .with("slopes", slopes),
    );
    for left_out in &picture.left_out {
        says.push(' ');
        says.push_str(&context.say(left_out));
    }
    Drawn {
        drawing: picture.drawing,
        title: context.text("roof-plan-title"),
        says,
    }
}
