"""All checks of a cord, its pawl and its load as the model stands."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.drive.cords.clear import check_cords
from binder_plugins.drive.cords.knots import check_knots
from binder_plugins.drive.cords.pawls import check_pawls
from binder_plugins.drive.cords.tipping import check_tipping


def check_hoists(design: Design) -> Iterator[Diagnostic]:
    """Is the way of the cord free and its knot, does the pawl hold, does the model stand."""
    yield from check_cords(design)
    yield from check_knots(design)
    yield from check_pawls(design)
    yield from check_tipping(design)
