//! What the jurisdiction's profile says: edition, amendments, ice and hail.

use trade::answer::Answer;
use trade::firm::{Edition, Profile};
use trade::stack::Covering;
use trade::verdict::Source;

/// Layers that the model code lets lie in all: no new covering over two or more.
pub const MODEL_LAYERS: u8 = 2;

/// Layers of covering that may lie in all.
pub fn layers_allowed(profile: &Profile) -> u8 {
    profile.layers_allowed.unwrap_or(MODEL_LAYERS)
}

/// Whether hail exposure bars asphalt shingles over an old covering: R907.3 item 4 of 2006 and 2009 (2009 from memory).
pub fn hail_bars(profile: &Profile) -> Answer {
    if profile.edition <= Edition::E2009 {
        profile.hail
    } else {
        Answer::No
    }
}

/// Whether no covering may be laid over this one: slate, clay, cement, asbestos-cement (R908.3.1.1 item 2); up to 2012
/// wood shake too (R907.3 item 2, seen for 2006; 2009 and 2012 from memory).
pub fn bars_covering_over(top: Covering, edition: Edition) -> Answer {
    match top {
        Covering::Slate | Covering::ClayTile | Covering::CementTile | Covering::AsbestosCement => {
            Answer::Yes
        }
        Covering::WoodShake => (edition <= Edition::E2012).into(),
        Covering::Unclear => Answer::Unknown,
        _ => Answer::No,
    }
}

/// A local amendment as a source.
pub fn amendment(profile: &Profile) -> Source {
    Source::LocalAmendment {
        place: profile.place.clone(),
    }
}

/// Whether the text of the edition's re-cover section was not to be had, so that the adopted text must be looked up.
pub fn text_not_seen(edition: Edition) -> bool {
    edition >= Edition::E2024
}
