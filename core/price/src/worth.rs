//! What money now is worth against money later: a price as so much a year, and a row of payments as one sum now.
//!
//! All in decimals; the rate is a year's, whole years are compounded exactly, months by the twelfth root of a year's growth.

use rust_decimal::Decimal;
use trade::price_list::Share;
use trade::units::Money;
use trade::words::Said;

/// Longest time reckoned with, in years.
pub const LONGEST: u32 = 100;
/// Highest rate reckoned with.
const HIGHEST_RATE: Decimal = Decimal::from_parts(50, 0, 0, false, 2);
/// Months in a year.
const MONTHS: u32 = 12;
/// Steps of Newton's method that the twelfth root takes to come to rest at 28 digits; it does so in fewer.
const STEPS: u32 = 40;

/// Why something has no worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum WorthError {
    /// The rate is below nothing or above one half.
    #[error("a rate a year lies between 0 % and 50 %, not at {0}")]
    Rate(Share),
    /// The time is nothing, or longer than is reckoned with.
    #[error("a time lies between 1 month and {LONGEST} years")]
    Time,
    /// The amount is too great to be reckoned with.
    #[error("the amount is too great")]
    TooGreat,
}

impl WorthError {
    /// What it says to the roofer.
    pub fn says(self) -> Said {
        match self {
            Self::Rate(rate) => Said::new("worth-error-rate").with("rate", rate.to_string()),
            Self::Time => Said::new("worth-error-time").with("years", LONGEST),
            Self::TooGreat => Said::new("worth-error-too-great"),
        }
    }
}

/// Capital recovery: what a price comes to a year over so many years at a rate, A = P·i / (1 − (1 + i)^−n). At no rate it is P / n.
/// In full decimals: round where it is shown.
///
/// # Errors
/// Where the rate or the time is not one to be reckoned with, or the amount is too great.
pub fn a_year(price: Money, rate: Share, years: u32) -> Result<Decimal, WorthError> {
    let growth = growth(rate, years.checked_mul(MONTHS).ok_or(WorthError::Time)?)?;
    if rate.0.is_zero() {
        return divided(price.0, Decimal::from(years));
    }
    // P·i / (1 − 1/g) = P·i·g / (g − 1)
    let over = price
        .0
        .checked_mul(rate.0)
        .and_then(|interest| interest.checked_mul(growth))
        .ok_or(WorthError::TooGreat)?;
    divided(over, growth - Decimal::ONE)
}

/// An annuity: what so much at the end of each of so many years is worth now.
///
/// # Errors
/// As [`a_year`].
pub fn annuity(a_year: Money, rate: Share, years: u32) -> Result<Decimal, WorthError> {
    let growth = growth(rate, years.checked_mul(MONTHS).ok_or(WorthError::Time)?)?;
    if rate.0.is_zero() {
        return a_year
            .0
            .checked_mul(Decimal::from(years))
            .ok_or(WorthError::TooGreat);
    }
    let discount = divided(growth - Decimal::ONE, growth)?;
    let over = a_year.0.checked_mul(discount).ok_or(WorthError::TooGreat)?;
    divided(over, rate.0)
}

/// What one payment after so many months is worth now.
///
/// # Errors
/// As [`a_year`]; a payment now, after no months, is worth itself.
pub fn worth_now(payment: Money, rate: Share, months: u32) -> Result<Decimal, WorthError> {
    if months == 0 {
        return Ok(payment.0);
    }
    divided(payment.0, growth(rate, months)?)
}

/// What a row of payments is worth now, each after its months.
///
/// # Errors
/// As [`worth_now`].
pub fn series(
    payments: impl IntoIterator<Item = (u32, Money)>,
    rate: Share,
) -> Result<Decimal, WorthError> {
    payments
        .into_iter()
        .try_fold(Decimal::ZERO, |sum, (months, payment)| {
            sum.checked_add(worth_now(payment, rate, months)?)
                .ok_or(WorthError::TooGreat)
        })
}

/// How often a patch that holds so many months is made over so many years, the first now.
///
/// # Errors
/// Where either is nothing or too long.
pub fn times_patched(holds: u16, years: u32) -> Result<u32, WorthError> {
    if holds == 0 || !(1..=LONGEST).contains(&years) {
        return Err(WorthError::Time);
    }
    Ok((years * MONTHS).div_ceil(u32::from(holds)))
}

/// What patching again and again comes to: all payments as they are made, and their worth now.
///
/// # Errors
/// As [`times_patched`] and [`series`].
pub fn patching(
    once: Money,
    holds: u16,
    years: u32,
    rate: Share,
) -> Result<(Decimal, Decimal), WorthError> {
    let times = times_patched(holds, years)?;
    let sum = once
        .0
        .checked_mul(Decimal::from(times))
        .ok_or(WorthError::TooGreat)?;
    let payments = (0..times).map(|nth| (nth * u32::from(holds), once));
    Ok((sum, series(payments, rate)?))
}

