"""A driven model to its running in: work of its own between putting together and the full load."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Before, CordFact, Design, Task, TaskKind

_DRIVEN = frozenset({"turns", "feeds"})
_LOADED = frozenset({"works", "winds", "trips", "cams", "cranks"})
# What a load may be laid on by halves; a hammer that is tripped is lifted whole, or not at all.
_BY_SHARES = _LOADED - {"trips"}
_SHARES = "under a quarter and half of the load; all of it comes last, with the test"
_TRIPPED = "with what is lifted at the lowest speed; the highest comes last, with the test"
_TRIED = "it is run in when it is together"
_LOAD = "full load comes last, on bearings that have bedded in"
_BEDDED = "it is tried when it has bedded in"


def is_loaded(design: Design) -> bool:
    """Whether the drive works against something."""
    return any(joint.kind in _LOADED for joint in design.joints.values())


def _has_shares(design: Design) -> bool:
    """Whether it works against a load of which there can be a part."""
    return any(joint.kind in _BY_SHARES for joint in design.joints.values())


def full_load(one: Assembly, design: Design) -> str:
    """What stands before the words of the test that is the first under the whole load."""
    if not (is_run_in(one, design) and is_loaded(design)):
        return ""
    load = "under all of the load" if _has_shares(design) else "at its work"
    return f"{load}, as told under 'First run': "


def pass_min(design: Design) -> float:
    """Minutes of one pass of a cord that is wound by hand; 0 where no hand winds one."""
    hands = [one for one in design.joints.values() if getattr(one.entry, "by", "") == "hand"]
    found = [one.pass_min for one in design.facts.all(CordFact)]
    return max(found, default=0.0) if hands else 0.0


def is_run_in(one: Assembly, design: Design) -> bool:
    """The outermost assembly of a model that turns or is fed by a screw, where it is tested."""
    is_inner = any(
        member.item == one.name for other in design.assemblies.values() for member in other.members
    )
    driven = any(joint.kind in _DRIVEN for joint in design.joints.values())
    return bool(one.test) and driven and not is_inner


def run_in_task(one: Assembly, design: Design) -> Iterator[Task]:
    """Running in as the page of the first run tells it, short of all of the load."""
    if is_run_in(one, design):
        shares = _SHARES if _has_shares(design) else _TRIPPED
        load = f", then {shares}" if is_loaded(design) else ""
        detail = f"as told under 'First run': by hand, slowly, without load{load}"
        yield Task(f"run {one.name}", f"run in the {one.title}", TaskKind.TEST, one.name,
                   detail, one.at)  # fmt: skip


def run_in_befores(one: Assembly, design: Design) -> Iterator[Before]:
    """Together, then run in, then tested."""
    if is_run_in(one, design):
        run = f"run {one.name}"
        yield Before(f"assemble {one.name}", run, _TRIED, is_must=True, at=one.at)
        why = _LOAD if is_loaded(design) else _BEDDED
        yield Before(run, f"test {one.name}", why, is_must=True, at=one.at)
