//! What holds of every drawing of a roof: it can be read on a phone, nothing covers words, everything is said or handed back.

#![cfg(test)]

mod roofs;

use proptest::prelude::*;
use roof::draw::lettering::Turned;
use roof::draw::{
    Colours, Marks, PHONE, Picture, Placed, Stained, laid_plane, laid_roof, places, plan, svg,
};
use roof::laying::lay;
use roofs::{FOOT, ell, gable, hip, lean_to, tee};
use trade::drawing::{Drawing, Ink, Pen, Shape};
use trade::laid::{Pieces, ValleyIs};
use trade::roof::{LineKind, RoofPlan};
use trade::units::Pitch;
use trade::words::{Arg, Language, Said, Words};

fn any_roof() -> impl Strategy<Value = RoofPlan> {
    (
        0_u8..5,
        4.0..70.0_f64,
        12.0..40.0_f64,
        1_u32..15,
        0.1..0.5_f64,
    )
        .prop_map(|(shape, long, span, rise, share)| {
            let (span, pitch) = (span * FOOT, Pitch::rise(rise));
            let wide = span + long * FOOT;
            match shape {
                0 => gable(wide, span, pitch),
                1 => hip(wide, span, pitch),
                2 => ell(wide, wide * 0.9, span * 0.8, pitch),
                3 => lean_to(wide, span, pitch),
                _ => tee(
                    wide,
                    span,
                    (wide * share * 0.5, wide * share * 0.5 + span * 0.8),
                    span * share,
                    pitch,
                ),
            }
        })
}

fn any_parts() -> impl Strategy<Value = Vec<Placed>> {
    let near = prop::option::of(prop::sample::select(LineKind::ALL.to_vec()));
    let part = (
        0_usize..4,
        prop::option::of((0.0..1.0_f64, 0.0..1.0_f64)),
        near,
        any::<bool>(),
    );
    prop::collection::vec(part, 0..24).prop_map(|parts| {
        parts
            .into_iter()
            .zip(1..)
            .map(|((letter, at, near, chosen), number)| Placed {
                letter: ["A", "B", "C", "Z"][letter].to_owned(),
                number,
                // Where it is given it lies on the roof; the test scales it to the plan.
                at,
                near,
                chosen,
            })
            .collect()
    })
}

fn scaled(plan: &RoofPlan, parts: Vec<Placed>) -> Vec<Placed> {
    let corners = || plan.planes.iter().flat_map(|plane| &plane.corners);
    let least = corners().fold((0.0_f64, 0.0_f64), |m, c| (m.0.min(c.x), m.1.min(c.y)));
    let most = corners().fold((0.0_f64, 0.0_f64), |m, c| (m.0.max(c.x), m.1.max(c.y)));
    let to = |at: (f64, f64)| {
        (
            least.0 + at.0 * (most.0 - least.0),
            least.1 + at.1 * (most.1 - least.1),
        )
    };
    parts
        .into_iter()
        .map(|part| Placed {
            at: part.at.map(to),
            ..part
        })
        .collect()
}

fn readable(drawing: &Drawing) -> Result<(), TestCaseError> {
    let boxes: Vec<(Turned, &str)> = drawing
        .words()
        .map(|words| (Turned::of(words), words.text.as_str()))
        .collect();
    for words in drawing.words() {
        prop_assert!(words.size >= 15.0, "{} is too small", words.text);
        prop_assert!(
            words.turned.abs() <= 90.0,
            "{} stands on its head",
            words.text
        );
    }
    for (at, (one, text)) in boxes.iter().enumerate() {
        prop_assert!(
            one.within(drawing.width, drawing.height),
            "{text} runs off the sheet"
        );
        for (other, beside) in boxes.iter().skip(at + 1) {
            prop_assert!(!one.meets(other), "{text} covers {beside}");
        }
    }
    Ok(())
}

