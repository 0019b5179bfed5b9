//! Where a street ends and a town begins, in a text without commas.

use super::direction::Direction;
use super::street::direction_before;
use super::suffix::{Ends, ends_street, suffix};
use super::{name, region, road, unit};

/// How many of the words after the house number belong to the street, its unit left out; the rest is a unit, a town, or both.
/// All of them where nothing tells.
pub(crate) fn street_end(words: &[String]) -> usize {
    let (_, named) = direction_before(words);
    let start = words.len() - named.len();
    if let Some((_, taken)) = road::read_box(words) {
        return taken;
    }
    let road = road::read(named).map(|(_, taken)| start + taken);
    let end = match road {
        Some(end) => end + beside_road(&words[end..]),
        None => match last_road_word(words) {
            Some(at) => second_suffix(words, at) + 1,
            None => return words.len(),
        },
    };
    direction_after(words, end)
}

/// How many words name a road beside a numbered one: `BYPASS`, `FRONTAGE RD`.
fn beside_road(words: &[String]) -> usize {
    let beside = words
        .iter()
        .take_while(|word| {
            matches!(
                word.as_str(),
                "ACCESS"
                    | "ALT"
                    | "ALTERNATE"
                    | "BUS"
                    | "BUSINESS"
                    | "BYP"
                    | "BYPASS"
                    | "FRONTAGE"
                    | "SERVICE"
                    | "SPUR"
            )
        })
        .count();
    let road = words
        .get(beside)
        .is_some_and(|word| ends_street(word) == Some(Ends::Surely));
    beside + usize::from(beside > 0 && road)
}

/// The place of the word that ends the street's name, never the first word: the last of the everyday words for a road ("Long Lane Farm
/// Rd"), else the first of the others.
fn last_road_word(words: &[String]) -> Option<usize> {
    let ends = |at: usize| ends_street(&words[at]);
    let road = |at: usize| ends(at).is_some_and(|ends| ends != Ends::Perhaps);
    // "St" after the street's end and before a further word opens a town: "Main St St Paul".
    let opens_town = |at: usize| name::is_saint(&words[at..]) && (1..at).any(road);
    (1..words.len())
        .rfind(|at| ends(*at) == Some(Ends::Surely) && !opens_town(*at))
        .or_else(|| (1..words.len()).find(|at| ends(*at) == Some(Ends::Likely)))
}

/// "Park Ave Ct": a second suffix belongs to the street where nothing follows that could be a town.
fn second_suffix(words: &[String], at: usize) -> usize {
    let closes = words
        .get(at + 2)
        .is_none_or(|next| Direction::read(next).is_some() || unit::designator(next).is_some());
    match words.get(at + 1) {
        Some(next) if suffix(next).is_some() && unit::designator(next).is_none() && closes => {
            at + 1
        }
        _ => at,
    }
}

/// A direction after the street belongs to it where it is abbreviated or the line ends with it: "Main St N Miami" is in Miami,
/// "Main St North Miami" in North Miami.
fn direction_after(words: &[String], end: usize) -> usize {
    let Some(next) = words.get(end) else {
        return end;
    };
    let Some(direction) = Direction::read(next) else {
        return end;
    };
    let pair = words
        .get(end + 1)
        .and_then(|second| Direction::read_closing_pair(next, second))
        .is_some();
    let taken = end + 1 + usize::from(pair);
    let line_ends = words
        .get(taken)
        .is_none_or(|word| unit::designator(word).is_some() || region::is_zip(word));
    if line_ends || next == direction.short() {
        taken
    } else {
        end
    }
}

/// How many words close `words` as the likely name of a town before a state: two where the first of them opens many towns' names.
pub(crate) fn likely_town(words: &[String]) -> usize {
    let numbered = words
        .last()
        .is_some_and(|last| last.contains(|c: char| c.is_ascii_digit()));
    match words {
        _ if numbered => 0,
        [_, .., before, _] if opens_town(before) => 2,
        [_, .., _] => 1,
        _ => 0,
    }
}

/// Whether a word opens many towns' names (from memory).
pub(crate) fn opens_town(word: &str) -> bool {
    const OPENING: [&str; 25] = [
        "CAPE", "EL", "FORT", "FT", "GRAND", "GREAT", "LA", "LAKE", "LAS", "LITTLE", "LOS",
        "MOUNT", "MT", "NEW", "OLD", "PALM", "PORT", "SAINT", "SALT", "SAN", "SANTA", "ST",
        "SOUTHERN", "UPPER", "WHITE",
    ];
    OPENING.contains(&word) || Direction::read(word).is_some()
}
