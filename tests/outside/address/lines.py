"""Addresses made from the tables of usaddress-scourgify, so that every suffix, direction, unit and state it knows stands in one."""

from scourgify.address_constants import (
    AMBIGUOUS_DIRECTIONALS,
    DIRECTIONAL_REPLACEMENTS,
    OCCUPANCY_TYPE_ABBREVIATIONS,
    STATE_ABBREVIATIONS,
    STREET_TYPE_ABBREVIATIONS,
)


def with_own(table: dict[str, str]) -> dict[str, str]:
    """A table in which each abbreviation is read as itself, too."""
    return {**{short: short for short in table.values()}, **table}


DIRECTIONS = with_own(DIRECTIONAL_REPLACEMENTS)
DASHED_DIRECTIONS = AMBIGUOUS_DIRECTIONALS
SUFFIXES = {word: short for word, short in STREET_TYPE_ABBREVIATIONS.items() if " " not in word}
ROADS = {words: short for words, short in STREET_TYPE_ABBREVIATIONS.items() if " " in words}
UNITS = with_own(OCCUPANCY_TYPE_ABBREVIATIONS)
STATES = with_own(STATE_ABBREVIATIONS)

PLACE = "Alma, MI 48801"


def suffix_lines() -> dict[str, str]:
    """Each line with the standard abbreviation that the table gives its suffix."""
    return {f"123 Elm {word}": short for word, short in SUFFIXES.items()}


def road_lines() -> dict[str, str]:
    """Each line with the road's name that the table gives."""
    return {f"123 {words} 9": f"{short} 9" for words, short in ROADS.items()}


def direction_lines() -> dict[str, str]:
    """Each line with the direction that the table gives, before the street's name and after its suffix."""
    known = {**DIRECTIONS, **DASHED_DIRECTIONS}
    before = {f"123 {word} Elm St": f"{short} Elm St" for word, short in known.items()}
    after = {f"123 Elm St {word}": f"Elm St {short}" for word, short in known.items()}
    return {line: street.upper() for line, street in (before | after).items()}


def unit_lines() -> dict[str, str]:
    """Each line with the unit that the table gives."""
    return {f"123 Elm St {word} 4": f"{short} 4" for word, short in UNITS.items()}


def state_lines() -> dict[str, str]:
    """Each line with the letters that the table gives its state."""
    return {f"123 Elm St, Alma, {word} 48801": short for word, short in STATES.items()}


def whole_lines() -> list[str]:
    """Whole addresses: each suffix, direction and unit once more, with what else an address holds."""
    made = [f"4512 N Oak {suffix}, {PLACE}" for suffix in SUFFIXES]
    made += [f"77 {before} Oak Ave {after}, {PLACE}" for before in DIRECTIONS for after in DIRECTIONS]
    made += [f"9 Oak Rd {unit} 4B, {PLACE}" for unit in UNITS]
    made += [f"12-14 W 3rd St {unit} 4B, {PLACE}-1234" for unit in UNITS]
    made += [f"{house} Oak Ln, {PLACE}" for house in ("5", "5A", "5 1/2", "112-10", "N6W23001", "12-14")]
    return made
