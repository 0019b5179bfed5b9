//! Property: what stands there, who lives there, what else it is called; and whether two addresses are one place.

use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form, Row};
use crate::filling::Filling;
use crate::form::{FormOf, value_of};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use crate::show::arrive::here;
use acts::{ActError, arrive, premises};
use serde::Serialize;
use trade::history::History;
use trade::ids::PropertyId;
use trade::property::{Address, Person, Role, Structure};
use trade::words::Said;

/// Another record of the same place, with the tap that joins it or parts it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Twin {
    /// Its address and who lives there.
    pub row: Row,
    /// Joins it, or parts it.
    pub tap: Button,
}

/// The state of Property.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Property {
    /// The address.
    pub address: String,
    /// The heading.
    pub title: String,
    /// Its other addresses.
    pub also: Vec<Row>,
    /// The heading over them.
    pub also_title: String,
    /// Address, other address, what holds on every visit.
    pub place: Vec<Form>,
    /// The heading over the people.
    pub people_title: String,
    /// The people, each to be written anew, and one more.
    pub people: Vec<Form>,
    /// The heading over the structures.
    pub structures_title: String,
    /// The structures.
    pub structures: Vec<Form>,
    /// The heading over what may be the same place.
    pub same_title: String,
    /// What was joined with it.
    pub joined: Vec<Twin>,
    /// Looking for the same place under another address.
    pub same: Form,
    /// What was found.
    pub found: Vec<Twin>,
    /// What to say where nothing was found.
    pub none: Option<String>,
    /// What erasing destroys.
    pub erase_says: String,
    /// Erasing.
    pub erase: Form,
    /// The way back.
    pub back: Button,
}

pub(crate) fn show(
    context: &Context<'_>,
    property: PropertyId,
    like: &str,
) -> Result<Property, ActError> {
    let history = arrive::history(context.book, property)?;
    let kept = history.property.id;
    let found = found(context, kept, like)?;
    Ok(Property {
        address: history.property.address.line.clone(),
        title: context.text("property-title"),
        also_title: context.text("property-also"),
        also: history.property.also.iter().map(also).collect(),
        place: vec![
            address(context, FormOf::Address { property: kept }, &history),
            also_at(context, kept),
            about(context, &history),
        ],
        people_title: context.text("property-people"),
        people: people(context, &history),
        structures_title: context.text("property-structures"),
        structures: history
            .structures
            .iter()
            .map(|one| structure(context, &history, one))
            .collect(),
        same_title: context.text("property-same"),
        joined: joined(context, kept)?,
        same: same(context, kept, like),
        none: (!like.trim().is_empty() && found.is_empty())
            .then(|| context.text("property-same-none")),
        found,
        erase_says: context.text("property-erase-says"),
        erase: erase(context, kept),
        back: Button::new(
            context.text("back-doorstep"),
            Action::Go {
                to: Place::Doorstep { property: kept },
            },
        ),
    })
}

fn also(address: &Address) -> Row {
    Row {
        title: address.line.clone(),
        says: address.town.clone(),
        ladder: None,
        action: None,
    }
}

fn address_fields<'a>(filling: Filling<'a>, known: &Address) -> Filling<'a> {
    filling
        .field("line", "address-line", &known.line, FieldKind::Line)
        .field("town", "address-town", &known.town, FieldKind::Line)
        .field("region", "address-region", &known.region, FieldKind::Line)
        .field(
            "postcode",
            "address-postcode",
            &known.postcode,
            FieldKind::Line,
        )
}

fn address(context: &Context<'_>, form: FormOf, history: &History) -> Form {
    address_fields(Filling::new(context, form), &history.property.address)
        .done(context.text("property-address"), "settings-keep")
}

fn also_at(context: &Context<'_>, property: PropertyId) -> Form {
    let form = FormOf::AlsoAt { property };
    address_fields(Filling::new(context, form), &Address::default())
        .done(context.text("property-also-add"), "settings-keep")
}

