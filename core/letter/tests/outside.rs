//! The letter against other people's programs: poppler's pdftotext, pdfimages, pdffonts and pdfinfo, qpdf, ExifTool.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod made_up;

use letter::content::{Block, Content};
use letter::{compose, html, pdf};
use made_up::photo::{Drawn, Lost};
use made_up::roof;
use std::path::{Path, PathBuf};
use std::process::Command;
use tempfile::TempDir;

/// A letter written to a folder of its own.
struct Written {
    folder: TempDir,
    content: Content,
}

impl Written {
    fn new(orientation: u8) -> Self {
        let made_up = made_up::teasel_row();
        let roof = roof::of(&made_up);
        let content = compose(&made_up.with_roofs(&[roof.roofed()]));
        let folder = tempfile::tempdir().unwrap();
        let bytes = pdf(&content, &Drawn::new(1600, 1200, orientation)).unwrap();
        std::fs::write(folder.path().join("letter.pdf"), bytes).unwrap();
        Self { folder, content }
    }

    fn pdf(&self) -> PathBuf {
        self.folder.path().join("letter.pdf")
    }
}

fn run(program: &str, words: &[&str], file: &Path, more: &[&str]) -> String {
    let output = Command::new(program)
        .args(words)
        .arg(file)
        .args(more)
        .output()
        .unwrap_or_else(|error| panic!("{program} is needed for this check: {error}"));
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(
        output.status.success(),
        "{program}: {said}{}",
        String::from_utf8_lossy(&output.stderr)
    );
    said
}

/// One line, single spaces: how a page breaks its lines is no difference.
fn even(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn qpdf_finds_no_fault() {
    let said = run("qpdf", &["--check"], &Written::new(1).pdf(), &[]);
    assert!(
        said.contains("No syntax or stream encoding errors found"),
        "{said}"
    );
}

#[test]
fn pdftotext_reads_the_questions_of_page_one_in_order() {
    let written = Written::new(1);
    let page = even(&run(
        "pdftotext",
        &["-l", "1", "-raw"],
        &written.pdf(),
        &["-"],
    ));
    let mut from = 0;
    for answer in &written.content.answers {
        let question = even(answer.question.as_str());
        let at = page[from..]
            .find(&question)
            .unwrap_or_else(|| panic!("\"{question}\" stands not on page one, in order: {page}"));
        from += at + question.len();
    }
}

#[test]
fn pdftotext_reads_every_word_of_the_tree() {
    let written = Written::new(1);
    let text = squeezed(&run("pdftotext", &["-raw"], &written.pdf(), &["-"]));
    for said in every_text(&written.content) {
        assert!(
            text.contains(&squeezed(&said)),
            "\"{said}\" is not in the PDF"
        );
    }
}

#[test]
fn the_page_says_every_word_of_the_tree() {
    let content = Written::new(1).content;
    let page = squeezed(&without_tags(&html(&content, &Lost)));
    for said in every_text(&content) {
        assert!(
            page.contains(&squeezed(&said)),
            "\"{said}\" is not on the page"
        );
    }
}

#[test]
fn every_font_is_inside() {
    let fonts = run("pdffonts", &[], &Written::new(1).pdf(), &[]);
    let rows: Vec<&str> = fonts.lines().skip(2).collect();
    assert!(rows.len() >= 2, "{fonts}");
    for row in rows {
        // The columns after the encoding: embedded, subset, mapped to Unicode.
        assert!(row.contains("yes yes yes"), "{row}");
    }
}

#[test]
fn pdfinfo_finds_title_and_tags_and_letter_paper() {
    let info = even(&run("pdfinfo", &[], &Written::new(1).pdf(), &[]));
    for wanted in [
        "Title: Your roof at 18 Teasel Row",
        "Tagged: yes",
        "Page size: 612 x 792 pts (letter)",
        "Encrypted: no",
    ] {
        assert!(info.contains(wanted), "{info}");
    }
}

#[test]
fn exiftool_finds_nothing_that_came_with_a_picture() {
    let original = tempfile::tempdir().unwrap();
    let before = original.path().join("original.jpg");
    std::fs::write(&before, Drawn::new(1600, 1200, 6).jpeg).unwrap();
    let told = run("exiftool", &["-G1"], &before, &[]);
    assert!(
        told.contains("GPS Latitude") && told.contains("Orientation"),
        "the test's own picture says nothing: {told}"
    );

    let written = Written::new(6);
    run(
        "pdfimages",
        &["-all"],
        &written.pdf(),
        &[written.folder.path().join("picture").to_str().unwrap()],
    );
    let pictures = files(written.folder.path(), "jpg");
    assert!(pictures.len() >= 4, "{pictures:?}");
    for picture in pictures
        .iter()
        .map(PathBuf::as_path)
        .chain([written.pdf().as_path()])
    {
        let told = run("exiftool", &["-G1", "-a"], picture, &[]);
        for group in ["GPS", "[IFD0]", "[ExifIFD]", "[XMP-exif]", "[MakerNotes]"] {
            assert!(!told.contains(group), "{group} in {told}");
        }
    }
}

/// The scene's sky is bright and its wall stands on the left; each orientation is undone as EXIF 2.3, section 4.6.4, has it.
#[test]
fn every_orientation_is_turned_upright() {
    for orientation in 1..=8 {
        let written = Written::new(orientation);
        run(
            "pdfimages",
            &["-all"],
            &written.pdf(),
            &[written.folder.path().join("picture").to_str().unwrap()],
        );
        let picture = image::open(&files(written.folder.path(), "jpg")[0])
            .unwrap()
            .into_luma8();
        let (width, height) = picture.dimensions();
        assert_eq!(width > height, orientation < 5, "orientation {orientation}");
        let mean = |x: u32, y: u32| u32::from(picture[(x * width / 8, y * height / 8)].0[0]);
        let sky = match orientation {
            1 | 2 => (4, 1),
            3 | 4 => (4, 7),
            5 | 8 => (1, 4),
            _ => (7, 4),
        };
        let roof = (8 - sky.0, 8 - sky.1);
        assert!(
            mean(sky.0, sky.1) > mean(roof.0, roof.1) + 40,
            "orientation {orientation}"
        );
    }
}

fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| {
            path.extension()
                .is_some_and(|extension| extension == ending)
        })
        .collect();
    files.sort();
    files
}

