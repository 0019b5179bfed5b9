//! Can it be patched, for how long, for how much?

use super::line;
use crate::compose::writer::Writer;
use crate::compose::{findings, grounds, led};
use crate::content::Line;
use std::collections::BTreeMap;
use trade::catalogue::{Effect, Months, RemedyKey};
use trade::mark::Rung;
use trade::verdict::{Course, Narrowed, Refused};
use trade::words::Said;

/// Patches that page one names.
const PATCHES_NAMED: usize = 2;

/// What a patch would buy, what we don't sell, and that a price comes with the offer.
pub fn lines(writer: &Writer) -> Vec<Line> {
    let patches = patches(writer);
    let mut lines: Vec<Line> = Vec::new();
    for ((remedy, months), parts) in patches.iter().take(PATCHES_NAMED) {
        let holds = Said::new("letter-patch-holds")
            .with("parts", super::few(parts.clone(), PATCHES_NAMED))
            .with("months", findings::months(*months));
        let lead = writer.say(&Said::new("letter-reason").with("why", Said::new(remedy.message())));
        lines.push(led(lead, writer.say(&holds)));
    }
    if patches.is_empty() {
        lines.push(line(writer.text("letter-patch-nothing")));
    }
    lines.extend(not_sold(writer));
    lines.push(line(writer.text("letter-price-later")));
    lines
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
