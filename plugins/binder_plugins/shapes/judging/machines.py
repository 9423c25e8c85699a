"""Parts against the machines of the workshop: too large to swing, too long between centres."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, exact, shown_length
from binder_plugins.shapes import form_codes
from binder_solid.facts import FormFact

# Coils and tube are not swung, and bar as bought is sawn.
_NOT_TURNED = ("tube", "cut", "spring")


def check_machines(design: Design) -> Iterator[Diagnostic]:
    """Every turned part that no lathe of this workshop takes."""
    swing = design.workshop.largest_swing()
    lathes = design.workshop.entry.machines.lathes.values()
    longest = max((lathe.between_centres.exact for lathe in lathes), default=None)
    if swing is None or longest is None:
        return
    for form in design.facts.all(FormFact):
        if not form.stretches or form.shape in _NOT_TURNED:
            continue
        part = design.parts[form.subject]
        across, long = exact(max(form.size[1:])), exact(form.size[0])
        if across > swing:
            yield form_codes.TOO_BIG_FOR_MACHINE.at(
                part.at,
                f"'{part.name}' is {shown_length(across)} across; the lathe swings "
                f"{shown_length(swing)}",
                help="another scale, a part in two pieces, or the rotary table",
            )
        elif long > longest:
            yield form_codes.TOO_BIG_FOR_MACHINE.at(
                part.at,
                f"'{part.name}' is {shown_length(long)} long; the lathe takes "
                f"{shown_length(longest)} between centres",
                help="another scale, or a part in two pieces",
            )
