"""Our faces of an outline beside those of CGAL, as SFCGAL gives them."""

import json
import math
import subprocess
import warnings
from dataclasses import dataclass
from pathlib import Path

import shapely
from outlines import Outline, area
from shapely import Polygon

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from pysfcgal.geometry import Polygon as SfcgalPolygon

Corner = tuple[float, float, float]
Edge = tuple[int, int]

# A share of the outline's size squared, or of its size, below which a difference is one of floating-point numbers: CGAL rounds its nodes.
ROUNDED = 3e-6
ON_PLANE = 1e-6
# SFCGAL wants a height to cut the roof off at; what reaches it has not closed.
SKY = 20


@dataclass
class Ours:
    """Our answer: the events that a weighted skeleton leaves open, and each face with its edges and loops."""

    choices: int
    faces: list[dict]

    @property
    def covered(self) -> float:
        return sum(area(loop) for face in self.faces for loop in face["loops"])


def ours(program: Path, outlines: list[Outline]) -> list[Ours | None]:
    """Our answers; none where the roof never closes."""
    text = json.dumps([outline.as_json() for outline in outlines])
    said = subprocess.run([program], input=text, capture_output=True, text=True, check=True).stdout
    return [answer and Ours(answer["choices"], answer["faces"]) for answer in json.loads(said)]


def theirs(outline: Outline) -> list[list[Corner]] | None:
    """The sloping faces by CGAL, the base left out; none where they reach the sky."""
    rim, *holes = outline.rings
    # SFCGAL counts an angle with the corner in which its edge ends.
    angles = [[*angles[-1:], *angles[:-1]] for angles in outline.angles]
    sky = SKY * outline.size
    solid = SfcgalPolygon(rim, holes).extrude_straight_skeleton_with_angles(sky, angles)
    faces = [[tuple(map(float, corner)) for corner in face[0][:-1]] for face in solid.to_coordinates()]
    faces = [face for face in faces if any(z > 0 for _, _, z in face)]
    return None if any(z > 0.99 * sky for face in faces for _, _, z in face) else faces


def covered(faces: list[list[Corner]]) -> float:
    return sum(abs(area(face)) for face in faces)


def planes(outline: Outline) -> dict[Edge, tuple[float, float, float]]:
    """For each edge that is not upright its plane: z = a·x + b·y + c."""
    found = {}
    for number, (ring, angles) in enumerate(zip(outline.rings, outline.angles, strict=True)):
        for edge, ((x, y), (to_x, to_y), angle) in enumerate(zip(ring, [*ring[1:], ring[0]], angles, strict=True)):
            if angle == 90:
                continue
            slope = math.tan(math.radians(angle)) / math.hypot(to_x - x, to_y - y)
            a, b = -(to_y - y) * slope, (to_x - x) * slope
            found[number, edge] = (a, b, -(a * x + b * y))
    return found


def off_plane(outline: Outline, answer: Ours) -> float:
    """How far any corner of a face lies off the face's plane, in the unit of the grid."""
    of_edge = planes(outline)
    worst = 0.0
    for face in answer.faces:
        if face["loops"]:
            a, b, c = of_edge[tuple(face["edges"][0])]
            worst = max([worst, *(abs(a * x + b * y + c - z) for loop in face["loops"] for x, y, z in loop)])
    return worst


def difference(outline: Outline, answer: Ours, faces: list[list[Corner]]) -> float:
    """The greatest area, as a share of the size squared, that one plane covers by one program and not by the other.

    SFCGAL cuts some faces in pieces: they are put together by the plane on which they lie."""
    of_edge = planes(outline)
    pieces: dict[Edge, list[Polygon]] = {}
    lost = 0.0
    for face in faces:
        piece = Polygon([(x, y) for x, y, _ in face])
        fitting = [edge for edge, plane in of_edge.items() if lies_on(face, plane, ON_PLANE * outline.size)]
        if fitting:
            pieces.setdefault(fitting[0], []).append(piece.buffer(0))
        else:
            lost += piece.area
    apart = [lost]
    for face in answer.faces:
        if face["loops"]:
            first = of_edge[tuple(face["edges"][0])]
            same = [edge for edge, plane in of_edge.items() if is_same(plane, first, outline.size)]
            beside = shapely.union_all([piece for edge in same for piece in pieces.get(edge, [])])
            apart.append(beside.symmetric_difference(shape(face["loops"])).area)
    return max(apart) / outline.size**2


def lies_on(face: list[Corner], plane: tuple[float, float, float], within: float) -> bool:
    a, b, c = plane
    return all(abs(a * x + b * y + c - z) < within for x, y, z in face)


def is_same(one: tuple[float, float, float], other: tuple[float, float, float], size: float) -> bool:
    return all(abs(p - q) < 1e-9 * unit for p, q, unit in zip(one, other, (1, 1, size), strict=True))


def shape(loops: list[list[Corner]]) -> shapely.Geometry:
    flat = [Polygon([(x, y) for x, y, _ in loop]).buffer(0) for loop in loops]
    rims = [polygon for polygon, loop in zip(flat, loops, strict=True) if area(loop) > 0]
    holes = [polygon for polygon, loop in zip(flat, loops, strict=True) if area(loop) < 0]
    return shapely.union_all(rims).difference(shapely.union_all(holes))
