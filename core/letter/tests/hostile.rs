//! Words that were made to break a page: none is read as markup, none breaks a letter, none is lost without a sign.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod made_up;

use letter::content::Asks;
use letter::{LONGEST, compose, html, pdf, text};
use made_up::MadeUp;
use made_up::photo::Lost;
use made_up::roof::{self, MadeRoof};
use proptest::prelude::*;
use trade::drawing::Shape;
use trade::property::Address;
use trade::words::Said;

/// Markup of Typst and HTML, direction overrides, controls, scripts that the fonts lack, and words that never end.
fn hostile() -> Vec<String> {
    let fixed = [
        "#panic(\"gone\")",
        "#read(\"/etc/passwd\")",
        "#import \"@preview/x:1.0.0\": *",
        "*bold* _thin_ `code` $x^2$",
        "<label> @ref",
        "= Heading\n== Another",
        "\\ \\u{41} \\#",
        "// comment /* more */",
        "[#sys.inputs]",
        "${x} {{x}} %s",
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "&amp; &#60; ]]>",
        "</style></title>",
        "\u{202E}desrever\u{202C}",
        "\u{2066}isolated",
        "\0\u{1}\u{7F}\u{85}",
        "\u{FEFF}\u{FFFE}\u{FFFF}",
        "line\r\nbreak\u{2028}and\u{2029}more",
        "👷🏽‍♀️ 🏠",
        "שלום עולם",
        "مرحبا",
        "屋根の修理",
        "Ngô Thị Thuỷ Nguyễn",
        "Жанна Ковальчук",
        "Ελένη",
        "e\u{301}\u{301}\u{301}\u{301}",
        "ﬁ ½ × § ° ¿ ¡ ñ",
        "",
        " ",
        "\u{200B}",
    ];
    let mut words: Vec<String> = fixed.map(str::to_owned).into();
    words.push("W".repeat(10_000));
    words.push("a\u{301}".repeat(3_000));
    words
}

/// The made-up letter with one text in every place that takes a person's words.
fn filled_with(words: &str) -> MadeUp {
    let mut made_up = made_up::teasel_row();
    let own = || words.to_owned();
    made_up.firm.name = own();
    made_up.firm.person = own();
    made_up.firm.phone = own();
    made_up.firm.licence = own();
    made_up.firm.address = vec![own()];
    made_up.firm.contract = own();
    made_up.firm.notices = own();
    made_up.profile.place = own();
    let history = &mut made_up.history;
    history.property.address = Address {
        line: own(),
        town: own(),
        region: own(),
        postcode: own(),
    };
    history.property.people[0].name = own();
    history.structures[0].name = Some(own());
    for part in &mut history.parts {
        part.which = Some(own());
    }
    for visit in &mut history.visits {
        visit.by = own();
        visit.request.room = Some(own());
    }
    for photo in &mut history.photos {
        photo.caption = own();
    }
    for mark in &mut history.marks {
        mark.words = own();
        if let Some(correction) = &mut mark.corrected {
            correction.why = own();
        }
    }
    for verdict in &mut made_up.verdicts {
        let reasons = verdict
            .steps
            .iter_mut()
            .flat_map(|step| &mut step.reasons)
            .chain(&mut verdict.cautions)
            .chain(&mut verdict.limits);
        for reason in reasons {
            reason.says = Said::verbatim(words);
        }
    }
    made_up
}

/// The made-up roof and offer with one text in every place that takes a person's words or a file's.
fn roof_filled_with(words: &str) -> MadeRoof {
    let mut roof = roof::of(&made_up::teasel_row());
    for shape in &mut roof.picture.drawing.shapes {
        if let Shape::Words(lettering) = shape {
            words.clone_into(&mut lettering.text);
        }
    }
    roof.picture.left_out = vec![Said::verbatim(words)];
    for plane in &mut roof.plan.planes {
        words.clone_into(&mut plane.letter);
    }
    roof.takeoff.planes = vec![words.to_owned()];
    roof.takeoff.planes_left = vec![words.to_owned()];
    words.clone_into(&mut roof.offer.currency);
    let against = roof.offer.courses.iter_mut();
    for nevertheless in against.filter_map(|course| course.nevertheless.as_mut()) {
        words.clone_into(&mut nevertheless.because);
    }
    roof
}

