//! The takeoff: everything that a new covering takes, counted on the measured roof and on the covering as it is laid.

mod deck;
mod edges;
mod error;
mod field;
mod openings;
mod renewed;
mod sheets;
mod site;
mod vents;

pub use deck::deck_sheets;
pub use error::TakeoffError;
pub use openings::{Cricket, cricket};
pub use sheets::ice_reach;
pub use vents::{net_free_area, one_in_300};

use crate::choices::Choices;
use crate::standing::Standing;
use crate::supplies::Supplies;
use site::Site;
use trade::firm::Profile;
use trade::laid::Laid;
use trade::property::Slope;
use trade::roof::{Plane, RoofPlan};
use trade::takeoff::{ByRemedy, Gap, Need, Takeoff, TaskAmount};

/// What a takeoff is counted by.
#[derive(Clone, Copy, Debug)]
pub struct Basis<'a> {
    /// The code as it is adopted where the roof stands.
    pub profile: &'a Profile,
    /// How everything is sold.
    pub supplies: &'a Supplies,
    /// What stands through the roof.
    pub standing: &'a Standing,
    /// What the roofer chooses.
    pub choices: &'a Choices,
}

/// The planes of a plan, by their place in it, that a covering over some slopes goes over; all of them where no slope is named. A plane that is
/// the measure of no slope is not covered then: nobody judged it. The takeoff names it as [`Takeoff::untied`].
///
/// # Errors
/// Where a slope that is named is not on the plan.
pub fn planes_of(plan: &RoofPlan, slopes: &[&Slope]) -> Result<Vec<usize>, TakeoffError> {
    let is_covered = |plane: &Plane| {
        let of_plane = |slope: &&Slope| plane.slope == Some(slope.id);
        slopes.is_empty() || slopes.iter().any(of_plane)
    };
    let missing: Vec<String> = slopes
        .iter()
        .filter(|slope| {
            !plan
                .planes
                .iter()
                .any(|plane| plane.slope == Some(slope.id))
        })
        .map(|slope| slope.letter.to_string())
        .collect();
    if !missing.is_empty() {
        return Err(TakeoffError::NotOnPlan(missing));
    }
    let planes = plan.planes.iter().enumerate();
    Ok(planes
        .filter(|(_, plane)| is_covered(plane))
        .map(|(at, _)| at)
        .collect())
}

/// What was counted of one kind of thing.
#[derive(Debug, Default)]
pub(crate) struct Counted {
    needs: Vec<Need>,
    tasks: Vec<TaskAmount>,
    gaps: Vec<Gap>,
    by_remedy: Vec<ByRemedy>,
}

impl Counted {
    fn add(&mut self, other: Self) {
        self.needs.extend(other.needs);
        self.tasks.extend(other.tasks);
        self.gaps.extend(other.gaps);
        self.by_remedy.extend(other.by_remedy);
    }
}

/// Counts what the laid planes of a roof take. Their lines count where they bound at least one of them.
///
/// # Errors
/// Where nothing was laid, where what was laid is no asphalt shingle or lies on a slope too low for it (IRC R905.2.2), where the laying is
/// not of this plan, or where a roll is no wider than its lap.
pub fn takeoff(plan: &RoofPlan, laid: &Laid, basis: &Basis<'_>) -> Result<Takeoff, TakeoffError> {
    let site = Site::of(plan, laid, basis)?;
    let mut counted = Counted::default();
    for count in [
        field::shingles,
        field::starter,
        field::caps,
        sheets::underlayment,
        sheets::ice_barrier,
        edges::drip_edge,
        edges::valleys,
        edges::step_flashing,
        edges::head_flashing,
        edges::counter_flashing,
        edges::kick_outs,
        openings::boots,
        openings::crickets,
        openings::chimney_flashing,
        vents::vents,
        renewed::renewed,
        field::nails,
        deck::sheets,
        field::sealant,
        field::set_up,
    ] {
        counted.add(count(&site));
    }
    Ok(Takeoff {
        structure: plan.structure,
        covering: laid.pieces.covering,
        planes: site.letters_laid(),
        planes_left: site.letters_left(),
        untied: site.untied(),
        squares: site.squares(),
        needs: merged(counted.needs, basis.choices),
        tasks: merged_tasks(counted.tasks),
        by_remedy: counted.by_remedy,
        gaps: counted.gaps,
        order_at: basis.choices.order_at,
    })
}

/// One row for one item and size: what several rules ask of the same thing is bought together, for the first rule's reason.
fn merged(needs: Vec<Need>, choices: &Choices) -> Vec<Need> {
    let mut rows: Vec<Need> = Vec::new();
    for need in needs {
        match rows
            .iter_mut()
            .find(|row| row.item == need.item && row.size == need.size)
        {
            Some(row) => {
                row.amount = row.amount + need.amount;
                row.packs = row.amount.in_packs(row.pack);
                row.order = choices.order_at.of(row.packs);
            }
            None => rows.push(need),
        }
    }
    rows
}

/// One row for one piece of work at one pitch.
pub(crate) fn merged_tasks(tasks: Vec<TaskAmount>) -> Vec<TaskAmount> {
    let mut rows: Vec<TaskAmount> = Vec::new();
    for task in tasks {
        match rows
            .iter_mut()
            .find(|row| row.task == task.task && row.pitch == task.pitch)
        {
            Some(row) => row.amount = row.amount + task.amount,
            None => rows.push(task),
        }
    }
    rows
}
