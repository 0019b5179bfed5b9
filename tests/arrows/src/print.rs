//! The arrows as text: a room a paragraph, and in it a line for each module and each room whose modules it names.

use crate::rooms::Room;
use crate::source::{ROOT, Segments};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

/// A module of a room.
type Place = (String, String);

const HEADING: &str = "# Who uses whom: each room with the rooms it uses, then each of its modules with the modules it names.\n\
                       # Written by `./dev arrows --accept`; a new line here is a change to look over.\n";

/// All arrows.
pub fn arrows(rooms: &[Room]) -> String {
    let mut text = HEADING.to_owned();
    for room in rooms {
        let uses: Vec<_> = room.uses.iter().map(String::as_str).collect();
        let uses = if uses.is_empty() {
            "nothing of ours".to_owned()
        } else {
            uses.join(", ")
        };
        let _ = writeln!(text, "\n{} -> {uses}", room.name);
        let arrows = of(room, rooms);
        for (module, used) in &arrows {
            for (to, modules) in by_room(used) {
                let _ = writeln!(
                    text,
                    "{}::{module} -> {to}: {}",
                    room.name,
                    modules.join(", ")
                );
            }
        }
        for (one, other) in rounds(room, &arrows) {
            let _ = writeln!(text, "{}: {one} and {other} name each other", room.name);
        }
    }
    text
}

fn by_room(used: &BTreeSet<Place>) -> BTreeMap<&str, Vec<&str>> {
    let mut found: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for (room, module) in used {
        found.entry(room).or_default().push(module);
    }
    found
}

/// What each module of a room names, itself left out.
fn of(room: &Room, rooms: &[Room]) -> BTreeMap<String, BTreeSet<Place>> {
    let mut arrows: BTreeMap<String, BTreeSet<Place>> = BTreeMap::new();
    for module in &room.modules {
        let itself = (room.name.clone(), module.top().to_owned());
        let used = module
            .names
            .iter()
            .filter_map(|path| place(path, room, rooms));
        arrows
            .entry(module.top().to_owned())
            .or_default()
            .extend(used.filter(|place| *place != itself));
    }
    arrows
}

/// The module that a path leads to, when it is one of ours.
fn place(path: &Segments, from: &Room, rooms: &[Room]) -> Option<Place> {
    let room = match path.first()?.as_str() {
        "crate" => from,
        name if name == from.name || from.uses.contains(name) => {
            rooms.iter().find(|room| room.name == name)?
        }
        _ => return None,
    };
    let name = path.get(1)?.as_str();
    let module = if room.has(name) { name } else { ROOT };
    Some((room.name.clone(), module.to_owned()))
}

/// Pairs of modules that name each other.
fn rounds(room: &Room, arrows: &BTreeMap<String, BTreeSet<Place>>) -> Vec<(String, String)> {
    let names = |from: &str, to: &str| {
        arrows
            .get(from)
            .is_some_and(|used| used.contains(&(room.name.clone(), to.to_owned())))
    };
    let mut found = Vec::new();
    for one in arrows.keys() {
        for other in arrows.keys().filter(|other| one < other) {
            if names(one, other) && names(other, one) {
                found.push((one.clone(), other.clone()));
            }
        }
    }
    found
}
