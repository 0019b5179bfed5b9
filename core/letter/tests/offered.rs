//! The offer in the letter: its prices as they were recorded, and nothing of what is the firm's own.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod made_up;

use letter::content::{Asks, Block, Content, Line, Offered, SectionIs};
use letter::{Material, compose, html, pdf, text};
use made_up::photo::Lost;
use made_up::roof::{self, MadeRoof};
use made_up::{MadeUp, task};
use std::collections::BTreeSet;
use trade::ids::PartId;
use trade::offer::{MoneySpread, PricedCourse, Sums, Unpriced, Unsolved};
use trade::units::Money;
use trade::verdict::{Course, Narrowed, Refused, When};
use trade::words::{Language, Said, Words};

fn letter_with(made_up: &MadeUp, roof: &MadeRoof) -> Content {
    compose(&made_up.with_roofs(&[roof.roofed()]))
}

fn offered(content: &Content) -> Vec<&Offered> {
    let section = content.section(SectionIs::Offer).into_iter();
    let blocks = section.flat_map(|section| &section.blocks);
    let courses = blocks.filter_map(|block| match block {
        Block::Offered(it) => Some(it),
        _ => None,
    });
    courses.collect()
}

fn choices(content: &Content) -> &[Line] {
    let mut blocks = content.section(SectionIs::Decision).unwrap().blocks.iter();
    blocks
        .find_map(|block| match block {
            Block::Choices { choices } => Some(choices.as_slice()),
            _ => None,
        })
        .unwrap()
}

fn in_json(value: &impl serde::Serialize) -> String {
    serde_json::to_string(value).unwrap()
}

fn english(said: &Said) -> String {
    Words::of(Language::English).say(said)
}

/// The words of the three forms.
fn three_forms(content: &Content) -> [String; 3] {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("letter.pdf");
    std::fs::write(&file, pdf(content, &Lost).unwrap()).unwrap();
    let output = std::process::Command::new("pdftotext")
        .args(["-raw".as_ref(), file.as_os_str(), "-".as_ref()])
        .output()
        .unwrap();
    assert!(output.status.success());
    let page = html(content, &Lost);
    let body = page.split_once("<body>").unwrap().1.to_owned();
    [
        String::from_utf8(output.stdout).unwrap(),
        body,
        text(content),
    ]
}

fn priced(roof: &MadeRoof) -> Vec<(&PricedCourse, MoneySpread)> {
    let courses = roof.offer.courses.iter();
    courses
        .filter_map(|course| Some((course, course.price()?)))
        .collect()
}

#[test]
fn every_price_is_the_offers_own_in_all_three_forms() {
    let made_up = made_up::teasel_row();
    let roof = roof::of(&made_up);
    let content = letter_with(&made_up, &roof);
    let all = priced(&roof);
    assert_eq!(all.len(), 3);
    let forms = three_forms(&content);
    for (course, price) in all {
        let price = english(&price.says("USD"));
        for form in &forms {
            assert!(form.contains(&price), "{:?} {price}: {form}", course.course);
        }
        assert!(
            offered(&content)
                .iter()
                .any(|it| it.price.as_ref().is_some_and(|told| told.as_str() == price))
        );
        let until = format!("{price}, until 6 June 2025.");
        let boxes = choices(&content)
            .iter()
            .filter_map(|line| line.price.as_ref());
        assert_eq!(
            boxes.filter(|told| told.as_str() == until).count(),
            1,
            "{until}"
        );
    }
    assert_eq!(forms[2].matches("Offered until 6 June 2025:").count(), 1);
}

