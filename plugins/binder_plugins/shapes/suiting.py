"""Features that were left to suit, and that no joint gave a size."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.shapes import codes

# What waits for a thread is told by the plugin that knows threads.
_THREADS = ("tapped", "screwed")


def check_suited(design: Design) -> Iterator[Diagnostic]:
    """A finding for each that waits for a size in vain."""
    for feature in design.features():
        value = getattr(feature.entry, feature.kind, None)
        if value == "to suit" and feature.kind not in _THREADS:
            yield codes.STILL_TO_SUIT.at(
                getattr(value, "span", feature.at),
                f"nothing gives '{feature.owner}.{feature.name}' its size",
                help=f"write the size, or a joint that names '{feature.owner}.{feature.name}'",
            )
