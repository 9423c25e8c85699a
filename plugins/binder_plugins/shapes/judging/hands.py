"""Parts that are the opposite hand of another: has its shape a hand at all."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.shapes import form_codes

# Their features are placed from faces that are left and right of the part as it lies.
_HANDED = ("block", "plate", "board", "cut")


def check_hands(design: Design) -> Iterator[Diagnostic]:
    """Every mirrored part whose shape is not told by its faces."""
    for part in design.parts.values():
        if part.is_mirrored and part.shape_kind and part.shape_kind not in _HANDED:
            yield form_codes.HAND_OF_ROUND_WORK.at(
                part.at,
                f"'{part.name}' is the opposite hand of '{part.like}', which has none",
                help="leave out `mirrored: true`",
            )
