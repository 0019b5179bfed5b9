//! Chance from a seed, the same on every machine: `SplitMix64` (Steele, Lea and Flood 2014).

#![cfg(test)]

pub struct Chance(u64);

impl Chance {
    pub fn seeded(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// From 0 to one below `end`.
    pub fn below(&mut self, end: u32) -> u32 {
        u32::try_from(self.next() % u64::from(end)).unwrap()
    }

    /// Evenly between two numbers.
    pub fn within(&mut self, from: f64, to: f64) -> f64 {
        let share = f64::from(u32::try_from(self.next() >> 32).unwrap()) / f64::from(u32::MAX);
        from + (to - from) * share
    }

    /// About nothing, normally spread: the sum of twelve even chances.
    pub fn about(&mut self, spread: f64) -> f64 {
        let sum: f64 = (0..12).map(|_| self.within(0.0, 1.0)).sum();
        (sum - 6.0) * spread
    }
}
