"""Our straight skeleton against CGAL's in one run: `python tests/outside/roof/bench/times.py`. Needs `g++` and Debian's `libcgal-dev`.

Both programs get the same polygons, without holes and of one slope, on one thread. They take turns, so that a computer that is slower for a while is so
for both, and each counts its best of all rounds. CGAL runs as it is advised to: predicates exact, constructions in floating-point numbers, optimised."""

import math
import os
import random
import statistics
import subprocess
from collections import defaultdict
from itertools import pairwise, product
from pathlib import Path

ROOT = Path(__file__).parents[4]
TARGET = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))
CORNERS = [10, 50, 100, 200]
EACH = 5
TURNS = 5
ROUNDS = 7
GOAL = 5.0

Ring = list[tuple[int, int]]


def star(chance: random.Random, corners: int) -> Ring:
    """A ring round a middle: corners at any angle."""
    turns = sorted(chance.random() * 2 * math.pi for _ in range(corners))
    return [around(turn, chance.uniform(4e6, 1e7)) for turn in turns]


def around(turn: float, distance: float) -> tuple[int, int]:
    return round(distance * math.cos(turn)), round(distance * math.sin(turn))


def wings(chance: random.Random, corners: int) -> Ring:
    """A long house with wings to one side: right angles, and much at one moment."""
    bars = corners // 2 - 1
    lines = [0]
    for _ in range(bars):
        lines.append(lines[-1] + chance.randint(2, 6) * 100_000)
    ring = [(0, 0), (lines[-1], 0)]
    for bar, (left, right) in reversed(list(enumerate(pairwise(lines)))):
        height = chance.randint(10, 14) * 100_000 if bar % 2 == 0 else chance.randint(4, 8) * 100_000
        ring += [(right, height), (left, height)]
    return ring


def built() -> dict[str, list[str]]:
    """Both programs, built anew where they must be."""
    theirs = TARGET / "outside-bench" / "cgal"
    source = Path(__file__).with_name("cgal.cpp")
    if not theirs.exists() or theirs.stat().st_mtime < source.stat().st_mtime:
        theirs.parent.mkdir(parents=True, exist_ok=True)
        flags = ["-O3", "-DNDEBUG", "-std=c++17"]
        subprocess.run(["g++", *flags, "-o", theirs, source, "-lgmp", "-lmpfr"], check=True)
    build = ["cargo", "build", "--quiet", "--release", "--package", "roof", "--example", "skeleton_times"]
    subprocess.run(build, check=True, cwd=ROOT)
    ours = TARGET / "release" / "examples" / "skeleton_times"
    return {"ours": [str(ours), str(ROUNDS)], "CGAL": [str(theirs), str(ROUNDS)]}


def timed(program: list[str], polygons: list[Ring]) -> list[tuple[float, int]]:
    """For each polygon the seconds and the faces."""
    text = "".join(" ".join(f"{x} {y}" for x, y in ring) + "\n" for ring in polygons)
    said = subprocess.run(program, input=text, capture_output=True, text=True, check=True).stdout
    rows = [line.split() for line in said.splitlines()]
    return [(float(seconds), int(faces)) for _, seconds, faces in rows]


def main() -> None:
    programs = built()
    chance = random.Random(4)
    kinds = [("any angle", star), ("right angles", wings)]
    tried = [
        (kind, corners, make(chance, corners))
        for (kind, make), corners, _ in product(kinds, CORNERS, range(EACH))
    ]
    polygons = [ring for _, _, ring in tried]
    turns = [{name: timed(program, polygons) for name, program in programs.items()} for _ in range(TURNS)]
    # The least of a polygon's times; its faces are the same each time.
    times = {name: [min(times) for times in zip(*(turn[name] for turn in turns), strict=True)] for name in programs}
    for (kind, corners, ring), (_, ours), (_, theirs) in zip(tried, times["ours"], times["CGAL"], strict=True):
        assert ours == theirs == len(ring), f"{kind}, {corners} corners: {ours} faces and {theirs}"
    rows = defaultdict(list)
    for (kind, corners, _), (ours, _), (theirs, _) in zip(tried, times["ours"], times["CGAL"], strict=True):
        rows[kind, corners].append((ours, theirs))
    slowest = math.inf
    print(f"{'straight skeleton':18}{'corners':>8}{'ours':>12}{'CGAL':>12}{'ratio':>8}")
    for (kind, corners), row in rows.items():
        ours, theirs = (statistics.median(column) for column in zip(*row, strict=True))
        slowest = min(slowest, theirs / ours)
        print(f"{kind:18}{corners:8}{ours * 1e6:9.1f} µs{theirs * 1e6:9.1f} µs{theirs / ours:7.1f}×")
    met = slowest >= GOAL
    print(f"at least {slowest:.1f} times as fast; the goal is {GOAL:.0f}: {'met' if met else 'missed'}")


if __name__ == "__main__":
    main()
