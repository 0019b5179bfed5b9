//! A drawing as SVG 1.1.

use super::{Drawing, Ink, Lettering, Pen, Shape, Spot};
use std::fmt::Write;

/// From the middle of capitals down to the line they stand on, to the em, in Atkinson Hyperlegible.
const TO_BASELINE: f64 = 0.334;

/// The colours of a page, as SVG writes them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Colours {
    /// Of the ink.
    pub ink: &'static str,
    /// Of the paper.
    pub paper: &'static str,
    /// Of what is chosen.
    pub chosen: &'static str,
    /// Of a light wash.
    pub wash: &'static str,
}

impl Colours {
    /// Black on white, for a sheet of its own.
    pub const SHEET: Self = Self {
        ink: "#000000",
        paper: "#ffffff",
        chosen: "#123f9c",
        wash: "#e4e4e4",
    };
    /// Those of the page it stands in, by day and after dusk.
    pub const PAGE: Self = Self {
        ink: "var(--ink)",
        paper: "var(--paper)",
        chosen: "var(--chalk)",
        wash: "var(--mist)",
    };

    fn of(self, ink: Ink) -> &'static str {
        match ink {
            Ink::Ink => self.ink,
            Ink::Paper => self.paper,
            Ink::Chosen => self.chosen,
            Ink::Wash => self.wash,
        }
    }
}

/// The drawing as one SVG element. `title` names it and `says` tells what it shows, to those who can't see it.
pub fn svg(drawing: &Drawing, title: &str, says: &str, colours: Colours) -> String {
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"{label}\" viewBox=\"0 0 {} {}\" width=\"{}\" height=\"{}\" \
         font-family=\"'Atkinson Hyperlegible', sans-serif\" text-anchor=\"middle\" stroke-linejoin=\"round\">\n\
         <title>{title}</title>\n<desc>{says}</desc>\n",
        number(drawing.width),
        number(drawing.height),
        number(drawing.width),
        number(drawing.height),
        label = escaped(title),
        title = escaped(title),
        says = escaped(says),
    );
    let mut shapes = drawing.shapes.iter().peekable();
    while let Some(shape) = shapes.next() {
        match shape {
            Shape::Words(words) => lettering(&mut out, words, colours),
            Shape::Line { places, pen } => {
                let _ = writeln!(
                    out,
                    "<path d=\"{}\" fill=\"none\"{}/>",
                    way(places, false),
                    stroke(pen, colours)
                );
            }
            Shape::Rim { corners, pen, fill } => {
                let mut d = way(corners, true);
                // Rims drawn alike make one path: a laid roof has thousands.
                while let Some(Shape::Rim { corners, .. }) =
                    shapes.next_if(|next| alike(next, pen.as_ref(), *fill))
                {
                    d.push_str(&way(corners, true));
                }
                let filling = fill.map_or("none", |ink| colours.of(ink));
                let line = pen
                    .as_ref()
                    .map_or(String::new(), |pen| stroke(pen, colours));
                let _ = writeln!(out, "<path d=\"{d}\" fill=\"{filling}\"{line}/>");
            }
        }
    }
    out.push_str("</svg>\n");
    out
}

fn alike(shape: &Shape, pen: Option<&Pen>, fill: Option<Ink>) -> bool {
    matches!(shape, Shape::Rim { pen: p, fill: f, .. } if p.as_ref() == pen && *f == fill)
}

fn stroke(pen: &Pen, colours: Colours) -> String {
    let dash = match pen.dash.as_slice() {
        [] => String::new(),
        dash => {
            let lengths: Vec<String> = dash.iter().map(|length| number(*length)).collect();
            format!(" stroke-dasharray=\"{}\"", lengths.join(" "))
        }
    };
    format!(
        " stroke=\"{}\" stroke-width=\"{}\"{dash}",
        colours.of(pen.ink),
        number(pen.wide)
    )
}

