"""veraPDF, asked from Python. `./dev` fetches it and says in VERAPDF_CLASSPATH where it lies."""

import os
import subprocess
from pathlib import Path

VALIDATE = Path(__file__).with_name("Validate.java")


def broken_rules(pdf: Path, flavour: str) -> list[str]:
    """The rules of a flavour ("2a": ISO 19005-2 level A, "ua1": ISO 14289-1) that a PDF breaks."""
    java = ["java", "-cp", os.environ["VERAPDF_CLASSPATH"], VALIDATE, flavour, pdf]
    lines = subprocess.run(java, check=True, capture_output=True, text=True).stdout.splitlines()
    if not lines:
        raise RuntimeError(f"veraPDF said nothing about {pdf}")
    return [line for line in lines if line != "compliant"]
