//! Determinants in whole numbers of 128 bits: exact, and quick.

/// The determinant of three rows: two numbers below 2³⁰ and one below 2⁶⁰ in each, so that it fits.
#[allow(clippy::many_single_char_names, reason = "rows and columns")]
pub(super) fn det3([p, q, r]: [[i64; 3]; 3]) -> i128 {
    let minor = |i: usize, j: usize| product(p[i], q[j]) - product(p[j], q[i]);
    i128::from(r[0]) * minor(1, 2) - i128::from(r[1]) * minor(0, 2) + i128::from(r[2]) * minor(0, 1)
}

fn product(a: i64, b: i64) -> i128 {
    i128::from(a) * i128::from(b)
}

/// The determinant of four rows, by the minors of the first two and the last two; `None` where it does not fit.
#[allow(clippy::many_single_char_names, reason = "rows and columns")]
pub(super) fn det4([i, j, k, l]: [[i64; 4]; 4]) -> Option<i128> {
    let product = |m: usize, n: usize, o: usize, p: usize| {
        minor(i[m], i[n], j[m], j[n])?.checked_mul(minor(k[o], k[p], l[o], l[p])?)
    };
    product(0, 1, 2, 3)?
        .checked_sub(product(0, 2, 1, 3)?)?
        .checked_add(product(0, 3, 1, 2)?)?
        .checked_add(product(1, 2, 0, 3)?)?
        .checked_sub(product(1, 3, 0, 2)?)?
        .checked_add(product(2, 3, 0, 1)?)
}

fn minor(a: i64, b: i64, c: i64, d: i64) -> Option<i128> {
    let (a, b, c, d) = (i128::from(a), i128::from(b), i128::from(c), i128::from(d));
    a.checked_mul(d)?.checked_sub(b.checked_mul(c)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn determinants() {
        assert_eq!(det3([[2, 0, 1], [1, 3, 2], [1, 1, 4]]), 18);
        assert_eq!(
            det4([[1, 0, 2, -1], [3, 0, 0, 5], [2, 1, 4, -3], [1, 0, 5, 0]]),
            Some(30)
        );
        let (x, z) = ((1 << 30) - 1, (1 << 60) - 1);
        assert_eq!(
            det3([[x, -x, z], [x, x, z], [-x, -x, z]]),
            4 * i128::from(x).pow(2) * i128::from(z)
        );
        assert_eq!(
            det4([
                [i64::MAX, 1, 2, 3],
                [i64::MIN, 1, 2, 3],
                [1, 2, i64::MAX, 3],
                [1, 2, i64::MIN, 3]
            ]),
            None
        );
    }
}
