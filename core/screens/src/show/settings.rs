//! Settings: the firm, the code where it works, its own policy.

use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form};
use crate::filling::Filling;
use crate::form::{FormOf, value_of};
use crate::place::Place;
use crate::screens::Context;
use acts::ActError;
use serde::Serialize;
use trade::answer::Answer;
use trade::firm::Edition;
use trade::words::Language;

/// The state of Settings.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Settings {
    /// The heading.
    pub title: String,
    /// The firm, the code, the policy.
    pub forms: Vec<Form>,
    /// Back to Arrive.
    pub back: Button,
}

pub(crate) fn show(context: &Context<'_>) -> Result<Settings, ActError> {
    Ok(Settings {
        title: context.text("settings-title"),
        forms: vec![
            firm(context),
            profile(context),
            policy(context),
            price_list(context)?,
        ],
        back: Button::new(
            context.text("arrive-title"),
            Action::Go { to: Place::start() },
        ),
    })
}

fn price_list(context: &Context<'_>) -> Result<Form, ActError> {
    let known = acts::offer::price_list(context.book)?;
    Ok(Filling::new(context, FormOf::PriceList)
        .field(
            "list",
            "settings-price-list-how",
            &known.unwrap_or_default(),
            FieldKind::Words,
        )
        .done(context.text("settings-price-list"), "settings-keep"))
}

fn firm(context: &Context<'_>) -> Form {
    let firm = &context.going.firm;
    let languages = Language::ALL
        .into_iter()
        .map(|language| Choice {
            value: value_of(&language),
            label: context.text(match language {
                Language::English => "language-english",
                Language::Spanish => "language-spanish",
            }),
        })
        .collect();
    Filling::new(context, FormOf::Firm)
        .field("name", "settings-name", &firm.name, FieldKind::Line)
        .field("person", "settings-person", &firm.person, FieldKind::Line)
        .field("phone", "settings-phone", &firm.phone, FieldKind::Phone)
        .field("email", "settings-email", &firm.email, FieldKind::Line)
        .field(
            "address",
            "settings-address",
            &firm.address.join("\n"),
            FieldKind::Words,
        )
        .field(
            "licence",
            "settings-licence",
            &firm.licence,
            FieldKind::Line,
        )
        .field(
            "language",
            "settings-language",
            &value_of(&firm.language),
            FieldKind::OneOf { choices: languages },
        )
        .field(
            "contract",
            "settings-contract",
            &firm.contract,
            FieldKind::Words,
        )
        .field(
            "notices",
            "settings-notices",
            &firm.notices,
            FieldKind::Words,
        )
        .done(context.text("settings-firm"), "settings-keep")
}

fn three(context: &Context<'_>) -> FieldKind {
    let choices = [
        (Answer::Yes, "answer-yes"),
        (Answer::No, "answer-no"),
        (Answer::Unknown, "answer-unknown"),
    ]
    .into_iter()
    .map(|(answer, label)| Choice {
        value: value_of(&answer),
        label: context.text(label),
    })
    .collect();
    FieldKind::OneOf { choices }
}

fn profile(context: &Context<'_>) -> Form {
    let profile = &context.going.profile;
    let editions = Edition::ALL
        .into_iter()
        .map(|edition| {
            let year = edition.year().to_string();
            Choice {
                value: year.clone(),
                label: year,
            }
        })
        .collect();
    let layers = profile
        .layers_allowed
        .map(|layers| layers.to_string())
        .unwrap_or_default();
    let allowed = [
        ("", "choice-model-code"),
        ("1", "layers-one"),
        ("2", "layers-two"),
    ]
    .into_iter()
    .map(|(value, label)| Choice {
        value: value.to_owned(),
        label: context.text(label),
    })
    .collect();
    let zone = profile
        .climate_zone
        .map(|zone| zone.to_string())
        .unwrap_or_default();
    Filling::new(context, FormOf::Profile)
        .field("place", "settings-place", &profile.place, FieldKind::Line)
        .field(
            "edition",
            "settings-edition",
            &profile.edition.year().to_string(),
            FieldKind::OneOf { choices: editions },
        )
        .field(
            "layers-allowed",
            "settings-layers-allowed",
            &layers,
            FieldKind::OneOf { choices: allowed },
        )
        .field(
            "ice-barrier",
            "settings-ice-barrier",
            &value_of(&profile.ice_barrier),
            three(context),
        )
        .field(
            "hail",
            "settings-hail",
            &value_of(&profile.hail),
            three(context),
        )
        .field(
            "climate-zone",
            "settings-climate-zone",
            &zone,
            FieldKind::Line,
        )
        .field(
            "amendments",
            "settings-amendments",
            &profile.amendments.join("\n"),
            FieldKind::Words,
        )
        .done(context.text("settings-profile"), "settings-keep")
}

fn policy(context: &Context<'_>) -> Form {
    let policy = &context.going.policy;
    let yes_no = [("no", "answer-no"), ("yes", "answer-yes")]
        .into_iter()
        .map(|(value, label)| Choice {
            value: value.to_owned(),
            label: context.text(label),
        })
        .collect();
    let sells = if policy.sells_recover { "yes" } else { "no" };
    Filling::new(context, FormOf::Policy)
        .number("patch-limit", "settings-patch-limit", policy.patch_limit)
        .number("places-limit", "settings-places-limit", policy.places_limit)
        .number(
            "no-repair-layers",
            "settings-no-repair-layers",
            policy.no_repair_layers,
        )
        .field(
            "sells-recover",
            "settings-sells-recover",
            sells,
            FieldKind::OneOf { choices: yes_no },
        )
        .number(
            "callback-years",
            "settings-callback-years",
            policy.callback_years,
        )
        .number(
            "make-safe-weeks",
            "settings-make-safe-weeks",
            policy.make_safe_weeks,
        )
        .number(
            "look-again-years",
            "settings-look-again-years",
            policy.look_again_years,
        )
        .number(
            "look-stands-months",
            "settings-look-stands-months",
            policy.look_stands_months,
        )
        .number(
            "installer-answers-years",
            "settings-installer-answers-years",
            policy.installer_answers_years,
        )
        .done(context.text("settings-policy"), "settings-keep")
}
