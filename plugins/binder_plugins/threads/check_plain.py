"""A thread that ends short of its shoulder: can the hub that is screwed on come up to it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from binder.api import (
    Design,
    Diagnostic,
    End,
    Feature,
    Joint,
    Labelled,
    PlaceFact,
    ShaftFact,
    shown_length,
)
from binder_plugins.threads import codes
from binder_plugins.threads.check_seating import has_shoulder
from binder_plugins.threads.found import Found

_MOUTHS = ("countersunk", "counterbored", "recessed")
_CLEARS = ("undercut", "grooved")
# So much of the last thread the mouth of a nut takes in by its own chamfer, in pitches: common
# practice, no source.
_CHAMFER_PITCHES = 0.5


def check_plain(
    joint: Joint, halves: Sequence[tuple[End, Found]], design: Design
) -> Iterator[Diagnostic]:
    """A hub in the row along a shaft, on its thread below a shoulder, with a plain length between.

    Beside the row nothing says that it comes up to the shoulder: a nut may stand anywhere.
    """
    nut = next((half for _, half in halves if half.is_internal), None)
    screw = next((half for _, half in halves if not half.is_internal), None)
    if nut is None or screw is None or not _in_row(screw, nut, design):
        return
    step = screw.surface
    if step is None or step.length is None or screw.length is None:
        return
    plain = step.length - screw.length
    if float(plain) <= _CHAMFER_PITCHES * screw.thread.pitch_mm:
        return
    if not has_shoulder(step, screw.thread, design) or _is_cleared(step, nut, plain, design):
        return
    long = shown_length(plain, design.units)
    yield codes.HUB_STOPS_SHORT.at(
        screw.at,
        f"'{step.place}' is left plain for {long} below its shoulder: "
        f"'{nut.feature.owner}' stops {long} short of it",
        related=(Labelled(nut.at, "this hole"),),
        help=f"undercut it {long} wide below the core and thread it right up, or countersink or "
        f"counterbore the mouth of the hole {long} deep",
    )


def _in_row(screw: Found, nut: Found, design: Design) -> bool:
    shaft = design.facts.about(ShaftFact, screw.feature.owner)
    return shaft is not None and nut.feature.owner in {one.item for one in shaft.pieces}


def _is_cleared(step: PlaceFact, nut: Found, plain: Fraction, design: Design) -> bool:
    """An undercut on the screw, or a mouth of the hole that takes in what is plain."""
    own = any(one.kind in _CLEARS and _on(one) == step.place for one in _of(step.item, design))
    if own or (nut.place is not None and (nut.place.recess or 0) >= plain):
        return True
    return any(one.kind in _MOUTHS for one in _of(nut.feature.owner, design))


def _of(item: str, design: Design) -> tuple[Feature, ...]:
    owner = design.parts.get(item) or design.fabrications.get(item)
    return owner.features if owner is not None else ()


def _on(feature: Feature) -> str:
    return str(getattr(feature.entry, "on", None) or "")
