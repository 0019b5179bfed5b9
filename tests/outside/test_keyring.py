"""The key of a book in a running keyring: GNOME Keyring (Debian, gnome-keyring), which speaks the Secret Service API of freedesktop.org.

It runs on a message bus and in a home of its own, so that no keyring of the person at this computer is touched.
"""

import os
import subprocess
from pathlib import Path

import pytest

UNLOCK = "printf passphrase | gnome-keyring-daemon --unlock --components=secrets >/dev/null"


@pytest.fixture
def home(tmp_path: Path) -> dict[str, str]:
    """The environment of a person with nothing but an empty keyring."""
    run = tmp_path / "run"
    run.mkdir(mode=0o700)
    kept = {name: value for name, value in os.environ.items() if not name.startswith(("DBUS_", "XDG_", "LADDERBOOK_"))}
    return kept | {"HOME": str(tmp_path), "XDG_DATA_HOME": str(tmp_path / "data"), "XDG_RUNTIME_DIR": str(run)}


def on_a_bus(script: str, home: dict[str, str]) -> subprocess.CompletedProcess[str]:
    command = ["dbus-run-session", "--", "bash", "-c", f"{UNLOCK}; {script}"]
    return subprocess.run(command, env=home, capture_output=True, text=True, timeout=120)


def test_a_book_is_opened_with_the_key_in_the_keyring(ladderbook: Path, tmp_path: Path, home: dict[str, str]) -> None:
    program = f"{ladderbook} --book {tmp_path}/book"
    done = on_a_bus(f"{program} new && {program} check", home)
    assert done.returncode == 0, done.stderr
    assert "The book is whole" in done.stdout
    # The keyring was closed with its bus; a later day opens it again.
    later = on_a_bus(f"{program} check", home)
    assert later.returncode == 0, later.stderr


def test_a_keyring_without_the_key_refuses_and_touches_nothing(ladderbook: Path, tmp_path: Path, home: dict[str, str]) -> None:
    program = f"{ladderbook} --book {tmp_path}/book"
    assert on_a_bus(f"{program} new", home).returncode == 0
    before = {path: path.read_bytes() for path in (tmp_path / "book").rglob("*") if path.is_file()}
    (tmp_path / "book").rename(tmp_path / "moved")
    moved = f"{ladderbook} --book {tmp_path}/moved"
    refused = on_a_bus(f"{moved} check", home)
    assert refused.returncode != 0
    assert "--key-file" in refused.stderr
    after = {path: path.read_bytes() for path in (tmp_path / "moved").rglob("*") if path.is_file()}
    assert sorted(before.values()) == sorted(after.values())