#[test]
fn page_one_names_the_price_of_what_is_advised_and_of_a_patch() {
    let made_up = made_up::teasel_row();
    let roof = roof::of(&made_up);
    let content = letter_with(&made_up, &roof);
    let price_of = |when: When, course: Course, against: bool| {
        let (_, price) = priced(&roof)
            .into_iter()
            .find(|(it, _)| {
                (it.when, it.course, it.nevertheless.is_some()) == (when, course, against)
            })
            .unwrap();
        english(&price.says("USD"))
    };
    let prices = |asks: Asks| -> Vec<Option<String>> {
        let says = &content.answer(asks).unwrap().says;
        says.iter()
            .map(|line| line.price.as_ref().map(ToString::to_string))
            .collect()
    };
    let (cover, mend) = (
        price_of(When::Now, Course::MakeSafe, false),
        price_of(When::ThisSeason, Course::Repair, false),
    );
    assert_eq!(
        prices(Asks::Advice),
        [
            Some(format!("{cover}.")),
            Some(format!("{mend}.")),
            None,
            None
        ]
    );
    let patch = price_of(When::Now, Course::Repair, true);
    assert_eq!(
        prices(Asks::Patch)[0],
        Some(format!("{patch}, against our advice."))
    );
    let told = in_json(content.answer(Asks::Patch).unwrap());
    assert!(
        told.contains(&format!(
            "Make safe for now for {cover} and repair for {mend}."
        )),
        "{told}"
    );
    assert!(!told.contains("names no price"), "{told}");
}

/// An amount as it is said, without its currency.
fn in_words(amount: Money) -> String {
    let said = english(&MoneySpread::exactly(amount).says("USD"));
    said.strip_suffix(" USD").unwrap().to_owned()
}

/// Whether an amount stands in a text by itself, not as the end of a greater one.
fn tells(form: &str, amount: &str) -> bool {
    let mut found = form.match_indices(amount);
    found.any(|(at, _)| !form[..at].ends_with(|c: char| c.is_ascii_digit() || ",.".contains(c)))
}

/// Every amount that makes a price and is none, and every line of what it costs the firm.
fn the_firms_own(course: &PricedCourse) -> (BTreeSet<String>, BTreeSet<String>) {
    let Sums {
        subtotal,
        overhead,
        cost,
        gain,
        before_tax,
        tax,
        ..
    } = course.sums.clone().unwrap();
    let amounts = [subtotal, overhead, cost, gain, before_tax, tax]
        .into_iter()
        .chain(course.lines.iter().map(|line| line.amount))
        .flat_map(|amount| [amount.least, amount.likely, amount.most])
        .chain(course.lines.iter().map(|line| line.each))
        .map(in_words)
        .filter(|amount| amount != "0.00")
        .collect();
    let lines = course
        .lines
        .iter()
        .map(|line| english(&line.what))
        .collect();
    (amounts, lines)
}

#[test]
fn nothing_of_the_firms_own_is_told() {
    let made_up = roof::to_be_covered_anew();
    let mut list = roof::list();
    // The smallest charge is told where it makes the price: here it makes none.
    list.minimum = None;
    // What a further sheet of deck costs is told too: an amount like no other.
    list.sheet = Some(serde_json::from_str("\"91.37\"").unwrap());
    let roof = roof::priced_by(&made_up, Language::English, &list);
    let forms = three_forms(&letter_with(&made_up, &roof));
    let mut amounts = 0;
    for (course, price) in priced(&roof) {
        let told = [price.least, price.likely, price.most].map(in_words);
        let (own, lines) = the_firms_own(course);
        for form in &forms {
            assert!(
                tells(form, &told[0]) && tells(form, &told[2]),
                "{told:?}: {form}"
            );
            for amount in own.iter().filter(|amount| !told.contains(amount)) {
                assert!(
                    !tells(form, amount),
                    "{amount} of {:?}: {form}",
                    course.course
                );
                amounts += 1;
            }
            for word in [
                "Overhead",
                "Running costs",
                "Margin",
                "Markup",
                "margin",
                "markup",
            ] {
                assert!(!form.contains(word), "{word}: {form}");
            }
            for line in lines
                .iter()
                .filter(|line| line.starts_with("Small material") || line.contains("at 6:12"))
            {
                assert!(!form.contains(line.as_str()), "{line}: {form}");
            }
        }
    }
    assert!(amounts > 60, "{amounts}");
}

