//! A plan as DXF, release 12 in ASCII, which every drawing program reads: a layer for each kind of line, metres, heights kept.

use crate::draw::places_of_letters;
use crate::export::to_places;
use std::fmt::Write;
use trade::roof::{Corner, LineKind, RoofPlan};

const SLOPES: &str = "SLOPE";
const LETTERS: &str = "LETTER";
/// Height of a slope's letter, in metres.
const LETTER: f64 = 0.6;

/// The plan.
pub fn dxf(plan: &RoofPlan) -> String {
    let mut out = Groups::default();
    header(&mut out);
    tables(&mut out);
    out.section("ENTITIES");
    for line in &plan.lines {
        out.entity("LINE", &layer(line.kind));
        out.point(0, &line.from);
        out.point(1, &line.to);
    }
    for plane in &plan.planes {
        for ring in std::iter::once(&plane.corners).chain(&plane.holes) {
            rim(&mut out, ring);
        }
    }
    for (letter, place) in places_of_letters(plan) {
        out.entity("TEXT", LETTERS);
        out.point(
            0,
            &Corner {
                x: place.0,
                y: place.1,
                z: 0.0,
            },
        );
        out.group(40, &to_places(LETTER, 3));
        out.group(1, &plain(&letter));
    }
    out.group(0, "ENDSEC");
    out.group(0, "EOF");
    out.0
}

fn header(out: &mut Groups) {
    out.section("HEADER");
    out.group(9, "$ACADVER");
    out.group(1, "AC1009");
    out.group(0, "ENDSEC");
}

/// The solid line type, and the layers.
fn tables(out: &mut Groups) {
    out.section("TABLES");
    out.table("LTYPE", 1);
    out.group(0, "LTYPE");
    out.group(2, "CONTINUOUS");
    out.group(70, "0");
    out.group(3, "Solid line");
    out.group(72, "65");
    out.group(73, "0");
    out.group(40, "0.0");
    out.group(0, "ENDTAB");
    let layers: Vec<String> = LineKind::ALL
        .into_iter()
        .map(layer)
        .chain([SLOPES.to_owned(), LETTERS.to_owned()])
        .collect();
    out.table("LAYER", layers.len());
    for layer in layers {
        out.group(0, "LAYER");
        out.group(2, &layer);
        out.group(70, "0");
        out.group(62, "7");
        out.group(6, "CONTINUOUS");
    }
    out.group(0, "ENDTAB");
    out.group(0, "ENDSEC");
}

/// The layer of a kind of line.
fn layer(kind: LineKind) -> String {
    kind.key().trim_start_matches("line-").to_uppercase()
}

/// A closed line in space.
fn rim(out: &mut Groups, ring: &[Corner]) {
    out.entity("POLYLINE", SLOPES);
    out.group(66, "1");
    out.point(
        0,
        &Corner {
            x: 0.0,
            y: 0.0,
            z: 0.0,
        },
    );
    // Closed, and in space.
    out.group(70, "9");
    for corner in ring {
        out.entity("VERTEX", SLOPES);
        out.point(0, corner);
        out.group(70, "32");
    }
    out.entity("SEQEND", SLOPES);
}

/// Release 12 knows no letters beyond ASCII.
fn plain(text: &str) -> String {
    text.chars()
        .map(|letter| {
            if letter.is_ascii_graphic() || letter == ' ' {
                letter
            } else {
                '?'
            }
        })
        .collect()
}

/// Groups of a code and a value, each on a line of its own.
#[derive(Default)]
struct Groups(String);

impl Groups {
    fn group(&mut self, code: u16, value: &str) {
        let _ = write!(self.0, "{code:>3}\r\n{value}\r\n");
    }

    fn section(&mut self, name: &str) {
        self.group(0, "SECTION");
        self.group(2, name);
    }

    fn table(&mut self, name: &str, entries: usize) {
        self.group(0, "TABLE");
        self.group(2, name);
        self.group(70, &entries.to_string());
    }

    fn entity(&mut self, name: &str, layer: &str) {
        self.group(0, name);
        self.group(8, layer);
    }

    /// A point: its first (0) or second (1).
    fn point(&mut self, which: u16, at: &Corner) {
        for (code, value) in [(10, at.x), (20, at.y), (30, at.z)] {
            self.group(code + which, &to_places(value, 6));
        }
    }
}
