"""The drives of a design to what each does, with its workings and remarks."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from binder.api import Contribution, Design, Joint, Working
from binder_plugins.drive.duties.camming import camming
from binder_plugins.drive.duties.chaining import chaining
from binder_plugins.drive.duties.duty import DutyFact, Told
from binder_plugins.drive.duties.feeding import feeding
from binder_plugins.drive.duties.holding import racking, ratcheting, scaled, worming
from binder_plugins.drive.duties.lifting import lifting
from binder_plugins.drive.duties.linking import cranking, indexing, rocking
from binder_plugins.drive.duties.steadying import steadying
from binder_plugins.drive.duties.tripping import tripping

_OF: Mapping[str, Callable[[Joint, Design], Told]] = {
    "winds": lifting,
    "trips": tripping,
    "steadies": steadying,
    "cranks": cranking,
    "rocks": rocking,
    "cams": camming,
    "indexes": indexing,
    "worms": worming,
    "racks": racking,
    "ratchets": ratcheting,
    "prototype": scaled,
    "feeds": feeding,
    "chained": chaining,
}


def settle_duties(design: Design) -> Contribution:
    """A duty of each drive that tells enough."""
    told = [_OF[joint.kind](joint, design) for joint in design.joints.values() if joint.kind in _OF]
    duties = [one.duty for one in told if one.duty is not None]
    return Contribution(
        facts=[*duties, *(fact for one in told for fact in one.more)],
        workings=[working for duty in duties for working in _workings(duty, design)],
        findings=[finding for one in told for finding in one.findings],
    )


def _workings(duty: DutyFact, design: Design) -> Iterator[Working]:
    name = duty.subject.replace(" ", "_")
    for step in duty.steps:
        yield Working(
            id=f"{name}.{step.name.replace(' ', '_')}",
            title=f"{step.name} of '{duty.subject}'",
            given=(),
            formula=step.formula,
            result=step.value,
            source=step.source,
            span=design.joints[duty.subject].at,
        )
