//! A roof measured by taps: by a plain rectangle, side by side, from a file, slope by slope; its parts placed, its leak traced.

use job::hand::Hand;
use job::scene::{self, Scene};
use screens::{Action, Form, FormOf, Place, PlanFile};
use trade::history::History;
use trade::ids::{PropertyId, StructureId};
use trade::units::{Got, Pitch};
use trade::visit::Scope;

fn house(history: &History) -> StructureId {
    history.structures[0].id
}

fn at_the_roof(scene: &Scene) -> (Hand, PropertyId, StructureId) {
    let (mut hand, property, _) = scene::first_visit(scene, Scope::QuickLook);
    hand.at = Place::Doorstep { property };
    let title = hand.text("roof-title");
    let doors = hand.doorstep().doors;
    hand.tap(&doors, &title);
    let structure = house(&scene::history(hand.screens.book(), property));
    assert_eq!(hand.at, Place::Roof { structure });
    (hand, property, structure)
}

fn form(hand: &Hand, key: &str) -> Form {
    let title = hand.text(key);
    let forms = hand.roof().forms;
    forms
        .into_iter()
        .find(|form| form.title == title)
        .unwrap_or_else(|| panic!("no form is called {title:?}"))
}

/// 40 by 28 ft at 6:12.
fn draw_box(hand: &mut Hand, ends: &str) {
    let ends = hand.text(ends);
    hand.send(
        &form(hand, "roof-box"),
        &[
            ("across", "40 ft"),
            ("deep", "28 ft"),
            ("pitch", "6/12"),
            ("ends", &ends),
        ],
    );
}

/// Slopes typed in one by one, each 30 ft wide, 15 ft up and 4:12.
fn type_slopes(hand: &mut Hand, sides: [&str; 2]) {
    for side in sides {
        let side = hand.text(side);
        hand.send(
            &form(hand, "roof-plane-add"),
            &[
                ("side", &side),
                ("pitch", "4/12"),
                ("eave", "30 ft"),
                ("high", "30 ft"),
                ("up", "15 ft"),
            ],
        );
    }
}

/// NAVEDTRA 14044, ch. 2: the slope factor of 6:12 is √180 / 12, so that a gable over 40 by 28 ft covers 1252.2 ft².
#[test]
fn a_plain_gable_has_the_area_of_the_handbook() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    assert!(hand.roof().plan.is_none());
    draw_box(&mut hand, "ends-gable-sides");
    let roof = hand.roof();
    assert!(roof.plan.is_some());
    assert_eq!(roof.planes.len(), 2);
    assert!(
        roof.planes.iter().all(|plane| plane.says.contains("626 ")),
        "{:?}",
        roof.planes
    );
    let letters: Vec<char> = roof
        .planes
        .iter()
        .filter_map(|plane| plane.title.chars().next())
        .collect();
    assert_eq!(
        letters,
        ['A', 'B'],
        "the slopes of the walk bear their letters"
    );
}

#[test]
fn an_edge_becomes_a_hip_and_takes_a_pitch_of_its_own() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    draw_box(&mut hand, "ends-gable-sides");
    let hip = hand.text("edge-hip");
    let edges = hand.roof().edges;
    assert_eq!(edges.len(), 4);
    hand.tap(&edges[1].is, &hip);
    assert_eq!(hand.roof().planes.len(), 3);
    let steep = hand.roof().edges.remove(1).form;
    hand.send(&steep, &[("pitch", "9/12")]);
    assert!(
        hand.roof()
            .planes
            .iter()
            .any(|plane| plane.says.contains("9:12"))
    );
}

#[test]
fn a_roof_is_taped_round_side_by_side() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    // An L: the misclosure of half an inch is shared out.
    let sides = "40 ft L\n16 ft L\n20 ft R\n12 ft L\n20 ft L\n28' 0 1/2\" L";
    hand.send(
        &form(&hand, "roof-sides"),
        &[("sides", sides), ("pitch", "6/12")],
    );
    let roof = hand.roof();
    assert_eq!(roof.planes.len(), 6);
    let valley = hand.text("line-valley");
    assert!(roof.lines.iter().any(|line| line.title == valley));
}