fn way(places: &[Spot], closed: bool) -> String {
    let mut d = String::new();
    for (at, place) in places.iter().enumerate() {
        let _ = write!(
            d,
            "{}{} {}",
            if at == 0 { 'M' } else { 'L' },
            number(place.0),
            number(place.1)
        );
    }
    if closed {
        d.push('Z');
    }
    d
}

/// Words stand on a rim of paper, so that a line under them does not make them hard to read.
fn lettering(out: &mut String, words: &Lettering, colours: Colours) {
    let (x, y) = words.middle;
    let turn = if words.turned == 0.0 {
        String::new()
    } else {
        format!(
            " transform=\"rotate({} {} {})\"",
            number(words.turned),
            number(x),
            number(y)
        )
    };
    let weight = if words.bold {
        " font-weight=\"700\""
    } else {
        ""
    };
    let place = format!(
        "x=\"{}\" y=\"{}\" font-size=\"{}\"{weight}{turn}",
        number(x),
        number(y + words.size * TO_BASELINE),
        number(words.size)
    );
    let text = escaped(&words.text);
    let _ = writeln!(
        out,
        "<text {place} fill=\"{ink}\" stroke=\"{paper}\" stroke-width=\"4\" paint-order=\"stroke\">{text}</text>",
        ink = colours.of(words.ink),
        paper = colours.paper,
    );
}

/// A number to a tenth, which is a tenth of a pixel.
fn number(value: f64) -> String {
    let text = format!("{value:.1}");
    let text = text.strip_suffix(".0").unwrap_or(&text);
    if text == "-0" {
        "0".to_owned()
    } else {
        text.to_owned()
    }
}

fn escaped(text: &str) -> String {
    text.chars().filter(|letter| !letter.is_control()).fold(
        String::with_capacity(text.len()),
        |mut out, letter| {
            match letter {
                '&' => out.push_str("&amp;"),
                '<' => out.push_str("&lt;"),
                '>' => out.push_str("&gt;"),
                '"' => out.push_str("&quot;"),
                other => out.push(other),
            }
            out
        },
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawing(shapes: Vec<Shape>) -> Drawing {
        Drawing {
            width: 100.0,
            height: 50.5,
            shapes,
        }
    }

    fn words(text: &str, turned: f64) -> Shape {
        Shape::Words(Lettering {
            text: text.to_owned(),
            middle: (10.0, 20.0),
            size: 15.0,
            turned,
            bold: false,
            ink: Ink::Ink,
        })
    }

    #[test]
    fn no_words_become_markup() {
        let hostile = "\"><script>&</title>\u{0}";
        let svg = svg(
            &drawing(vec![words(hostile, 0.0)]),
            hostile,
            hostile,
            Colours::SHEET,
        );
        assert!(!svg.contains("<script") && !svg.contains('\0'), "{svg}");
        assert_eq!(svg.matches("</title>").count(), 1);
        assert!(
            svg.contains("&quot;&gt;&lt;script&gt;&amp;&lt;/title&gt;"),
            "{svg}"
        );
    }

    #[test]
    fn words_stand_by_their_middle_and_turn_round_it() {
        let svg = svg(
            &drawing(vec![words("ridge", -90.0)]),
            "t",
            "d",
            Colours::SHEET,
        );
        // 20 + 15 × 0.334 is 25.01.
        assert!(
            svg.contains("x=\"10\" y=\"25\"") && svg.contains("rotate(-90 10 20)"),
            "{svg}"
        );
    }

    #[test]
    fn rims_drawn_alike_make_one_path() {
        let rim = |fill| Shape::Rim {
            corners: vec![(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)],
            pen: None,
            fill: Some(fill),
        };
        let of = |shapes| {
            svg(&drawing(shapes), "t", "d", Colours::SHEET)
                .matches("<path")
                .count()
        };
        assert_eq!(of(vec![rim(Ink::Wash), rim(Ink::Wash), rim(Ink::Wash)]), 1);
        assert_eq!(of(vec![rim(Ink::Wash), rim(Ink::Ink), rim(Ink::Wash)]), 3);
    }
}
