"""Whether a grip bears what a die or a tap turns the work with."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_making.cutting import grip_for, thread_torque

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from binder_plugins.operations.facts import Act, SetUp
    from binder_plugins.operations.work import Work

_SAME = 1e-6
_CODE = "thread-turns-the-work"
_GRIPS = frozenset({"chuck", "collet", "four-jaw"})


def turned_by_threads(work: Work, setups: Iterable[SetUp]) -> list[tuple[str, str]]:
    """A code and its reason for each act that turns the work in its grip."""
    return [found for setup in setups for found in _turned(work, setup)]


def _turned(work: Work, setup: SetUp) -> Iterator[tuple[str, str]]:
    grip = setup.grip
    # A bar that goes into the spindle is gripped by the whole jaws.
    if grip.kind not in _GRIPS or grip.across <= 0 or _is_parted(setup):
        return
    for act in setup.acts:
        thread = _thread(work, act)
        if thread is None:
            continue
        torque = thread_torque(thread.pitch, thread.major)
        wanted = grip_for(torque, grip.across, is_collet=grip.kind == "collet")
        if grip.long < wanted - _SAME:
            words = (
                f"the {thread.designation} {act.act} turns '{work.name}' with {torque:.1f} N m, "
                f"which wants {wanted:.1f} mm of ⌀{grip.across:g} mm in the {grip.holder}; "
                f"{grip.long:.1f} mm of it are gripped"
            )
            yield _CODE, words


def longest_grip(work: Work, places: Iterable[str], across: float) -> float:
    """How much of a diameter in mm the jaws must grip for the threads at some places, in mm."""
    facts = (work.design.facts.about(ThreadFact, f"{work.name}.{one}") for one in places)
    torques = [thread_torque(one.pitch, one.major) for one in facts if one is not None]
    return max((grip_for(one, across) for one in torques), default=0.0)


def _is_parted(setup: SetUp) -> bool:
    return any(act.act == "part-off" for act in setup.acts)


def _thread(work: Work, act: Act) -> ThreadFact | None:
    if act.act not in {"die", "tap"}:
        return None
    feature = act.feature.removesuffix(", other end")
    return work.design.facts.about(ThreadFact, f"{work.name}.{feature}")