#[test]
fn slopes_are_typed_in_one_by_one() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    type_slopes(&mut hand, ["side-front", "side-rear"]);
    assert_eq!(hand.roof().planes.len(), 2);
    assert!(hand.roof().planes[0].says.contains("450 "));
}

/// An L has two planes to the rear and one to each side; only the front and the rear were walked.
#[test]
fn a_plane_is_said_to_belong_to_a_slope() {
    let scene = Scene::new();
    let (mut hand, property, structure) = at_the_roof(&scene);
    let sides = "40 ft L\n16 ft L\n20 ft R\n12 ft L\n20 ft L\n28 ft L";
    hand.send(
        &form(&hand, "roof-sides"),
        &[("sides", sides), ("pitch", "6/12")],
    );
    let tied = |hand: &Hand, slope| {
        let history = scene::history(hand.screens.book(), property);
        let plan = acts::measure::plan(&history, structure)
            .expect("it gives a roof")
            .expect("it was measured");
        let of = plan
            .planes
            .iter()
            .filter(|plane| plane.slope == Some(slope));
        of.map(|plane| plane.letter.clone()).collect::<Vec<_>>()
    };
    let slopes = scene::history(hand.screens.book(), property).slopes;
    let [front, rear] = [&slopes[0], &slopes[1]].map(|slope| slope.id);
    assert_eq!(
        (tied(&hand, front), tied(&hand, rear)),
        (vec!["A".to_owned()], vec!["B".to_owned()])
    );
    let letters = |hand: &Hand| hand.roof().untied.unwrap_or_default();
    assert!(
        letters(&hand).contains("C, D, E and F"),
        "{}",
        letters(&hand)
    );

    let tie = form(&hand, "roof-tie");
    let screens::FieldKind::OneOf { choices } = &tie.fields[0].kind else {
        panic!("a plane is chosen: {tie:?}");
    };
    assert!(
        choices[0].label.starts_with("C,"),
        "those of no slope come first: {choices:?}"
    );
    let to_rear = choices
        .iter()
        .find(|plane| plane.label.contains(&hand.text("side-rear")))
        .expect("the wing's rear is of no slope");
    assert!(!to_rear.label.starts_with('B'), "{to_rear:?}");
    let rear_name = hand
        .roof()
        .planes
        .iter()
        .find(|plane| plane.title.starts_with("B,"))
        .expect("B")
        .title
        .clone();
    hand.send(&tie, &[("plane", &to_rear.label), ("slope", &rear_name)]);
    assert_eq!(
        (tied(&hand, front), tied(&hand, rear)),
        (vec!["A".to_owned()], vec!["B".to_owned(), "B".to_owned()])
    );
    assert!(letters(&hand).contains("C, D and E"), "{}", letters(&hand));

    let before = scene::ink_of(hand.screens.book(), property);
    let wrong = |plane: &str| Action::Submit {
        form: tie.form.clone(),
        values: vec![
            ("plane".to_owned(), plane.to_owned()),
            ("slope".to_owned(), rear.to_string()),
        ],
    };
    for (plane, says) in [("", "wrong-no-plane"), ("6", "there-plane")] {
        let said = hand
            .try_act(&wrong(plane))
            .expect_err("there is no such plane")
            .says;
        assert!(said.contains(&hand.text(says)), "{said}");
    }
    assert_eq!(scene::ink_of(hand.screens.book(), property), before);

    // A dormer is added: what was tied by hand stays so.
    hand.send(
        &form(&hand, "roof-dormer"),
        &[
            ("x", "10 ft"),
            ("y", "3 ft"),
            ("wide", "6 ft"),
            ("above", "2 ft"),
            ("pitch", "6/12"),
        ],
    );
    assert_eq!(tied(&hand, rear).len(), 2);
}

