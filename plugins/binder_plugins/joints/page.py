"""Joints to their page."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Column,
    Design,
    Diagnostic,
    HalfFact,
    Joint,
    JointFact,
    Paragraph,
    Place,
    Reckoned,
    Section,
    Table,
    Text,
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
    master: Text = ("either",)
    if first is not None:
        master = (Reckoned(title_of(first, design), why_first(joint, first, halves)),)
    blank: Text = ("",)
    if first is not None and meeting_of(joint).group == "fit":
        blank = (Blank(f"joint {joint.name} {first.place}", design.units),)
    return ((joint.name,), (fact.phrase if fact else "",), master, (joint.made,), blank)
