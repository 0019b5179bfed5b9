"""Outlines to try a skeleton on: of every kind that makes trouble. Each is the same whenever it is asked for."""

import math
import random
from dataclasses import dataclass
from itertools import pairwise, product

import shapely
from shapely import LinearRing, Polygon, box

Ring = list[tuple[int, int]]

ANGLES = ["equal", "few", "gables", "any"]


@dataclass
class Outline:
    """Rings in whole numbers, the rim anticlockwise and the holes clockwise, and an angle for each edge: 90 where it stands upright."""

    name: str
    rings: list[Ring]
    angles: list[list[float]]

    @property
    def size(self) -> float:
        return max(abs(number) for ring in self.rings for corner in ring for number in corner)

    @property
    def area(self) -> float:
        return sum(area(ring) for ring in self.rings)

    def as_json(self) -> dict:
        return {"rings": self.rings, "angles": self.angles}


def area(ring: list) -> float:
    """Positive where it runs anticlockwise."""
    return sum(p[0] * q[1] - q[0] * p[1] for p, q in pairwise([*ring, ring[0]])) / 2


def star(chance: random.Random, corners: int, radius: float = 50_000) -> Ring:
    """A ring round a middle, its corners at any angle and distance."""
    turns = sorted(chance.random() * 2 * math.pi for _ in range(corners))
    return [polar(turn, chance.uniform(radius / 10, radius)) for turn in turns]


def polar(turn: float, distance: float) -> tuple[int, int]:
    return round(distance * math.cos(turn)), round(distance * math.sin(turn))


def tangle(chance: random.Random) -> list[Ring]:
    """Points at random, joined so that nothing crosses; on a coarse grid many are in line, and many events at one moment."""
    steps = chance.choice([10, 100, 100_000])
    scale = 1_000_000 // steps
    ring = list({(chance.randint(0, steps), chance.randint(0, steps)) for _ in range(chance.randint(4, 24))})
    chance.shuffle(ring)
    for _ in range(200):
        if not uncross(ring):
            break
    return [[(x * scale, y * scale) for x, y in ring]]


def uncross(ring: Ring) -> bool:
    """Turns one stretch of the ring about for each two edges that cross. Whether any did."""

    def side(p: tuple[int, int], q: tuple[int, int], r: tuple[int, int]) -> int:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    changed = False
    for i in range(len(ring)):
        for j in range(i + 2, len(ring)):
            if i == 0 and j == len(ring) - 1:
                continue
            a, b, c, d = ring[i], ring[i + 1], ring[j], ring[(j + 1) % len(ring)]
            if side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0:
                ring[i + 1 : j + 1] = ring[i + 1 : j + 1][::-1]
                changed = True
    return changed


def squares(chance: random.Random) -> list[Ring]:
    """Squares of a chequered floor: everything happens at one moment, often round a hole."""
    side = chance.randint(2, 6)
    cells = {(chance.randrange(side), chance.randrange(side)) for _ in range(chance.randint(2, 20))}
    return rings_of([box(x, y, x + 1, y + 1) for x, y in cells], 10_000)


def wings(chance: random.Random) -> list[Ring]:
    """Rectangles over each other: houses with wings."""
    corners = [(chance.randint(0, 20), chance.randint(0, 20)) for _ in range(chance.randint(2, 6))]
    return rings_of([box(x, y, x + chance.randint(3, 20), y + chance.randint(3, 20)) for x, y in corners], 1_000)


def turned_wings(chance: random.Random) -> list[Ring]:
    """The same, standing askew."""
    a, b = chance.choice([(3, 4), (1, 1), (1, 2), (5, 12)])
    return [[(a * x - b * y, b * x + a * y) for x, y in ring] for ring in wings(chance)]


def bays(chance: random.Random) -> list[Ring]:
    """Squares on edge and on tip over each other: corners of 45°."""
    shapes = []
    for _ in range(chance.randint(2, 5)):
        x, y, half = chance.randint(0, 10), chance.randint(0, 10), chance.randint(1, 6)
        tip = Polygon([(x, y - half), (x + half, y), (x, y + half), (x - half, y)])
        shapes.append(tip if chance.random() < 0.5 else box(x - half, y - half, x + half, y + half))
    return rings_of(shapes, 2_000)


def yards(chance: random.Random) -> list[Ring]:
    """A ring with holes of any shape."""
    rim = star(chance, chance.randint(5, 15))
    holes: list[Ring] = []
    for _ in range(60):
        x, y = chance.uniform(-40_000, 40_000), chance.uniform(-40_000, 40_000)
        hole = [(round(x + dx), round(y + dy)) for dx, dy in star(chance, chance.randint(3, 8), 6_000)]
        if len(holes) < 3 and fits(hole, rim, holes):
            holes.append(hole)
    return [rim, *holes]


def fits(hole: Ring, rim: Ring, others: list[Ring]) -> bool:
    shape, around = Polygon(hole), Polygon(rim)
    return (
        shape.is_valid
        and around.is_valid
        and around.contains(shape)
        and shape.distance(around.exterior) > 10
        and not any(shape.intersects(Polygon(other)) for other in others)
    )


def rings_of(shapes: list[Polygon], scale: int) -> list[Ring]:
    """The largest piece of what shapes cover together."""
    union = shapely.union_all(shapes).simplify(0)
    piece = max(getattr(union, "geoms", [union]), key=lambda piece: piece.area)
    return [[(round(x * scale), round(y * scale)) for x, y in ring.coords[:-1]] for ring in [piece.exterior, *piece.interiors]]


KINDS = {
    "star": lambda chance: [star(chance, chance.randint(4, 30))],
    "tangle": tangle,
    "squares": squares,
    "wings": wings,
    "turned-wings": turned_wings,
    "bays": bays,
    "yards": yards,
}


def outlines(each: int) -> list[Outline]:
    """So many of each kind with each kind of angles."""
    return [outline(kind, angles, number) for kind, angles, number in product(KINDS, ANGLES, range(each))]


def outline(kind: str, angles: str, number: int) -> Outline:
    name = f"{kind}-{angles}-{number}"
    chance = random.Random(name)
    while not is_sound(rings := turned(KINDS[kind](chance))):
        pass
    return Outline(name, rings, [[angle(chance, angles) for _ in ring] for ring in rings])


def angle(chance: random.Random, kind: str) -> float:
    match kind:
        case "equal":
            return 45
        case "few":
            return chance.choice([30, 45, 60])
        case "gables":
            return chance.choice([45, 45, 90])
        case _:
            return chance.uniform(15, 75)


def turned(rings: list[Ring]) -> list[Ring]:
    """The rim anticlockwise, the holes clockwise."""
    return [ring if (area(ring) > 0) == (number == 0) else ring[::-1] for number, ring in enumerate(rings)]


def is_sound(rings: list[Ring]) -> bool:
    """Whether the rings bound one area, don't touch, and have no corner in a straight line: there the angle of the two edges must be one."""
    lines = [LinearRing(ring) for ring in rings if len(ring) > 2]
    return (
        len(lines) == len(rings)
        and Polygon(rings[0], rings[1:]).is_valid
        and not any(one.intersects(other) for at, one in enumerate(lines) for other in lines[:at])
        and not any(has_straight_corner(ring) for ring in rings)
    )


def has_straight_corner(ring: Ring) -> bool:
    corners = zip([ring[-1], *ring], ring, [*ring[1:], ring[0]], strict=False)
    return any((q[0] - p[0]) * (r[1] - q[1]) == (q[1] - p[1]) * (r[0] - q[0]) for p, q, r in corners)
