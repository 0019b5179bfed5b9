//! Before the ladder: what forbids climbing, and what to do instead.
//!
//! These stop work; they replace no training, no local law and no licensed trade. Federal rules on fall protection do not
//! reach an inspection before work starts or after it is done (29 CFR 1926.500(a)(1)), so none is held against one here.

use crate::Rules;
use crate::rules::sections::document;
use crate::rules::{Completed, Rule, reason};
use trade::answer::Answer;
use trade::units::Length;
use trade::verdict::{Reason, Source, StandsOn, Strength};
use trade::visit::{SafetyCheck, Sky, Visit};

/// How far the rails stand above the landing at least: 3 ft (29 CFR 1926.1053(b)(1)).
pub const RAILS_ABOVE_LANDING: Length = Length::feet(3);
/// Distance kept from lines up to 50 kV: 10 ft (29 CFR 1910.269 and utilities' advice).
pub const FROM_LINES: Length = Length::feet(10);
/// Minutes to wait off the ladder after the last thunder (OSHA/NOAA FS-3863).
pub const AFTER_THUNDER_MINUTES: u8 = 30;

/// How far out a ladder's base stands: a quarter of its working length (29 CFR 1926.1053(b)(5)(i)).
pub fn ladder_base(working_length: Length) -> Length {
    working_length.scaled(0.25)
}

/// How high the top support of a ladder so set is above its base.
pub fn ladder_top(working_length: Length) -> Length {
    working_length.scaled((1.0_f64 - 0.25 * 0.25).sqrt())
}

/// What forbids climbing on a visit, in the order it is asked. Empty where nothing recorded does; what was not
/// answered is no leave to climb.
pub fn stops(visit: &Visit, rules: &Rules<'_>) -> Vec<Reason> {
    let mut stops: Vec<Reason> = SafetyCheck::ALL
        .into_iter()
        .filter(|check| fails(visit, *check))
        .map(|check| stop(visit, check).on(vec![StandsOn::Visit(visit.id)]))
        .collect();
    stops.extend(tabs_not_lifted(visit, rules));
    stops
}

/// Whether the last answer to a check is no, or the weather recorded says so.
fn fails(visit: &Visit, check: SafetyCheck) -> bool {
    let answered = visit
        .safety
        .iter()
        .rev()
        .find(|answer| answer.check == check)
        .is_some_and(|answer| answer.holds == Answer::No);
    let weather = match check {
        SafetyCheck::WeatherHolds => visit.weather.windy || visit.weather.sky == Sky::Thunder,
        SafetyCheck::SurfaceDry => matches!(visit.weather.sky, Sky::Wet | Sky::Frozen),
        _ => false,
    };
    answered || weather
}

fn stop(visit: &Visit, check: SafetyCheck) -> Reason {
    let practice = |rule| reason(rule, Source::Practice, Strength::Forbids);
    let osha = |rule, section| reason(rule, document("29 CFR", None, section), Strength::Forbids);
    match check {
        SafetyCheck::LadderStands => {
            osha(Rule::StopLadder, "1926.1053(b)").with("above", RAILS_ABOVE_LANDING)
        }
        SafetyCheck::LinesClear => {
            osha(Rule::StopLines, "1926.1053(b)(12)").with("distance", FROM_LINES)
        }
        SafetyCheck::WeatherHolds if visit.weather.sky == Sky::Thunder => reason(
            Rule::StopThunder,
            document("OSHA/NOAA", None, "FS-3863"),
            Strength::Forbids,
        )
        .with("minutes", AFTER_THUNDER_MINUTES),
        SafetyCheck::WeatherHolds if visit.weather.windy => practice(Rule::StopWind),
        SafetyCheck::WeatherHolds => practice(Rule::StopWeather),
        SafetyCheck::SurfaceDry if visit.weather.sky == Sky::Frozen => practice(Rule::StopFrozen),
        SafetyCheck::SurfaceDry => practice(Rule::StopWet),
        SafetyCheck::PitchSafe => practice(Rule::StopSteep),
        SafetyCheck::DeckBears => practice(Rule::StopDeck),
        SafetyCheck::NoSuspectFibres => practice(Rule::StopFibres),
    }
}

/// Tabs are not lifted when it is too cold or too hot for them to bend.
pub fn tabs_not_lifted(visit: &Visit, rules: &Rules<'_>) -> Option<Reason> {
    let policy = rules.policy;
    let celsius = visit.weather.celsius?;
    let bends = (policy.lift_from_celsius..=policy.lift_to_celsius).contains(&celsius);
    (!bends).then(|| {
        reason(Rule::TabsNotLifted, Source::HousePolicy, Strength::Advises)
            .on(vec![StandsOn::Visit(visit.id)])
    })
}
