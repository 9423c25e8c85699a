"""Threaded joints to the halves that they leave to suit, or ask for on a face or step."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    End,
    Feature,
    Joint,
    PlaceFact,
    Size,
    ThreadName,
    implied_feature,
    made_size,
)
from binder_plugins.threads import codes
from binder_plugins.threads.found import JOINTS, KINDS, feature_at, named_in, thread_of
from binder_plugins.threads.kinds import ThreadedEntry
from binder_trade.threads import NotMade

_SURFACES = ("face", "step")


def settled(design: Design) -> tuple[list[Feature], list[Diagnostic]]:
    """The features that threaded joints make or finish, and what they do not tell.

    A half that one joint settles tells the next, so they are gone through until none is left
    that tells anything.
    """
    features: list[Feature] = []
    waiting = [joint for joint in design.joints.values() if joint.kind in JOINTS]
    while waiting:
        told = {joint.name: name for joint in waiting if (name := _agreed(joint, design))}
        if not told:
            break
        for joint in waiting:
            if joint.name in told:
                made = list(_halves(joint, told[joint.name], design))
                features += made
                design = design.with_contribution(Contribution(features=made))
        waiting = [joint for joint in waiting if joint.name not in told]
    return features, [_unsaid(joint) for joint in waiting if _is_made(joint, design)]


def _is_made(joint: Joint, design: Design) -> bool:
    """Whether all of it is made here: what is bought has its thread on its label."""
    return not any(end.item in design.bought for end in joint.ends)


def _unsaid(joint: Joint) -> Diagnostic:
    return codes.THREAD_NOT_SAID.at(
        joint.at,
        f"neither half of '{joint.name}' says which thread",
        help="write `thread: M4` in the joint, or tap one half and name it",
    )


def _agreed(joint: Joint, design: Design) -> ThreadName | None:
    """The thread of a joint: its own, else that of its master, else of the first that tells."""
    if isinstance(joint.entry, ThreadedEntry) and joint.entry.thread is not None:
        return joint.entry.thread
    ends = [joint.master, *joint.ends] if joint.master is not None else list(joint.ends)
    for end in ends:
        feature = feature_at(end, design)
        name = named_in(feature) if feature is not None and feature.kind in KINDS else None
        if name is not None:
            return name
    return None


def _halves(joint: Joint, name: ThreadName, design: Design) -> Iterator[Feature]:
    if isinstance(thread_of(name), NotMade):
        return
    for place, end in enumerate(joint.ends):
        feature = feature_at(end, design)
        if feature is None:
            made = _on_surface(joint, end, name, _kind(joint, place, design), design)
            if made is not None:
                yield made
        elif feature.kind in KINDS and named_in(feature) is None:
            values = {key: getattr(feature.entry, key) for key in feature.entry.model_fields_set}
            values[feature.kind] = name
            yield implied_feature(
                design, joint, feature.owner, feature.name, feature.kind, **values
            )


def _kind(joint: Joint, place: int, design: Design) -> str:
    """Outside for the half that is named first, unless the other half says otherwise."""
    others = [feature_at(end, design) for number, end in enumerate(joint.ends) if number != place]
    kinds = {other.kind for other in others if other is not None and other.kind in KINDS}
    if len(kinds) == 1:
        return "tapped" if kinds == {"screwed"} else "screwed"
    return "tapped" if place else "screwed"


def _on_surface(
    joint: Joint, end: End, name: ThreadName, kind: str, design: Design
) -> Feature | None:
    """A new thread on the step or face that an end names."""
    surface = design.facts.about(PlaceFact, f"{end.item}.{end.place}")
    owner = design.parts.get(end.item) or design.fabrications.get(end.item)
    if owner is None or surface is None or surface.form not in _SURFACES:
        return None
    length = _length(joint)
    along = "length" if kind == "screwed" else "depth"
    values: dict[str, object] = {kind: name, "on": end.place}
    if length is not None:
        values[along] = made_size(length.exact, joint, str(length.text))
    elif kind == "tapped":
        values[along] = "through"
    taken = {one.name for one in owner.features}
    plain = joint.name.replace(" ", "_")
    free = next(one for one in _names(plain) if one not in taken)
    return implied_feature(design, joint, end.item, free, kind, **values)


def _names(plain: str) -> Iterator[str]:
    yield plain
    number = 2
    while True:
        yield f"{plain}_{number}"
        number += 1


def _length(joint: Joint) -> Size | None:
    return joint.entry.length if isinstance(joint.entry, ThreadedEntry) else None
