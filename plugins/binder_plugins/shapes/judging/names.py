"""Steps of turned work that bear the name of a face."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.shapes import form_codes

_FACES = ("left", "right", "front", "back", "top", "underside", "ends")


def check_names(design: Design) -> Iterator[Diagnostic]:
    """Every named step that a joint cannot reach, since the face of that name is meant."""
    for part in design.parts.values():
        steps = part.shape if isinstance(part.shape, list) else ()
        for step in steps:
            name = getattr(step, "name", None)
            if name is not None and str(name) in _FACES:
                yield form_codes.STEP_NAMED_LIKE_FACE.at(
                    getattr(name, "span", part.at),
                    f"'{part.name}.{name}' means the whole part's {name}, not this step",
                    help=f"another name, as `{name}_step`, and name it so in the joints",
                )
