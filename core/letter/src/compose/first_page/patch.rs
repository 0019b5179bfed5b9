//! Can it be patched, for how long, for how much?

use super::line;
use crate::compose::pricing::{Priced, narrowed};
use crate::compose::writer::Writer;
use crate::compose::{findings, grounds, led};
use crate::content::Line;
use std::collections::BTreeMap;
use trade::catalogue::{Effect, Months, RemedyKey};
use trade::mark::Rung;
use trade::offer::PricedCourse;
use trade::verdict::{Course, Narrowed, Refused};
use trade::words::Said;

/// Patches that page one names.
const PATCHES_NAMED: usize = 2;
/// Prices that it names beside them.
const PRICES_NAMED: usize = 3;

/// What a patch would buy and cost, what we don't sell, and what our offer says of it.
pub fn lines(writer: &Writer) -> Vec<Line> {
    let patches = patches(writer);
    let mut lines: Vec<Line> = Vec::new();
    for ((remedy, months), parts) in patches.iter().take(PATCHES_NAMED) {
        let holds = Said::new("letter-patch-holds")
            .with("parts", super::few(parts.clone(), PATCHES_NAMED))
            .with("months", findings::months(*months));
        let lead = writer.say(&Said::new("letter-reason").with("why", Said::new(remedy.message())));
        lines.push(Line {
            price: writer.price_of_patch(remedy),
            ..led(lead, writer.say(&holds))
        });
    }
    if patches.is_empty() {
        lines.push(line(writer.text("letter-patch-nothing")));
    }
    lines.extend(not_sold(writer));
    let told = patches.keys().take(PATCHES_NAMED).map(|(remedy, _)| remedy);
    lines.extend(what_it_costs(writer, told));
    lines
}

/// What making safe and mending cost by our offer, beside the patches told already; where neither is offered, where the price of the rest
/// stands; that none is named yet.
fn what_it_costs<'r>(writer: &Writer, told: impl Iterator<Item = &'r RemedyKey>) -> Option<Line> {
    let told: Vec<&PricedCourse> = told
        .filter_map(|remedy| Some(writer.patching_course(remedy)?.1))
        .collect();
    let priced = writer.priced();
    let mends: Vec<&Priced> = priced
        .iter()
        .filter(|it| matches!(it.course.course, Course::MakeSafe | Course::Repair))
        .collect();
    let rest: Vec<Said> = mends
        .iter()
        .filter(|it| !told.contains(&it.course))
        .map(|it| named_with_price(writer, it))
        .collect();
    if !rest.is_empty() {
        return Some(led(
            writer.text("letter-price-offered"),
            writer.sentence(
                &Said::new("letter-work-lead").with("work", super::few(rest, PRICES_NAMED)),
            ),
        ));
    }
    let key = match (priced.is_empty(), mends.is_empty()) {
        (true, _) => "letter-price-later",
        (false, true) => "letter-price-of-advice",
        (false, false) => return None,
    };
    Some(line(writer.text(key)))
}

fn named_with_price(writer: &Writer, it: &Priced) -> Said {
    let name = grounds::course_narrowed(it.course.course, narrowed(it.course));
    let says = Said::new("letter-course-for")
        .with("course", writer.small(&name))
        .with("price", it.price.says(&it.offer.currency));
    if writer.offers().count() > 1 {
        writer.on_structure(it.offer.structure, says)
    } else {
        says
    }
}

/// Remedies that only buy time on what is failing, with the parts they'd be put on.
fn patches(writer: &Writer) -> BTreeMap<(RemedyKey, Months), Vec<Said>> {
    let mut patches: BTreeMap<(RemedyKey, Months), Vec<Said>> = BTreeMap::new();
    for (part, mark) in writer.marks() {
        if mark.condition.rung() < Some(Rung::Failing) {
            continue;
        }
        for treats in writer
            .defects(mark)
            .flat_map(|defect| &defect.remedies)
            .filter(|treats| treats.fits(&part.kind))
        {
            if let Effect::BuysTime { months, .. } = &treats.effect {
                let parts = patches.entry((treats.remedy.clone(), *months)).or_default();
                let named = writer.named(part);
                if !parts.contains(&named) {
                    parts.push(named);
                }
            }
        }
    }
    patches
}

/// Repairs that are refused, in a line: the reasons stand in their own section.
fn not_sold(writer: &Writer) -> Option<Line> {
    let is_patch = |refused: &&Refused| {
        refused.course == Course::Repair
            || matches!(
                refused.narrowed,
                Narrowed::SealantAlone | Narrowed::BeyondMakingSafe
            )
    };
    let refused: Vec<Said> = writer
        .material
        .verdicts
        .iter()
        .flat_map(|verdict| {
            verdict
                .refused
                .iter()
                .filter(is_patch)
                .map(move |refused| (verdict, refused))
        })
        .filter(|(verdict, refused)| grounds::is_not_sold(writer, verdict, refused))
        .map(|(verdict, refused)| {
            writer.on_structure(
                verdict.structure,
                writer.small(&grounds::course_refused(refused)),
            )
        })
        .collect();
    if refused.is_empty() {
        return None;
    }
    let list = Said::new("letter-list").with("each", refused);
    Some(line(
        writer.say(&Said::new("letter-patch-refused").with("list", list)),
    ))
}