/// What one grows to after so many months.
fn growth(rate: Share, months: u32) -> Result<Decimal, WorthError> {
    if rate.0.is_sign_negative() && !rate.0.is_zero() || rate.0 > HIGHEST_RATE {
        return Err(WorthError::Rate(rate));
    }
    if !(1..=LONGEST * MONTHS).contains(&months) {
        return Err(WorthError::Time);
    }
    let a_year = Decimal::ONE + rate.0;
    let years = power(a_year, months / MONTHS).ok_or(WorthError::TooGreat)?;
    match months % MONTHS {
        0 => Ok(years),
        rest => power(twelfth_root(a_year), rest)
            .and_then(|part| years.checked_mul(part))
            .ok_or(WorthError::TooGreat),
    }
}

fn power(base: Decimal, exponent: u32) -> Option<Decimal> {
    let mut result = Decimal::ONE;
    for _ in 0..exponent {
        result = result.checked_mul(base)?;
    }
    Some(result)
}

/// The twelfth root of a number from 1 to 1.5, by Newton's method from above.
fn twelfth_root(of: Decimal) -> Decimal {
    let twelve = Decimal::from(MONTHS);
    let mut root = Decimal::ONE + (of - Decimal::ONE) / twelve;
    for _ in 0..STEPS {
        let eleventh = power(root, MONTHS - 1).unwrap_or(Decimal::ONE);
        let next = (root * Decimal::from(MONTHS - 1) + of / eleventh) / twelve;
        if next == root {
            break;
        }
        root = next;
    }
    root
}

fn divided(over: Decimal, under: Decimal) -> Result<Decimal, WorthError> {
    over.checked_div(under).ok_or(WorthError::TooGreat)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn money(text: &str) -> Money {
        Money(text.parse().unwrap())
    }

    fn share(text: &str) -> Share {
        Share(text.parse().unwrap())
    }

    /// A/P factors of the tables of compound interest in engineering economy textbooks, to four places: 5 % 20 years 0.0802, 8 % 10
    /// years 0.1490, 10 % 5 years 0.2638. From memory; numpy-financial holds them in tests/outside/price.
    #[test]
    fn capital_recovery_by_the_tables() {
        for (rate, years, factor) in [
            ("0.05", 20, "0.0802"),
            ("0.08", 10, "0.1490"),
            ("0.10", 5, "0.2638"),
        ] {
            let got = a_year(money("1"), share(rate), years).unwrap();
            assert_eq!(got.round_dp(4).to_string(), factor);
        }
    }

    #[test]
    fn at_no_rate_a_price_is_shared_out_evenly() {
        assert_eq!(
            a_year(money("12000"), share("0"), 20).unwrap(),
            money("600").0
        );
        assert_eq!(
            annuity(money("600"), share("0"), 20).unwrap(),
            money("12000").0
        );
    }

    #[test]
    fn an_annuity_undoes_capital_recovery() {
        let yearly = a_year(money("12345.67"), share("0.06"), 23).unwrap();
        let back = annuity(Money(yearly), share("0.06"), 23).unwrap();
        assert_eq!(back.round_dp(10), money("12345.67").0);
    }

    #[test]
    fn twelve_months_are_a_year() {
        let twelve = power(twelfth_root(money("1.06").0), 12).unwrap();
        assert_eq!(twelve.round_dp(20), money("1.06").0);
        assert_eq!(
            worth_now(money("106"), share("0.06"), 12).unwrap(),
            money("100").0
        );
    }

    #[test]
    fn a_patch_that_holds_two_years_is_made_ten_times_in_twenty() {
        let (sum, now) = patching(money("400"), 24, 20, share("0")).unwrap();
        assert_eq!((sum, now), (money("4000").0, money("4000").0));
        let (_, now) = patching(money("400"), 24, 20, share("0.05")).unwrap();
        assert!(now < money("4000").0);
        assert_eq!(times_patched(36, 20).unwrap(), 7);
    }

    #[test]
    fn what_cannot_be_reckoned_is_said() {
        assert_eq!(
            a_year(money("1"), share("-0.01"), 5),
            Err(WorthError::Rate(share("-0.01")))
        );
        assert_eq!(
            a_year(money("1"), share("0.51"), 5),
            Err(WorthError::Rate(share("0.51")))
        );
        assert_eq!(a_year(money("1"), share("0.05"), 0), Err(WorthError::Time));
        assert_eq!(
            a_year(money("1"), share("0.05"), 101),
            Err(WorthError::Time)
        );
        assert_eq!(
            a_year(Money(Decimal::MAX), share("0.5"), 100),
            Err(WorthError::TooGreat)
        );
        assert_eq!(times_patched(0, 20), Err(WorthError::Time));
    }
}
