"""A takeoff and an offer worked out again from the roof and the CSV alone, by code that shares nothing with ours: Python's `decimal` and `csv`,
docs/price-list.md for how a price is made, and the sections of the code named beside each rule."""

import csv
import math
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from typing import Any

from roofs import factor

ENDS = ("least", "likely", "most")
CENT = Decimal("0.01")
HUNDRED = Decimal(100)
# Pounds a square of one layer of strips: a textbook's range, a municipal minimum of 235. Pounds a cubic yard: EPA 2016, from memory.
STRIP_POUNDS = {"least": 180, "likely": 235, "most": 350}
CUBIC_YARD_POUNDS = 731


class PriceList:
    """The file, row by row."""

    def __init__(self, text: str) -> None:
        lines = [row for row in text.splitlines() if row and not row.startswith("#")]
        self.rows = list(csv.DictReader(lines))
        self.bands = [(row["key"], row["value"]) for row in self.of("band")]
        self.rates = {row["key"]: Decimal(row["price"]) for row in self.of("rate")}
        self.usual = self.of("rate")[0]["key"]
        self.half = ROUND_HALF_EVEN if self.setting("round-half")["value"] == "even" else ROUND_HALF_UP

    def of(self, kind: str, key: str | None = None) -> list[dict[str, str]]:
        return [row for row in self.rows if row["row"] == kind and key in (None, row["key"])]

    def setting(self, key: str) -> dict[str, str]:
        return (self.of("set", key) or [dict.fromkeys(("of", "value", "price"), "")])[0]

    def share(self, key: str) -> Decimal:
        return Decimal(self.setting(key)["value"].rstrip("% ") or 0) / HUNDRED

    def price(self, key: str) -> Decimal:
        return Decimal(self.setting(key)["price"] or 0)

    def band(self, rise: float) -> str:
        return next(key for key, to in self.bands if not to or rise <= float(to.split(":")[0]))

    def in_band(self, kind: str, key: str, rise: float) -> dict[str, str]:
        rows = {row["of"]: row for row in self.of(kind, key)}
        return rows.get(self.band(rise)) or rows[""]

    def rate(self, row: dict[str, str]) -> Decimal:
        return self.rates[row["value"] or self.usual]

    def pack(self, item: str, size: float | None = None) -> tuple[float, Decimal]:
        """What a pack holds, and its price."""
        rows = self.of("material", item)
        fits = [row for row in rows if row["size"] and size is not None and number(row["size"]) >= size]
        row = min(fits, key=lambda row: number(row["size"])) if fits else next(row for row in rows if not row["size"])
        holds = float(row["amount"] or 0)
        if not holds:
            holds = number(row["length"]) * (number(row["width"]) / 12 if row["unit"] == "square-foot" else 1)
        return holds, Decimal(row["price"])

    def waste(self, item: str) -> float:
        return 1 + float(self.of("material", item)[0]["value"].rstrip("% ") or 0) / 100

    def cents(self, amount: Decimal) -> Decimal:
        return amount.quantize(CENT, rounding=self.half)


def number(length: str) -> float:
    return float(length.split()[0])


def within(value: float, share: float) -> dict[str, float]:
    return {"least": value * (1 - share), "likely": value, "most": value * (1 + share)}


def packs(amount: float, holds: float) -> int:
    """Whole packs; a millionth of one opens no new one."""
    return math.ceil(amount / holds * (1 - 1e-6))


def ice_courses(roof: dict[str, Any], share: float) -> int:
    """IRC R905.1.2: from the lowest edge to 24 in inside the wall on plan; since 2018 at 8:12 and steeper at least 36 in along the slope.
    36 in courses that lap 4 in."""
    reach = (roof["overhang"] * 12 + 24) * factor(roof["rise"])
    if roof["edition"] >= 2018 and roof["rise"] >= 8:
        reach = max(reach, 36)
    return 1 + max(0, math.ceil((reach * share - 36 - 0.001) / 32))


