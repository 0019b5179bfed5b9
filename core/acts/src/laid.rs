//! The covering laid on a roof, piece by piece: drawn, and what it took.

use crate::{ActError, offer};
use book::Book;
use roof::draw::Picture;
use trade::history::History;
use trade::ids::StructureId;
use trade::laid::Laid;
use trade::roof::RoofPlan;
use trade::words::Words;

/// A covering laid on a roof.
#[derive(Clone, Debug, PartialEq)]
pub struct Pictured {
    /// What it took.
    pub laid: Laid,
    /// Every piece as it lies.
    pub picture: Picture,
}

/// The shingles of the firm's list laid on the plan of a structure, for the page.
///
/// # Errors
/// Where they cannot be laid, or the book cannot be read.
pub fn pictured(
    book: &Book,
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
    words: &Words,
) -> Result<Pictured, ActError> {
    let list = book.price_list()?;
    let (laid, pieces) = offer::lay_all(history, structure, plan, list.as_ref())?;
    let picture = roof::draw::laid_roof(plan, &laid, &pieces, words, roof::draw::PHONE);
    Ok(Pictured { laid, picture })
}