#[test]
fn a_course_without_a_price_says_why() {
    let made_up = made_up::teasel_row();
    let mut list = roof::list();
    list.remedies
        .retain(|row| row.remedy.as_str() != "new-step-flashing");
    let roof = roof::priced_by(&made_up, Language::English, &list);
    let content = letter_with(&made_up, &roof);
    let repair = offered(&content)
        .into_iter()
        .find(|it| it.course.as_str() == "This season: repair")
        .unwrap();
    assert_eq!(repair.price, None);
    let why: Vec<&str> = repair
        .unpriced
        .iter()
        .map(letter::plain::Plain::as_str)
        .collect();
    assert_eq!(
        why,
        ["The price of this work is still to come: New step flashing."]
    );
    let none_yet = choices(&content)
        .iter()
        .filter_map(|line| line.price.as_ref());
    assert_eq!(
        none_yet
            .filter(|told| told.as_str() == "No price yet: our offer says why.")
            .count(),
        1
    );
    let before = roof::of(&made_up);
    let (_, price) = priced(&before).pop().unwrap();
    for form in three_forms(&content) {
        assert!(!tells(&form, &in_words(price.likely)), "{form}");
    }
}

/// What the roofer must do about a price that is missing is said to him. The owner is told what is still to come.
#[test]
fn no_sentence_for_the_roofer_stands_in_a_letter() {
    let made_up = roof::to_be_covered_anew();
    let mut list = roof::list();
    list.materials.clear();
    list.tasks.truncate(1);
    list.remedies.truncate(2);
    (list.sheet, list.disposal.ton, list.disposal.load) = (None, None, None);
    for language in Language::ALL {
        let words = Words::of(language);
        let roof = roof::priced_by(&made_up, language, &list);
        let roofs = [roof.roofed()];
        let content = compose(&Material {
            language,
            ..made_up.with_roofs(&roofs)
        });
        let named = |_: PartId| Said::verbatim("");
        let missing: Vec<&Unpriced> = roof
            .offer
            .courses
            .iter()
            .flat_map(|course| &course.unpriced)
            .collect();
        assert!(missing.len() > 12, "{missing:?}");
        for form in three_forms(&content) {
            let form = form.split_whitespace().collect::<Vec<_>>().join(" ");
            for what in &missing {
                let roofers = words.say(&what.says(&named));
                assert!(
                    !form.contains(roofers.trim_end_matches('.')),
                    "{roofers}: {form}"
                );
            }
            for said in [
                "Not priced yet",
                "price list",
                "Aún sin precio: la",
                "lista de precios",
            ] {
                assert!(!form.contains(said), "{said}: {form}");
            }
        }
        let told = in_json(content.section(SectionIs::Offer).unwrap());
        for what in missing {
            let owners = words.say(&what.says_to_owner(&named));
            let (lead, _) = owners.split_once(':').unwrap_or((&owners, ""));
            assert!(told.contains(lead), "{owners}: {told}");
        }
    }
}

/// What all courses but one leave as it is stands once behind them, not under each.
#[test]
fn what_every_other_course_leaves_is_said_once() {
    let made_up = made_up::teasel_row();
    let mut roof = roof::of(&made_up);
    let part = made_up::part_id(1);
    let other = made_up::part_id(2);
    for course in &mut roof.offer.courses {
        course.unsolved = vec![Unsolved {
            part: other,
            by: None,
        }];
        if course.course != Course::Repair || course.nevertheless.is_some() {
            let by = Some(Course::Repair);
            course.unsolved.push(Unsolved { part, by });
        }
    }
    let content = letter_with(&made_up, &roof);
    let told = in_json(content.section(SectionIs::Offer).unwrap());
    assert!(!told.contains("This does not put right"), "{told}");
    for wanted in [
        "Only one course puts this right: ",
        "It is this one: “This season: repair”.",
        "Nothing that is offered here puts this right: ",
    ] {
        assert_eq!(told.matches(wanted).count(), 1, "{wanted}: {told}");
    }
    // With a course that alone leaves something, that stays under it.
    roof.offer.courses[0].unsolved = Vec::new();
    let told = in_json(
        letter_with(&made_up, &roof)
            .section(SectionIs::Offer)
            .unwrap(),
    );
    assert_eq!(told.matches("This does not put right").count(), 3, "{told}");
}

