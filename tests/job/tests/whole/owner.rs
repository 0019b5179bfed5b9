//! The letters of all demo stories, with an offer for every structure and half the prices missing: no sentence that is meant for the roofer
//! stands in one.

use acts::letter::Drawn;
use acts::offer;
use job::scene::{self, Scene};
use std::path::Path;
use std::process::Command;
use tempfile::TempDir;
use trade::offer::{Offer, Unpriced};
use trade::words::{Language, Said, Words};

/// Beginnings of what is said to the roofer alone, in the message files.
const ROOFERS: [&str; 4] = ["unpriced-", "gap-", "takeoff-error-", "tear-off-error-"];
/// A text shorter than this may stand anywhere.
const TELLING: usize = 16;

/// The fixed texts of the messages that are said to the roofer alone.
fn roofers_texts(language: Language) -> Vec<String> {
    let file = format!("../../core/trade/words/{}/price.ftl", language.tag());
    let path = Path::new(&file);
    let text = std::fs::read_to_string(path).expect("a message file");
    text.lines()
        .filter(|line| ROOFERS.iter().any(|start| line.starts_with(start)))
        .filter_map(|line| line.split_once(" = "))
        .flat_map(|(_, says)| says.split(['{', '}']).step_by(2))
        .map(|fixed| fixed.trim_matches([' ', '.', ':', ',']).to_owned())
        .filter(|fixed| fixed.chars().count() >= TELLING)
        .collect()
}

/// The words of the three forms, however their lines are broken.
fn three_forms(drawn: &Drawn) -> [String; 3] {
    let folder = TempDir::new().expect("a folder can be made");
    let file = folder.path().join("letter.pdf");
    std::fs::write(&file, &drawn.pdf).expect("a file can be written");
    let printed = Command::new("pdftotext")
        .args(["-raw".as_ref(), file.as_os_str(), "-".as_ref()])
        .output()
        .expect("pdftotext runs");
    assert!(printed.status.success());
    let printed = String::from_utf8(printed.stdout).expect("it is text");
    [printed, drawn.html.clone(), drawn.text.clone()]
        .map(|form| form.split_whitespace().collect::<Vec<_>>().join(" "))
}

/// The demo's list with every second remedy, material and task taken out of it, and no price of disposal.
fn half_of(list: &str) -> String {
    let is_kept = |(at, line): &(usize, &str)| {
        let row = line.split(',').next().unwrap_or_default();
        !matches!(row, "remedy" | "material" | "task") || at.is_multiple_of(2)
    };
    let kept: Vec<&str> = list
        .lines()
        .enumerate()
        .filter(is_kept)
        .map(|(_, line)| line)
        .filter(|line| !line.starts_with("disposal,"))
        .collect();
    kept.join("\n")
}

fn missing(offer: &Offer) -> impl Iterator<Item = &Unpriced> {
    offer.courses.iter().flat_map(|course| &course.unpriced)
}

#[test]
fn no_letter_of_the_demo_says_what_is_meant_for_the_roofer() {
    let scene = Scene::new();
    let mut demo = fixtures::demo();
    demo.others.clear();
    let (mut book, _) = scene.all_of(&demo);
    let now = |seconds| scene::after_noon(fixtures::TODAY, seconds);
    offer::set_price_list(&mut book, half_of(demo.prices).as_bytes(), now(0))
        .expect("half a list is a list");
    let (mut letters, mut unpriced) = (0, 0);
    let properties = book.properties().expect("the book is read");
    for (at, property) in properties.into_iter().enumerate() {
        let history = scene::history(&book, property.id);
        let Some(visit) = history.visits.last() else {
            continue;
        };
        let seconds = i64::try_from(at).expect("a few");
        for structure in &visit.structures {
            // What is sound has nothing to be offered.
            let _ = offer::put(&mut book, visit.id, *structure, None, now(seconds));
        }
        let offers = scene::history(&book, property.id).offers;
        let named = |_| Said::verbatim("");
        for language in Language::ALL {
            let (_, drawn) = acts::letter::draw(&book, visit.id, language, now(seconds))
                .expect("the letter is drawn");
            let words = Words::of(language);
            for form in three_forms(&drawn) {
                for roofers in roofers_texts(language) {
                    assert!(!form.contains(&roofers), "{roofers:?} in {form}");
                }
            }
            for what in offers.iter().rev().take(1).flat_map(missing) {
                let says = words.say(&what.says_to_owner(&named));
                let (lead, _) = says.split_once(':').unwrap_or((&says, ""));
                assert!(drawn.html.contains(lead), "{says}");
                unpriced += 1;
            }
            letters += 1;
        }
    }
    assert!(letters >= 12, "{letters}");
    assert!(unpriced >= 10, "{unpriced}");
}