def amounts(roof: dict[str, Any], laid: dict[str, Any], prices: PriceList) -> dict[str, dict[str, float]]:
    """Every item and how much of it."""
    length, pitch = roof["length_within"], roof["pitch_within"]
    area = 2 * length + pitch
    slope = roof["long"] * roof["wide"] * factor(roof["rise"])
    up = roof["wide"] / 2 * factor(roof["rise"])
    eaves, rakes = 2 * roof["long"], 4 * up
    found = {
        # Strips are opened for the field; starter and caps are bought, as the list has them.
        "strip-shingle": within(laid["field"], area),
        "starter": within(eaves, length),
        "cap": within(roof["long"], length + pitch),
        # IRC R905.2.6: so many in each strip; two in each cap.
        "nails": within((laid["field"] + laid["starter"]) * roof["nails"] + laid["caps"] * 2, area),
        "pipe-boot": within(1, 0),
    }
    # 10 ft lapped 2 in (IRC R905.2.8.5): the eaves hang on lengths on plan, the rakes on the pitch too.
    eave, rake = within(eaves, length), within(rakes, length + pitch)
    found["drip-edge"] = {end: (eave[end] + rake[end]) * 120 / 118 for end in ENDS}
    iced = 0.0
    if roof["ice"]:
        share = within(1, length + pitch)
        found["ice-barrier"] = {
            # 66 ft rolls, 6 in lost at each end.
            end: eave[end] * ice_courses(roof, share[end]) * 3 * (66 * 12) / (66 * 12 - 6)
            for end in ENDS
        }
        iced = eaves * min(up, (36 + (ice_courses(roof, 1) - 1) * 32) / 12)
    # IRC R905.1.1: 2 in laps from 4:12 up, 19 in below; NAVEDTRA 14044: 17 in exposures. 144 ft rolls, 4 in lost at each end.
    seen = 34 if roof["rise"] >= 4 else 17
    sheet = max(slope - iced, 0) * 36 / seen * (144 * 12) / (144 * 12 - 4)
    found["underlayment"] = within(sheet, area)
    return {
        item: {end: max(amount[end], 0) * (1 if item == "strip-shingle" else prices.waste(item)) for end in ENDS}
        for item, amount in found.items()
    }


def tasks(roof: dict[str, Any]) -> dict[str, dict[str, float]]:
    """Work on the roof; both slopes have one pitch."""
    length, pitch = roof["length_within"], roof["pitch_within"]
    area = 2 * length + pitch
    up = roof["wide"] / 2 * factor(roof["rise"])
    squares = roof["long"] * up * 2 / 100
    eave, rake = within(2 * roof["long"], length), within(4 * up, length + pitch)
    found = {
        "lay-shingles": within(squares, area),
        "lay-starter": eave,
        "lay-cap": within(roof["long"], length + pitch),
        "set-drip-edge": {end: eave[end] + rake[end] for end in ENDS},
        "set-boot": within(1, 0),
        "set-up": within(1, 0),
    }
    iced = 0.0
    if roof["ice"]:
        share = within(1, length + pitch)
        found["lay-ice-barrier"] = {end: eave[end] * ice_courses(roof, share[end]) * 3 / 100 for end in ENDS}
        iced = 2 * roof["long"] * min(up, (36 + (ice_courses(roof, 1) - 1) * 32) / 12)
    found["lay-underlayment"] = within(max(squares - iced / 100, 0), area)
    return {task: amount for task, amount in found.items() if amount["most"] > 0}


def quantity(measure: float, each: Decimal) -> Decimal:
    """A measure to the millionth, times a decimal, to the hundredth."""
    exact = Decimal(measure).quantize(Decimal("1e-6"), rounding=ROUND_HALF_UP) * each
    return exact.quantize(CENT, rounding=ROUND_HALF_UP)


def down(roof: dict[str, Any], prices: PriceList) -> dict[str, dict[str, float]]:
    """What comes down."""
    area = 2 * roof["length_within"] + roof["pitch_within"]
    squares = within(roof["long"] * roof["wide"] * factor(roof["rise"]) / 100, area)
    pounds = {end: squares[end] * STRIP_POUNDS[end] * roof["layers"] for end in ENDS}
    most = {row["key"]: float(row["amount"]) for row in prices.of("trailer")}
    yards = {end: pounds[end] / CUBIC_YARD_POUNDS for end in ENDS}
    loads = {end: packs(max(pounds[end] / most["pounds"], yards[end] / most["cubic-yards"]), 1) for end in ENDS}
    return {
        "layer-squares": {end: squares[end] * roof["layers"] for end in ENDS},
        "pounds": pounds,
        "cubic-yards": yards,
        "loads": loads,
    }