/// Every word that a plan must show, and how often.
fn due(plan: &RoofPlan, parts: &[Placed], words: &Words) -> Vec<String> {
    let letters = plan.planes.iter().map(|plane| plane.letter.clone());
    let numbers = parts
        .iter()
        .map(|part| format!("{}{}", part.letter, part.number));
    let pitches = plan.planes.iter().map(|plane| plane.pitch.to_string());
    let kinds = LineKind::ALL
        .iter()
        .filter(|kind| plan.lines.iter().any(|line| line.kind == **kind));
    letters
        .chain(numbers)
        .chain(pitches)
        .chain(kinds.map(|kind| words.text(kind.key())))
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_plan_can_be_read_on_a_phone(roof in any_roof(), parts in any_parts(), spanish in any::<bool>(), chosen in prop::option::of(0_usize..3)) {
        let words = Words::of(if spanish { Language::Spanish } else { Language::English });
        let parts = scaled(&roof, parts);
        let middle = (roof.planes[0].corners[2].x * 0.6, roof.planes[0].corners[2].y * 0.6);
        let marks = Marks {
            parts: parts.clone(),
            chosen,
            stain: chosen.map(|_| Stained { at: middle, within: 0.6 }),
            water: vec![vec![(middle.0, middle.1 + 1.5), middle]],
            below: Some(Said::new("plan-street")),
        };
        let Picture { drawing, left_out } = plan(&roof, &marks, words, PHONE);
        prop_assert!((drawing.width - PHONE).abs() < 1e-9);
        readable(&drawing)?;
        // What is not written is handed back: nothing is lost.
        let mut shown: Vec<String> = drawing.words().map(|words| words.text.clone()).collect();
        for said in &left_out {
            let text = match said.args.iter().find(|(name, _)| name == "pitch") {
                Some((_, Arg::Pitch(pitch))) => pitch.to_string(),
                _ => words.say(said),
            };
            shown.push(text);
        }
        for text in due(&roof, &parts, words) {
            let at = shown.iter().position(|other| *other == text);
            prop_assert!(at.is_some(), "{text} is nowhere");
            shown.swap_remove(at.unwrap());
        }
        let lengths = shown.iter().filter(|text| text.contains(['\'', '"'])).count();
        prop_assert_eq!(lengths, roof.lines.len(), "each line has its length: {:?}", shown);
    }

    #[test]
    fn a_drawing_is_well_formed_and_tells_nothing_by_colour_alone(roof in any_roof(), parts in any_parts()) {
        let marks = Marks { parts: scaled(&roof, parts), chosen: Some(0), ..Marks::default() };
        let picture = plan(&roof, &marks, Words::of(Language::English), PHONE);
        let text = svg(&picture.drawing, "Roof of 5 \"Tern\" & <Quay>", "Two slopes.", Colours::SHEET);
        let document = roxmltree::Document::parse(&text).unwrap();
        let root = document.root_element();
        prop_assert_eq!(root.attribute("role"), Some("img"));
        prop_assert_eq!(root.attribute("aria-label"), Some("Roof of 5 \"Tern\" & <Quay>"));
        let said: Vec<_> = root.children().filter(roxmltree::Node::is_element).take(2).map(|node| (node.tag_name().name().to_owned(), node.text().unwrap_or("").to_owned())).collect();
        prop_assert_eq!(said, [("title".to_owned(), "Roof of 5 \"Tern\" & <Quay>".to_owned()), ("desc".to_owned(), "Two slopes.".to_owned())]);
        let known = ["#000000", "#ffffff", "#123f9c", "none"];
        for node in document.descendants() {
            for name in ["fill", "stroke"] {
                prop_assert!(node.attribute(name).is_none_or(|colour| known.contains(&colour)));
            }
        }
    }

    #[test]
    fn a_laid_roof_is_drawn_whole(roof in any_roof()) {
        let (laid, pieces) = lay(&roof, &Pieces::laminated(), ValleyIs::ClosedCut).unwrap();
        let words = Words::of(Language::English);
        let all = laid_roof(&roof, &laid, &pieces, words, PHONE);
        readable(&all.drawing)?;
        let rims = all.drawing.shapes.iter().filter(|shape| matches!(shape, Shape::Rim { .. })).count();
        prop_assert_eq!(rims, pieces.iter().map(|piece| piece.seen.len()).sum::<usize>());
        for place in 0..roof.planes.len() {
            readable(&laid_plane(&roof, &laid, &pieces, place, words, PHONE).unwrap().drawing)?;
        }
        prop_assert!(laid_plane(&roof, &laid, &pieces, roof.planes.len(), words, PHONE).is_none());
    }
}

