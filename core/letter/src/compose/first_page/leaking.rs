//! Is it leaking now, and where from?

use super::{answered, few, line};
use crate::compose::writer::Writer;
use crate::content::Line;
use trade::answer::Answer;
use trade::mark::{Mark, Rung};
use trade::property::Part;
use trade::verdict::{Question, When};
use trade::words::Said;

/// Ways in that page one names.
const WAYS_NAMED: usize = 3;

/// What we saw, then the way in, then what the owner told us.
pub fn lines(writer: &Writer) -> Vec<Line> {
    let owner = writer
        .visit()
        .map_or(Answer::Unknown, |visit| visit.request.leaking);
    let mut lines = match (seen(writer), owner) {
        (Answer::Yes, _) => vec![answered(
            writer,
            "letter-yes",
            &Said::new("letter-leak-seen"),
        )],
        (_, Answer::Yes) => vec![answered(
            writer,
            "letter-yes",
            &Said::new("letter-leak-told"),
        )],
        (Answer::No, _) => vec![answered(
            writer,
            "letter-no",
            &Said::new("letter-leak-none"),
        )],
        (Answer::Unknown, Answer::No) => vec![answered(
            writer,
            "letter-no",
            &Said::new("letter-leak-told-no"),
        )],
        (Answer::Unknown, Answer::Unknown) => vec![answered(
            writer,
            "letter-unknown",
            &Said::new("letter-leak-unknown"),
        )],
    };
    let leaks = seen(writer).is_yes() || owner.is_yes();
    lines.extend(where_from(writer, leaks));
    lines.extend(told(writer));
    lines
}

/// Whether water was seen to come in on this visit.
fn seen(writer: &Writer) -> Answer {
    let marks = writer.marks();
    let answers = marks
        .iter()
        .map(|(part, mark)| writer.answers(part, mark, Question::WaterComesIn));
    // One yes is enough; a no holds only for the place that was looked at, and it takes one.
    answers.fold(Answer::Unknown, |all, one| match (all, one) {
        (Answer::Yes, _) | (_, Answer::Yes) => Answer::Yes,
        (Answer::No, _) | (_, Answer::No) => Answer::No,
        _ => Answer::Unknown,
    })
}

/// The way in: what stands open; where nothing does and it leaks, what is failing; never a guess beyond that.
fn where_from(writer: &Writer, leaks: bool) -> Option<Line> {
    let open = outside(writer, |part, mark| stands_open(writer, part, mark));
    let failing = outside(writer, |_, mark| {
        mark.condition.rung() >= Some(Rung::Failing)
    });
    let (key, ways) = match (leaks, open.is_empty(), failing.is_empty()) {
        (true, false, _) => ("letter-leak-way", open),
        (true, true, false) => ("letter-leak-likely", failing),
        (true, true, true) => return Some(line(writer.text("letter-leak-way-not-found"))),
        (false, false, _) => ("letter-leak-next-rain", open),
        (false, true, _) => return None,
    };
    Some(line(
        writer.say(&Said::new(key).with("parts", few(ways, WAYS_NAMED))),
    ))
}

/// Whether water gets in here now, or at the next rain.
fn stands_open(writer: &Writer, part: &Part, mark: &Mark) -> bool {
    let says = |question| writer.answers(part, mark, question).is_yes();
    let urgent = writer
        .defects(mark)
        .any(|defect| defect.urgency == When::Now);
    says(Question::WaterComesIn)
        || says(Question::OpenToRain)
        || (urgent && mark.condition.rung() >= Some(Rung::Failing))
}

/// The parts seen from outside that are so, worst first: seen from inside, water shows but doesn't come in.
fn outside(writer: &Writer, is_so: impl Fn(&Part, &Mark) -> bool) -> Vec<Said> {
    let marks = writer.marks().into_iter();
    let mut parts: Vec<(&Part, &Mark)> = marks
        .filter(|(part, mark)| !writer.is_inside(part) && is_so(part, mark))
        .collect();
    parts.sort_by_key(|(_, mark)| std::cmp::Reverse(mark.condition.rung()));
    parts
        .into_iter()
        .map(|(part, _)| writer.named(part))
        .collect()
}

/// The room and the weather that the owner named.
fn told(writer: &Writer) -> Option<Line> {
    let request = &writer.visit()?.request;
    let when: Vec<Said> = request
        .wet_when
        .iter()
        .map(|when| writer.small(&Said::new(when.key())))
        .collect();
    let said = match (
        request
            .room
            .as_deref()
            .map(str::trim)
            .filter(|room| !room.is_empty()),
        when.is_empty(),
    ) {
        (None, true) => return None,
        (Some(room), true) => Said::new("letter-told-room").with("room", room),
        (None, false) => Said::new("letter-told-when").with("when", when),
        (Some(room), false) => Said::new("letter-told-room-when")
            .with("room", room)
            .with("when", when),
    };
    Some(line(writer.say(&said)))
}
