//! Which room may use which, and what the pure rooms may not name. A change here is a change of the design: say so in DEVELOPERS.md.

use crate::rooms::Room;
use crate::source::Module;

/// Each room with the rooms it may use. Five floors: no arrow runs up, none crosses between the rooms side by side.
pub const MAY_USE: &[(&str, &[&str])] = &[
    ("trade", &[]),
    ("judge", &["trade"]),
    ("roof", &["trade"]),
    ("price", &["trade"]),
    ("letter", &["trade"]),
    ("book", &["trade"]),
    ("share", &["trade", "book"]),
    (
        "acts",
        &["trade", "judge", "roof", "price", "letter", "book", "share"],
    ),
    ("screens", &["trade", "acts"]),
    ("bindings", &["screens", "acts", "trade"]),
    ("fixtures", &["trade", "acts"]),
    ("desk", &["screens", "acts", "trade", "fixtures"]),
];

/// Rooms, or single modules of a room, that know no file, clock, network or random source.
pub const PURE: &[&str] = &["trade", "judge", "roof", "price", "letter::content"];

/// Beginnings of paths that reach outside.
const OUTSIDE: &[&str] = &[
    "std::env",
    "std::fs",
    "std::io::stdin",
    "std::net",
    "std::process",
    "std::thread",
    "std::time::Instant",
    "std::time::SystemTime",
    "getrandom",
    "rand",
    "rusqlite",
    "tokio",
];

/// Ends of paths that ask a clock or a random source: `Timestamp::now`, `Zoned::now`, `Uuid::now_v7`.
const ASKING: &[&str] = &["now", "now_v7", "new_v4", "new_v7"];

/// Every arrow of the manifests that the table does not allow.
pub fn forbidden(rooms: &[Room]) -> Vec<String> {
    rooms.iter().flat_map(forbidden_of).collect()
}

fn forbidden_of(room: &Room) -> Vec<String> {
    let Some((_, allowed)) = MAY_USE.iter().find(|(name, _)| *name == room.name) else {
        return vec![format!("{} has no line in the table", room.name)];
    };
    room.uses
        .iter()
        .filter(|used| !allowed.contains(&used.as_str()))
        .map(|used| format!("{} may not use {used}", room.name))
        .collect()
}

/// Every path named in a pure place that reaches outside.
pub fn impure(rooms: &[Room]) -> Vec<String> {
    let mut found = Vec::new();
    for room in rooms {
        for module in room
            .modules
            .iter()
            .filter(|module| is_pure(&room.name, module))
        {
            for path in module.names.iter().filter(|path| reaches_outside(path)) {
                found.push(format!(
                    "{}::{} names {}",
                    room.name,
                    module.top(),
                    path.join("::")
                ));
            }
        }
    }
    found
}

fn is_pure(room: &str, module: &Module) -> bool {
    PURE.contains(&room) || PURE.contains(&format!("{room}::{}", module.top()).as_str())
}

/// Whether a path reaches a file, a clock, the network or a random source.
pub fn reaches_outside(path: &[String]) -> bool {
    let whole = path.join("::");
    let begins = |outside: &str| {
        whole
            .strip_prefix(outside)
            .is_some_and(|rest| rest.is_empty() || rest.starts_with("::"))
    };
    OUTSIDE.iter().any(|outside| begins(outside))
        || path
            .last()
            .is_some_and(|end| ASKING.contains(&end.as_str()))
}
