//! The forms of Settings: the firm, the code, the policy.

use super::typed::{count, wrong};
use crate::form::{FormOf, Typed};
use acts::{ActError, Book, Moment, settings};
use trade::firm::{Firm, HousePolicy, Profile, UnknownEdition};

pub(super) fn set(
    book: &mut Book,
    form: &FormOf,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<(), ActError> {
    match form {
        FormOf::Profile => {
            let profile = profile(book.profile()?, typed)?;
            settings::set_profile(book, profile, moment)
        }
        FormOf::Policy => {
            let policy = policy(book.policy()?, typed)?;
            settings::set_policy(book, policy, moment)
        }
        _ => {
            let firm = firm(book.firm()?, typed);
            settings::set_firm(book, firm, moment)
        }
    }
}

fn firm(before: Firm, typed: &Typed<'_>) -> Firm {
    Firm {
        name: typed.text("name").to_owned(),
        person: typed.text("person").to_owned(),
        phone: typed.text("phone").to_owned(),
        email: typed.text("email").to_owned(),
        address: typed.text("address").lines().map(str::to_owned).collect(),
        licence: typed.text("licence").to_owned(),
        language: typed.choice("language").unwrap_or(before.language),
        contract: typed.text("contract").to_owned(),
        notices: typed.text("notices").to_owned(),
    }
}

fn profile(before: Profile, typed: &Typed<'_>) -> Result<Profile, ActError> {
    let edition = typed
        .text("edition")
        .parse::<u16>()
        .map_err(|_| wrong("edition", "wrong-edition"))?;
    Ok(Profile {
        place: typed.text("place").to_owned(),
        edition: edition
            .try_into()
            .map_err(|error: UnknownEdition| ActError::wrong("edition", error.says()))?,
        layers_allowed: typed.text("layers-allowed").parse().ok(),
        ice_barrier: typed.choice("ice-barrier").unwrap_or(before.ice_barrier),
        hail: typed.choice("hail").unwrap_or(before.hail),
        climate_zone: typed.text("climate-zone").parse().ok(),
        amendments: typed
            .text("amendments")
            .lines()
            .map(str::to_owned)
            .collect(),
    })
}

fn policy(before: HousePolicy, typed: &Typed<'_>) -> Result<HousePolicy, ActError> {
    Ok(HousePolicy {
        patch_limit: count(typed, "patch-limit")?,
        places_limit: count(typed, "places-limit")?,
        no_repair_layers: count(typed, "no-repair-layers")?,
        sells_recover: typed.ticked("sells-recover"),
        callback_years: count(typed, "callback-years")?,
        make_safe_weeks: count(typed, "make-safe-weeks")?,
        look_again_years: count(typed, "look-again-years")?,
        look_stands_months: count(typed, "look-stands-months")?,
        installer_answers_years: count(typed, "installer-answers-years")?,
        ..before
    })
}
