"""Located holes to bores: each a cylinder along an axis of the part, with what carries it."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Feature, Part
from binder_solid.facts import FormFact, Located

KINDS = (
    "drilled",
    "reamed",
    "bored",
    "tapped",
    "counterbored",
    "countersunk",
    "spotfaced",
    "centred",
    "recessed",
)
# What the plugin of these joints says of its own holes is not said again.
HELD = (
    "screwed",
    "bolted",
    "studded",
    "dowelled",
    "pinned",
    "riveted",
    "buttoned",
    "clamped",
    "keyed",
    "clipped",
)
BOXES = ("block", "plate", "board", "cut", "sheet")


@dataclass(frozen=True, slots=True)
class Bore:
    """One hole: `axis` is that of space along which it runs, from `start` to `end` in mm.

    `middle` is its place on the two other axes, `side` the face that it starts from.
    """

    feature: Feature
    located: Located
    axis: int
    side: int
    middle: tuple[float, float]
    radius: float
    start: float
    end: float

    def apart(self, other: Bore) -> float:
        """From middle to middle, of two that run the same way."""
        return math.dist(self.middle, other.middle)

    def meets(self, other: Bore) -> bool:
        """Whether two that run the same way are somewhere equally deep."""
        return self.axis == other.axis and self.start < other.end and other.start < self.end


@dataclass(frozen=True, slots=True)
class Look:
    """A part that is looked at: its form, and its bores that matter in use."""

    part: Part
    form: FormFact
    bores: tuple[Bore, ...]
    held: frozenset[str]

    @property
    def is_box(self) -> bool:
        """Whether it lies from the origin to its size, without gaps."""
        return not self.form.stretches and self.form.shape in BOXES and not _is_bent(self.form)


def _is_bent(form: FormFact) -> bool:
    return any(one.name.startswith("bend ") for one in form.located)


def looks(design: Design) -> Iterator[Look]:
    """Every part that has a form."""
    named = _named(design)
    for form in design.facts.all(FormFact):
        part = design.parts[form.subject]
        features = {one.name: one for one in part.features}
        bores = tuple(
            bore
            for located in form.located
            if (feature := features.get(located.name)) is not None and not located.is_dummy
            for bore in _bores(feature, located, form)
        )
        yield Look(part, form, bores, _held(part, named, design))


def _named(design: Design) -> dict[str, set[str]]:
    """The places that fasteners name, by their items."""
    named: dict[str, set[str]] = {}
    for joint in design.joints.values():
        for end in joint.ends if joint.kind in HELD else ():
            named.setdefault(end.item, set()).add(end.place)
    return named


def _held(part: Part, named: dict[str, set[str]], design: Design) -> frozenset[str]:
    """The features that fasteners look after: asked for by their joints, or named in them."""
    implied = {
        one.name
        for one in part.features
        if one.implied_by and design.joints[one.implied_by].kind in HELD
    }
    return frozenset(named.get(part.name, set()) | implied)


def _bores(feature: Feature, located: Located, form: FormFact) -> Iterator[Bore]:
    lean = getattr(feature.entry, "lean", None)
    is_square = located.length is not None and located.kind == "recessed"
    if located.kind not in KINDS or located.diameter is None or lean is not None or is_square:
        return
    for n, spot in enumerate(located.spots):
        out = _out(located, n)
        axis = max(range(3), key=lambda one: abs(out[one]))
        if abs(out[axis]) < 0.999:
            continue
        side = 1 if out[axis] > 0 else -1
        through = form.size[axis]
        deep = min(_deep(located, through), through)
        ends = sorted((spot[axis], spot[axis] - side * deep))
        middle = tuple(place for number, place in enumerate(spot) if number != axis)
        yield Bore(
            feature, located, axis, side, (middle[0], middle[1]), located.diameter / 2, *ends
        )


def _deep(located: Located, through: float) -> float:
    """A countersink and a centre hole are about as deep as they are wide."""
    if located.depth is None and located.kind in ("countersunk", "centred"):
        return located.diameter or 0.0
    return located.depth if located.depth is not None else through


def _out(located: Located, n: int) -> tuple[float, float, float]:
    """Out of the metal at one of several.

    Those round a rim look away from the axis; of those in both ends half look the other way.
    """
    first, here = located.spots[0], located.spots[n]
    if located.face == "across" and n > 0:
        far = math.hypot(here[1], here[2]) or 1.0
        return (0.0, here[1] / far, here[2] / far)
    axis = max(range(3), key=lambda one: abs(located.frame.z[one]))
    a, b, c = located.frame.z
    return (a, b, c) if abs(first[axis] - here[axis]) < 1e-6 else (-a, -b, -c)
