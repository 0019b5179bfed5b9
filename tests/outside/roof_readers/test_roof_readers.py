"""Outlines as they are read, against other people's programs: metres on the ground by PROJ, a taped round by NumPy's least squares, files by their schema."""

import copy
import json
import math
import random
import subprocess
from typing import Any

import jsonschema
import numpy as np
import pyproj
import pytest
from conftest import ROOT, example

WGS84 = pyproj.Geod(ellps="WGS84")


def read(files: list[Any]) -> list[Any]:
    """What is read of each file."""
    texts = json.dumps([json.dumps(file) for file in files])
    answer = subprocess.run([example("read_outlines")], input=texts, capture_output=True, text=True, check=True)
    return json.loads(answer.stdout)


def metres(length: str) -> float:
    return float(length.removesuffix(" mm")) / 1000


def star(chance: random.Random, corners: int, least: float, most: float) -> list[tuple[float, float]]:
    """Corners round a middle, in order: no side crosses another."""
    angles = [math.tau * at / corners for at in range(corners)]
    distances = [chance.uniform(least, most) for _ in angles]
    return [(d * math.cos(a), d * math.sin(a)) for a, d in zip(angles, distances, strict=True)]


def test_lengths_are_those_of_the_geodesic() -> None:
    """300 footprints from 70° south to 70° north, up to 100 m across: each side and diagonal within a tenth of a millimetre of the geodesic (Karney 2013, in PROJ)."""
    chance = random.Random(41)
    rings, files = [], []
    for _ in range(300):
        place = chance.uniform(-180, 180), chance.uniform(-70, 70)
        ring = []
        for x, y in star(chance, chance.randint(3, 20), 3, 50):
            azimuth, distance = math.degrees(math.atan2(x, y)), math.hypot(x, y)
            longitude, latitude, _ = WGS84.fwd(*place, azimuth, distance)
            ring.append((longitude, latitude))
        rings.append(ring)
        properties = {"pitch": "6/12"}
        geometry = {"type": "Polygon", "coordinates": [[*ring, ring[0]]]}
        files.append({"type": "Feature", "properties": properties, "geometry": geometry})
    worst = 0.0
    for ring, answer in zip(rings, read(files), strict=True):
        edges = answer["drawn"]["bodies"][0]["rings"][0]
        places = [(metres(edge["x"]), metres(edge["y"])) for edge in edges]
        assert len(places) == len(ring)
        for one in range(len(ring)):
            for other in range(one):
                _, _, geodesic = WGS84.inv(*ring[one], *ring[other])
                worst = max(worst, abs(math.dist(places[one], places[other]) - geodesic))
    assert worst < 1e-4


