//! What the main story's screens say, to be read: a change of wording shows here.

use fixtures::play::Player;
use job::hand::Hand;
use job::scene::{self, Scene, main_story_alone};
use screens::{Place, Screens};
use serde_json::Value;

#[test]
fn the_doorstep_before_and_the_judging_after() {
    let demo = main_story_alone();
    let scene = Scene::new();
    let mut player = Player::new(&demo);
    let (book, call) = scene.until_call(&mut player);
    let hand = Hand::new(Screens::of(book), demo.today);
    let doorstep = hand
        .screens
        .doorstep(call.property, Some(&call.request), hand.now());
    let mut doorstep = doorstep.expect("the doorstep is shown");
    // The demo records two works of one day in one moment: either may come first.
    for alike in doorstep
        .lines
        .chunk_by_mut(|one, next| one.title == next.title)
    {
        alike.sort_by(|one, next| one.says.cmp(&next.says));
    }
    snapshot("doorstep", &doorstep);
    let mut book = hand.screens.into_book();
    player.rest(&mut book).expect("the demo plays to its end");
    let mut hand = Hand::new(Screens::of(book), demo.today);
    let history = scene::history(hand.screens.book(), call.property);
    let visit = history.visits.last().expect("there is a visit").id;
    hand.at = Place::ThenAndNow { visit };
    snapshot("then-and-now", &hand.look());
    for (at, structure) in history.structures.iter().enumerate() {
        hand.at = Place::Verdict {
            visit,
            structure: structure.id,
        };
        snapshot(&format!("verdict-{at}"), &hand.look());
    }
}

/// The words of a state, line by line: no identifiers, no actions, no forms.
fn snapshot(name: &str, state: &impl serde::Serialize) {
    let value = serde_json::to_value(state).expect("a state is JSON");
    let mut lines = Vec::new();
    read(&value, 0, &mut lines);
    insta::assert_snapshot!(name, lines.join("\n"));
}

fn read(value: &Value, deep: usize, lines: &mut Vec<String>) {
    let indent = "  ".repeat(deep);
    match value {
        Value::Object(members) => {
            for (name, member) in members.iter().filter(|(name, _)| !is_no_word(name)) {
                match member {
                    Value::Null => {}
                    Value::Array(all) if all.is_empty() => {}
                    Value::Object(_) | Value::Array(_) => {
                        lines.push(format!("{indent}{name}:"));
                        read(member, deep + 1, lines);
                    }
                    other => lines.push(format!("{indent}{name}: {}", plain(other))),
                }
            }
        }
        Value::Array(all) => {
            for one in all {
                lines.push(format!("{indent}-"));
                read(one, deep + 1, lines);
            }
        }
        other => lines.push(format!("{indent}{}", plain(other))),
    }
}

fn is_no_word(name: &str) -> bool {
    matches!(name, "action" | "photo" | "correct" | "open" | "chosen")
}

fn plain(value: &Value) -> String {
    value
        .as_str()
        .map_or_else(|| value.to_string(), str::to_owned)
}
