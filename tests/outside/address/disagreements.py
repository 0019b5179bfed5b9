"""What is known to differ between Ladderbook and another program, each with its reason, from `disagreements.toml`."""

import tomllib
from pathlib import Path

Pair = tuple[str, str]


def listed(other: str) -> dict[str, Pair]:
    """The lines on which another program is known to say something else: what we say, what it says."""
    text = Path(__file__).with_name("disagreements.toml").read_text(encoding="utf-8")
    return {
        line: (ours, theirs)
        for entry in tomllib.loads(text)["disagreement"]
        if entry["with"] == other
        for line, (ours, theirs) in entry["lines"].items()
    }


def differing(said: dict[str, Pair]) -> dict[str, Pair]:
    """The lines on which the two differ."""
    return {line: pair for line, pair in said.items() if pair[0] != pair[1]}


def assert_as_listed(other: str, said: dict[str, Pair]) -> None:
    """Fails on a line that differs and isn't listed, and on one that is listed and no longer differs so."""
    known, found = listed(other), differing(said)
    unlisted = {line: pair for line, pair in found.items() if known.get(line) != pair}
    gone = {line: pair for line, pair in known.items() if found.get(line) != pair}
    assert not unlisted, f"differs from {other} and isn't listed (ours, theirs): {unlisted}"
    assert not gone, f"listed as differing from {other}, but doesn't so any more (ours, theirs): {gone}"