#[test]
fn a_slope_typed_in_by_itself_is_said_to_belong_to_a_slope() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    type_slopes(&mut hand, ["side-front", "side-left"]);
    let tie = form(&hand, "roof-tie");
    let front = hand.roof().planes[0].title.clone();
    hand.send(&tie, &[("slope", &front)]);
    let roof = hand.roof();
    assert_eq!(roof.untied, None);
    assert!(
        roof.planes
            .iter()
            .all(|plane| plane.title.starts_with("A,")),
        "{:?}",
        roof.planes
    );
    let dormer = Action::Submit {
        form: FormOf::Dormer {
            structure: match hand.at {
                Place::Roof { structure } => structure,
                _ => panic!("still at the roof"),
            },
        },
        values: [
            ("x", "9 ft"),
            ("y", "3 ft"),
            ("wide", "6 ft"),
            ("above", "2 ft"),
            ("pitch", "6/12"),
        ]
        .map(|(field, text)| (field.to_owned(), text.to_owned()))
        .to_vec(),
    };
    let said = hand
        .try_act(&dormer)
        .expect_err("a slope typed in by itself lies nowhere")
        .says;
    assert!(said.contains(&hand.text("there-outline")), "{said}");
}

#[test]
fn what_gives_no_roof_is_refused_and_the_roof_before_it_stands() {
    let scene = Scene::new();
    let (mut hand, property, structure) = at_the_roof(&scene);
    draw_box(&mut hand, "ends-hip");
    let before = scene::ink_of(hand.screens.book(), property);
    for (key, field, text) in [
        ("roof-sides", "sides", "40 ft L\n10 ft"),
        ("roof-sides", "sides", "40 ft L\n10 ft L"),
        ("roof-file", "file", "{}"),
        ("roof-file", "file", "not a file"),
    ] {
        let form = form(&hand, key).form;
        let values = vec![
            (field.to_owned(), text.to_owned()),
            ("pitch".to_owned(), "6/12".to_owned()),
        ];
        let refused = hand.try_act(&Action::Submit { form, values });
        assert!(refused.is_err(), "{key}: {text}");
    }
    assert_eq!(scene::ink_of(hand.screens.book(), property), before);
    assert_eq!(hand.at, Place::Roof { structure });
}

#[test]
fn the_plan_is_handed_over_in_open_formats() {
    let scene = Scene::new();
    let (mut hand, _, structure) = at_the_roof(&scene);
    draw_box(&mut hand, "ends-hip");
    for (file, begins) in [
        (PlanFile::Svg, "<svg"),
        (PlanFile::Dxf, "0"),
        (PlanFile::Geojson, "{"),
        (PlanFile::PlanesCsv, ""),
        (PlanFile::LinesCsv, ""),
    ] {
        let text = hand
            .screens
            .plan_file(structure, file)
            .expect("the plan is there");
        assert!(
            text.trim_start().starts_with(begins),
            "{file:?}: {text:.60}"
        );
        assert!(text.len() > 100, "{file:?}");
    }
}

#[test]
fn a_slope_takes_the_pitch_of_several_readings() {
    let scene = Scene::new();
    let (mut hand, property, _) = at_the_roof(&scene);
    hand.send(
        &form(&hand, "roof-slope-pitch"),
        &[("readings", "26.4, 26.7, 26.6, 61")],
    );
    let history = scene::history(hand.screens.book(), property);
    let pitch = history.slopes[0].pitch.expect("a pitch was read");
    assert!((pitch.value.in_twelfths() - 6.0).abs() < 0.02);
}

#[test]
fn the_demo_s_leak_is_traced_to_the_cheek_that_failed() {
    let scene = Scene::new();
    let demo = scene::main_story_alone();
    let (book, call) = scene.all_of(&demo);
    let mut hand = Hand::new(screens::Screens::of(book), fixtures::TODAY);
    let history = scene::history(hand.screens.book(), call.property);
    let structure = house(&history);
    hand.at = Place::Leak {
        structure,
        stain: None,
    };
    let ask = hand.leak().ask.expect("nothing was asked yet");
    let driven = hand.text("wet-when-driven-rain");
    let street = hand.text("wind-street");
    hand.send(
        &ask,
        &[
            ("x", "16 ft"),
            ("y", "5 ft"),
            ("when", &driven),
            ("wind", &street),
        ],
    );
    let traced = hand.leak();
    let again = traced.again.expect("it can be asked otherwise");
    assert_eq!(
        (traced.ask, traced.how, &again.form),
        (None, None, &ask.form)
    );
    assert_eq!(again.fields[0].value, "16'");
    let suspects = traced.suspects;
    let first = &suspects[0];
    assert!(first.row.title.contains("left cheek"), "{suspects:?}");
    assert!(!first.why.is_empty());
}

