"""The reminders as a calendar, read by PyPI `icalendar` (RFC 5545)."""

import json
import subprocess
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from icalendar import Calendar

TODAY = "2026-09-14"


@pytest.fixture(scope="session")
def reminders(ladderbook: Path, demo: Path) -> list[dict[str, Any]]:
    return json.loads(ask(ladderbook, demo, "--json"))


@pytest.fixture(scope="session")
def calendar(ladderbook: Path, demo: Path, tmp_path_factory: pytest.TempPathFactory) -> Calendar:
    path = tmp_path_factory.mktemp("calendar") / "reminders.ics"
    ask(ladderbook, demo, "--ics", path)
    return Calendar.from_ical(path.read_bytes())


def ask(ladderbook: Path, demo: Path, *more: str | Path) -> str:
    book = ["--book", demo / "book", "--key-file", demo / "demo.key", "--today", TODAY]
    answer = subprocess.run([ladderbook, "reminders", *book, *more], check=True, capture_output=True, text=True)
    return answer.stdout


def test_there_is_an_event_for_each_reminder(calendar: Calendar, reminders: list[dict[str, Any]]) -> None:
    assert len(reminders) > 10
    events = {str(event["UID"]): event for event in calendar.walk("VEVENT")}
    assert set(events) == {reminder["id"] for reminder in reminders}


def test_an_event_is_a_whole_day_with_the_roofers_words(calendar: Calendar, reminders: list[dict[str, Any]]) -> None:
    events = {str(event["UID"]): event for event in calendar.walk("VEVENT")}
    for reminder in reminders:
        event = events[reminder["id"]]
        assert event.decoded("DTSTART") == date.fromisoformat(reminder["on"])
        assert str(event.get("DESCRIPTION", "")) == reminder["words"]
        assert str(event["SUMMARY"])


def test_the_calendar_holds_what_the_standard_requires(calendar: Calendar) -> None:
    # RFC 5545, sections 3.6 and 3.6.1.
    assert calendar.errors == []
    assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
    for event in calendar.walk("VEVENT"):
        assert event.errors == []
        assert event["UID"] and event["DTSTAMP"] and event["DTSTART"]