/// Whatever was recorded, what a rule forbids today is not offered.
#[test]
fn what_a_rule_forbids_is_not_offered() {
    let mut made_up = made_up::teasel_row();
    let roof = roof::of(&made_up);
    let before = letter_with(&made_up, &roof);
    assert_eq!(offered(&before).len(), 3);
    let reasons = made_up.verdicts[1].refused[0].reasons.clone();
    made_up.verdicts[0].refused.push(Refused {
        course: Course::Repair,
        narrowed: Narrowed::Whole,
        forbidden: true,
        reasons,
    });
    let content = letter_with(&made_up, &roof);
    let courses: Vec<&str> = offered(&content)
        .iter()
        .map(|it| it.course.as_str())
        .collect();
    assert_eq!(courses, ["Now: make safe for now"]);
    let forms = three_forms(&content);
    for (course, price) in priced(&roof)
        .into_iter()
        .filter(|(it, _)| it.course == Course::Repair)
    {
        for form in &forms {
            assert!(
                !form.contains(&english(&price.says("USD"))),
                "{:?}: {form}",
                course.when
            );
        }
    }
}

#[test]
fn what_is_offered_against_advice_says_so_and_stands_not_among_what_is_not_sold() {
    let made_up = made_up::teasel_row();
    let content = letter_with(&made_up, &roof::of(&made_up));
    let against = offered(&content)
        .into_iter()
        .find(|it| it.course.as_str().starts_with("Against our advice"))
        .unwrap();
    assert_eq!(
        against.course.as_str(),
        "Against our advice, now: a repair with sealant alone"
    );
    assert_eq!(
        against.beside[0].as_str(),
        "We advise against this. It is offered because: The house is to be sold in June and the buyer knows."
    );
    assert_eq!(
        against.against[0].says.as_str(),
        "It would be the third patch on the same cause; we stop at two."
    );
    let refused = in_json(content.section(SectionIs::Refused).unwrap());
    assert!(
        refused.contains("New covering over the old") && !refused.contains("sealant"),
        "{refused}"
    );
    let patch = in_json(content.answer(Asks::Patch).unwrap());
    assert!(!patch.contains("We do not sell"), "{patch}");
    let leads: Vec<&str> = choices(&content)
        .iter()
        .filter_map(|line| Some(line.lead.as_ref()?.as_str()))
        .collect();
    assert!(
        leads.contains(&"Against our advice, now, house:"),
        "{leads:?}"
    );
}

#[test]
fn an_offer_that_ran_out_names_no_price() {
    let made_up = made_up::teasel_row();
    let roof = roof::of(&made_up);
    let roofs = [roof.roofed()];
    let mut material = made_up.with_roofs(&roofs);
    material.on = roof.offer.valid_until;
    assert_eq!(offered(&compose(&material)).len(), 3);
    material.on = roof.offer.valid_until.tomorrow().unwrap();
    let content = compose(&material);
    assert!(offered(&content).is_empty() && content.offered.is_empty());
    let section = in_json(content.section(SectionIs::Offer).unwrap());
    assert!(
        section.contains("Our offer of 7 May 2025 held until 6 June 2025."),
        "{section}"
    );
    assert!(!in_json(&content).contains(" USD"));
}

/// A price holds for the work that was priced: where the verdict came to name other work since, it is not set beside it.
#[test]
fn a_price_stands_only_beside_the_work_it_is_for() {
    let mut made_up = made_up::teasel_row();
    let roof = roof::of(&made_up);
    made_up.verdicts[0].steps[1]
        .tasks
        .push(task(9, "clean-gutter"));
    let content = letter_with(&made_up, &roof);
    let told = in_json(content.answer(Asks::Advice).unwrap());
    let price_of = |course: Course| {
        let mut all = priced(&roof).into_iter();
        let advised = all.find(|(it, _)| it.course == course && it.nevertheless.is_none());
        in_words(advised.unwrap().1.likely)
    };
    assert!(tells(&told, &price_of(Course::MakeSafe)), "{told}");
    assert!(!tells(&told, &price_of(Course::Repair)), "{told}");
}