fn heads(drawing: &Drawing) -> Vec<(f64, f64)> {
    // An arrow: a line of 2 px and then a filled triangle whose first corner is its tip.
    drawing
        .shapes
        .windows(2)
        .filter_map(|pair| match pair {
            [
                Shape::Line {
                    places,
                    pen: Pen { wide, .. },
                },
                Shape::Rim {
                    corners,
                    fill: Some(Ink::Ink),
                    ..
                },
            ] if (*wide - 2.0).abs() < 1e-9 && corners.len() == 3 => {
                Some((corners[0].0 - places[0].0, corners[0].1 - places[0].1))
            }
            _ => None,
        })
        .collect()
}

#[test]
fn arrows_point_downhill() {
    let roof = hip(60.0 * FOOT, 50.0 * FOOT, Pitch::rise(8));
    let picture = plan(
        &roof,
        &Marks::default(),
        Words::of(Language::English),
        PHONE,
    );
    let heads = heads(&picture.drawing);
    assert_eq!(heads.len(), 4);
    for (head, plane) in heads.iter().zip(&roof.planes) {
        let length = head.0.hypot(head.1);
        // The sheet's y runs down, the plan's away from the street.
        let along = (head.0 * plane.downhill.0 - head.1 * plane.downhill.1) / length;
        assert!((along - 1.0).abs() < 1e-9, "{}", plane.letter);
    }
}

#[test]
fn each_part_is_tied_to_its_place_and_no_two_ties_of_a_side_cross() {
    let roof = gable(46.0 * FOOT, 28.0 * FOOT, Pitch::rise(6));
    let parts: Vec<Placed> = (1..=10_u32)
        .map(|number| Placed {
            letter: "A".to_owned(),
            number,
            at: Some((
                f64::from(number * 7 % 11) + 1.0,
                f64::from(number * 5 % 11) / 3.0,
            )),
            near: None,
            chosen: false,
        })
        .collect();
    let marks = Marks {
        parts: parts.clone(),
        ..Marks::default()
    };
    let drawing = plan(&roof, &marks, Words::of(Language::English), PHONE).drawing;
    let ties: Vec<_> = drawing
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Line { places, pen } if (pen.wide - 1.0).abs() < 1e-9 => {
                Some((places[0], places[1]))
            }
            _ => None,
        })
        .collect();
    assert_eq!(ties.len(), parts.len());
    let turn = |a: (f64, f64), b: (f64, f64), c: (f64, f64)| {
        (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0)
    };
    for (at, one) in ties.iter().enumerate() {
        for other in ties
            .iter()
            .skip(at + 1)
            .filter(|other| (other.0.0 - one.0.0).abs() < 1.0)
        {
            let crosses = turn(one.0, one.1, other.0) * turn(one.0, one.1, other.1) < 0.0
                && turn(other.0, other.1, one.0) * turn(other.0, other.1, one.1) < 0.0;
            assert!(!crosses, "{one:?} {other:?}");
        }
    }
    for number in drawing
        .words()
        .filter(|words| words.text.len() > 1 && words.text.starts_with('A'))
    {
        assert!(
            number.middle.0 < 40.0 || number.middle.0 > PHONE - 40.0,
            "{} stands at the edge",
            number.text
        );
    }
}

