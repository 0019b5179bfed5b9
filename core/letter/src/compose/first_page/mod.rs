//! Page one: what owners ask, each answered in a few lines.

mod advice;
mod leaking;
mod patch;
mod state;

use super::writer::Writer;
use super::{led, line};
use crate::content::{Answer, Asks, Line};
use trade::words::Said;

pub use advice::{step_told, when_and_where, work, work_explained};

/// The questions in the order an owner asks them.
pub fn answers(writer: &Writer) -> Vec<Answer> {
    let all = [
        (Asks::Leaking, "letter-ask-leaking", leaking::lines(writer)),
        (Asks::Wrong, "letter-ask-wrong", state::wrong(writer)),
        (Asks::Advice, "letter-ask-advice", advice::steps(writer)),
        (Asks::Waiting, "letter-ask-waiting", advice::waiting(writer)),
        (Asks::Patch, "letter-ask-patch", patch::lines(writer)),
        (Asks::Lasting, "letter-ask-lasting", advice::lasting(writer)),
        (Asks::Wood, "letter-ask-wood", state::wood(writer)),
        (Asks::Permit, "letter-ask-permit", advice::permit(writer)),
        (
            Asks::Warranty,
            "letter-ask-warranty",
            vec![line(writer.text("letter-warranty"))],
        ),
        (
            Asks::NotSeen,
            "letter-ask-not-seen",
            state::not_seen(writer),
        ),
    ];
    all.into_iter()
        .map(|(asks, question, says)| Answer {
            asks,
            question: writer.text(question),
            says,
        })
        .collect()
}

/// The first few of many, and how many more there are, so that page one stays one page.
fn few(said: Vec<Said>, most: usize) -> Said {
    let more = said.len().saturating_sub(most);
    let first: Vec<Said> = said.into_iter().take(most).collect();
    let list = Said::new("letter-list").with("each", first);
    if more == 0 {
        list
    } else {
        Said::new("letter-and-more")
            .with("list", list)
            .with("more", i64::try_from(more).unwrap_or(i64::MAX))
    }
}

/// A line led by yes, no or "not known".
fn answered(writer: &Writer, lead: &str, said: &Said) -> Line {
    led(writer.text(lead), writer.say(said))
}
