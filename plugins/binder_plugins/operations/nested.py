"""A part that sits round the other while one drill goes through both: what is marked, what holds.

It hides a line on the rod where the hole comes, so its own outside carries that, and the rod one
where its edge comes; no clamp keeps it from turning or sliding there. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import HOLES
from binder_solid.stands_at import standing

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Joint
    from binder_plugins.operations.facts import Grip
    from binder_plugins.operations.rows import Hole


@dataclass(frozen=True, slots=True)
class Nested:
    """The hole of the part outside and that of the rod in it."""

    outer: Hole
    inner: Hole

    @property
    def deep(self) -> float:
        """What the drill goes through in mm: the rod lies within the other."""
        return self.outer.deep

    @property
    def edge(self) -> tuple[float, str]:
        """Where on the rod the outer part begins: mm from its `left` or `right` end."""
        design = self.inner.work.design
        joint = next(design.joints[one] for one in self.joints)
        found = standing(joint, design)
        if found is not None and found.rod == self.inner.work.name:
            return found.low, found.end
        return self.inner.one.frame.origin[0] - self.outer.one.frame.origin[0], "left"

    @property
    def joints(self) -> tuple[str, ...]:
        """The joint for which both holes are made."""
        own = set(self.outer.work.joints_at(self.outer.one.name))
        return tuple(one for one in self.inner.work.joints_at(self.inner.one.name) if one in own)

    @property
    def line(self) -> str:
        """`scribe the post right round, 24 mm from its left-hand end: ...`."""
        at, end = self.edge
        outer, inner = self.outer.work, self.inner.work
        return (
            f"scribe the {inner.item.title} right round, {inner.mm(round(at, 2))} from its "
            f"{end}-hand end: the edge of the {outer.item.title} comes to that line, and hides all "
            "that is marked beyond it"
        )

    @property
    def up(self) -> str:
        """How the two are put together, and what holds them so."""
        outer, inner = self.outer.work.item.title, self.inner.work.item.title
        return (
            f"the {outer} slid on the {inner} to its line, turned as they will stand, a drop of "
            "superglue run in at the edge till it is held; clamped down with the mark on top"
        )

    def gripped(self, grip: Grip) -> Grip:
        """What holds the rod holds the other on it."""
        return replace(grip, on=grip.on.replace("the other clamped to it", "the other stuck on it"))


def nested(joint: Joint, holes: Sequence[Hole]) -> Nested | None:
    """The two where an end of the joint names the hole in which the other part sits; else None."""
    for outer in holes:
        form = outer.work.form
        bores = {
            one.name
            for one in (form.located if form is not None else ())
            if one.kind in HOLES and one.name != outer.one.name
        }
        inner = next((one for one in holes if one.work.name != outer.work.name), None)
        sits = any(end.item == outer.work.name and end.place in bores for end in joint.ends)
        if sits and inner is not None and inner.work.form is not None and inner.work.form.stretches:
            return Nested(outer, inner)
    return None