#[test]
fn parts_nobody_placed_lie_where_their_kind_lives() {
    let roof = tee(
        50.0 * FOOT,
        30.0 * FOOT,
        (8.0 * FOOT, 26.0 * FOOT),
        10.0 * FOOT,
        Pitch::rise(6),
    );
    let part = |letter: &str, near, at| Placed {
        letter: letter.to_owned(),
        number: 1,
        at,
        near,
        chosen: false,
    };
    let parts = [
        part("B", Some(LineKind::Ridge), None),
        part("B", Some(LineKind::Eave), None),
        part("B", Some(LineKind::Eave), None),
        part("C", Some(LineKind::Valley), None),
        part("B", None, None),
        part("A", None, Some((1.5, 2.5))),
        part("Q", None, None),
    ];
    let places = places(&roof, &parts);
    let deep = 30.0 * FOOT;
    let is = |at: usize, x: f64, y: f64| {
        let place = places[at].unwrap();
        assert!((place.0 - x).hypot(place.1 - y) < 1e-6, "{at}: {place:?}");
    };
    is(0, 25.0 * FOOT, deep / 2.0);
    // Two on one eave share it by thirds; which way it runs does not matter.
    let xs = [places[1].unwrap().0, places[2].unwrap().0];
    assert!(
        ((xs[0] - xs[1]).abs() - 50.0 * FOOT / 3.0).abs() < 1e-6
            && (xs[0] + xs[1] - 50.0 * FOOT).abs() < 1e-6
    );
    is(3, 12.5 * FOOT, 4.5 * FOOT);
    let field = places[4].unwrap();
    assert!(field.1 > deep / 2.0 && field.1 < deep);
    is(5, 1.5, 2.5);
    assert_eq!(places[6], None);
}

/// A roof with every kind of line once.
fn of_every_kind() -> RoofPlan {
    let mut roof = gable(10.0, 8.0, Pitch::rise(6));
    let line = roof.lines[0].clone();
    roof.lines = LineKind::ALL
        .map(|kind| trade::roof::RoofLine {
            kind,
            ..line.clone()
        })
        .to_vec();
    roof
}

#[test]
fn no_two_kinds_of_line_are_drawn_alike() {
    // The samples of the key come last.
    let drawing = plan(
        &of_every_kind(),
        &Marks::default(),
        Words::of(Language::English),
        PHONE,
    )
    .drawing;
    let mut pens: Vec<String> = drawing
        .shapes
        .iter()
        .rev()
        .filter_map(|shape| match shape {
            Shape::Line { pen, .. } => Some(format!("{} {:?}", pen.wide, pen.dash)),
            _ => None,
        })
        .take(LineKind::ALL.len())
        .collect();
    pens.sort();
    pens.dedup();
    assert_eq!(pens.len(), LineKind::ALL.len());
}

#[test]
fn every_word_of_the_key_is_on_the_sheet_in_each_language() {
    for language in [Language::English, Language::Spanish] {
        let words = Words::of(language);
        let drawing = plan(&of_every_kind(), &Marks::default(), words, PHONE).drawing;
        for kind in LineKind::ALL {
            let text = words.text(kind.key());
            let written = drawing.words().find(|one| one.text == text).unwrap();
            assert!(
                Turned::of(written).within(drawing.width, drawing.height),
                "{text} runs off the sheet"
            );
        }
    }
}

#[test]
fn a_plan_of_nothing_is_an_empty_sheet() {
    let mut roof = gable(10.0, 8.0, Pitch::rise(6));
    roof.planes.clear();
    roof.lines.clear();
    let picture = plan(
        &roof,
        &Marks::default(),
        Words::of(Language::English),
        PHONE,
    );
    assert_eq!(picture.drawing.words().count(), 0);
    assert!(roxmltree::Document::parse(&svg(&picture.drawing, "", "", Colours::PAGE)).is_ok());
}
