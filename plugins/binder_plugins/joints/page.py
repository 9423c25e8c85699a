"""Joints to their page."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Column,
    Design,
    Diagnostic,
    End,
    HalfFact,
    Joint,
    JointFact,
    Paragraph,
    Place,
    Reckoned,
    Section,
    Table,
    Text,
    ThreadFact,
)
from binder_plugins.joints.first import (
    Fitted,
    first_half,
    fitted_in,
    halves_of,
    meeting_of,
    why_first,
)
from binder_plugins.joints.order import met, title_of
from binder_solid.drilled_as_one import is_drilled_as_one

_COLUMNS = (
    Column("Joint", 3),
    Column("What meets", 5),
    Column("Made first", 3.2),
    Column("How made", 2.2),
    Column("Measured", 3),
)


def joint_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One table of all joints."""
    joints, fitted, halves = met(design), fitted_in(design), halves_of(design)
    if joints:
        words = (
            "The half named under `made first` is the master: finish it, write its size down, "
            "and make the other half to suit it."
        )
        yield Section(
            id="joints",
            title="Joints",
            place=Place.JOINTS,
            starts_page=False,
            blocks=(
                Paragraph((words.replace("`", ""),)),
                Table(
                    _COLUMNS,
                    tuple(
                        _row(joint, fitted, halves.get(joint.name, []), design) for joint in joints
                    ),
                ),
            ),
        )


def _row(joint: Joint, fitted: Fitted, halves: list[HalfFact], design: Design) -> tuple[Text, ...]:
    fact = design.facts.about(JointFact, joint.name)
    first = first_half(joint, design, fitted, halves)
    master: Text = ("both at once" if is_drilled_as_one(joint) else "either",)
    if first is not None:
        master = (Reckoned(title_of(first, design), why_first(joint, first, halves, design)),)
    blank: Text = ("",)
    if first is not None and meeting_of(joint).group == "fit" and not _is_thread(first, design):
        blank = (Blank(f"joint {joint.name} {first.place}", design.units),)
    phrase = fact.phrase if fact else ""
    return ((joint.name,), (phrase,), master, (_how_made(joint, halves),), blank)


def _is_thread(end: End, design: Design) -> bool:
    """Whether a place is a tapped hole, of which no size is read."""
    fact = design.facts.about(ThreadFact, str(end))
    return fact is not None and fact.is_internal


def _how_made(joint: Joint, halves: list[HalfFact]) -> str:
    """As the joint says; `to suit` where it says nothing and one half is made to the other."""
    is_suited = any("to suit" in half.how for half in halves)
    return "to suit" if joint.made == "to drawing" and is_suited else str(joint.made)
