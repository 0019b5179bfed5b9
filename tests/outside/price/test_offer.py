"""Takeoffs and offers, against the same roofs worked out again in Python (`recomputed.py`)."""

import json
import subprocess
from decimal import Decimal
from typing import Any

import pytest
from conftest import ROOT, example
from recomputed import ENDS, PriceList, amounts, boot_lines, covering_lines, down, sums, tasks
from roofs import job, laid, roofs

EXAMPLE = (ROOT / "docs" / "price-list-example.csv").read_text()
# The published list, and the same with the other choices: markup, tax on all, to the cent, halves to even.
OTHER = (
    EXAMPLE.replace("set,margin,,,,,,,,,30 %,", "set,markup,,,,,,,,,37.5 %,")
    .replace("set,tax,materials,", "set,tax,all,")
    .replace("set,round-to,,,,,,,,,whole,", "set,round-to,,,,,,,,,cent,")
    .replace("set,round-half,,,,,,,,,up,", "set,round-half,,,,,,,,,even,")
)
# Lengths and areas are binary fractions in both programs, in another order of steps.
CLOSE = 1e-6


def answers(text: str) -> list[Any]:
    """Three hundred roofs, each with the list it was asked with and the answer."""
    asked = roofs(300)
    told = subprocess.run(
        [example("priced"), "offer"],
        input=json.dumps([job(roof, text) for roof in asked]),
        text=True,
        check=True,
        stdout=subprocess.PIPE,
    )
    return [(roof, PriceList(text), answer) for roof, answer in zip(asked, json.loads(told.stdout), strict=True)]


@pytest.fixture(scope="module")
def offered() -> list[Any]:
    assert OTHER != EXAMPLE and OTHER.count("37.5 %") == 1 and "set,tax,all" in OTHER and ",cent," in OTHER and ",even," in OTHER
    return answers(EXAMPLE) + answers(OTHER)


def test_needs_are_those_of_the_roof(offered: list[Any]) -> None:
    for roof, prices, answer in offered:
        wanted = amounts(roof, laid(roof), prices)
        needs = {need["item"]: need for need in answer["takeoff"]["needs"] if need["item"] != "deck-sheet"}
        assert needs.keys() == wanted.keys(), roof
        for item, amount in wanted.items():
            for end in ENDS:
                assert needs[item]["amount"][end] == pytest.approx(amount[end], rel=CLOSE, abs=CLOSE), (item, end, roof)
        assert answer["takeoff"]["gaps"] == []


def test_work_is_that_of_the_roof(offered: list[Any]) -> None:
    for roof, _, answer in offered:
        told: dict[str, dict[str, float]] = {}
        for task in answer["takeoff"]["tasks"]:
            known = told.setdefault(task["task"], dict.fromkeys(ENDS, 0.0))
            for end in ENDS:
                known[end] += task["amount"][end]
        wanted = tasks(roof)
        assert told.keys() == wanted.keys(), roof
        for task, amount in wanted.items():
            for end in ENDS:
                assert told[task][end] == pytest.approx(amount[end], rel=CLOSE, abs=CLOSE), (task, end, roof)


def test_what_comes_down_is_that_of_the_roof(offered: list[Any]) -> None:
    for roof, prices, answer in offered:
        wanted, told = down(roof, prices), answer["tear_off"]
        for end in ENDS:
            assert told["pounds"][end] == pytest.approx(wanted["pounds"][end], rel=CLOSE)
            assert told["cubic_yards"][end] == pytest.approx(wanted["cubic-yards"][end], rel=CLOSE)
            assert told["loads"][end] == wanted["loads"][end]


def test_every_sum_is_the_same_to_the_cent(offered: list[Any]) -> None:
    for roof, prices, answer in offered:
        boot, covering = answer["offer"]["courses"]
        assert (boot["course"], covering["course"]) == ("repair", "tear-off")
        assert boot["unpriced"] == [] and covering["unpriced"] == []
        once = sums(boot_lines(roof, prices), prices, "likely", 0)
        for what, amount in once.items():
            for end in ENDS:
                assert Decimal(boot["sums"][what][end]) == amount, (what, roof)
        lines = covering_lines(roof, laid(roof), prices)
        sheets = {"least": 1, "likely": 2, "most": 5}
        for end in ENDS:
            for what, amount in sums(lines, prices, end, sheets[end]).items():
                assert Decimal(covering["sums"][what][end]) == amount, (what, end, roof)


def test_the_offer_holds_as_long_as_the_list_says(offered: list[Any]) -> None:
    for _, _, answer in offered:
        assert answer["offer"]["on"] == "2026-06-02"
        assert answer["offer"]["valid_until"] == "2026-07-02"
