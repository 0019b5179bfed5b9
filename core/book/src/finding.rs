//! The rows by which a property is found, drawn from its record.

use crate::address;
use crate::error::Result;
use crate::phone::Phone;
use rusqlite::{Connection, params};
use trade::property::{Address, Person, Position, Property};

/// Takes a property's rows out.
pub(crate) fn remove(conn: &Connection, id: [u8; 16]) -> Result<()> {
    for sql in [
        "DELETE FROM address WHERE id = ?1",
        "DELETE FROM person WHERE id = ?1",
        "DELETE FROM name_word WHERE id = ?1",
        "DELETE FROM phone WHERE id = ?1",
        "DELETE FROM position WHERE number = (SELECT number FROM position_of WHERE id = ?1)",
        "DELETE FROM position_of WHERE id = ?1",
    ] {
        conn.prepare_cached(sql)?.execute([id])?;
    }
    Ok(())
}

/// Puts a property's rows in.
pub(crate) fn insert(conn: &Connection, property: &Property) -> Result<()> {
    let id = *property.id.0.as_bytes();
    let addresses = std::iter::once(&property.address).chain(&property.also);
    for (place, written) in (0..).zip(addresses) {
        insert_address(conn, id, place, written)?;
    }
    for (place, person) in (0..).zip(&property.people) {
        insert_person(conn, id, place, person)?;
    }
    let phones = property.people.iter().flat_map(|person| &person.phones);
    for (place, number) in (0..).zip(phones) {
        insert_phone(conn, id, place, number)?;
    }
    match property.position {
        Some(position) => insert_position(conn, id, position),
        None => Ok(()),
    }
}

fn insert_address(conn: &Connection, id: [u8; 16], place: i64, written: &Address) -> Result<()> {
    let normal = address::normalise(written);
    conn.prepare_cached("INSERT INTO address VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)")?
        .execute(params![
            id,
            place,
            normal.key(),
            normal.house().map_or("", |house| house.as_str()),
            normal.street.name,
            written.line,
            written.town,
            written.region,
            written.postcode,
        ])?;
    Ok(())
}

fn insert_person(conn: &Connection, id: [u8; 16], place: i64, person: &Person) -> Result<()> {
    conn.prepare_cached("INSERT INTO person VALUES (?1, ?2, ?3)")?
        .execute(params![id, place, person.name])?;
    let mut insert = conn.prepare_cached("INSERT OR IGNORE INTO name_word VALUES (?1, ?2, ?3)")?;
    for word in address::folded_words(&person.name) {
        insert.execute(params![id, place, word])?;
    }
    Ok(())
}

fn insert_phone(conn: &Connection, id: [u8; 16], place: i64, number: &str) -> Result<()> {
    let Some(phone) = Phone::read(number) else {
        return Ok(());
    };
    let backwards: String = phone.digits().chars().rev().collect();
    conn.prepare_cached("INSERT INTO phone VALUES (?1, ?2, ?3, ?4, ?5, ?6)")?
        .execute(params![
            id,
            place,
            number,
            phone.digits(),
            phone.last_seven(),
            backwards,
        ])?;
    Ok(())
}

fn insert_position(conn: &Connection, id: [u8; 16], position: Position) -> Result<()> {
    let Position {
        latitude,
        longitude,
    } = position;
    conn.prepare_cached("INSERT INTO position VALUES (NULL, ?1, ?1, ?2, ?2, ?3, ?1, ?2)")?
        .execute(params![latitude, longitude, id])?;
    conn.prepare_cached("INSERT INTO position_of VALUES (?1, ?2)")?
        .execute(params![id, conn.last_insert_rowid()])?;
    Ok(())
}