/// 8 over 12 in, and a rafter of 16 ft 10 in over 14 ft (NAVEDTRA 14044, ch. 2: √(8² + 12²)/12 times the run): both are 8:12; what the rafter
/// gives beyond a tenth, 0.011 in 12, is a seventh of a per cent more of tolerance.
#[test]
fn a_slope_takes_its_pitch_from_rise_and_run_and_from_a_rafter() {
    let scene = Scene::new();
    let (mut hand, property, _) = at_the_roof(&scene);
    for (key, filled, within) in [
        (
            "roof-slope-rise",
            [("rise", "8 in"), ("run", "12 in")],
            "1 %",
        ),
        (
            "roof-slope-rafter",
            [("rafter", "16' 10\""), ("run", "14 ft")],
            "2 %",
        ),
    ] {
        hand.send(&form(&hand, key), &filled);
        let history = scene::history(hand.screens.book(), property);
        let pitch = history.slopes[0].pitch.expect("a pitch was measured");
        assert_eq!(pitch.value, Pitch::rise(8), "{key}");
        assert_eq!(pitch.got, Got::Tape);
        let row = &hand.roof().pitches[0];
        assert!(
            row.says.contains(&hand.text("got-tape")) && row.says.contains(within),
            "{row:?}"
        );
    }
    let form = form(&hand, "roof-slope-rafter").form;
    let slope = scene::history(hand.screens.book(), property).slopes[0].id;
    let values = [
        ("slope", slope.to_string().as_str()),
        ("rafter", "12 ft"),
        ("run", "14 ft"),
    ]
    .map(|(field, text)| (field.to_owned(), text.to_owned()))
    .to_vec();
    assert!(
        hand.try_act(&Action::Submit { form, values }).is_err(),
        "no rafter is shorter than its run"
    );
}

/// A shed dormer 10 ft wide on a slope of 6:12, 2:12 itself, 3 ft above it at its face: it dies into the slope 9 ft back, and its cheeks are 13 1/2 ft² each.
#[test]
fn a_dormer_stands_on_the_roof_and_is_taken_off_again() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    draw_box(&mut hand, "ends-gable-sides");
    let plain = hand.roof();
    let shed = hand.text("dormer-shed");
    hand.send(
        &form(&hand, "roof-dormer"),
        &[
            ("shape", &shed),
            ("x", "20 ft"),
            ("y", "3 ft"),
            ("wide", "10 ft"),
            ("above", "3 ft"),
            ("pitch", "2/12"),
        ],
    );
    let roof = hand.roof();
    assert_eq!(roof.planes.len(), plain.planes.len() + 1);
    assert_eq!(roof.standing.len(), 1);
    let row = |key: &str, rows: &[screens::Row]| {
        let title = hand.text(key);
        rows.iter()
            .find(|row| row.title == title)
            .map(|row| row.says.clone())
            .unwrap_or_default()
    };
    assert!(row("roof-walls", &roof.numbers).contains("57 "), "{roof:?}");
    // 9 ft back, times √(6² + 12²)/12, on both sides.
    assert!(row("line-step", &roof.lines).contains("20' 1\""));
    assert!(row("line-wall", &roof.lines).contains("10'"));
    assert!(row("line-pitch-change", &roof.lines).contains("10'"));
    assert!(hand.roof().edges.len() > 4);
    let off = roof.standing[0].label.clone();
    hand.tap(&roof.standing, &off);
    let bare = hand.roof();
    assert_eq!(bare.planes, plain.planes);
    assert!(bare.standing.is_empty());
}

#[test]
fn a_dormer_that_stands_nowhere_is_refused() {
    let scene = Scene::new();
    let (mut hand, property, _) = at_the_roof(&scene);
    draw_box(&mut hand, "ends-hip");
    let before = scene::ink_of(hand.screens.book(), property);
    let form = form(&hand, "roof-dormer").form;
    let values = [
        ("x", "90 ft"),
        ("y", "3 ft"),
        ("wide", "8 ft"),
        ("above", "3 ft"),
        ("deep", "6 ft"),
        ("pitch", "6/12"),
    ]
    .map(|(field, text)| (field.to_owned(), text.to_owned()))
    .to_vec();
    assert!(hand.try_act(&Action::Submit { form, values }).is_err());
    assert_eq!(scene::ink_of(hand.screens.book(), property), before);
}

