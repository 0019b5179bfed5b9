"""Time, place, direction and orientation of the demo's pictures, as ExifTool reads them.

ExifTool by Phil Harvey (Debian, libimage-exiftool-perl) is the yardstick of what a camera's file says. The pictures are drawn by
the example `picture` of `fixtures`, which lists what it meant to write.
"""

import json
import subprocess

import pytest
from conftest import example


@pytest.fixture(scope="module")
def drawn(tmp_path_factory):
    folder = tmp_path_factory.mktemp("pictures")
    command = [example("picture"), str(folder)]
    told = subprocess.run(command, check=True, capture_output=True, text=True).stdout
    meant = {line["file"]: line for line in map(json.loads, told.splitlines())}
    # -n: numbers as they are stored; -G1: the group that a tag stands in; -a: a tag that stands twice is shown twice.
    read = subprocess.run(["exiftool", "-json", "-n", "-G1", "-a", str(folder)], check=True, capture_output=True, text=True).stdout
    found = {tags["System:FileName"]: tags for tags in json.loads(read)}
    return meant, found


def test_every_picture_was_read(drawn):
    meant, found = drawn
    assert len(meant) > 50
    assert meant.keys() == found.keys()


def test_exiftool_has_nothing_to_complain_of(drawn):
    _, found = drawn
    complaints = [tags for tags in found.values() if "ExifTool:Warning" in tags or "ExifTool:Error" in tags]
    assert complaints == []


def test_time(drawn):
    meant, found = drawn
    for name, told in meant.items():
        day, time = told["taken"].split("T")
        assert found[name]["ExifIFD:DateTimeOriginal"] == f"{day.replace('-', ':')} {time}", name
        hours = told["offset_seconds"] // 3600
        assert found[name]["ExifIFD:OffsetTimeOriginal"] == f"{hours:+03d}:00", name


def test_place(drawn):
    meant, found = drawn
    for name, told in meant.items():
        # 1e-6 degrees are four inches on the ground.
        assert found[name]["Composite:GPSLatitude"] == pytest.approx(told["position"]["latitude"], abs=1e-6), name
        assert found[name]["Composite:GPSLongitude"] == pytest.approx(told["position"]["longitude"], abs=1e-6), name


def test_direction_and_orientation(drawn):
    meant, found = drawn
    for name, told in meant.items():
        assert found[name]["GPS:GPSImgDirectionRef"] == "T", name
        assert found[name]["GPS:GPSImgDirection"] == pytest.approx(told["facing"]), name
        assert found[name]["IFD0:Orientation"] == told["orientation"], name
    assert {tags["IFD0:Orientation"] for tags in found.values()} == {1, 3, 6}
