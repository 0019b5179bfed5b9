"""Roofs in open formats, read by other people's programs: DXF by `ezdxf`, GeoJSON by `shapely` and `pyproj` (PROJ), CSV by Python's own reader."""

import csv
import json
import math
import subprocess
from collections import Counter
from pathlib import Path
from typing import Any

import ezdxf
import pyproj
import pytest
import shapely
from conftest import example
from shapely.geometry import shape

ROOFS = ["hip", "ell", "tee", "holed"]
# Where the example puts the plan's origin.
LATITUDE, LONGITUDE = 41.2412, -96.0113


@pytest.fixture(scope="session")
def exported(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("roofs")
    subprocess.run([example("export_roofs"), folder], check=True)
    return folder


def plan_of(folder: Path, name: str) -> Any:
    return json.loads((folder / f"{name}.json").read_text())


def features(folder: Path, name: str, where: str) -> list[Any]:
    collection = json.loads((folder / f"{name}.{where}.geojson").read_text())
    assert collection["type"] == "FeatureCollection"
    assert ("localMetres" in collection) == (where == "local")
    return collection["features"]


@pytest.mark.parametrize("name", ROOFS)
def test_dxf_is_whole_and_holds_every_line(exported: Path, name: str) -> None:
    plan = plan_of(exported, name)
    drawing = ezdxf.readfile(exported / f"{name}.dxf")
    assert drawing.dxfversion == "AC1009"
    auditor = drawing.audit()
    assert not auditor.has_errors and not auditor.fixes
    lines = drawing.modelspace().query("LINE")
    kinds = Counter(line.dxf.layer for line in lines)
    assert kinds == Counter(line["kind"].upper() for line in plan["lines"])
    for drawn, line in zip(lines, plan["lines"], strict=True):
        ends = [line[end][axis] for end in ("from", "to") for axis in "xyz"]
        assert [*drawn.dxf.start, *drawn.dxf.end] == pytest.approx(ends, abs=1e-6)
    rims = drawing.modelspace().query("POLYLINE")
    assert len(rims) == sum(1 + len(plane["holes"]) for plane in plan["planes"])
    assert all(rim.is_closed and rim.is_3d_polyline for rim in rims)
    letters = [text.dxf.text for text in drawing.modelspace().query("TEXT")]
    assert letters == [plane["letter"] for plane in plan["planes"]]


@pytest.mark.parametrize("name", ROOFS)
def test_geojson_planes_make_up_the_roof_without_gap_or_overlap(exported: Path, name: str) -> None:
    plan = plan_of(exported, name)
    slopes = [feature for feature in features(exported, name, "local") if feature["properties"]["is"] == "slope"]
    shapes = [shape(slope["geometry"]) for slope in slopes]
    for slope, plane in zip(shapes, plan["planes"], strict=True):
        assert slope.is_valid
        assert slope.exterior.is_ccw and not any(hole.is_ccw for hole in slope.interiors)
        assert slope.area == pytest.approx(plane["plan_area"], abs=1e-4)
    whole = shapely.union_all(shapes)
    assert whole.area == pytest.approx(sum(slope.area for slope in shapes), abs=1e-6)
    lines = [shape(feature["geometry"]) for feature in features(exported, name, "local")[len(slopes) :]]
    edges = shapely.union_all([slope.boundary for slope in shapes])
    assert all(line.distance(edges) < 1e-6 and edges.buffer(1e-5).covers(line) for line in lines)


@pytest.mark.parametrize("name", ROOFS)
def test_geojson_on_the_earth_agrees_with_proj(exported: Path, name: str) -> None:
    """PROJ's azimuthal equidistant about the origin gives back the metres: to a millimetre on a roof."""
    about = pyproj.CRS.from_proj4(f"+proj=aeqd +lat_0={LATITUDE} +lon_0={LONGITUDE} +ellps=WGS84 +units=m")
    to_plan = pyproj.Transformer.from_crs("EPSG:4326", about, always_xy=True)
    on_earth, local = features(exported, name, "earth"), features(exported, name, "local")
    for there, here in zip(on_earth, local, strict=True):
        degrees = shapely.get_coordinates(shape(there["geometry"]))
        metres = shapely.get_coordinates(shape(here["geometry"]))
        for (longitude, latitude), (x, y) in zip(degrees, metres, strict=True):
            assert math.dist(to_plan.transform(longitude, latitude), (x, y)) < 1e-3


@pytest.mark.parametrize("name", ROOFS)
def test_tables_agree_with_the_plan(exported: Path, name: str) -> None:
    plan = plan_of(exported, name)
    with (exported / f"{name}.planes.csv").open(newline="") as file:
        planes = list(csv.DictReader(file))
    areas = [float(row["slope_area_m2"]) for row in planes]
    assert areas == pytest.approx([plane["slope_area"] for plane in plan["planes"]], abs=1e-4)
    with (exported / f"{name}.lines.csv").open(newline="") as file:
        lines = list(csv.DictReader(file))
    assert [row["line"] for row in lines] == [line["kind"] for line in plan["lines"]]
    for row in lines:
        ends = [[float(row[f"{end}_{axis}_m"]) for axis in "xyz"] for end in ("from", "to")]
        assert float(row["length_m"]) == pytest.approx(math.dist(*ends), abs=2e-4)
        assert float(row["length_ft"]) == pytest.approx(float(row["length_m"]) / 0.3048, abs=1e-3)