/// The box is 28 ft deep and hipped, so its ridge lies 14 ft back from the front wall and 11 ft back from a face 3 ft in: no dormer there is deeper.
#[test]
fn a_dormer_that_comes_out_on_the_other_side_is_refused() {
    let scene = Scene::new();
    let (mut hand, property, _) = at_the_roof(&scene);
    draw_box(&mut hand, "ends-hip");
    let before = scene::ink_of(hand.screens.book(), property);
    let mut stand = |deep: &str| {
        let form = form(&hand, "roof-dormer").form;
        let values = [
            ("x", "20 ft"),
            ("y", "3 ft"),
            ("wide", "8 ft"),
            ("above", "1 ft"),
            ("deep", deep),
            ("pitch", "4/12"),
        ]
        .map(|(field, text)| (field.to_owned(), text.to_owned()))
        .to_vec();
        let tried = hand.try_act(&Action::Submit { form, values });
        (tried, scene::ink_of(hand.screens.book(), property))
    };
    let (tried, ink) = stand("20 ft");
    let said = tried.expect_err("it comes out behind the ridge").says;
    assert!(said.contains("there are 11':"), "{said}");
    assert_eq!(ink, before);
    let (tried, ink) = stand("11 ft");
    assert!(tried.is_ok(), "{tried:?}");
    assert_ne!(ink, before);
}

#[test]
fn the_shingles_are_drawn_as_they_lie() {
    let scene = Scene::new();
    let (mut hand, _, _) = at_the_roof(&scene);
    assert!(hand.roof().laid.is_none());
    draw_box(&mut hand, "ends-gable-sides");
    let laid = hand.roof().laid.expect("the roof was measured");
    assert!(laid.drawn.drawing.shapes.len() > 500);
    assert_eq!(laid.numbers.len(), 5);
    assert!(laid.numbers.iter().all(|row| !row.says.is_empty()));
}

/// How an outline file says that it was got is kept, whatever was chosen beside it.
#[test]
fn an_outline_file_says_how_it_was_got() {
    let scene = Scene::new();
    let (mut hand, property, structure) = at_the_roof(&scene);
    let file =
        r#"{"unit":"ft","got":"tape","pitch":"6/12","outline":[[0,0],[40,0],[40,28],[0,28]]}"#;
    hand.send(&form(&hand, "roof-file"), &[("file", file)]);
    let history = scene::history(hand.screens.book(), property);
    let sketch = history.sketch_of(structure).expect("it was drawn");
    assert_eq!(sketch.got, Got::Tape);
}

/// 29 CFR 1926.1053(b)(5)(i): a quarter of the working length. What was measured stays with the visit.
#[test]
fn a_ladder_is_told_by_the_rule() {
    let scene = Scene::new();
    let (mut hand, _, visit) = scene::first_visit(&scene, Scope::QuickLook);
    hand.at = Place::Safety { visit };
    let ladder = hand.safety().ladder;
    assert!(ladder.says.is_empty() && !ladder.caution.is_empty());
    hand.send(&ladder.form, &[("working", "20 ft"), ("base", "8 ft")]);
    let ladder = hand.safety().ladder;
    assert!(
        ladder.says[0].contains("66.4°") && ladder.says[0].contains("5'"),
        "{ladder:?}"
    );
    hand.send(
        &ladder.form,
        &[
            ("base", ""),
            ("readings", "75.4, 75.6"),
            ("landing", "18 ft"),
        ],
    );
    let ladder = hand.safety().ladder;
    assert!(ladder.says[0].contains("75.5°"), "{ladder:?}");
    assert!(
        ladder.says.iter().any(|says| says.contains("18'")),
        "{ladder:?}"
    );
    let form = hand.safety().ladder.form.form;
    let refused = hand.try_act(&Action::Submit {
        form,
        values: Vec::new(),
    });
    assert!(refused.is_err(), "nothing was measured");
}
