//! Parts that are renewed along with a covering and whose pieces are not on the plan: each is priced whole, by the remedy that renews it.

use super::Counted;
use super::site::Site;
use trade::catalogue::RemedyKey;
use trade::ids::PartId;
use trade::roof::LineKind;
use trade::takeoff::{ByRemedy, Spread};

/// Round a chimney.
const CHIMNEY: &str = "new-chimney-flashing";

/// A kind of part, the remedy that renews it, and the lines of a plan that already hold it.
const RENEWED: &[(&str, &str, &[LineKind])] = &[
    ("sidewall-flashing", "new-step-flashing", &[LineKind::Step]),
    ("headwall-flashing", "new-head-flashing", &[LineKind::Wall]),
    ("kickout", "new-kickout", &[LineKind::Step]),
    ("open-valley", "new-valley", &[LineKind::Valley]),
    ("closed-valley", "new-valley", &[LineKind::Valley]),
    ("skylight-flashing", "new-skylight-flashing", &[]),
    ("exhaust-hood", "new-hood", &[]),
];

/// What is priced whole.
pub(super) fn renewed(site: &Site<'_>) -> Counted {
    let mut by_remedy: Vec<ByRemedy> = others(site).collect();
    by_remedy.extend(ridge_vents(site));
    by_remedy.extend(chimneys(site));
    Counted {
        by_remedy,
        ..Counted::default()
    }
}

fn whole(part: PartId, remedy: &str) -> ByRemedy {
    ByRemedy {
        part,
        remedy: RemedyKey::from(remedy),
        feet: None,
    }
}

fn others<'a>(site: &'a Site<'_>) -> impl Iterator<Item = ByRemedy> + 'a {
    let others = site.basis.standing.others.iter();
    others
        .filter(|other| site.reaches(other.slope))
        .filter_map(|other| {
            let (_, remedy, lines) = RENEWED
                .iter()
                .find(|(kind, ..)| *kind == other.kind.as_str())?;
            let on_plan = !lines.is_empty() && site.shows(lines, other.slope);
            (!on_plan).then(|| whole(other.part, remedy))
        })
}

/// Ridge vents run along the ridges: their length is shared out among them.
fn ridge_vents(site: &Site<'_>) -> Vec<ByRemedy> {
    let parts: Vec<PartId> = site
        .basis
        .standing
        .others
        .iter()
        .filter(|other| other.kind.as_str() == "ridge-vent" && site.reaches(other.slope))
        .map(|other| other.part)
        .collect();
    let ridges: Spread = site
        .lines(&[LineKind::Ridge])
        .map(|line| site.feet(line))
        .sum();
    let count = u32::try_from(parts.len()).unwrap_or(u32::MAX);
    let each = (!ridges.is_nothing()).then(|| ridges.scaled(1.0 / f64::from(count.max(1))));
    parts
        .into_iter()
        .map(|part| ByRemedy {
            feet: each,
            ..whole(part, "new-ridge-vent")
        })
        .collect()
}

/// The flashing of every chimney that is not counted by its pieces; where no chimney is on record, of every chimney flashing that is.
fn chimneys(site: &Site<'_>) -> Vec<ByRemedy> {
    let standing = site.basis.standing;
    if standing.chimneys.is_empty() {
        let flashings = standing
            .others
            .iter()
            .filter(|other| other.kind.as_str() == "chimney-flashing" && site.reaches(other.slope));
        return flashings.map(|other| whole(other.part, CHIMNEY)).collect();
    }
    standing
        .chimneys
        .iter()
        .filter(|chimney| site.reaches(chimney.slope))
        .filter(|chimney| chimney.width.is_none() || chimney.depth.is_none())
        .map(|chimney| whole(chimney.part, CHIMNEY))
        .collect()
}