def turned(corners: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """The length of each side, and the turn at its end in degrees."""
    count = len(corners)
    sides = [np.subtract(corners[(at + 1) % count], corners[at]) for at in range(count)]
    legs = []
    for at, side in enumerate(sides):
        after = sides[(at + 1) % count]
        turn = math.atan2(side[0] * after[1] - side[1] * after[0], float(side @ after))
        legs.append((float(np.hypot(*side)), math.degrees(turn)))
    return legs


def observed(corners: np.ndarray) -> np.ndarray:
    """All lengths, then all turns in radians, of a ring of corners."""
    sides = np.roll(corners, -1, axis=0) - corners
    after = np.roll(sides, -1, axis=0)
    crosses = sides[:, 0] * after[:, 1] - sides[:, 1] * after[:, 0]
    return np.concatenate([np.hypot(*sides.T), np.arctan2(crosses, (sides * after).sum(axis=1))])


def by_least_squares(legs: list[tuple[float, float]]) -> np.ndarray:
    """The corners themselves as unknowns, so that every answer closes: Gauss and Newton, slopes by central differences, each step by `numpy.linalg.lstsq`."""
    lengths, turns = np.array([leg[0] for leg in legs]), np.radians([leg[1] for leg in legs])
    measured = np.concatenate([lengths, turns])
    # As exact as the program takes a tape and a corner that is not square to be.
    weights = 1 / np.concatenate([0.01 * lengths, np.full(len(legs), math.radians(2.0))])
    headings = np.concatenate([[0.0], np.cumsum(turns)[:-1]])
    steps = lengths[:, None] * np.column_stack([np.cos(headings), np.sin(headings)])
    corners = np.vstack([[0.0, 0.0], np.cumsum(steps, axis=0)[:-1]])
    for _ in range(30):
        slopes = []
        for at in range(corners.size):
            nudge = np.zeros(corners.size)
            nudge[at] = 1e-5
            nudge = nudge.reshape(corners.shape)
            slopes.append((observed(corners + nudge) - observed(corners - nudge)) / 2e-5)
        left = (measured - observed(corners)) * weights
        step, *_ = np.linalg.lstsq(np.array(slopes).T * weights[:, None], left, rcond=1e-9)
        corners = corners + step.reshape(corners.shape)
    return observed(corners)


def test_a_taped_round_is_closed_by_the_least_changes() -> None:
    """200 rounds of turns as they come, misread by some per cent and degrees: the same lengths and turns as by another form of the adjustment."""
    chance = random.Random(7)
    rounds = []
    for _ in range(200):
        legs = turned(star(chance, chance.randint(4, 9), 8, 12))
        off = [chance.gauss(0, 1.0) for _ in legs]
        # The turns make a round, as corners read with a compass do.
        off = [one - sum(off) / len(off) for one in off]
        rounds.append([(length * chance.gauss(1, 0.01), turn + by) for (length, turn), by in zip(legs, off, strict=True)])
    files = [
        {"unit": "m", "pitch": "6/12", "legs": [{"length": length, "turn": turn} for length, turn in legs]}
        for legs in rounds
    ]
    compared = 0
    for legs, answer in zip(rounds, read(files), strict=True):
        assert "drawn" in answer, answer
        closed = answer["closed"]
        wanted = by_least_squares(legs)
        assert closed["lengths"] == pytest.approx(wanted[: len(legs)], abs=1e-5)
        assert np.radians(closed["turns"]) == pytest.approx(wanted[len(legs) :], abs=1e-5)
        compared += 1
    assert compared == 200


# One file of each kind, with every member that there is.
WHOLE: list[Any] = [
    {
        "unit": "ft", "pitch": "6/12", "overhang": "16 in", "of": "walls",
        "outline": [[0, 0], [40, 0], ["40 ft", 28], [0, 28]],
        "holes": [[[9, 9], [12, 9], [12, 12]]],
        "edges": ["hip", {"is": "gable", "overhang": 1}, {"pitch": "8/12"}, "gable"],
    },
    {
        "unit": "m", "pitch": "30°",
        "bodies": [{
            "pitch": "4/12", "overhang": 0.3, "of": "roof", "raised": "9 ft",
            "rings": [[{"x": 0, "y": 0, "is": "wall"}, {"x": 9, "y": 0, "pitch": "5/12"}, {"x": 9, "y": 7, "overhang": "1 ft"}]],
        }],
    },
    {"unit": "in", "pitch": "6/12", "rings": [[{"x": 0, "y": 0}, {"x": 400, "y": 0}, {"x": 400, "y": 300}]]},
    {
        "unit": "ft", "pitch": "6/12",
        "legs": [{"length": 40, "turn": 90, "is": "hip"}, {"length": "28 ft", "turn": 90, "overhang": 1}, {"length": 40, "turn": 90, "pitch": "5/12"}, {"length": 28, "turn": 90}],
    },
    {
        "unit": "ft",
        "planes": [{"side": "front", "pitch": "6/12", "eave": 40, "high": 40, "up": 15, "high_is": "ridge", "sides": ["rake", "step"]}],
    },
]

# What a member may turn into.
OTHER: list[Any] = [0, -3, 12.5, "", "6/12", "9 ft", "hip", "roof", "ft", True, [], [[]], {}, [1, 2], ["hip"], {"is": "hip"}]


def spots(value: Any) -> list[tuple[Any, Any]]:
    """Every list or object of a file with each of its places."""
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else []
    return [spot for key, under in inner for spot in [(value, key), *spots(under)]]


def altered(chance: random.Random) -> Any:
    """A whole file with one place changed, taken away, or one member put in."""
    file = copy.deepcopy(chance.choice(WHOLE))
    holder, key = chance.choice(spots(file))
    match chance.choice(["change", "change", "take", "put"]):
        case "change":
            holder[key] = chance.choice(OTHER)
        case "take":
            del holder[key]
        case _ if isinstance(holder, dict):
            holder[chance.choice(["is", "edge", "pitch", "outline", "rings", "raised", "slope"])] = chance.choice(OTHER)
        case _:
            holder.append(chance.choice(OTHER))
    return file


# What a schema cannot say of a file's shape: a text that is no length or pitch, as many sides told as there are, a pitch given somewhere.
BEYOND = ["is no length", "is no pitch", "one entry for each side", "The pitch is missing", "No outline is in this file"]


def test_files_are_read_as_the_published_schema_has_them() -> None:
    """1,500 altered files: one that the schema takes is of the right shape to the program too, and the other way round."""
    schema = json.loads((ROOT / "docs" / "outline-file.schema.json").read_text())
    validator = jsonschema.Draft202012Validator(schema)
    chance = random.Random(1876)
    files = [*WHOLE, *(altered(chance) for _ in range(1500))]
    taken = 0
    for file, answer in zip(files, read(files), strict=True):
        refused = answer.get("in_file", False) and not any(reason in answer["wrong"] for reason in BEYOND)
        if validator.is_valid(file):
            assert not refused, (file, answer)
            taken += 1
        else:
            assert answer.get("in_file", False), (file, answer, next(validator.iter_errors(file)).message)
    assert all("drawn" in answer for answer in read(WHOLE))
    assert 100 < taken < 1400
