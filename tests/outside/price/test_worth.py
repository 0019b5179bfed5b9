"""Money through time, against `numpy-financial`: pmt, pv and npv."""

import json
import random
import subprocess
from decimal import Decimal
from typing import Any

import numpy_financial
import pytest
from conftest import example

MONTHS = 12
# Both sides hold at least fifteen digits; ours are decimal, theirs binary.
EXACT = 1e-9


def sums() -> list[dict[str, Any]]:
    """Prices, rates and times: the ends of what is reckoned with, and two thousand between."""
    dice = random.Random(20)
    rows = [
        {"price": "1.00", "rate": "0.0001", "years": 1, "months": 1, "holds": 1},
        {"price": "1000000.00", "rate": "0.5", "years": 100, "months": 1200, "holds": 600},
    ]
    for _ in range(2000):
        rows.append(
            {
                "price": str(Decimal(dice.randrange(100, 10_000_000)) / 100),
                "rate": str(Decimal(dice.randrange(1, 2000)) / 10_000),
                "years": dice.randrange(1, 61),
                "months": dice.randrange(1, 721),
                "holds": dice.randrange(3, 121),
            }
        )
    return rows


@pytest.fixture(scope="module")
def worths() -> list[tuple[dict[str, Any], dict[str, Any]]]:
    asked = sums()
    told = subprocess.run([example("priced"), "worth"], input=json.dumps(asked), text=True, check=True, stdout=subprocess.PIPE)
    return list(zip(asked, json.loads(told.stdout), strict=True))


def test_capital_recovery_is_pmt(worths: list[Any]) -> None:
    for asked, told in worths:
        pmt = numpy_financial.pmt(float(asked["rate"]), asked["years"], -float(asked["price"]))
        assert float(told["a_year"]) == pytest.approx(float(pmt), rel=EXACT), asked


def test_an_annuity_is_pv(worths: list[Any]) -> None:
    for asked, told in worths:
        pv = numpy_financial.pv(float(asked["rate"]), asked["years"], -float(asked["price"]))
        assert float(told["annuity"]) == pytest.approx(float(pv), rel=EXACT), asked


def test_one_payment_later_is_pv_without_payments(worths: list[Any]) -> None:
    for asked, told in worths:
        pv = numpy_financial.pv(float(asked["rate"]), asked["months"] / MONTHS, 0, -float(asked["price"]))
        assert float(told["now"]) == pytest.approx(float(pv), rel=EXACT), asked


def test_patching_again_is_npv(worths: list[Any]) -> None:
    """The first patch now, the next whenever one has run out, none at or after the last month."""
    for asked, told in worths:
        price, holds = float(asked["price"]), asked["holds"]
        flows = [price if month % holds == 0 else 0.0 for month in range(asked["years"] * MONTHS)]
        a_month = (1 + float(asked["rate"])) ** (1 / MONTHS) - 1
        total, now = told["patching"]
        assert Decimal(total) == Decimal(asked["price"]) * sum(1 for flow in flows if flow)
        assert float(now) == pytest.approx(float(numpy_financial.npv(a_month, flows)), rel=EXACT), asked
