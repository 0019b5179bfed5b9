//! Where the joints of a run come: in the pattern of the courses where the rules allow, else in the nearest place where they do.

/// Lengths count as equal within a micrometre.
const EQUAL: f64 = 1e-6;

/// What joints have to keep to, in metres.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Length of a whole piece.
    pub width: f64,
    /// How far the joints of a course stand off from those of the course below.
    pub offset: f64,
    /// The shortest piece, and the least distance of a joint from those below.
    pub shortest: f64,
}

impl Rule {
    /// Courses after which the pattern starts over with a whole piece: each starts with a piece shorter by the offset, down to the shortest.
    pub fn cycle(&self) -> u32 {
        let steps = ((self.width - self.shortest) / self.offset + EQUAL).floor();
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let steps = steps.clamp(0.0, 1000.0) as u32;
        steps + 1
    }

    /// One joint of a course by the pattern, on a plane whose courses start at `start`.
    pub fn pattern(&self, start: f64, course: u32) -> f64 {
        start - f64::from(course % self.cycle()) * self.offset
    }

    /// The joints within a run from `reach.0` to `reach.1`, where `wanted` is one joint of the pattern and `below` those of the course below.
    pub fn joints(&self, reach: (f64, f64), wanted: f64, below: &[f64]) -> Vec<f64> {
        let (from, to) = reach;
        if to - from <= self.width + EQUAL {
            return Vec::new();
        }
        let below: Vec<f64> = below
            .iter()
            .copied()
            .filter(|joint| *joint > from - self.shortest && *joint < to + self.shortest)
            .collect();
        let phase = self.phase(reach, wanted, &below);
        if self.least(reach, phase, &below) >= self.shortest - EQUAL {
            return self.whole(reach, phase);
        }
        self.stepped(reach, &below)
            .unwrap_or_else(|| self.whole(reach, phase))
    }

    /// Joints with nothing but whole pieces between the first and the last.
    fn whole(&self, reach: (f64, f64), phase: f64) -> Vec<f64> {
        let mut joints = Vec::new();
        let mut joint = reach.0 + phase;
        while joint < reach.1 - EQUAL {
            if joint > reach.0 + EQUAL {
                joints.push(joint);
            }
            joint += self.width;
        }
        joints
    }

    /// Joints by cutting between as well: each as far on as the rules allow. `None` where they allow nothing.
    fn stepped(&self, reach: (f64, f64), below: &[f64]) -> Option<Vec<f64>> {
        let mut joints = Vec::new();
        let mut from = reach.0;
        while reach.1 - from > self.width + EQUAL {
            let farthest = (from + self.width).min(reach.1 - self.shortest);
            let joint = self.clear(farthest, below);
            if joint < from + self.shortest - EQUAL {
                return None;
            }
            joints.push(joint);
            from = joint;
        }
        Some(joints)
    }

    /// The farthest place up to `farthest` that keeps its distance from the joints below.
    fn clear(&self, farthest: f64, below: &[f64]) -> f64 {
        let mut place = farthest;
        while let Some(near) = below
            .iter()
            .find(|joint| (place - **joint).abs() < self.shortest - EQUAL)
        {
            place = near - self.shortest;
        }
        place
    }

    /// How far from the start of a run its first joint comes: the wanted place, or the nearest that breaks no rule, or that which breaks
    /// them least.
    fn phase(&self, reach: (f64, f64), wanted: f64, below: &[f64]) -> f64 {
        let wanted = (wanted - reach.0).rem_euclid(self.width);
        let least = |phase: f64| self.least(reach, phase, below);
        if least(wanted) >= self.shortest - EQUAL {
            return wanted;
        }
        let ends = [
            self.shortest,
            reach.1 - reach.0 - self.shortest,
            reach.1 - reach.0,
            0.0,
        ];
        let beside = below
            .iter()
            .flat_map(|joint| [joint - self.shortest, joint + self.shortest])
            .map(|joint| joint - reach.0);
        let round = |phase: f64| {
            let off = (phase - wanted).abs();
            off.min(self.width - off)
        };
        ends.into_iter()
            .chain(beside)
            .map(|phase| phase.rem_euclid(self.width))
            .map(|phase| (phase, least(phase).min(self.shortest - EQUAL), round(phase)))
            .max_by(|a, b| a.1.total_cmp(&b.1).then(b.2.total_cmp(&a.2)))
            .map_or(wanted, |(phase, ..)| phase)
    }

    /// The least that the rules are kept by: the shorter end piece, or the joint nearest to one below.
    fn least(&self, reach: (f64, f64), phase: f64, below: &[f64]) -> f64 {
        let end = |length: f64| {
            let rest = length.rem_euclid(self.width);
            if rest < EQUAL || rest > self.width - EQUAL {
                self.width
            } else {
                rest
            }
        };
        let first = end(phase);
        let last = end(reach.1 - reach.0 - phase);
        below
            .iter()
            .map(|joint| {
                let off = (joint - reach.0 - phase).rem_euclid(self.width);
                off.min(self.width - off)
            })
            .fold(first.min(last), f64::min)
    }
}
