//! Who writes to whom about what: letterhead, addressee, the visit in a few lines, the foot of each page.

use super::writer::Writer;
use crate::content::Letterhead;
use crate::plain::Plain;
use trade::property::{Address, Person, Role};
use trade::visit::Visit;
use trade::words::Said;

/// The letter's title.
pub fn title(writer: &Writer) -> Plain {
    let address = writer.material.history.property.address.line.clone();
    writer.say(&Said::new("letter-your-roof").with("address", address))
}

/// The firm's head.
pub fn letterhead(writer: &Writer) -> Letterhead {
    let firm = writer.material.firm;
    let phone = Plain::new(&firm.phone);
    let licence = Plain::new(&firm.licence);
    let mut lines = vec![Plain::new(&firm.person)];
    lines.extend(firm.address.iter().map(|line| Plain::new(line)));
    lines.push(phone.clone());
    lines.push(Plain::new(&firm.email));
    if !licence.is_empty() {
        lines.push(writer.say(&Said::new("letter-licence").with("licence", licence.to_string())));
    }
    lines.retain(|line| !line.is_empty());
    Letterhead {
        firm: Plain::new(&firm.name),
        lines,
        phone,
    }
}

/// The owner and the address. Where no owner is known, whoever is tied to the property; where nobody is, the address alone.
pub fn to(writer: &Writer) -> Vec<Plain> {
    let property = &writer.material.history.property;
    let owners: Vec<&Person> = property
        .people
        .iter()
        .filter(|person| person.role == Role::Owner)
        .collect();
    let named = if owners.is_empty() {
        property
            .people
            .iter()
            .filter(|person| person.role != Role::FormerOwner)
            .take(1)
            .collect()
    } else {
        owners
    };
    let mut lines: Vec<Plain> = named
        .into_iter()
        .map(|person| Plain::new(&person.name))
        .collect();
    lines.extend(address_lines(&property.address));
    lines.retain(|line| !line.is_empty());
    lines
}

fn address_lines(address: &Address) -> [Plain; 2] {
    let place = match (address.town.trim(), address.region.trim()) {
        ("", region) => region.to_owned(),
        (town, "") => town.to_owned(),
        (town, region) => format!("{town}, {region}"),
    };
    [
        Plain::new(&address.line),
        Plain::new(&format!("{place} {}", address.postcode)),
    ]
}

/// What was looked at, when, by whom, from where; what this letter takes the place of.
pub fn about(writer: &Writer) -> Vec<Plain> {
    let Some(visit) = writer.visit() else {
        return Vec::new();
    };
    let mut lines = vec![
        writer.say(
            &Said::new("letter-looked")
                .with("date", visit.on)
                .with("by", visit.by.clone())
                .with("scope", Said::new(format!("{}.what", visit.scope.key()))),
        ),
    ];
    lines.extend(how_reached(writer, visit));
    lines.extend(takes_the_place_of(writer));
    lines
}

/// From where each structure was looked at, a line each.
fn how_reached(writer: &Writer, visit: &Visit) -> Vec<Plain> {
    let each = writer.structures.iter().filter_map(|structure| {
        let how = Said::new(format!("{}.what", visit.reach(structure.id)?.key()));
        Some(writer.say(&writer.about_structure(structure.id, how)))
    });
    each.collect()
}

/// A letter of the same visit that a correction overtook is named, so that nobody goes by it.
fn takes_the_place_of(writer: &Writer) -> Option<Plain> {
    let letters = &writer.material.history.letters;
    let overtaken = letters
        .iter()
        .rev()
        .find(|letter| letter.visit == writer.material.visit && letter.out_of_date.is_some())?;
    Some(writer.say(&Said::new("letter-takes-the-place").with("date", overtaken.on)))
}

/// The foot of each page: address and day.
pub fn footer(writer: &Writer) -> Plain {
    writer.say(
        &Said::new("letter-footer")
            .with(
                "address",
                writer.material.history.property.address.line.clone(),
            )
            .with("date", writer.material.on),
    )
}
