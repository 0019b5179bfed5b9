//! How wide words are, and the turned boxes that they take up.

use trade::drawing::{Lettering, Spot};

/// Advance widths of Atkinson Hyperlegible Bold from the space to the tilde, in thousandths of the em. Regular is narrower.
const WIDTHS: [u16; 95] = [
    320, 283, 410, 783, 619, 977, 702, 222, 366, 366, 434, 618, 243, 374, 243, 442, 652, 448, 586,
    605, 626, 612, 632, 543, 625, 561, 243, 243, 573, 618, 573, 614, 754, 690, 639, 673, 686, 580,
    544, 719, 679, 458, 560, 659, 537, 842, 700, 764, 626, 781, 654, 619, 617, 663, 656, 883, 699,
    687, 621, 333, 442, 333, 589, 430, 314, 553, 596, 520, 596, 566, 367, 597, 572, 315, 259, 567,
    314, 886, 572, 573, 596, 601, 372, 534, 379, 570, 526, 723, 533, 518, 516, 370, 234, 370, 533,
];
/// What any other letter is taken to be: as wide as the widest accented one.
const OTHER: u16 = 600;
/// Height of the box of words, to the em: from above the capitals to below the line.
const HEIGHT: f64 = 1.1;

/// How wide words are at a size.
pub fn width(text: &str, size: f64) -> f64 {
    let thousandths: u32 = text
        .chars()
        .map(|letter| {
            let at = (letter as usize).wrapping_sub(32);
            u32::from(WIDTHS.get(at).copied().unwrap_or(OTHER))
        })
        .sum();
    f64::from(thousandths) * size / 1000.0
}

/// A box that may be turned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turned {
    /// Its middle.
    pub middle: Spot,
    /// Half its width and half its height.
    pub half: (f64, f64),
    /// The way its width runs, a unit vector.
    pub way: (f64, f64),
}

impl Turned {
    /// The box of words.
    pub fn of(words: &Lettering) -> Self {
        let angle = words.turned.to_radians();
        Self {
            middle: words.middle,
            half: (
                width(&words.text, words.size) / 2.0 + 1.0,
                words.size * HEIGHT / 2.0,
            ),
            way: (angle.cos(), angle.sin()),
        }
    }

    /// The box of a line from one place to another, so thick.
    pub fn line(from: Spot, to: Spot, thick: f64) -> Self {
        let length = (to.0 - from.0).hypot(to.1 - from.1);
        let way = if length > 0.0 {
            ((to.0 - from.0) / length, (to.1 - from.1) / length)
        } else {
            (1.0, 0.0)
        };
        Self {
            middle: (f64::midpoint(from.0, to.0), f64::midpoint(from.1, to.1)),
            half: (length / 2.0, thick / 2.0),
            way,
        }
    }

    /// Its corners.
    pub fn corners(&self) -> [Spot; 4] {
        let (w, h) = self.half;
        [(-w, -h), (w, -h), (w, h), (-w, h)].map(|(along, across)| {
            (
                self.middle.0 + along * self.way.0 - across * self.way.1,
                self.middle.1 + along * self.way.1 + across * self.way.0,
            )
        })
    }

    /// Whether two boxes overlap: no line along a side of one parts them.
    pub fn meets(&self, other: &Self) -> bool {
        let (mine, theirs) = (self.corners(), other.corners());
        let across = |way: (f64, f64)| (-way.1, way.0);
        [self.way, across(self.way), other.way, across(other.way)]
            .into_iter()
            .all(|axis| {
                let (a, b) = (spread(&mine, axis), spread(&theirs, axis));
                a.0 < b.1 && b.0 < a.1
            })
    }

    /// Whether it lies within a sheet.
    pub fn within(&self, width: f64, height: f64) -> bool {
        self.corners()
            .iter()
            .all(|corner| (0.0..=width).contains(&corner.0) && (0.0..=height).contains(&corner.1))
    }
}

fn spread(corners: &[Spot; 4], axis: (f64, f64)) -> (f64, f64) {
    corners
        .iter()
        .map(|corner| corner.0 * axis.0 + corner.1 * axis.1)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), at| {
            (least.min(at), most.max(at))
        })
}
