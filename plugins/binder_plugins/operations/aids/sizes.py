"""What a tool that is made has to suit: its size, limits, thread and length, from the act."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Design, HalfFact, ThreadFact, exact, shown_length
from binder_plugins.operations.aids.facts import PREFIX
from binder_plugins.operations.aids.owning import width_mm
from binder_plugins.operations.facts import Route
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Workshop
    from binder_plugins.operations.facts import Act, SetUp

_THREAD = re.compile(r"^(.*?) (taps?|die)\b")
_WIDTH = re.compile(r"\bwidth ([\d./ ]+ (?:mm|in))\b")
_WIDE = re.compile(r"([\d./]+ (?:mm|in)) wide\b")
_DIAMETER = re.compile(r"⌀(\d+(?:\.\d+)?)")


@dataclass(frozen=True, slots=True)
class Place:
    """Where a tool is named: a route, a set-up of it, and an act, None where it holds the work.

    `making` is the tool, made for that place, whose own making asks for another one; `bar` is
    what that is cut from, in mm.
    """

    route: Route
    setup: SetUp
    act: Act | None
    design: Design
    making: str = ""
    bar: float = 0.0

    @property
    def piece(self) -> str:
        """The id of the piece of work."""
        if self.making:
            return f"{PREFIX}{self.making}"
        return f"{self.route.subject} {self.setup.number}"

    @property
    def title(self) -> str:
        """`cam, set-up 3`."""
        return self.making or f"{self.route.title}, set-up {self.setup.number}"

    @property
    def workshop(self) -> Workshop:
        """The workshop it is made in."""
        return self.design.workshop

    def mm(self, size: float) -> str:
        """A size as printed."""
        return shown_length(exact(round(size, 3)), self.design.units)

    @property
    def limits(self) -> tuple[float, float] | None:
        """The limits in mm of what is measured, of the act or of the joint's half there."""
        act = self.act
        if act is None:
            return None
        if act.lower is not None and act.upper is not None:
            return act.lower, act.upper
        name = act.feature.partition(",")[0]
        for half in self.design.facts.all(HalfFact):
            is_here = half.joint in act.joints and half.place == name
            if is_here and half.lower is not None and half.upper is not None:
                return half.lower, half.upper
        return None

    @property
    def size(self) -> float:
        """The diameter in mm that it suits; 0 where none is told."""
        if self.act is None:
            return self.setup.grip.across or self._bore
        if self.limits is not None:
            return self.limits[0]
        found = _DIAMETER.search(self.act.what)
        return self.act.size or (float(found[1]) if found else 0.0) or self._diameter

    @property
    def about(self) -> str:
        """The nominal size that is read here, to a tenth of a millimetre; '' for none."""
        limits = self.limits
        found = self.act.size if self.act is not None else 0.0
        found = found or (sum(limits) / 2 if limits is not None else 0.0)
        return self.mm(round(found, 1)) if found else ""

    @property
    def _bore(self) -> float:
        """The finest through hole of the part, on which it is put."""
        form = self.design.facts.about(FormFact, self.route.subject)
        found = [
            one.diameter or 0.0
            for one in (form.located if form is not None else ())
            if one.kind in {"reamed", "bored"} and one.depth is None
        ]
        return next(iter(found), 0.0)

    @property
    def what_for(self) -> str:
        """The part, or the tool, that it is made for."""
        return self.making or self.route.title

    def wide(self, words: str) -> str:
        """The width of a groove as printed, of the act or of a tool's words; '' for none told."""
        found = _WIDE.search(words)
        if found is None and self.act is not None and not self.making:
            found = _WIDTH.search(self.act.what)
        return found[1] if found else ""

    def grooves(self) -> dict[str, float]:
        """The widths, as printed and in mm, of the grooves for which a tool is ground."""
        found: dict[str, float] = {}
        for route in self.design.facts.all(Route):
            for act in route.acts:
                said = _WIDTH.search(act.what) if "grooving tool" in act.tool else None
                width = width_mm(said[1]) if said else None
                if said and width is not None:
                    found[said[1]] = width
        return found

    @property
    def _diameter(self) -> float:
        """That of the feature which the act is for."""
        form = self.design.facts.about(FormFact, self.route.subject)
        name = self.act.feature if self.act is not None else ""
        found = (one for one in (form.located if form is not None else ()) if one.name == name)
        return next((one.diameter or 0.0 for one in found), 0.0)

    @property
    def thread(self) -> str:
        """The thread that is cut at the act's feature, or anywhere on the part; '' for none."""
        name = self.act.feature if self.act is not None else ""
        return next((said for at, said in self._threads() if not name or at == name), "")

    @property
    def engaged(self) -> float:
        """How far in mm a stub goes into the part's thread: a pitch short of it; 0 unknown."""
        name = next((at for at, said in self._threads() if said == self.thread), "")
        fact = self.design.facts.about(ThreadFact, f"{self.route.subject}.{name}")
        form = self.design.facts.about(FormFact, self.route.subject)
        if fact is None or form is None:
            return 0.0
        deep = float(fact.full_depth) if fact.full_depth is not None else form.size[0]
        return max(deep - fact.pitch, fact.pitch)

    def _threads(self) -> Iterator[tuple[str, str]]:
        wanted = "tap" if "stub" in self.setup.grip.on or self.act is not None else "die"
        for act in self.route.acts:
            found = _THREAD.match(act.tool) if act.act in {wanted, "screwcut"} else None
            if found:
                yield act.feature, found[1]
