//! Can it be patched, for how long, for how much?

use super::line;
use crate::compose::pricing::narrowed;
use crate::compose::writer::Writer;
use crate::compose::{findings, grounds, led};
use crate::content::Line;
use std::collections::BTreeMap;
use trade::catalogue::{Effect, Months, RemedyKey};
use trade::mark::Rung;
use trade::offer::{MoneySpread, Offer, PricedCourse};
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
            price: writer
                .price_of_patch(remedy.as_str())
                .map(|price| writer.say(&Said::new("letter-price-each-time").with("price", price))),
            ..led(lead, writer.say(&holds))
        });
    }
    if patches.is_empty() {
        lines.push(line(writer.text("letter-patch-nothing")));
    }
    lines.extend(not_sold(writer));
    lines.push(what_it_costs(writer));
    lines
}

/// What making safe and mending cost by our offer; where neither is offered, where the price of the rest stands; that none is named yet.
fn what_it_costs(writer: &Writer) -> Line {
    let mut priced = writer.priced();
    // What is advised goes before what is offered all the same.
    priced.sort_by_key(|(_, course, _)| course.nevertheless.is_some());
    let mends: Vec<Said> = priced
        .iter()
        .filter(|(_, course, _)| matches!(course.course, Course::MakeSafe | Course::Repair))
        .map(|&(offer, course, price)| named_with_price(writer, offer, course, price))
        .collect();
    if !mends.is_empty() {
        return led(
            writer.text("letter-price-offered"),
            writer.sentence(&super::few(mends, PRICES_NAMED)),
        );
    }
    line(writer.text(if priced.is_empty() {
        "letter-price-later"
    } else {
        "letter-price-of-advice"
    }))
}

fn named_with_price(
    writer: &Writer,
    offer: &Offer,
    course: &PricedCourse,
    price: MoneySpread,
) -> Said {
    let name = grounds::course_narrowed(course.course, narrowed(course));
    let says = Said::new("letter-course-for")
        .with("course", writer.small(&name))
        .with("price", price.says(&offer.currency));
    writer.on_structure(offer.structure, says)
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
