//! Exact sums and products of floating-point numbers.
//!
//! A number is held as an expansion: a list of floats that do not overlap, least first, whose sum is its value (J. R. Shewchuk, "Adaptive
//! Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates", 1997). Sums, differences and products of expansions are
//! exact as long as nothing over- or underflows; with coordinates under 2³⁰ and at most five factors nothing does.

use std::cmp::Ordering;

/// A number held exactly. No component is zero; nothing at all is zero.
#[derive(Clone, Debug, Default)]
pub(super) struct Exact(Vec<f64>);

/// 2²⁷ + 1: halves the 53 bits of a float (Dekker).
const SPLITTER: f64 = 134_217_729.0;

fn two_sum(a: f64, b: f64) -> (f64, f64) {
    let sum = a + b;
    let b_virtual = sum - a;
    let a_virtual = sum - b_virtual;
    (sum, (a - a_virtual) + (b - b_virtual))
}

fn halves(a: f64) -> (f64, f64) {
    let big = SPLITTER * a;
    let high = big - (big - a);
    (high, a - high)
}

fn two_product(a: f64, b: f64) -> (f64, f64) {
    let product = a * b;
    let (a_high, a_low) = halves(a);
    let (b_high, b_low) = halves(b);
    let rest = a_low * b_low - (((product - a_high * b_high) - a_low * b_high) - a_high * b_low);
    (product, rest)
}

impl Exact {
    /// A float, as it is.
    pub(super) fn float(value: f64) -> Self {
        Self(if value == 0.0 {
            Vec::new()
        } else {
            vec![value]
        })
    }

    /// A whole number, as it is.
    #[allow(clippy::cast_precision_loss)]
    pub(super) fn whole(value: i64) -> Self {
        let high = value >> 32 << 32;
        Self::float(high as f64).plus(&Self::float((value - high) as f64))
    }

    /// The sum with one float.
    fn grown(&self, by: f64) -> Self {
        let mut carried = by;
        let mut parts = Vec::with_capacity(self.0.len() + 1);
        for &part in &self.0 {
            let (sum, rest) = two_sum(carried, part);
            if rest != 0.0 {
                parts.push(rest);
            }
            carried = sum;
        }
        if carried != 0.0 {
            parts.push(carried);
        }
        Self(parts)
    }

    /// The sum.
    pub(super) fn plus(&self, other: &Self) -> Self {
        let (longer, shorter) = if self.0.len() < other.0.len() {
            (other, self)
        } else {
            (self, other)
        };
        let mut sum = longer.clone();
        for &part in &shorter.0 {
            sum = sum.grown(part);
        }
        sum
    }

    /// The negative.
    pub(super) fn negated(mut self) -> Self {
        for part in &mut self.0 {
            *part = -*part;
        }
        self
    }

    /// The difference.
    pub(super) fn minus(&self, other: &Self) -> Self {
        self.plus(&other.clone().negated())
    }

    /// The product.
    pub(super) fn times(&self, other: &Self) -> Self {
        let mut sum = Self::default();
        for &a in &self.0 {
            for &b in &other.0 {
                let (product, rest) = two_product(a, b);
                if rest != 0.0 {
                    sum = sum.grown(rest);
                }
                sum = sum.grown(product);
            }
        }
        sum
    }

    /// Whether it lies below, at or above nothing.
    pub(super) fn sign(&self) -> Ordering {
        match self.0.last() {
            Some(&greatest) if greatest > 0.0 => Ordering::Greater,
            Some(_) => Ordering::Less,
            None => Ordering::Equal,
        }
    }

    /// The float next to it, or one of the two.
    pub(super) fn near(&self) -> f64 {
        self.0.iter().sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn whole_numbers_are_added_and_multiplied_exactly(a in -(1_i64 << 60)..1 << 60, b in -(1_i64 << 60)..1 << 60, c in -(1_i64 << 60)..1 << 60) {
            let exact = Exact::whole(a).times(&Exact::whole(b)).minus(&Exact::whole(c).times(&Exact::whole(a)));
            let whole = i128::from(a) * i128::from(b) - i128::from(c) * i128::from(a);
            prop_assert_eq!(exact.sign(), whole.cmp(&0));
        }

        #[test]
        fn what_is_taken_away_again_leaves_nothing(a in -1e9..1e9_f64, b in -1e9..1e9_f64) {
            let (a, b) = (Exact::float(a), Exact::float(b));
            let square = a.plus(&b).times(&a.plus(&b));
            let parts = a.times(&a).plus(&a.times(&b)).plus(&b.times(&a)).plus(&b.times(&b));
            prop_assert_eq!(square.minus(&parts).sign(), Ordering::Equal);
        }
    }
}
