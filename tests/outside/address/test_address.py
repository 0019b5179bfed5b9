"""Addresses in their one form, against USPS Publication 28, usaddress-scourgify 0.7.1 and usaddress 0.5.16."""

import json
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest
from scourgify.normalize import normalize_addr_str

import lines
from conftest import example
from disagreements import assert_as_listed
from tagged import differences, tagged

Reader = Callable[[list[str]], list[dict[str, str]]]

TABLES = "tables of usaddress-scourgify"
SCOURGIFY = "usaddress-scourgify"
USADDRESS = "usaddress"
C1 = "Publication 28, Appendix C1"


@pytest.fixture(scope="session")
def ours() -> Reader:
    """Reads lines as Ladderbook does: each part of an address that it found, empty ones left out."""
    def read(written: list[str]) -> list[dict[str, str]]:
        text = "".join(f"{line}\n" for line in written)
        answer = subprocess.run([example("normalise")], input=text, capture_output=True, text=True, check=True)
        answers = [json.loads(line) for line in answer.stdout.splitlines()]
        assert len(answers) == len(written)
        return [{part: said for part, said in one.items() if said and part != "key"} for one in answers]

    return read


def joined(parts: dict[str, str], *wanted: str) -> str:
    return " ".join(parts[part] for part in wanted if part in parts)


def rows(name: str) -> list[list[str]]:
    text = Path(__file__).with_name(name).read_text(encoding="utf-8")
    return [line.split() for line in text.splitlines() if not line.startswith("#")]


def test_every_suffix_of_publication_28(ours: Reader) -> None:
    # Of a spelling that stands in two rows, the first counts: MDW is Meadow's before it is Meadows'.
    expected = {f"123 Elm {word}": row[1] for row in reversed(rows("publication_28_c1.txt")) for word in row}
    read = ours(list(expected))
    assert len(expected) > 400
    said = {line: (parts.get("suffix", ""), expected[line]) for line, parts in zip(expected, read)}
    assert_as_listed(C1, said)


def test_every_unit_of_publication_28(ours: Reader) -> None:
    table = rows("publication_28_c2.txt")
    numbered = {f"123 Elm St {word} 4": f"{row[1]} 4" for row in table for word in row[:2]}
    alone = {f"123 Elm St {word}": row[1] for row in table if row[2:] == ["alone"] for word in row[:2]}
    expected = numbered | alone
    for line, parts in zip(expected, ours(list(expected))):
        assert parts == {"house": "123", "name": "ELM", "suffix": "ST", "unit": expected[line]}, line


def test_every_entry_of_the_tables(ours: Reader) -> None:
    wanted = [
        (lines.suffix_lines(), ("suffix",)),
        (lines.road_lines(), ("name",)),
        (lines.direction_lines(), ("before", "name", "suffix", "after")),
        (lines.unit_lines(), ("unit",)),
        (lines.state_lines(), ("region",)),
    ]
    said = {}
    for table, parts in wanted:
        read = ours(list(table))
        said |= {line: (joined(one, *parts), short) for (line, short), one in zip(table.items(), read)}
    assert len(said) > 700
    assert_as_listed(TABLES, said)


def test_every_line_as_scourgify_has_it(ours: Reader) -> None:
    made = [*lines.suffix_lines(), *lines.road_lines(), *lines.direction_lines(), *lines.unit_lines()]
    line = ("house", "before", "name", "suffix", "after", "unit")
    said = {
        written: (joined(parts, *line), scourgified(written)) for written, parts in zip(made, ours(made))
    }
    assert_as_listed(SCOURGIFY, said)


def scourgified(line: str) -> str:
    found = normalize_addr_str(line)
    return " ".join(found[part] for part in ("address_line_1", "address_line_2", "city") if found[part])


def test_every_part_as_usaddress_tells_it(ours: Reader) -> None:
    made = [
        *lines.suffix_lines(),
        *lines.road_lines(),
        *lines.direction_lines(),
        *lines.unit_lines(),
        *lines.state_lines(),
        *lines.whole_lines(),
    ]
    assert len(made) > 1500
    said = {line: differences(parts, tagged(line)) for line, parts in zip(made, ours(made))}
    assert_as_listed(USADDRESS, said)
