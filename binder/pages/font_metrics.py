"""Words to the width that they will have on a drawing, from the bundled font's own advances."""

from __future__ import annotations

import json
import unicodedata
from dataclasses import dataclass
from functools import cache
from importlib.resources import files


@dataclass(frozen=True, slots=True)
class FontMetrics:
    """Advance widths and the height of a capital, in units of which `em` make the font size."""

    em: int
    capital: int
    advances: dict[str, int]

    def advance(self, character: str) -> int:
        """How far one character moves the pen; one that the font lacks counts as a full em."""
        known = self.advances.get(character)
        if known is not None:
            return known
        return 0 if unicodedata.combining(character) else self.em


def text_width(text: str, height: float) -> float:
    """Width in mm of a label whose capitals are `height` mm high (ISO 3098-1, size h)."""
    metrics = font_metrics()
    return sum(map(metrics.advance, text)) * height / metrics.capital


def font_size(height: float) -> float:
    """The font size in mm that makes capitals `height` mm high."""
    metrics = font_metrics()
    return height * metrics.em / metrics.capital


@cache
def font_metrics() -> FontMetrics:
    """The table of the bundled sans font, read once."""
    raw = json.loads(files("binder.pages").joinpath("font_advances.json").read_text("utf-8"))
    return FontMetrics(raw["units_per_em"], raw["capital_height"], raw["advances"])
