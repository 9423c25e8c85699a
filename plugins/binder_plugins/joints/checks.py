"""Joints to findings: which half is named first, and which surfaces they claim."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, End, Fabrication, Joint, Labelled, Part
from binder_plugins.joints import codes
from binder_plugins.joints.order import meeting_of, met

_BORES = ("drilled", "reamed", "bored")


def check_joints(design: Design) -> Iterator[Diagnostic]:
    """All findings about joints."""
    claimed: dict[str, Joint] = {}
    for joint in met(design):
        yield from _backwards(joint, design)
        if meeting_of(joint).group == "fit":
            yield from _claims(joint, claimed, design)


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
            yield codes.SURFACE_CLAIMED.at(
                end.at,
                f"'{end}' is claimed by '{first.name}' too",
                related=(Labelled(first.at, "the first joint"),),
                help="give each its own feature",
            )
