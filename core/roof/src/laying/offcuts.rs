//! The ledger of what is opened, what is laid and what falls: an offcut with one end as it came from the factory may start or end a later run.
//!
//! Common practice, no source:
//! - What is cut off the right of a piece keeps its factory end at the right: it may start a run at the left, where its cut end is trimmed to
//!   the edge. What is cut off the left may end a run at the right.
//! - It must be long enough over its whole height, and no shorter than the shortest piece that is laid.
//! - What is trimmed off an offcut has no factory end left and falls. So does the part of the cover that a slanting edge cuts away.
//! - Offcuts go along from plane to plane.

use trade::laid::CutFrom;

const EQUAL: f64 = 1e-6;

/// Which ends of a piece are trimmed to an edge of the roof.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trimmed {
    /// Neither: it lies between two others.
    Neither,
    /// Its left: it starts a run.
    Left,
    /// Its right: it ends a run.
    Right,
    /// Both: it is the whole run.
    Both,
}

/// Pieces and offcuts, lengths in metres.
#[derive(Debug)]
pub struct Ledger {
    width: f64,
    shortest: f64,
    starts: Vec<f64>,
    ends: Vec<f64>,
    /// Whole pieces opened.
    pub opened: u32,
    /// Places filled from an offcut.
    pub reused: u32,
    /// Length that fell.
    dropped: f64,
}

impl Ledger {
    /// A new one, of pieces of a width of which none shorter than the shortest is laid.
    pub fn new(width: f64, shortest: f64) -> Self {
        Self {
            width,
            shortest,
            starts: Vec::new(),
            ends: Vec::new(),
            opened: 0,
            reused: 0,
            dropped: 0.0,
        }
    }

    /// Takes a piece of a length, from the shortest offcut that will do or else from a new one.
    pub fn take(&mut self, length: f64, trimmed: Trimmed) -> CutFrom {
        if length >= self.width - EQUAL {
            self.opened += 1;
            self.dropped += self.width - length;
            return CutFrom::Whole;
        }
        let start = matches!(trimmed, Trimmed::Left | Trimmed::Both)
            .then(|| shortest(&self.starts, length))
            .flatten();
        let end = matches!(trimmed, Trimmed::Right | Trimmed::Both)
            .then(|| shortest(&self.ends, length))
            .flatten();
        let offcut = match (start, end) {
            (Some(a), Some(b)) if self.ends[b] < self.starts[a] => self.ends.remove(b),
            (Some(a), _) => self.starts.remove(a),
            (None, Some(b)) => self.ends.remove(b),
            (None, None) => return self.cut(length, trimmed),
        };
        self.reused += 1;
        self.dropped += offcut - length;
        CutFrom::Offcut
    }

    fn cut(&mut self, length: f64, trimmed: Trimmed) -> CutFrom {
        self.opened += 1;
        let rest = self.width - length;
        if rest < self.shortest - EQUAL {
            self.dropped += rest;
        } else if trimmed == Trimmed::Left {
            insert(&mut self.ends, rest);
        } else {
            insert(&mut self.starts, rest);
        }
        CutFrom::Piece
    }

    /// Length that fell in all, once nothing more is laid: trimmings, and the offcuts that found no place.
    pub fn dropped(&self) -> f64 {
        self.dropped + self.starts.iter().chain(&self.ends).sum::<f64>()
    }
}

fn shortest(sorted: &[f64], length: f64) -> Option<usize> {
    let at = sorted.partition_point(|offcut| *offcut < length - EQUAL);
    (at < sorted.len()).then_some(at)
}

fn insert(sorted: &mut Vec<f64>, offcut: f64) {
    let at = sorted.partition_point(|other| *other < offcut);
    sorted.insert(at, offcut);
}
