"""The published shape of a visit file, judged by PyPI `jsonschema` (JSON Schema 2020-12)."""

import copy
import json
import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from conftest import ROOT
from jsonschema import Draft202012Validator

VISITS = sorted((ROOT / "fixtures" / "demo").glob("*/*.json"))


@pytest.fixture(scope="session")
def shape(ladderbook: Path) -> Draft202012Validator:
    answer = subprocess.run([ladderbook, "schema"], check=True, capture_output=True, text=True)
    schema = json.loads(answer.stdout)
    Draft202012Validator.check_schema(schema)
    return Draft202012Validator(schema)


def test_the_demo_has_visit_files() -> None:
    assert len(VISITS) > 10


@pytest.mark.parametrize("path", VISITS, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_every_visit_file_of_the_demo_is_of_the_shape(shape: Draft202012Validator, path: Path) -> None:
    visit = json.loads(path.read_text())
    assert [error.message for error in shape.iter_errors(visit)] == []


def test_the_checked_in_schema_is_the_one_that_is_published(shape: Draft202012Validator) -> None:
    checked_in = json.loads((ROOT / "docs" / "visit-file.schema.json").read_text())
    assert checked_in == shape.schema


def set_to(value: Any, *way: str | int) -> Callable[[Any], None]:
    """Changes what lies at the end of a way through the file."""

    def change(visit: Any) -> None:
        for step in way[:-1]:
            visit = visit[step]
        visit[way[-1]] = value

    return change


def without(*way: str | int) -> Callable[[Any], None]:
    def change(visit: Any) -> None:
        for step in way[:-1]:
            visit = visit[step]
        del visit[way[-1]]

    return change


PART = ("structures", 0, "parts", 0)
WRONG = {
    "no version": without("ladderbook-visit"),
    "a version in words": set_to("one", "ladderbook-visit"),
    "a negative version": set_to(-1, "ladderbook-visit"),
    "no address": without("property", "address"),
    "an address as one line": set_to("318 Lamplighter Ln", "property", "address"),
    "a role of nobody": set_to("neighbour", "property", "people", 0, "role"),
    "a year in words": set_to("1974 or so", "property", "built"),
    "nobody came": without("visit", "by"),
    "an unknown scope": set_to("a-glance", "visit", "scope"),
    "a member that is not of the shape": set_to("blue", "visit", "colour"),
    "an unknown sky": set_to("green", "visit", "weather", "sky"),
    "structures as words": set_to("a house", "structures"),
    "an unknown structure": set_to("castle", "structures", 0, "kind"),
    "reached by an unknown way": set_to("by-balloon", "structures", 0, "reached"),
    "a side of the sky": set_to("north", "structures", 0, "slopes", 0, "side"),
    "a letter of two": set_to("AB", "structures", 0, "slopes", 0, "letter"),
    "a part without its kind": without(*PART, "kind"),
    "an unknown rung": set_to("so-so", *PART, "rung"),
    "seen in an unknown way": set_to("dreamt", *PART, "seen"),
    "a defect as a word": set_to(["cracked"], *PART, "defects"),
    "a picture without its file": set_to([{"caption": "Eave"}], *PART, "photos"),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_file_of_another_shape_is_refused(shape: Draft202012Validator, name: str) -> None:
    visit = json.loads(VISITS[0].read_text())
    assert shape.is_valid(visit)
    wrong = copy.deepcopy(visit)
    WRONG[name](wrong)
    assert not shape.is_valid(wrong)
