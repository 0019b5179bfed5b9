//! A laid covering, piece by piece: a plane seen square on, or the whole roof on plan.

use crate::draw::sheet::{Margins, SMALL, Sheet, level};
use crate::draw::{Picture, lines, slopes};
use crate::frame::Frame;
use trade::drawing::{Drawing, Ink, Pen, Shape, Spot};
use trade::laid::{CutFrom, Laid, LaidPiece};
use trade::roof::{Plane, RoofPlan};
use trade::units::Length;
use trade::words::{Said, Words};

/// The thinnest line that still prints.
const THIN: f64 = 0.5;
const MARGIN: f64 = 24.0;

fn rims<'a>(
    pieces: impl Iterator<Item = &'a LaidPiece>,
    at: impl Fn(&LaidPiece, (f64, f64)) -> Spot,
) -> Vec<Shape> {
    let mut shapes: Vec<Shape> = pieces
        .flat_map(|piece| piece.seen.iter().map(move |rim| (piece, rim)))
        .map(|(piece, rim)| Shape::Rim {
            corners: rim.iter().map(|place| at(piece, *place)).collect(),
            pen: Some(Pen::solid(THIN)),
            fill: Some(if piece.from == CutFrom::Offcut {
                Ink::Wash
            } else {
                Ink::Paper
            }),
        })
        .collect();
    // Alike together, so that they make one path; the washed ones first.
    shapes.sort_by_key(|shape| {
        !matches!(
            shape,
            Shape::Rim {
                fill: Some(Ink::Wash),
                ..
            }
        )
    });
    shapes
}

/// One plane square on, eave below, with every piece that lies on it: those from offcuts are washed.
pub fn plane(
    plan: &RoofPlan,
    laid: &Laid,
    pieces: &[LaidPiece],
    place: usize,
    words: &Words,
    width: f64,
) -> Option<Picture> {
    let plane = plan.planes.get(place)?;
    let took = laid.planes.iter().find(|took| took.plane == place)?;
    let frame = Frame::of(plane);
    let rim: Vec<(f64, f64)> = plane
        .corners
        .iter()
        .map(|c| frame.on_plane((c.x, c.y)))
        .collect();
    let size = rim.iter().fold((0.0_f64, 0.0_f64), |size, place| {
        (size.0.max(place.0), size.1.max(place.1))
    });
    let scale = ((width - 2.0 * MARGIN) / size.0.max(1e-6)).min(width * 1.5 / size.1.max(1e-6));
    let left = (width - size.0 * scale) / 2.0;
    let at = |place: (f64, f64)| (left + place.0 * scale, MARGIN + (size.1 - place.1) * scale);
    let mut drawing = Drawing {
        width,
        height: MARGIN + size.1 * scale,
        shapes: rims(
            pieces.iter().filter(|piece| piece.plane == place),
            |_, spot| at(spot),
        ),
    };
    outline(&mut drawing, plane, |corner| at(frame.on_plane(corner)));
    let eave = Said::new("plan-along").with("length", to_the_inch(size.0));
    let facts = Said::new("laid-plane")
        .with("courses", took.courses)
        .with("opened", took.opened)
        .with("reused", took.reused);
    write_below(&mut drawing, &[words.say(&eave), words.say(&facts)]);
    Some(Picture {
        drawing,
        left_out: Vec::new(),
    })
}

/// The whole roof on plan with every piece that lies on it.
pub fn roof(
    plan: &RoofPlan,
    laid: &Laid,
    pieces: &[LaidPiece],
    words: &Words,
    width: f64,
) -> Picture {
    let margins = Margins {
        side: MARGIN,
        top: MARGIN,
        bottom: MARGIN / 2.0,
        least: 0.0,
    };
    let mut sheet = Sheet::of(plan, width, margins);
    let frames: Vec<Frame> = plan.planes.iter().map(Frame::of).collect();
    let known = pieces.iter().filter(|piece| piece.plane < frames.len());
    let shapes = rims(known, |piece, spot| {
        sheet.at(frames[piece.plane].on_plan(spot))
    });
    sheet.drawing.shapes = shapes;
    lines::draw(&mut sheet, plan);
    let left_out = slopes::letters(&mut sheet, plan, None);
    let mut drawing = sheet.drawing;
    let facts = Said::new("laid-roof")
        .with("bundles", laid.bundles)
        .with("opened", laid.field)
        .with("waste", percent(laid.waste));
    write_below(&mut drawing, &[words.say(&facts)]);
    Picture { drawing, left_out }
}

fn outline(drawing: &mut Drawing, plane: &Plane, at: impl Fn((f64, f64)) -> Spot) {
    for ring in std::iter::once(&plane.corners).chain(&plane.holes) {
        drawing.shapes.push(Shape::Rim {
            corners: ring.iter().map(|corner| at((corner.x, corner.y))).collect(),
            pen: Some(Pen::solid(2.5)),
            fill: None,
        });
    }
}

fn write_below(drawing: &mut Drawing, texts: &[String]) {
    for text in texts {
        drawing.height += SMALL + 8.0;
        let middle = (drawing.width / 2.0, drawing.height - SMALL / 2.0);
        drawing
            .shapes
            .push(Shape::Words(level(text.clone(), middle, SMALL, false)));
    }
    drawing.height += 8.0;
}

fn to_the_inch(metres: f64) -> Length {
    #[allow(clippy::cast_possible_truncation)]
    let inches = Length::from_metres(metres).in_inches().round() as i64;
    Length::inches(inches)
}

/// A share in whole per cent and tenths, as text.
fn percent(share: f64) -> String {
    format!("{:.1}", share * 100.0)
}
