//! How a ladder stands, by the rule.

use super::answer::answer;
use super::{Common, words_of_computer};
use crate::failure::Failure;
use acts::ladder;
use clap::Args;
use serde_json::json;
use trade::units::Length;
use trade::visit::LadderStood;

/// A ladder as it was measured.
#[derive(Args, Debug)]
pub(super) struct Ladder {
    /// Along it, from its foot to where it rests, as "20 ft"
    #[arg(long)]
    length: Option<Length>,
    /// Level, from its foot to the wall, as "5 ft"
    #[arg(long)]
    base: Option<Length>,
    /// In place of the base: its lean in degrees, read on a rail, once or several times
    #[arg(long, value_name = "DEGREES", value_delimiter = ',', num_args = 1..)]
    lean: Vec<String>,
    /// How high you step off, as "18 ft"
    #[arg(long)]
    landing: Option<Length>,
}

pub(super) fn ladder(common: &Common, asked: &Ladder) -> Result<(), Failure> {
    let words = words_of_computer();
    let readings: Vec<&str> = asked.lean.iter().map(String::as_str).collect();
    let leans = if readings.is_empty() {
        None
    } else {
        Some(ladder::lean_of_readings(&readings)?)
    };
    let says = ladder::says(&LadderStood {
        working: asked.length,
        base: asked.base,
        leans,
        landing: asked.landing,
    })?;
    let caution = words.say(&ladder::caution());
    let says: Vec<String> = says.iter().map(|said| words.say(said)).collect();
    answer(
        common.json,
        &json!({ "caution": caution, "says": says }),
        || {
            std::iter::once(caution.clone())
                .chain(says.iter().cloned())
                .collect::<Vec<_>>()
                .join("\n")
        },
    )
}
