"""Turns the steps of a sum of the trade into workings of the binder."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import Given, Joint, Working, exact, shown_length
from binder_trade.seals import Step


def workings_of(
    joint: Joint, steps: Iterable[Step], given: Iterable[tuple[str, float]]
) -> Iterator[Working]:
    """One for each step: `binder why SPEC joint_name.name_of_the_step`; `given` in mm."""
    told = tuple(Given(name, shown_length(exact(mm)), joint.at) for name, mm in given)
    for step in steps:
        yield Working(
            id=f"{joint.name.replace(' ', '_')}.{step.name.replace(' ', '_')}",
            title=f"{step.name}, {joint.name}",
            given=told,
            formula=step.formula,
            result=step.value,
            because="follows from the diameter that is sealed",
            source=step.source,
            span=joint.at,
        )
