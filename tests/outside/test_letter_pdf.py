"""The owner's letter as a PDF, judged by veraPDF and qpdf."""

import subprocess
from pathlib import Path

import pytest
from verapdf import broken_rules


@pytest.mark.parametrize("flavour", ["2a", "ua1"])
def test_the_letter_keeps_and_can_be_read_aloud(demo: Path, flavour: str) -> None:
    assert broken_rules(demo / "letter.pdf", flavour) == []


def test_qpdf_finds_no_fault_in_the_letter(demo: Path) -> None:
    answer = subprocess.run(["qpdf", "--check", demo / "letter.pdf"], capture_output=True, text=True)
    assert answer.returncode == 0, answer.stdout + answer.stderr


def test_verapdf_sees_a_pdf_that_is_none_of_this(tmp_path: Path) -> None:
    plain = tmp_path / "plain.pdf"
    plain.write_bytes(plain_pdf())
    assert any("6.6.2.1" in rule for rule in broken_rules(plain, "2a"))
    assert any("7.1" in rule for rule in broken_rules(plain, "ua1"))


def plain_pdf() -> bytes:
    """One empty page and nothing else: no metadata, no tags, no output intent."""
    objects = [
        b"<< /Type /Catalog /Pages 2 0 R >>",
        b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] >>",
    ]
    text, places = b"%PDF-1.7\n", []
    for number, content in enumerate(objects, start=1):
        places.append(len(text))
        text += b"%d 0 obj\n%s\nendobj\n" % (number, content)
    table = b"".join(b"%010d 00000 n \n" % place for place in places)
    head = b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    tail = b"trailer\n<< /Size %d /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, len(text))
    return text + head + table + tail
