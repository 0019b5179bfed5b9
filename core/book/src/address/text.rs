//! An address in one line of text: with commas or without, whole or half typed.

use super::line::{Line, split_unit, units};
use super::{Normal, fold, house::House, name, place, region, road, suffix, unit};
use super::{direction::Direction, street::direction_before, unit::Before};

/// The one form of an address in one line of text. What a town is, and where the street ends, is told by commas; where there are none, by
/// the last word for a road, the state and the ZIP code.
pub fn normalise_text(text: &str) -> Normal {
    let mut parts = fold::parts(text);
    drop_country(&mut parts);
    let (line, extra) = line_and_extra(parts);
    let (mut found, units) = extra_parts(extra);
    let Line {
        house,
        street,
        unit,
    } = if found.town.is_empty() {
        let (line, unit) = split_unit(&line);
        let read = without_commas(line, &mut found);
        Line {
            unit: with_units(read.unit, unit),
            ..read
        }
    } else {
        Line::read(&line)
    };
    Normal {
        house,
        street,
        unit: with_units(unit, &units),
        ..found
    }
}

/// A unit and what commas set off as further units, in kept form where it can be read as units, else as written.
pub(super) fn with_units(unit: String, further: &[String]) -> String {
    if further.is_empty() {
        return unit;
    }
    let mut words: Vec<String> = unit
        .split(' ')
        .filter(|w| !w.is_empty())
        .map(str::to_owned)
        .collect();
    words.extend_from_slice(further);
    units(&words).unwrap_or_else(|| words.join(" "))
}

/// The part that holds house and street, and the others in their order.
///
/// A house number that a comma sets off is joined to its street; a unit that comes first goes to the others; a name before the house
/// number ("Miller residence, 12 Oak St") is left out, as it tells no two houses apart.
pub(super) fn line_and_extra(parts: Vec<Vec<String>>) -> (Vec<String>, Vec<Vec<String>>) {
    let mut parts = parts;
    let is_house = |part: &[String]| House::read(part).is_some();
    let unnumbered = |part: &[String]| !part.concat().contains(|c: char| c.is_ascii_digit());
    if let [first, second, ..] = parts.as_slice()
        && unnumbered(first)
        && is_house(second)
        && !is_house_alone(second)
    {
        parts.remove(0);
    }
    if parts.is_empty() {
        return (Vec::new(), Vec::new());
    }
    let opens = |at: usize| !is_unit(&parts[at]) && !is_box_beside(&parts[at..]);
    let at = (0..parts.len()).find(|at| opens(*at)).unwrap_or(0);
    let mut line = parts.remove(at);
    let mut extra: Vec<_> = parts.drain(..at).collect();
    while is_house_alone(&line)
        && let Some(street) = parts.iter().position(|part| !opens_with_unit(part))
    {
        line.extend(parts.remove(street));
    }
    extra.extend(parts);
    (name::joined(&line), extra)
}

fn is_house_alone(part: &[String]) -> bool {
    House::read(part).is_some_and(|(_, taken)| taken == part.len())
}

fn opens_with_unit(part: &[String]) -> bool {
    let (_, taken) = unit::read(part, Before::Name);
    taken > 0 || is_unit(part)
}

fn is_unit(part: &[String]) -> bool {
    units(part).is_some() && !is_box(part)
}

/// A box that comes before the house it belongs to.
fn is_box_beside(parts: &[Vec<String>]) -> bool {
    matches!(parts, [first, second, ..] if is_box(first) && House::read(second).is_some())
}

fn is_box(part: &[String]) -> bool {
    road::read_box(part).is_some_and(|(_, taken)| taken == part.len())
}

fn drop_country(parts: &mut Vec<Vec<String>>) {
    let country = |words: &[String]| {
        let said = words.join(" ");
        matches!(
            said.as_str(),
            "USA" | "US" | "UNITED STATES" | "UNITED STATES OF AMERICA"
        )
    };
    while parts.len() > 1 && parts.last().is_some_and(|last| country(last)) {
        parts.pop();
    }
    let mut words: usize = parts.iter().map(Vec::len).sum();
    while let Some(last) = parts.last_mut()
        && words > 1
        && last.last().is_some_and(|word| word == "USA")
    {
        last.pop();
        words -= 1;
        parts.retain(|part| !part.is_empty());
    }
}

