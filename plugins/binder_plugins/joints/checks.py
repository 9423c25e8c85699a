"""Joints to findings: which half is named first, and which surfaces they claim."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Diagnostic,
    End,
    Fabrication,
    FitFact,
    Joint,
    Labelled,
    NumberOff,
    Part,
)
from binder_plugins.joints import codes
from binder_plugins.joints.first import meeting_of
from binder_plugins.joints.order import met

_BORES = ("drilled", "reamed", "bored")


def check_joints(design: Design) -> Iterator[Diagnostic]:
    """All findings about joints."""
    claimed: dict[str, Joint] = {}
    said: dict[tuple[str, frozenset[str]], Joint] = {}
    for joint in met(design):
        yield from _backwards(joint, design)
        yield from _ends(joint, design)
        yield from _twice(joint, said)
        if meeting_of(joint).group == "fit" and not meeting_of(joint).shares:
            yield from _claims(joint, claimed, design)


def _ends(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    """Too many halves for a fit, or one part alone where only one is made."""
    if meeting_of(joint).group == "fit" and len(joint.ends) > 2:
        yield codes.FIT_OF_TWO.at(
            joint.ends[2].at,
            f"'{joint.name}' is a fit of {len(joint.ends)} halves",
            help="say it in two joints, one for each bore",
        )
    number = design.facts.about(NumberOff, joint.items[0])
    if len(joint.items) == 1 and number is not None and number.count == 1:
        yield codes.PART_WITH_ITSELF.at(
            joint.at,
            f"'{joint.name}' joins '{joint.items[0]}' to itself, and one is made",
            help="name the other part, or say how many there are with `quantity:`",
        )


def _twice(joint: Joint, said: dict[tuple[str, frozenset[str]], Joint]) -> Iterator[Diagnostic]:
    key = (joint.kind, frozenset(str(end) for end in joint.ends))
    first = said.setdefault(key, joint)
    if first is not joint:
        yield codes.JOINT_SAID_TWICE.at(
            joint.at,
            f"'{joint.name}' says again what '{first.name}' says",
            related=(Labelled(first.at, "the first one"),),
            help="drop one; several alike are told by `pattern:`",
        )


def _backwards(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    if joint.kind == "threaded" and _kind_of(joint.ends[0], design) == "tapped":
        yield codes.THREADED_BACKWARDS.at(
            joint.ends[0].at,
            f"'{joint.ends[0]}' is tapped, so the other half screws into it",
            help="name the half with the outside thread first",
        )


def _kind_of(end: End, design: Design) -> str:
    """The kind of the feature at an end, '' where it is a step or a whole item."""
    item = design.item(end.item)
    features = item.features if isinstance(item, (Part, Fabrication)) else ()
    return next((one.kind for one in features if one.name == end.place), "")


def _is_bore(end: End, design: Design) -> bool:
    """A bore fits one shaft; one shaft may well run in several bores."""
    return _kind_of(end, design) in _BORES


def _claims(joint: Joint, claimed: dict[str, Joint], design: Design) -> Iterator[Diagnostic]:
    for end in joint.ends:
        if not _is_bore(end, design):
            continue
        first = claimed.setdefault(str(end), joint)
        if first is not joint:
            sizes = {one.nominal for one in _fits(first, joint, design)}
            code = codes.BORE_OF_TWO_SIZES if len(sizes) > 1 else codes.SURFACE_CLAIMED
            yield code.at(
                end.at,
                f"'{end}' is claimed by '{first.name}' too",
                related=(Labelled(first.at, "the first joint"),),
                help="give each its own feature",
            )


def _fits(first: Joint, second: Joint, design: Design) -> list[FitFact]:
    found = (design.facts.about(FitFact, joint.name) for joint in (first, second))
    return [one for one in found if one is not None]
