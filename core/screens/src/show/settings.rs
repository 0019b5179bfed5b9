//! Settings: the firm, the code where it works, its own policy.

use crate::action::Action;
use crate::block::{Button, Choice, Field, FieldKind, Form};
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

fn field(context: &Context<'_>, name: &str, value: impl ToString, kind: FieldKind) -> Field {
    Field {
        name: name.to_owned(),
        label: context.text(&format!("settings-{name}")),
        value: value.to_string(),
        kind,
    }
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
    Form {
        form: FormOf::Firm,
        title: context.text("settings-firm"),
        fields: vec![
            field(context, "name", &firm.name, FieldKind::Line),
            field(context, "person", &firm.person, FieldKind::Line),
            field(context, "phone", &firm.phone, FieldKind::Phone),
            field(context, "email", &firm.email, FieldKind::Line),
            field(
                context,
                "address",
                firm.address.join("\n"),
                FieldKind::Words,
            ),
            field(context, "licence", &firm.licence, FieldKind::Line),
            field(
                context,
                "language",
                value_of(&firm.language),
                FieldKind::OneOf { choices: languages },
            ),
            field(context, "contract", &firm.contract, FieldKind::Words),
            field(context, "notices", &firm.notices, FieldKind::Words),
        ],
        submit: context.text("settings-keep"),
    }
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
    Form {
        form: FormOf::Profile,
        title: context.text("settings-profile"),
        fields: vec![
            field(context, "place", &profile.place, FieldKind::Line),
            field(
                context,
                "edition",
                profile.edition.year(),
                FieldKind::OneOf { choices: editions },
            ),
            field(
                context,
                "layers-allowed",
                layers,
                FieldKind::OneOf { choices: allowed },
            ),
            field(
                context,
                "ice-barrier",
                value_of(&profile.ice_barrier),
                three(context),
            ),
            field(context, "hail", value_of(&profile.hail), three(context)),
            field(context, "climate-zone", zone, FieldKind::Line),
            field(
                context,
                "amendments",
                profile.amendments.join("\n"),
                FieldKind::Words,
            ),
        ],
        submit: context.text("settings-keep"),
    }
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
    Form {
        form: FormOf::Policy,
        title: context.text("settings-policy"),
        fields: vec![
            field(context, "patch-limit", policy.patch_limit, FieldKind::Line),
            field(
                context,
                "places-limit",
                policy.places_limit,
                FieldKind::Line,
            ),
            field(
                context,
                "no-repair-layers",
                policy.no_repair_layers,
                FieldKind::Line,
            ),
            field(
                context,
                "sells-recover",
                sells,
                FieldKind::OneOf { choices: yes_no },
            ),
            field(
                context,
                "callback-years",
                policy.callback_years,
                FieldKind::Line,
            ),
            field(
                context,
                "make-safe-weeks",
                policy.make_safe_weeks,
                FieldKind::Line,
            ),
            field(
                context,
                "look-again-years",
                policy.look_again_years,
                FieldKind::Line,
            ),
            field(
                context,
                "look-stands-months",
                policy.look_stands_months,
                FieldKind::Line,
            ),
            field(
                context,
                "installer-answers-years",
                policy.installer_answers_years,
                FieldKind::Line,
            ),
        ],
        submit: context.text("settings-keep"),
    }
}
