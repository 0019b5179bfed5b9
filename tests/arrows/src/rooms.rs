//! The rooms as Cargo knows them: the members of the workspace that are built into the program, not those under `tests/`.
//!
//! A workspace that can't be read stops the check with a panic: this is a test's tool.

use crate::source::{self, Module};
use serde_json::Value;
use std::collections::BTreeSet;
use std::path::Path;
use std::process::Command;

/// One room with what it uses.
#[derive(Clone, Debug)]
pub struct Room {
    /// The name of its crate.
    pub name: String,
    /// Other rooms that its manifest names, those for its tests left out.
    pub uses: BTreeSet<String>,
    /// Its modules, the root first.
    pub modules: Vec<Module>,
}

impl Room {
    /// Whether it has a module of this name at the first level.
    pub fn has(&self, name: &str) -> bool {
        self.modules.iter().any(|module| module.top() == name)
    }
}

/// Reads every room of the workspace at `folder`, in the order of their names.
///
/// # Panics
/// When Cargo or a source file can't be read.
pub fn read(folder: &Path) -> Vec<Room> {
    let metadata = metadata(folder);
    let packages = each(&metadata, "packages");
    let inside_tests = |package: &&Value| {
        Path::new(text(package, "manifest_path")).starts_with(folder.join("tests"))
    };
    let mut rooms: Vec<_> = packages
        .filter(|package| !inside_tests(package))
        .map(room)
        .collect();
    rooms.sort_by(|a, b| a.name.cmp(&b.name));
    rooms
}

fn metadata(folder: &Path) -> Value {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let answer = Command::new(cargo)
        .args(["metadata", "--no-deps", "--format-version", "1"])
        .current_dir(folder)
        .output()
        .expect("cargo can be run");
    let said = String::from_utf8_lossy(&answer.stderr);
    assert!(answer.status.success(), "cargo metadata failed: {said}");
    serde_json::from_slice(&answer.stdout).expect("cargo answers in JSON")
}

fn room(package: &Value) -> Room {
    let ours =
        each(package, "dependencies").filter(|on| on["path"].is_string() && on["kind"] != "dev");
    let built = each(package, "targets")
        .filter(|target| target["kind"][0] == "lib" || target["kind"][0] == "bin");
    Room {
        name: text(package, "name").to_owned(),
        uses: ours.map(|on| text(on, "name").to_owned()).collect(),
        modules: built
            .flat_map(|target| source::modules(Path::new(text(target, "src_path"))))
            .collect(),
    }
}

fn each<'a>(of: &'a Value, what: &str) -> impl Iterator<Item = &'a Value> + use<'a> {
    of[what].as_array().into_iter().flatten()
}

fn text<'a>(of: &'a Value, what: &str) -> &'a str {
    of[what].as_str().unwrap_or_default()
}
