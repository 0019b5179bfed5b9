//! Page one's answers, case by case. What a roofer would say is common practice; no source settles it.

#![cfg(test)]

mod made_up;

use letter::compose;
use letter::content::Asks;
use made_up::MadeUp;
use trade::answer::Answer;
use trade::mark::{Condition, Mark, Rung, Seen};
use trade::verdict::{Answered, Course, Question, When};

fn answer(made_up: &MadeUp, asks: Asks) -> String {
    let content = compose(&made_up.material());
    let says = &content.answer(asks).unwrap().says;
    let lines: Vec<String> = says
        .iter()
        .map(|line| match &line.lead {
            Some(lead) => format!("{lead} {}", line.says),
            None => line.says.to_string(),
        })
        .collect();
    lines.join("\n")
}

fn mark_of(made_up: &mut MadeUp, part: u16) -> &mut Mark {
    let id = made_up::part_id(part);
    made_up
        .history
        .marks
        .iter_mut()
        .find(|mark| mark.visit == made_up::NOW && mark.part == id)
        .unwrap()
}

const ATTIC: u16 = 7;
const WALL: u16 = 3;

/// The owner's word, what was seen from the attic, and what the answer begins with.
#[test]
fn leaking_by_what_was_told_and_what_was_seen() {
    use Answer::{No, Unknown, Yes};
    let cases = [
        (Yes, Yes, "Yes. Water is coming in: we saw it."),
        (No, Yes, "Yes. Water is coming in: we saw it."),
        (Yes, No, "Yes. You told us"),
        (Yes, Unknown, "Yes. You told us"),
        (No, No, "No. Where we could look"),
        (Unknown, No, "No. Where we could look"),
        (No, Unknown, "No. You told us"),
        (Unknown, Unknown, "Not known."),
    ];
    for (told, seen, begins) in cases {
        let mut made_up = made_up::teasel_row();
        for visit in &mut made_up.history.visits {
            visit.request.leaking = told;
        }
        if !seen.is_unknown() {
            let attic = mark_of(&mut made_up, ATTIC);
            attic.condition = Condition::Seen {
                rung: Rung::Ageing,
                seen: Seen::Touched,
            };
            attic.answers = vec![Answered {
                question: Question::WaterComesIn,
                answer: seen,
            }];
        }
        let says = answer(&made_up, Asks::Leaking);
        assert!(
            says.starts_with(begins),
            "told {told:?}, seen {seen:?}: {says}"
        );
    }
}

#[test]
fn where_the_water_comes_from_is_no_guess() {
    let mut made_up = made_up::teasel_row();
    assert!(answer(&made_up, Asks::Leaking).contains("The likely way in: sidewall flashing"));
    // The attic is where water shows, not where it comes in.
    let attic = mark_of(&mut made_up, ATTIC);
    attic.condition = Condition::Seen {
        rung: Rung::Failed,
        seen: Seen::Touched,
    };
    assert!(!answer(&made_up, Asks::Leaking).contains("deck from inside"));
    mark_of(&mut made_up, WALL).condition = Condition::Seen {
        rung: Rung::Ageing,
        seen: Seen::Touched,
    };
    assert!(answer(&made_up, Asks::Leaking).contains("We did not find the way in."));
    mark_of(&mut made_up, WALL).answers = vec![Answered {
        question: Question::OpenToRain,
        answer: Answer::Yes,
    }];
    assert!(
        answer(&made_up, Asks::Leaking).contains("The way in that we found: sidewall flashing")
    );
}

#[test]
fn the_wood_is_bad_good_or_not_known() {
    let mut made_up = made_up::teasel_row();
    assert!(answer(&made_up, Asks::Wood).starts_with("Not known."));
    let attic = mark_of(&mut made_up, ATTIC);
    attic.condition = Condition::Seen {
        rung: Rung::Sound,
        seen: Seen::Near,
    };
    assert!(
        answer(&made_up, Asks::Wood)
            .starts_with("No. Where we could look, it was dry and firm: deck from inside")
    );
    // From the ground nobody sees whether wood is dry.
    let attic = mark_of(&mut made_up, ATTIC);
    attic.condition = Condition::Seen {
        rung: Rung::Sound,
        seen: Seen::Told,
    };
    assert!(answer(&made_up, Asks::Wood).starts_with("Not known."));
    let attic = mark_of(&mut made_up, ATTIC);
    attic.answers = vec![Answered {
        question: Question::DeckWet,
        answer: Answer::Yes,
    }];
    assert!(answer(&made_up, Asks::Wood).starts_with("Yes. Wet or soft wood: deck from inside"));
}

#[test]
fn a_new_covering_usually_needs_a_permit() {
    let mut made_up = made_up::teasel_row();
    assert!(answer(&made_up, Asks::Permit).contains("often needs none"));
    made_up.verdicts[0].steps[1].course = Course::TearOff;
    assert!(answer(&made_up, Asks::Permit).contains("usually needs one"));
}

#[test]
fn waiting_is_told_by_the_soonest_work() {
    let mut made_up = made_up::teasel_row();
    assert!(answer(&made_up, Asks::Waiting).contains("gets dearer with every rain"));
    made_up.verdicts[0].steps.remove(0);
    assert!(answer(&made_up, Asks::Waiting).contains("another winter or storm season"));
    made_up.verdicts[0].steps[0].when = When::Later;
    let says = answer(&made_up, Asks::Waiting);
    assert!(
        says.contains("nothing we saw gets worse quickly")
            && says.contains("repair: new step flashing (B 3)"),
        "{says}"
    );
}

#[test]
fn a_patch_is_told_with_its_life_and_that_it_cures_nothing() {
    let says = answer(&made_up::teasel_row(), Asks::Patch);
    // Six to twenty-four months is the catalogue's span for sealant where flashing belongs: common practice.
    assert!(says.contains("Sealant: on sidewall flashing, left of the dormer (house, B 3): holds some 6 to 24 months. The cause stays."), "{says}");
    assert!(
        says.contains("We do not sell: a repair with sealant alone (house)."),
        "{says}"
    );
    assert!(says.contains("names no price"), "{says}");
}

#[test]
fn what_was_not_seen_is_told_with_the_reason() {
    let says = answer(&made_up::teasel_row(), Asks::NotSeen);
    for wanted in [
        "Locked: deck from inside (house, 7)",
        "Covered: headwall flashing",
        "roof covering (detached garage, A 1)",
    ] {
        assert!(says.contains(wanted), "{says}");
    }
}

#[test]
fn of_many_findings_the_worst_are_named_and_the_rest_counted() {
    let mut made_up = made_up::teasel_row();
    let failed = Condition::Seen {
        rung: Rung::Failed,
        seen: Seen::Near,
    };
    for part in [2, 4, 6, 8, 9, 10] {
        mark_of(&mut made_up, part).condition = failed;
    }
    let says = answer(&made_up, Asks::Wrong);
    assert_eq!(says.lines().count(), 5, "{says}");
    assert!(
        says.lines().take(4).all(|line| line.contains("failed")),
        "{says}"
    );
    assert!(
        says.ends_with("5 more findings follow, part by part."),
        "{says}"
    );
}
