"""What is cut round a step of turned work, and lies beside it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, exact, shown_length
from binder_plugins.shapes import form_codes
from binder_solid.facts import FormFact, Located, Stretch

_SAME = 1e-6
_RINGS = ("grooved", "undercut", "knurled", "screwed")


def check_beside(design: Design) -> Iterator[Diagnostic]:
    """Each groove, undercut, knurl or thread whose middle is not on the step that is named."""
    for form in design.facts.all(FormFact):
        features = {one.name: one for one in design.parts[form.subject].features}
        for one in form.located:
            feature = features.get(one.name)
            if feature is None or one.kind not in _RINGS or one.face != "across":
                continue
            name = str(getattr(feature.entry, "on", None) or "")
            step = next((step for step in form.stretches if step.name == name), None)
            spot = _off(one, step) if step is not None else None
            if step is None or spot is None:
                continue
            at = getattr(feature.entry, "at", None)
            yield form_codes.BESIDE_ITS_STEP.at(
                at.text.span if at is not None else feature.at,
                f"'{one.name}' is told to be on '{name}' of '{form.subject}', which goes from "
                f"{_mm(step.start)} to {_mm(step.end)} off the left-hand end; its middle comes to "
                f"{_mm(spot)}",
                help="`from left` and `from right` start at the ends of the whole part; from the "
                f"shoulder of the step: {_from_shoulder(form, step)}",
            )


def _off(one: Located, step: Stretch) -> float | None:
    """The first place of a feature in mm that is not on its step; None where all are."""
    places = (spot[0] for spot in one.spots)
    return next((x for x in places if not step.start - _SAME <= x <= step.end + _SAME), None)


def _from_shoulder(form: FormFact, step: Stretch) -> str:
    """How the place is written from the neighbour that stands out, or else by the step's ends."""
    beside = [one for one in form.stretches if step.start in (one.start, one.end) or
              step.end in (one.start, one.end)]  # fmt: skip
    named = [one for one in beside if one is not step and one.name]
    if not named:
        return "`start` or `end`"
    return f"`0.5 mm from {max(named, key=lambda one: one.across).name}`, `start` or `end`"


def _mm(amount: float) -> str:
    return shown_length(exact(round(amount, 3)))
