"""Joints and symptoms to the tables for tracing a fault, with what should be measured at each."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    Checklist,
    Column,
    Design,
    Diagnostic,
    FitFact,
    Joint,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
    Text,
    Tick,
)
from binder_plugins.running.tracing import (
    Cause,
    Figure,
    fault_source,
    faults,
    figures,
    numbered,
    remarked,
)

_JOINTS = (
    Column("No.", 0.8, is_figure=True),
    Column("Joint", 4),
    Column("Clearance", 3),
    Column("Hole measured", 3),
    Column("Shaft measured", 3),
)
_TRACED = (
    Column("Mark", 0.9, is_figure=True),
    Column("Joint", 2.6),
    Column("What", 3.4),
    Column("Should be", 4.4),
    Column("Measured", 2.6),
)
_FAULTS = (
    Column("Look at no.", 2.4),
    Column("It is that one if", 4),
    Column("Then", 6),
)
_TRACING = (
    "Halve the way: take the drive apart in the middle of its numbers, and turn both halves by "
    "hand. The half that has the fault is halved again. The numbers run outwards from what drives "
    "the model, and then over what stands still. Measure the joint, write it down, and hold it "
    "against its clearance."
)


def fault_sections(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section: the joints along the motion, the drive's figures, then fault by fault."""
    joints = numbered(design)
    traced = figures(joints, design)
    found = faults(joints, design, traced)
    if found:
        rows = tuple(_joint(n, one, design) for n, one in enumerate(joints, 1))
        blocks: list[Block] = [Paragraph((_TRACING,)), Table(_JOINTS, rows)]
        blocks += [*_figures(traced), *_remarks(joints, findings)]
        for fault in found:
            causes = tuple(_cause(one) for one in fault.causes)
            blocks += [Subheading(fault.sign), Table(_FAULTS, causes)]
        blocks.append(Paragraph((f"After: {fault_source()}.",)))
        yield Section("faults", "If it will not run", Place.FIRST_RUN, tuple(blocks))


def _figures(traced: tuple[Figure, ...]) -> Iterator[Block]:
    if traced:
        yield Subheading("What the drive should measure")
        yield Table(_TRACED, tuple(_figure(one) for one in traced))


def _figure(one: Figure) -> tuple[Text, ...]:
    fact = one.fact
    blank = Blank(f"traced {fact.subject}", fact.unit)
    return ((one.mark,), (fact.joint,), (fact.what,), (fact.should,), (blank,))


def _remarks(joints: tuple[Joint, ...], findings: tuple[Diagnostic, ...]) -> Iterator[Block]:
    """What has been remarked when the binder was made is the first place to look."""
    ticks = tuple(
        Tick(f"remarked {number} {one.code.name}", (f"No. {number}: {one.message}.",))
        for number, one in remarked(joints, findings)
    )
    if ticks:
        yield Subheading("Remarked already: look here first")
        yield Checklist(tuple({tick.key: tick for tick in ticks}.values()), numbered=False)


def _cause(one: Cause) -> tuple[Text, ...]:
    marks = f"; measure {', '.join(one.figures)}" if one.figures else ""
    return ((f"{', '.join(map(str, one.numbers))}{marks}",), (one.look,), (one.cure,))


def _joint(number: int, joint: Joint, design: Design) -> tuple[Text, ...]:
    fit = design.facts.about(FitFact, joint.name)
    if fit is None:
        return ((str(number),), (joint.name,), ("",), ("",), ("",))
    places = [end.partition(".")[2] or end for end in (fit.hole, fit.shaft)]
    hole, shaft = (Blank(f"joint {joint.name} {place}", design.units) for place in places)
    return ((str(number),), (joint.name,), (_limits(fit),), (hole,), (shaft,))


def _limits(fit: FitFact) -> str:
    least, most = fit.clearance_min_um / 1000, fit.clearance_max_um / 1000
    if fit.suited_um is not None and least >= 0:
        return f"{least:.3f} to {most:.3f} mm, by making"
    if fit.suit and fit.eased_um is None:
        aim = fit.wanted_um / 1000
        return f"{aim:.3f} mm, by making" if aim >= 0 else f"{-aim:.3f} mm of nip, by making"
    if most <= 0:
        return f"{-most:.3f} to {-least:.3f} mm of nip"
    return f"{least:.3f} to {most:.3f} mm"
