//! How many layers of covering lie on a structure. Worst governs; the spread is kept.
//!
//! The code counts applications of covering: membranes, the deck and sheathing laid over an old covering are no layers.
//! At a cut or rake edge the butt lines of every layer repeat at the exposure, so the layers are the distinct butt lines
//! within one exposure. A starter course shows no second repeat, so it is no layer. (Common practice; the arithmetic is computed.)

use trade::ids::{SlopeId, StackId};
use trade::stack::{Covering, EdgeCourses, LayerIs, Learned, Stack};
use trade::units::Length;

/// Butt lines closer than this, taken modulo the exposure, are one line: shingles vary and a tape on a rake is read to
/// about an eighth (common practice, no source).
pub const BUTT_TOLERANCE: Length = Length::sixteenths(6);

/// The layers at one spot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SpotCount {
    /// The reading.
    pub stack: StackId,
    /// The slope.
    pub slope: Option<SlopeId>,
    /// Layers of covering that were seen.
    pub layers: u8,
    /// Whether it was read down to the deck, so that there are no more.
    pub to_the_deck: bool,
    /// Whether it is only somebody's word.
    pub told: bool,
    /// Whether the spot lies in an area that was rebuilt on its own.
    pub rebuilt: bool,
}

/// The layers over a structure.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LayerCount {
    /// The least count at any spot.
    pub least: u8,
    /// The most: this governs.
    pub most: u8,
    /// Every reading.
    pub spots: Vec<SpotCount>,
}

/// Counts the layers over all readings. What the owner only says is kept among the spots and counts for nothing.
pub fn count<'a>(stacks: impl IntoIterator<Item = &'a Stack>) -> LayerCount {
    let spots: Vec<SpotCount> = stacks.into_iter().filter_map(at_spot).collect();
    let seen = || spots.iter().filter(|spot| !spot.told);
    LayerCount {
        least: seen().map(|spot| spot.layers).min().unwrap_or(0),
        most: seen().map(|spot| spot.layers).max().unwrap_or(0),
        spots,
    }
}

/// Counts the layers of one reading; `None` where it shows no covering at all.
pub fn at_spot(stack: &Stack) -> Option<SpotCount> {
    let listed = coverings(stack).count();
    let measured = stack.edge.as_ref().map_or(0, layers_at_edge);
    let layers = u8::try_from(listed.max(measured)).unwrap_or(u8::MAX);
    (layers > 0).then(|| SpotCount {
        stack: stack.id,
        slope: stack.slope,
        layers,
        to_the_deck: is_to_the_deck(stack),
        told: stack.learned == Learned::OwnersWord,
        rebuilt: stack.rebuilt,
    })
}

/// The coverings of a reading, from the top down.
pub fn coverings(stack: &Stack) -> impl Iterator<Item = Covering> {
    stack.layers.iter().filter_map(|layer| match layer.is {
        LayerIs::Covering(covering) => Some(covering),
        LayerIs::Membrane | LayerIs::Sheathing | LayerIs::Deck => None,
    })
}

/// A lifted tab shows what lies under it, not that nothing lies under that.
fn is_to_the_deck(stack: &Stack) -> bool {
    let deck_listed = stack.layers.iter().any(|layer| layer.is == LayerIs::Deck);
    match stack.learned {
        Learned::CutEdge | Learned::RakeEdge | Learned::Drilled => true,
        Learned::Lifted => deck_listed,
        Learned::OwnersWord => false,
    }
}

/// Layers from butt lines measured at an edge: the distinct lines within one exposure that repeat.
/// Zero where no line repeats, since then nothing can be told.
pub fn layers_at_edge(edge: &EdgeCourses) -> usize {
    let exposure = edge.exposure.nanometres();
    if exposure <= 2 * BUTT_TOLERANCE.nanometres() {
        return 0;
    }
    let mut rests: Vec<i64> = edge
        .butts
        .iter()
        .map(|butt| butt.nanometres().rem_euclid(exposure))
        .collect();
    rests.sort_unstable();
    clusters_around(&rests, exposure)
        .into_iter()
        .filter(|&lines| lines >= 2)
        .count()
}

/// Sizes of the groups of remainders that lie within the tolerance of each other, round the circle of one exposure.
fn clusters_around(sorted: &[i64], exposure: i64) -> Vec<usize> {
    let tolerance = BUTT_TOLERANCE.nanometres();
    let mut sizes: Vec<usize> = Vec::new();
    let mut last = None;
    for &rest in sorted {
        match (last, sizes.last_mut()) {
            (Some(before), Some(size)) if rest - before <= tolerance => *size += 1,
            _ => sizes.push(1),
        }
        last = Some(rest);
    }
    if let (Some(&first), Some(&end)) = (sorted.first(), sorted.last())
        && sizes.len() > 1
        && first + exposure - end <= tolerance
    {
        let wrapped = sizes.pop().unwrap_or(0);
        sizes[0] += wrapped;
    }
    sizes
}
