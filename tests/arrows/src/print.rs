//! The arrows as text: a room a paragraph, a module a line.

use crate::rooms::Room;
use crate::source::{ROOT, Segments};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

/// A module of a room.
type Place = (String, String);

const HEADING: &str = "# Who uses whom: each room with the rooms it uses, then its modules with the modules they name.\n\
                       # Written by `./dev arrows --accept`; a new line here is a change to look over.\n";

/// All arrows.
pub fn arrows(rooms: &[Room]) -> String {
    let mut text = HEADING.to_owned();
    for room in rooms {
        let uses: Vec<_> = room.uses.iter().map(String::as_str).collect();
        let _ = writeln!(text, "\n{} -> {}", room.name, or_nothing(&uses.join(", ")));
        let arrows = of(room, rooms);
        for (module, used) in &arrows {
            let _ = writeln!(text, "  {module}: {}", or_nothing(&list(room, used)));
        }
        for (one, other) in rounds(room, &arrows) {
            let _ = writeln!(text, "  each other: {one}, {other}");
        }
    }
    text
}

fn or_nothing(list: &str) -> &str {
    if list.is_empty() {
        "nothing of ours"
    } else {
        list
    }
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
        name => rooms.iter().find(|room| room.name == name)?,
    };
    let name = path.get(1)?.as_str();
    let module = if room.has(name) { name } else { ROOT };
    Some((room.name.clone(), module.to_owned()))
}

/// Own modules by their names, others' after the name of their room.
fn list(room: &Room, used: &BTreeSet<Place>) -> String {
    let mut by_room: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for (name, module) in used {
        by_room.entry(name).or_default().push(module);
    }
    let own = by_room.remove(room.name.as_str()).unwrap_or_default();
    let others = by_room
        .iter()
        .map(|(name, modules)| format!("{name}::{{{}}}", modules.join(", ")));
    own.into_iter()
        .map(str::to_owned)
        .chain(others)
        .collect::<Vec<_>>()
        .join(", ")
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
