//! The shingles as they lie on the roof, and what they take.

use super::{Drawn, LaidRoof, row};
use crate::screens::Context;
use acts::laid;
use trade::history::History;
use trade::ids::StructureId;
use trade::laid::Laid;
use trade::roof::RoofPlan;
use trade::takeoff::plain;
use trade::words::Said;

/// The shingles of the firm's list laid on a plan; nothing where they cannot be laid, which Offer says.
pub(super) fn on(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
) -> Option<LaidRoof> {
    let laid::Pictured { laid, picture } =
        laid::pictured(context.book, history, structure, plan, context.words).ok()?;
    let title = context.text("roof-laid");
    let mut says = context.say(
        &Said::new("roof-laid-says")
            .with("pieces", laid.field)
            .with("courses", courses(&laid)),
    );
    for left_out in &picture.left_out {
        says.push(' ');
        says.push_str(&context.say(left_out));
    }
    Some(LaidRoof {
        drawn: Drawn {
            drawing: picture.drawing,
            title: title.clone(),
            says,
        },
        numbers: numbers(context, &laid),
        title,
    })
}

fn courses(laid: &Laid) -> u32 {
    laid.planes
        .iter()
        .map(|plane| plane.courses)
        .max()
        .unwrap_or(0)
}

fn per_cent(share: f64) -> String {
    plain(share * 100.0, 1)
}

fn bundles(laid: &Laid) -> Said {
    if laid.pieces.give_starter_and_caps() {
        Said::new("roof-laid-bundles-of")
            .with("bundles", laid.bundles)
            .with("starter", laid.starter)
            .with("cap", laid.cap)
    } else {
        Said::new("roof-laid-bundles-alone").with("bundles", laid.bundles)
    }
}

fn numbers(context: &Context<'_>, laid: &Laid) -> Vec<super::Row> {
    let reused: u32 = laid.planes.iter().map(|plane| plane.reused).sum();
    let said = |title: &str, says: &Said| row(context.text(title), context.say(says));
    vec![
        said("roof-laid-of", &Said::new(laid.pieces.covering.key())),
        said(
            "roof-laid-field",
            &Said::new("roof-laid-opened")
                .with("opened", laid.field)
                .with("reused", reused),
        ),
        said("roof-laid-bundles", &bundles(laid)),
        said(
            "roof-laid-waste",
            &Said::new("roof-laid-cut-off").with("waste", per_cent(laid.waste)),
        ),
        said(
            "roof-laid-extra",
            &Said::new("roof-laid-more")
                .with("extra", per_cent(laid.extra))
                .with("books", laid.says_handbook()),
        ),
    ]
}