/// What the parts beside the line say: the place, and the words of further units.
fn extra_parts(extra: Vec<Vec<String>>) -> (Normal, Vec<String>) {
    let (units, places): (Vec<_>, Vec<_>) = extra
        .into_iter()
        .partition(|part| is_unit(part) || is_box(part));
    let mut found = Normal::default();
    let mut towns = Vec::new();
    for (at, part) in places.into_iter().enumerate().rev() {
        let town_may_precede = at > 0;
        let rest = take_postcode(&part, &mut found);
        let rest = take_region(rest, town_may_precede, &mut found);
        towns.splice(0..0, rest.to_vec());
    }
    found.town = name::town(&towns);
    (found, units.concat())
}

/// The place that a part says, where it says nothing else.
pub(super) fn last_line(part: &[String]) -> Normal {
    extra_parts(vec![part.to_vec()]).0
}

fn take_postcode<'a>(words: &'a [String], found: &mut Normal) -> &'a [String] {
    match words {
        [rest @ .., last] if region::is_zip(last) && found.postcode.is_empty() => {
            last[..5].clone_into(&mut found.postcode);
            rest
        }
        _ => words,
    }
}

/// Takes the state that closes a part. A state's whole name may be a town's ("Washington") or close one ("Port Washington").
fn take_region<'a>(
    words: &'a [String],
    town_may_precede: bool,
    found: &mut Normal,
) -> &'a [String] {
    let Some((letters, taken)) = region::closing(words) else {
        return words;
    };
    let rest = &words[..words.len() - taken];
    let abbreviated = words[words.len() - 1] == letters;
    let closes_town = matches!(rest, [only] if place::opens_town(only));
    let certain = abbreviated
        || (rest.is_empty() && (town_may_precede || !found.postcode.is_empty()))
        || (!rest.is_empty() && !closes_town);
    if !found.region.is_empty() || !certain {
        return words;
    }
    letters.clone_into(&mut found.region);
    rest
}

/// Reads a line that may close with town, state and ZIP code, no comma telling where; the place goes to `found`.
fn without_commas(words: &[String], found: &mut Normal) -> Line {
    let words = if closes_with_postcode(words) {
        take_postcode(words, found)
    } else {
        words
    };
    let (line, tail) = Line::read_first(words);
    if !tail.is_empty() {
        let rest = take_region(tail, false, found);
        found.town = name::town(rest);
        return line;
    }
    if !line.street.suffix.is_empty() {
        return line;
    }
    let end = street_before_state(words, found);
    if end == words.len() {
        return line;
    }
    Line::read(&words[..end])
}

/// Whether the last word is a ZIP code: not the only one beside a house number, and not a road's number.
fn closes_with_postcode(words: &[String]) -> bool {
    let Some(last) = words.last() else {
        return false;
    };
    let street = match House::read(words) {
        Some((_, taken)) => &words[taken..],
        None => words,
    };
    let (_, named) = direction_before(street);
    let road = road::read(named).is_some_and(|(_, taken)| taken == named.len());
    let in_box = road::read_box(street).is_some_and(|(_, taken)| taken == street.len());
    region::is_zip(last) && street.len() > 1 && !road && !in_box
}

/// Where the street ends in words that close with a state but hold no word for a road: "12 Broadway Springfield IL". State and town go
/// to `found`; without a state all words are the street's.
fn street_before_state(words: &[String], found: &mut Normal) -> usize {
    let all = words.len();
    if found.region.is_empty() {
        let Some((letters, taken)) = region::closing(words) else {
            return all;
        };
        let last = &words[all - 1];
        let other = suffix(last).is_some() || Direction::read(last).is_some();
        if all < taken + 3 || last != letters || other {
            return all;
        }
        letters.clone_into(&mut found.region);
        return before_town(&words[..all - taken], found);
    }
    before_town(words, found)
}

fn before_town(words: &[String], found: &mut Normal) -> usize {
    let street = House::read(words).map_or(0, |(_, taken)| taken);
    let town = place::likely_town(&words[street..]);
    let end = words.len() - town;
    found.town = name::town(&words[end..]);
    end
}
