//! Screens as plain text, for the terminal and for those who read with their ears.

use acts::measured::Measured;
use screens::{
    Changed, CourseBlock, Doorstep, FieldKind, Leak, Letter, Offer, RefusedBlock, Row, StepBlock,
    ThenAndNow, Verdict,
};
use std::fmt::Write as _;
use trade::words::Words;

/// Writes to a string, which cannot fail.
macro_rules! line {
    ($out:expr) => { $out.push('\n') };
    ($out:expr, $($arg:tt)*) => { let _ = writeln!($out, $($arg)*); };
}

fn heading(out: &mut String, text: &str) {
    line!(out);
    line!(out, "{text}");
    line!(out, "{}", "-".repeat(text.chars().count()));
}

fn row(out: &mut String, row: &Row) {
    line!(out, "  {}", row.title);
    if !row.says.is_empty() {
        line!(out, "      {}", row.says);
    }
}

/// The Doorstep.
pub fn doorstep(state: &Doorstep) -> String {
    let mut out = String::new();
    line!(out, "{}", state.address);
    line!(out, "{}", state.under);
    for danger in &state.dangers {
        line!(out, "! {danger}");
    }
    if let Some(asked) = &state.asked {
        heading(&mut out, &asked.title);
        line!(out, "  {}", asked.words);
    }
    if let Some(then) = &state.then {
        heading(&mut out, &then.title);
        line!(out, "  {}", then.said);
        for why in then.contradicts.iter().chain(&then.why) {
            line!(out, "      {why}");
        }
    }
    if !state.look_again.is_empty() {
        heading(&mut out, &state.look_title);
        for one in state.look_again.iter().chain(&state.look_rest) {
            row(&mut out, one);
        }
    }
    if !state.lines.is_empty() {
        line!(out);
        for one in &state.lines {
            line!(out, "{}: {}", one.title, one.says);
        }
    }
    out
}

/// Then and now.
pub fn then_and_now(state: &ThenAndNow) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.title);
    for Changed {
        part, became, says, ..
    } in &state.changed
    {
        line!(out);
        line!(out, "  {part}: {became}");
        for one in says {
            line!(out, "      {one}");
        }
    }
    if let Some(quiet) = &state.quiet {
        line!(out);
        line!(out, "  {quiet}");
    }
    out
}

/// A verdict.
pub fn verdict(state: &Verdict) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.title);
    for StepBlock {
        when,
        what,
        tasks,
        until,
        why: reasons,
        why_more: _,
    } in &state.steps
    {
        heading(&mut out, when);
        line!(out, "  {what}");
        for one in until.iter().chain(tasks) {
            line!(out, "    {one}");
        }
        why(&mut out, reasons);
    }
    for RefusedBlock {
        what,
        label,
        why: reasons,
    } in &state.refused
    {
        heading(&mut out, &format!("{label}: {what}"));
        why(&mut out, reasons);
    }
    if !state.look.is_empty() {
        heading(&mut out, &state.look_title);
        for one in &state.look {
            row(&mut out, one);
        }
        if let Some(turns) = &state.turns_to {
            line!(out, "  {turns}");
        }
    }
    list(&mut out, &state.cautions_title, &state.cautions);
    list(&mut out, &state.unseen_title, &state.unseen);
    for limit in &state.limits {
        line!(out, "{limit}");
    }
    out
}

fn list(out: &mut String, title: &str, items: &[String]) {
    if items.is_empty() {
        return;
    }
    heading(out, title);
    for item in items {
        line!(out, "  {item}");
    }
}

fn why(out: &mut String, reasons: &[(String, String)]) {
    for (says, source) in reasons {
        line!(out, "      {says} ({source})");
    }
}

/// What page one of a letter says.
pub fn letter(state: &Letter) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.title);
    for (question, answer) in &state.preview {
        heading(&mut out, question);
        for one in answer {
            line!(out, "  {one}");
        }
    }
    out
}

/// The plan of a roof.
pub fn measured(measured: &Measured, words: &Words) -> String {
    let mut out = String::new();
    for (title, says) in measured.rows(words) {
        line!(out, "  {title}: {says}");
    }
    out
}

/// Where water comes in.
pub fn leak(state: &Leak) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.title);
    heading(&mut out, &state.suspects_title);
    for suspect in &state.suspects {
        row(&mut out, &suspect.row);
        for why in &suspect.why {
            line!(out, "        {why}");
        }
    }
    if let Some(caution) = &state.caution {
        line!(out);
        line!(out, "{caution}");
    }
    out
}

/// What a new covering takes and what the roof carries.
pub fn takeoff(state: &Offer) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.takes_title);
    for one in &state.takes {
        row(&mut out, one);
    }
    heading(&mut out, &state.weighs_title);
    for one in &state.weighs {
        line!(out, "  {one}");
    }
    out
}

/// What each course costs.
pub fn offer(state: &Offer) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.title);
    line!(out, "{}", state.put);
    if let Some(trouble) = &state.trouble {
        line!(out, "{trouble}");
    }
    for course in &state.courses {
        priced(&mut out, course);
    }
    out
}

/// What is counted and chosen for an offer: each field by its name, with what stands in it and what it asks.
pub fn worksheet(state: &Offer) -> String {
    let mut out = String::new();
    line!(out, "{}: {}", state.under, state.title);
    let Some(form) = &state.worksheet else {
        return out;
    };
    heading(&mut out, &form.title);
    for field in &form.fields {
        line!(out, "  {}={}", field.name, field.value);
        line!(out, "      {}", field.label);
        if let FieldKind::OneOf { choices } = &field.kind {
            for choice in choices {
                line!(out, "        {}: {}", choice.value, choice.label);
            }
        }
    }
    out
}

fn priced(out: &mut String, course: &CourseBlock) {
    heading(out, &format!("{}: {}", course.when, course.what));
    let told = course.until.iter().chain(&course.price);
    for one in told.chain(&course.unpriced).chain(&course.beside) {
        line!(out, "  {one}");
    }
    for (title, lines) in [
        (&course.includes_title, &course.includes),
        (&course.leaves_title, &course.leaves),
    ] {
        if !lines.is_empty() {
            line!(out, "  {title}:");
        }
        for one in lines {
            line!(out, "    {one}");
        }
    }
}
