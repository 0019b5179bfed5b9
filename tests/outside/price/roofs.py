"""Gable roofs and the records around them, as the example reads them."""

import math
import random
from typing import Any

FOOT = 0.3048
STRUCTURE = "00000000-0000-0000-0000-000000000001"
SLOPES = [f"00000000-0000-0000-0000-00000000010{plane}" for plane in range(2)]
BOOT = "00000000-0000-0000-0000-000000000201"
FIELD = "00000000-0000-0000-0000-000000000202"


def factor(rise: float) -> float:
    """NAVEDTRA 14044, ch. 2: √(rise² + 144) / 12."""
    return math.hypot(rise, 12) / 12


def millimetres(feet: float) -> str:
    return f"{feet * 304.8:.6f} mm"


def corner(at: tuple[float, float, float]) -> dict[str, float]:
    return dict(zip("xyz", (value * FOOT for value in at), strict=True))


def line(kind: str, start: Any, end: Any, planes: list[int], overhang: float | None = None) -> dict[str, Any]:
    return {
        "kind": kind,
        "from": corner(start),
        "to": corner(end),
        "length": millimetres(math.dist(start, end)),
        "planes": planes,
        "overhang": None if overhang is None else millimetres(overhang),
    }


def gable(roof: dict[str, Any]) -> dict[str, Any]:
    """The plan of a gable, its measures in feet."""
    long, wide, rise, overhang = roof["long"], roof["wide"], roof["rise"], roof["overhang"]
    half = wide / 2
    high = half * rise / 12
    a, b, c, d = (0, 0, 0), (long, 0, 0), (long, wide, 0), (0, wide, 0)
    left, right = (0, half, high), (long, half, high)
    area = long * half * FOOT**2

    def plane(letter: str, slope: str, rim: list[Any], downhill: tuple[float, float]) -> dict[str, Any]:
        return {
            "letter": letter,
            "slope": slope,
            "pitch": f"{rise}:12",
            "downhill": downhill,
            "corners": [corner(at) for at in rim],
            "plan_area": area,
            "slope_area": area * factor(rise),
        }

    return {
        "structure": STRUCTURE,
        "got": "tape",
        "length_within": roof["length_within"],
        "pitch_within": roof["pitch_within"],
        "planes": [
            plane("A", SLOPES[0], [a, b, right, left], (0.0, -1.0)),
            plane("B", SLOPES[1], [c, d, left, right], (0.0, 1.0)),
        ],
        "lines": [
            line("eave", a, b, [0], overhang),
            line("eave", c, d, [1], overhang),
            line("ridge", left, right, [0, 1]),
            *(line("rake", low, top, [at]) for low, top, at in [(a, left, 0), (b, right, 0), (c, right, 1), (d, left, 1)]),
        ],
        "outlines": [],
        "height": millimetres(high),
    }


def laid(roof: dict[str, Any]) -> dict[str, Any]:
    """Strips of 36 in at 5 in over both slopes: 80 a square (computed), a share more for what falls to the ground."""
    long = roof["long"]
    squares = long * roof["wide"] * factor(roof["rise"]) / 100
    area = squares * 100 * FOOT**2
    planes = [{"plane": at, "courses": 0, "opened": 0, "reused": 0, "covered": area / 2, "lapped": 0.0} for at in range(2)]
    return {
        "pieces": {
            "covering": "asphalt-strip",
            "width": "36 in",
            "height": "12 in",
            "exposure": "5 in",
            "offset": "6 in",
            "shortest": "6 in",
            "bundle": 27,
            "overhang": "3/8 in",
        },
        "valleys": "open",
        "planes": planes,
        "field": math.ceil(squares * 80 * 1.06),
        "starter": math.ceil(2 * long / 3),
        "starter_length": millimetres(2 * long),
        "cap": math.ceil(long * 12 / 5 / 3),
        "cap_length": millimetres(long),
        "caps": math.ceil(long * 12 / 5),
        "bundles": 0,
        "covered": area,
        "lapped": 0.0,
        "dropped": 0.0,
        "waste": 0.06,
        "extra": 0.06,
        "handbook": [0.05, None],
    }


def part(identifier: str, kind: str, number: int) -> dict[str, Any]:
    return {"id": identifier, "structure": STRUCTURE, "slope": SLOPES[0], "kind": kind, "number": number}


def job(roof: dict[str, Any], price_list: str) -> dict[str, Any]:
    """What the example is asked: a new boot now, then everything torn off and covered anew."""
    tear_off = {"when": "this-season", "course": "tear-off", "tasks": [{"part": FIELD}], "reasons": []}
    boot = {"when": "now", "course": "repair", "tasks": [{"part": BOOT, "remedy": "new-boot"}], "reasons": []}
    measured = {"got": "tape", "within": 0.0}
    return {
        "plan": gable(roof),
        "laid": laid(roof),
        "profile": {"edition": roof["edition"], "ice_barrier": "yes" if roof["ice"] else "no"},
        "choices": {"deck_sheets": {"least": 1, "likely": 2, "most": 5}, "nails_a_strip": roof["nails"]},
        "standing": {"pipes": [{"part": BOOT, "slope": SLOPES[0], "diameter": "3 in"}]},
        "readings": [{"slope": slope, "coverings": ["asphalt-strip"] * roof["layers"], "layers": roof["layers"]} for slope in SLOPES],
        "list": price_list,
        "verdict": {
            "structure": STRUCTURE,
            "on": "2026-06-01",
            "steps": [boot, tear_off],
            "refused": [],
            "unseen": [],
            "unknown": [],
            "next_look": None,
            "cautions": [],
            "limits": [],
        },
        "property": {"id": STRUCTURE, "address": {"line": "1 Example St"}, "since": "2026-01-01"},
        "slopes": [
            {"id": slope, "structure": STRUCTURE, "side": "front", "letter": letter, "pitch": {"value": f"{roof['rise']}:12", **measured}}
            for slope, letter in zip(SLOPES, "AB", strict=True)
        ],
        "parts": [part(BOOT, "pipe-boot", 1), part(FIELD, "covering", 2)],
        "marks": [
            {
                "id": BOOT,
                "visit": STRUCTURE,
                "part": BOOT,
                "at": "2026-06-01T12:00:00Z",
                "condition": {"is": "seen", "rung": "failed", "seen": "touched"},
                "defects": [{"defect": "boot-split", "extent": "spot"}],
                "measures": [{"of": "diameter", "value": {"value": "3 in", **measured}}],
            }
        ],
        "id": STRUCTURE,
        "on": "2026-06-02",
    }


def roofs(count: int) -> list[dict[str, Any]]:
    """Gables of all pitches, sizes, tolerances and editions."""
    dice = random.Random(46)
    return [
        {
            "long": round(dice.uniform(12, 110), 2),
            "wide": round(dice.uniform(12, 60), 2),
            "rise": dice.choice([2, 3, 3.5, 4, 5, 6, 6.5, 7.5, 8, 9, 10, 12, 14]),
            "overhang": dice.randrange(0, 31) / 12,
            "length_within": dice.choice([0.0, 0.01, 0.05]),
            "pitch_within": dice.choice([0.0, 0.02]),
            "edition": dice.choice([2009, 2012, 2015, 2018, 2021]),
            "ice": dice.random() < 0.7,
            "nails": dice.choice([4, 6]),
            "layers": dice.randrange(1, 4),
        }
        for _ in range(count)
    ]
