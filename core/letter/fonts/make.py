"""Joins the subsets of each font into one TTF without hinting: PDF viewers and printers of today draw outlines as they are."""

import sys
from pathlib import Path

from fontTools.merge import Merger
from fontTools.ttLib import TTFont

FONTS = {
    "AtkinsonHyperlegible": ("atkinson-hyperlegible", ["latin", "latin-ext"]),
    "NotoSans": ("noto-sans", ["latin", "latin-ext", "vietnamese", "cyrillic", "greek"]),
}
WEIGHTS = {"Regular": 400, "Bold": 700}
HINTS = ["fpgm", "prep", "cvt ", "gasp"]


def main(folders: list[str]) -> None:
    for (name, (package, subsets)), folder in zip(FONTS.items(), folders, strict=True):
        for style, weight in WEIGHTS.items():
            parts = [unhinted(Path(folder) / f"{package}-{subset}-{weight}-normal.woff2") for subset in subsets]
            join(parts, Path(__file__).parent / f"{name}-{style}.ttf")
            for part in parts:
                part.unlink()


def unhinted(source: Path) -> Path:
    font = TTFont(source)
    font.flavor = None
    for table in HINTS:
        if table in font:
            del font[table]
    for glyph in font["glyf"].keys():
        font["glyf"][glyph].removeHinting()
    part = Path(source.name).with_suffix(".ttf")
    font.save(part)
    return part


def join(parts: list[Path], target: Path) -> None:
    font = Merger().merge([str(part) for part in parts])
    font.recalcTimestamp = False
    font["head"].created = font["head"].modified = 0
    font.save(target)


if __name__ == "__main__":
    main(sys.argv[1:])
