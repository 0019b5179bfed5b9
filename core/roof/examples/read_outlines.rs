//! Reads outlines, a JSON list of texts on standard input, and writes what each says: for the outside checks.

use roof::{ShapeError, read_outline, survey};
use serde_json::{Value, json};
use std::io::Read;
use trade::sketch::Drawn;
use trade::units::{Got, Length};

fn main() -> std::io::Result<()> {
    let mut texts = String::new();
    std::io::stdin().read_to_string(&mut texts)?;
    let texts: Vec<String> = serde_json::from_str(&texts)?;
    let answers: Vec<Value> = texts.iter().map(|text| answer(text)).collect();
    println!("{}", Value::from(answers));
    Ok(())
}

/// What was drawn, with a taped round as it was closed; or what is wrong, and whether the file is of the wrong shape or the roof in it.
fn answer(text: &str) -> Value {
    match read_outline(text, None, Length::ZERO) {
        Ok(drawn) => json!({ "drawn": drawn, "closed": closed(&drawn) }),
        Err(error) => json!({
            "wrong": error.says().in_english(),
            "in_file": matches!(error, ShapeError::File { .. }),
        }),
    }
}

fn closed(drawn: &Drawn) -> Option<Value> {
    let Drawn::Legs { legs, .. } = drawn else {
        return None;
    };
    let closed = survey::close(legs, Got::Tape).ok()?;
    let lengths: Vec<f64> = closed
        .lengths
        .iter()
        .map(|length| length.in_metres())
        .collect();
    Some(json!({ "lengths": lengths, "turns": closed.turns }))
}
