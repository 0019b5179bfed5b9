"""Real building footprints: those of Bubeneč in Prague that the package momepy carries as its example (PyPI, BSD-3-Clause; data from OpenStreetMap)."""

import random
import sqlite3
import struct
import subprocess
import sys
from pathlib import Path

import shapely
from outlines import Outline, has_straight_corner, turned

MOMEPY = "momepy==0.11.0"
LAYER = "buildings"
# Ten thousandths of a metre.
SCALE = 10_000


def fetched(folder: Path) -> Path:
    """The package's data file. The package itself is not run, so what it needs is left out."""
    found = list(folder.glob("momepy/datasets/bubenec.gpkg"))
    if not found:
        install = [sys.executable, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-deps"]
        subprocess.run([*install, "--target", folder, MOMEPY], check=True)
        found = list(folder.glob("momepy/datasets/bubenec.gpkg"))
    return found[0]


def footprints(package: Path) -> list[Outline]:
    """All footprints, at one angle for all edges, and at two in turn where no corner lies in a straight line."""
    answers = []
    for number, polygon in enumerate(polygons(package)):
        rings = turned([whole(ring, polygon) for ring in [polygon.exterior, *polygon.interiors]])
        answers.append(Outline(f"footprint-equal-{number}", rings, [[30.0] * len(ring) for ring in rings]))
        if not any(has_straight_corner(ring) for ring in rings):
            chance = random.Random(number)
            angles = [[chance.choice([25.0, 30.0, 40.0]) for _ in ring] for ring in rings]
            answers.append(Outline(f"footprint-few-{number}", rings, angles))
    return answers


def polygons(package: Path) -> list[shapely.Polygon]:
    """A GeoPackage is an SQLite file; each geometry is a header and then well-known binary (OGC 12-128)."""
    with sqlite3.connect(package) as book:
        (column,) = book.execute("SELECT column_name FROM gpkg_geometry_columns WHERE table_name = ?", [LAYER]).fetchone()
        blobs = [blob for (blob,) in book.execute(f'SELECT "{column}" FROM "{LAYER}"')]  # noqa: S608
    shapes = [shapely.from_wkb(blob[header_size(blob) :]) for blob in blobs]
    return [piece for shape in shapes for piece in getattr(shape, "geoms", [shape])]


def header_size(blob: bytes) -> int:
    (magic, flags) = struct.unpack_from("<2sxB", blob)
    assert magic == b"GP"
    return 8 + {0: 0, 1: 32, 2: 48, 3: 48, 4: 64}[flags >> 1 & 7]


def whole(ring: shapely.LinearRing, polygon: shapely.Polygon) -> list[tuple[int, int]]:
    west, south, _, _ = polygon.bounds
    corners = [(round((x - west) * SCALE), round((y - south) * SCALE)) for x, y in ring.coords[:-1]]
    return [corner for at, corner in enumerate(corners) if corner != corners[at - 1]]