/// Letters and signs alone: neither line breaks nor the places to break long words at count.
fn squeezed(text: &str) -> String {
    text.chars()
        .filter(|c| !c.is_whitespace() && *c != '\u{200B}')
        .collect()
}

fn without_tags(page: &str) -> String {
    let body = page.split_once("<body>").unwrap().1;
    let mut text = String::new();
    let mut inside = false;
    for c in body.chars() {
        match c {
            '<' => inside = true,
            '>' => inside = false,
            _ if !inside => text.push(c),
            _ => {}
        }
    }
    text.replace("&quot;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
}

/// Every text that the tree shows, descriptions of pictures and drawings aside: they are heard, not read.
fn every_text(content: &Content) -> Vec<String> {
    let mut texts = Vec::new();
    let shown = serde_json::json!([
        content.title,
        content.date,
        content.letterhead.firm,
        content.to,
        content.about,
        content.answers,
        content.footer,
        content
            .sections
            .iter()
            .map(|section| (&section.heading, &section.blocks))
            .collect::<Vec<(_, &Vec<Block>)>>(),
    ]);
    gather(&shown, &mut texts);
    texts
}

fn gather(value: &serde_json::Value, texts: &mut Vec<String>) {
    const NOT_SHOWN: [&str; 9] = [
        "title",
        "alt",
        "photo",
        "ladder",
        "is",
        "asks",
        "orientation",
        "ink",
        "fill",
    ];
    match value {
        serde_json::Value::String(text) => texts.push(text.clone()),
        serde_json::Value::Array(items) => items.iter().for_each(|item| gather(item, texts)),
        serde_json::Value::Object(fields) => {
            let shown = fields
                .iter()
                .filter(|(name, _)| !NOT_SHOWN.contains(&name.as_str()));
            shown.for_each(|(_, field)| gather(field, texts));
        }
        _ => {}
    }
}
