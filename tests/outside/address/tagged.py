"""What usaddress reads in an address, in the shape that Ladderbook gives."""

import usaddress

from lines import DIRECTIONS, STATES, SUFFIXES, UNITS

# Each part of ours, with the labels of usaddress that make it up.
PARTS = {
    "house": ("AddressNumber", "AddressNumberSuffix"),
    "before": ("StreetNamePreDirectional",),
    "name": ("StreetNamePreModifier", "StreetNamePreType", "StreetName"),
    "suffix": ("StreetNamePostType",),
    "after": ("StreetNamePostDirectional",),
    "unit": ("SubaddressType", "SubaddressIdentifier", "OccupancyType", "OccupancyIdentifier"),
    "town": ("PlaceName",),
    "region": ("StateName",),
    "postcode": ("ZipCode",),
}
# usaddress tells parts apart and abbreviates none: the tables of usaddress-scourgify do.
SHORT = {
    "StreetNamePreDirectional": DIRECTIONS,
    "StreetNamePostType": SUFFIXES,
    "StreetNamePostDirectional": DIRECTIONS,
    "OccupancyType": UNITS,
    "SubaddressType": UNITS,
    "StateName": STATES,
}


def tagged(line: str) -> dict[str, str]:
    """The parts of a line, empty ones left out; what has a label that is no part of ours stands under that label."""
    labels = {label: short(label, text) for label, text in usaddress.tag(line)[0].items()}
    parts = {part: " ".join(labels.pop(label) for label in own if label in labels) for part, own in PARTS.items()}
    parts["postcode"] = parts["postcode"][:5]
    return {part: text for part, text in (parts | labels).items() if text}


def short(label: str, text: str) -> str:
    text = text.upper().strip(" ,")
    return SHORT.get(label, {}).get(text, text)


def differences(ours: dict[str, str], theirs: dict[str, str]) -> tuple[str, str]:
    """The parts that differ, as one reads them and as the other does."""
    parts = [part for part in ours | theirs if ours.get(part) != theirs.get(part)]
    return said(ours, parts), said(theirs, parts)


def said(read: dict[str, str], parts: list[str]) -> str:
    return ", ".join(f"{part} {read[part]}" for part in parts if part in read)