fn about(context: &Context<'_>, history: &History) -> Form {
    let property = &history.property;
    let built = property.built.map(|year| year.to_string());
    let position = property.position.map(|position| position.to_string());
    let dangers = property.dangers.join("\n");
    let form = FormOf::About {
        property: property.id,
    };
    Filling::new(context, form)
        .field("dangers", "property-dangers", &dangers, FieldKind::Words)
        .field(
            "built",
            "property-built",
            &built.unwrap_or_default(),
            FieldKind::Line,
        )
        .field(
            "position",
            "property-position",
            &position.unwrap_or_default(),
            here(context),
        )
        .done(context.text("property-about"), "settings-keep")
}

fn people(context: &Context<'_>, history: &History) -> Vec<Form> {
    let property = history.property.id;
    let known = history
        .property
        .people
        .iter()
        .map(|one| person(context, property, Some(one)));
    known
        .chain(std::iter::once(person(context, property, None)))
        .collect()
}

fn person(context: &Context<'_>, property: PropertyId, known: Option<&Person>) -> Form {
    let roles = Role::ALL
        .into_iter()
        .map(|role| Choice {
            value: value_of(&role),
            label: context.text(role.key()),
        })
        .collect();
    let role = known.map_or(Role::Owner, |known| known.role);
    let title = match known {
        Some(known) => context.say(
            &Said::new("property-person")
                .with("name", known.name.clone())
                .with("role", Said::new(role.key())),
        ),
        None => context.text("property-person-add"),
    };
    let form = FormOf::Person {
        property,
        person: known.map(|known| known.id),
    };
    let text = |of: fn(&Person) -> String| known.map(of).unwrap_or_default();
    Filling::new(context, form)
        .field(
            "name",
            "person-name",
            &text(|one| one.name.clone()),
            FieldKind::Line,
        )
        .field(
            "role",
            "person-role",
            &value_of(&role),
            FieldKind::OneOf { choices: roles },
        )
        .field(
            "phones",
            "person-phones",
            &text(|one| one.phones.join("\n")),
            FieldKind::Words,
        )
        .field(
            "email",
            "person-email",
            &text(|one| one.email.clone().unwrap_or_default()),
            FieldKind::Line,
        )
        .done(title, "settings-keep")
}

fn structure(context: &Context<'_>, history: &History, known: &Structure) -> Form {
    let form = FormOf::Structure {
        property: history.property.id,
        structure: known.id,
    };
    let gone = known.gone.map(|day| day.to_string()).unwrap_or_default();
    Filling::new(context, form)
        .field(
            "name",
            "structure-name",
            known.name.as_deref().unwrap_or_default(),
            FieldKind::Line,
        )
        .field("gone", "structure-gone", &gone, FieldKind::Day)
        .done(
            name::structure(context.words, history, known.id),
            "settings-keep",
        )
}

fn joined(context: &Context<'_>, kept: PropertyId) -> Result<Vec<Twin>, ActError> {
    Ok(premises::joined(context.book, kept)?
        .into_iter()
        .map(|other| Twin {
            row: also(&other.address),
            tap: Button::new(
                context.text("property-part-button"),
                Action::Part {
                    kept,
                    other: other.id,
                },
            ),
        })
        .collect())
}

fn same(context: &Context<'_>, property: PropertyId, like: &str) -> Form {
    Filling::new(context, FormOf::SamePlace { property })
        .field("like", "arrive-find", like, FieldKind::Line)
        .done(context.text("property-same-find"), "arrive-find-button")
}

fn found(context: &Context<'_>, kept: PropertyId, like: &str) -> Result<Vec<Twin>, ActError> {
    if like.trim().is_empty() {
        return Ok(Vec::new());
    }
    Ok(arrive::find(context.book, like)?
        .into_iter()
        .filter(|found| found.card.property != kept)
        .take(6)
        .map(|found| Twin {
            row: Row {
                title: found.card.address.line.clone(),
                says: found.card.owner.clone().unwrap_or_default(),
                ladder: None,
                action: None,
            },
            tap: Button::new(
                context.text("property-join-button"),
                Action::Join {
                    kept,
                    other: found.card.property,
                },
            ),
        })
        .collect())
}

fn erase(context: &Context<'_>, property: PropertyId) -> Form {
    Filling::new(context, FormOf::Erase { property })
        .blank("confirm", "property-erase-confirm", FieldKind::Line)
        .done(context.text("property-erase"), "property-erase-button")
}