/// A short text holds whole prices or none: half a range would be another price.
#[test]
fn the_short_text_cuts_no_price_in_two() {
    let made_up = roof::to_be_covered_anew();
    let mut roof = roof::of(&made_up);
    let mut courses = roof.offer.courses.iter();
    let covering = courses
        .find(|it| it.course == Course::TearOff)
        .unwrap()
        .clone();
    let mut cut = 0;
    for more in 0..8 {
        let content = letter_with(&made_up, &roof);
        let short = text(&content);
        assert!(short.chars().count() <= letter::LONGEST);
        let mut lines = short.lines();
        let line = lines
            .find(|line| line.starts_with("Offered until"))
            .unwrap();
        let (_, courses) = line.split_once(": ").unwrap();
        let told: Vec<&str> = courses.trim_end_matches(" …").split("; ").collect();
        let all: Vec<&str> = content.offered[0]
            .courses
            .iter()
            .map(letter::plain::Plain::as_str)
            .collect();
        assert_eq!(told, all[..told.len()], "{line}");
        assert_eq!(line.ends_with(" …"), told.len() < all.len(), "{line}");
        cut += usize::from(told.len() < all.len());
        roof.offer.courses.insert(more % 3, covering.clone());
    }
    assert!(cut > 0);
}

#[test]
fn a_new_covering_tells_its_range_its_years_and_what_patching_again_comes_to() {
    let made_up = roof::to_be_covered_anew();
    let roof = roof::of(&made_up);
    let course = roof
        .offer
        .courses
        .iter()
        .find(|it| it.course == Course::TearOff)
        .unwrap();
    assert!(course.unpriced.is_empty(), "{:?}", course.unpriced);
    let content = letter_with(&made_up, &roof);
    let it = offered(&content)
        .into_iter()
        .find(|it| it.course.as_str() == "This season: tear off and cover anew")
        .unwrap();
    let price = course.price().unwrap();
    assert!(price.least < price.most);
    assert_eq!(
        it.price.as_ref().unwrap().as_str(),
        english(&price.says("USD"))
    );
    let told = in_json(&it.told);
    for wanted in [
        "All that stands in the list “What a new covering takes”.",
        "one layer of covering, hauled away in one load",
        "Each sheet of deck beyond 4 costs",
        &english(&course.yearly.as_ref().unwrap().says("USD")),
        "Sealant, sidewall flashing, left of the dormer (house, B 3): Patching this again",
    ] {
        assert!(told.contains(wanted), "{wanted}: {told}");
    }
    // The list is not shown: then the material is named with the course.
    let mut roofed = roof.roofed();
    roofed.takeoff = None;
    let told = in_json(&offered(&compose(&made_up.with_roofs(&[roofed])))[2].told);
    assert!(
        told.contains("Laminated shingles: ") && !told.contains("All that stands"),
        "{told}"
    );
}

#[test]
fn both_languages_tell_the_same() {
    let made_up = roof::to_be_covered_anew();
    let [english, spanish] = Language::ALL.map(|language| {
        let roof = roof::in_language(&made_up, language);
        let roofs = [roof.roofed()];
        let content = compose(&Material {
            language,
            ..made_up.with_roofs(&roofs)
        });
        let told = in_json(&content);
        assert!(
            !told.contains("[letter-") && !told.contains("{$") && !told.contains("[offer-"),
            "{told}"
        );
        content
    });
    let shape = |content: &Content| -> Vec<(SectionIs, usize)> {
        content
            .sections
            .iter()
            .map(|section| (section.is, section.blocks.len()))
            .collect()
    };
    assert_eq!(shape(&english), shape(&spanish));
    assert_eq!(offered(&english).len(), offered(&spanish).len());
    for (one, other) in offered(&english).iter().zip(offered(&spanish)) {
        assert_eq!(one.told.len(), other.told.len());
        assert_eq!(one.price.is_some(), other.price.is_some());
    }
}