def covering_lines(roof: dict[str, Any], laid: dict[str, Any], prices: PriceList) -> dict[str, dict[str, dict[str, Decimal]]]:
    """What a new covering costs, by kind and end of the range."""
    found = amounts(roof, laid, prices)
    # The pipe is 3 in across.
    packed = {item: prices.pack(item, 3.0 if item == "pipe-boot" else None) for item in found}
    gone = down(roof, prices)
    lines: dict[str, dict[str, dict[str, Decimal]]] = {"material": {}, "labour": {}, "disposal": {}, "permit": {}}
    for end in ENDS:
        for item, amount in found.items():
            holds, price = packed[item]
            lines["material"].setdefault(item, {})[end] = prices.cents(packs(amount[end], holds) * price)
        work = {**tasks(roof), "tear-off": gone["layer-squares"]}
        for task, amount in work.items():
            row = prices.in_band("task", task, roof["rise"])
            hours = quantity(amount[end], Decimal(row["hours"]))
            lines["labour"].setdefault(task, {})[end] = prices.cents(hours * prices.rate(row))
        each = {row["key"]: Decimal(row["price"]) for row in prices.of("disposal")}
        lines["disposal"].setdefault("ton", {})[end] = prices.cents(quantity(gone["pounds"][end], Decimal("0.0005")) * each["ton"])
        lines["disposal"].setdefault("load", {})[end] = prices.cents(gone["loads"][end] * each["load"])
        lines["permit"].setdefault("permit", {})[end] = prices.price("permit")
    return lines


def boot_lines(roof: dict[str, Any], prices: PriceList) -> dict[str, dict[str, dict[str, Decimal]]]:
    """What one new boot costs: its hours, its small material, and what it uses in whole packs."""
    row = prices.in_band("remedy", "new-boot", roof["rise"])
    material = {"small": prices.cents(Decimal(row["price"]))}
    for used in prices.of("use", "new-boot"):
        holds, price = prices.pack(used["of"], 3.0 if used["of"] == "pipe-boot" else None)
        material[used["of"]] = prices.cents(packs(float(used["amount"]), holds) * price)
    labour = {"new-boot": prices.cents(quantity(1, Decimal(row["hours"])) * prices.rate(row))}
    every = lambda lines: {what: dict.fromkeys(ENDS, amount) for what, amount in lines.items()}  # noqa: E731
    return {"material": every(material), "labour": every(labour)}


def sums(lines: dict[str, dict[str, dict[str, Decimal]]], prices: PriceList, end: str, sheets: int) -> dict[str, Decimal]:
    """docs/price-list.md, "From the list to a price"."""
    by_kind = {kind: sum((line[end] for line in rows.values()), Decimal(0)) for kind, rows in lines.items()}
    subtotal = sum(by_kind.values(), Decimal(0))
    overhead = prices.cents(subtotal * prices.share("overhead"))
    cost = subtotal + overhead
    if prices.of("set", "margin"):
        gain = prices.cents(cost / (1 - prices.share("margin"))) - cost
    else:
        gain = prices.cents(cost * prices.share("markup"))
    allowed = prices.cents(sheets * prices.price("sheet"))
    exact = max(cost + gain + allowed, prices.price("minimum"))
    whole = prices.setting("round-to")["value"] == "whole"
    before = exact.quantize(Decimal(1) if whole else CENT, rounding=prices.half)
    if before < prices.price("minimum"):
        before = prices.price("minimum").to_integral_value(rounding="ROUND_CEILING")
    taxed = by_kind["material"] if prices.setting("tax")["of"] == "materials" else before
    tax = prices.cents(taxed * prices.share("tax"))
    return {
        "subtotal": subtotal,
        "overhead": overhead,
        "cost": cost,
        "gain": gain,
        "sheets": allowed,
        "before_tax": before,
        "tax": tax,
        "price": before + tax,
    }
