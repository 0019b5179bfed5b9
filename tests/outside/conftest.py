"""What the checks share: the program, and one demo made by it."""

import os
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TARGET = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))


@pytest.fixture(scope="session")
def ladderbook() -> Path:
    """The program as `./dev` builds it."""
    return TARGET / "debug" / "ladderbook"


def example(name: str) -> Path:
    """A small program of our own that shows one room's answers, as `./dev` builds it."""
    return TARGET / "debug" / "examples" / name


@pytest.fixture(scope="session")
def demo(ladderbook: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of one demo: its book and its letter."""
    folder = tmp_path_factory.mktemp("demo")
    subprocess.run([ladderbook, "demo", "--no-serve", "--out", folder], check=True, stdout=subprocess.DEVNULL)
    return folder