#[test]
fn no_words_of_a_roof_or_offer_do_harm() {
    let in_forms = |words: &str| {
        let made_up = filled_with("x");
        let roof = roof_filled_with(words);
        let content = compose(&made_up.with_roofs(&[roof.roofed()]));
        let start: String = words.chars().take(40).collect();
        let bytes = pdf(&content, &Lost).unwrap_or_else(|error| panic!("{start:?}: {error}"));
        assert!(bytes.starts_with(b"%PDF-1.7"), "{start:?}");
        assert!(text(&content).chars().count() <= LONGEST, "{start:?}");
        html(&content, &Lost)
    };
    let plain = in_forms("x");
    for words in hostile() {
        let page = in_forms(&format!("x {words}"));
        assert_eq!(tags(&page), tags(&plain), "{words:?}");
        assert!(
            !page.contains(['\u{202E}', '\u{2066}', '\0', '\u{FFFE}']),
            "{words:?}"
        );
    }
}

#[test]
fn no_words_break_the_pdf() {
    for words in hostile() {
        let content = compose(&filled_with(&words).material());
        let start: String = words.chars().take(40).collect();
        let bytes = pdf(&content, &Lost).unwrap_or_else(|error| panic!("{start:?}: {error}"));
        assert!(bytes.starts_with(b"%PDF-1.7"), "{start:?}");
    }
}

#[test]
fn no_words_become_markup_on_the_page() {
    let plain = html(&compose(&filled_with("x").material()), &Lost);
    for words in hostile() {
        let made_up = filled_with(&format!("x {words}"));
        let page = html(&compose(&made_up.material()), &Lost);
        // Paragraphs of the firm's own text are the one place where a line break makes an element.
        if !words.contains(['\n', '\r', '\u{2028}', '\u{2029}']) {
            assert_eq!(tags(&page), tags(&plain), "{words:?}");
        }
        assert!(
            !page.contains(['\u{202E}', '\u{2066}', '\0', '\u{FFFE}']),
            "{words:?}"
        );
    }
}

/// The elements of a page, in order, without their attributes.
fn tags(page: &str) -> Vec<&str> {
    let body = page.split_once("<body>").unwrap().1;
    body.split('<')
        .skip(1)
        .map(|tag| tag.split([' ', '>']).next().unwrap())
        .collect()
}

#[test]
fn what_the_paper_cannot_print_is_shown_as_a_sign_and_said() {
    let content = compose(&filled_with("屋根").material());
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("letter.pdf");
    std::fs::write(&file, pdf(&content, &Lost).unwrap()).unwrap();
    let output = std::process::Command::new("pdftotext")
        .arg(&file)
        .arg("-")
        .output()
        .unwrap();
    let said = String::from_utf8(output.stdout).unwrap();
    assert!(said.contains("\u{FFFD}\u{FFFD}") && !said.contains('屋'));
    assert!(
        said.split_whitespace()
            .collect::<Vec<_>>()
            .join(" ")
            .contains(content.labels.unprintable.as_str())
    );
}

#[test]
fn the_short_text_tells_the_advice_whatever_stands_around_it() {
    for words in hostile() {
        let content = compose(&filled_with(&words).material());
        let short = text(&content);
        assert!(
            short.chars().count() <= LONGEST,
            "{}",
            short.chars().count()
        );
        assert!(short.contains(content.answer(Asks::Advice).unwrap().question.as_str()));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn any_words_make_a_letter(words in "\\PC{0,60}|[#$*_`<>@\\\\\\[\\]{}\"'/=~ \n-]{0,40}") {
        let content = compose(&filled_with(&words).material());
        prop_assert!(pdf(&content, &Lost).is_ok());
        prop_assert!(!html(&content, &Lost).contains("<script"));
        prop_assert!(text(&content).chars().count() <= LONGEST);
    }
}
