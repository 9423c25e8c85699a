"""A chain to its whole links, the centres that they want, its speed and how evenly it runs."""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, degrees, pi

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Rows, Told
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.train.told import teeth_of
from binder_trade.chains.roller import ChainDrive, chain_drive, chain_speed
from binder_trade.explained import NotDefined, Step

# Of the centres, how far a chain may hang slack and how far it stretches: common practice.
_SLACK, _TIGHT = 0.02, 0.001
# ISO 606 has wheels from nine teeth on; a bead lies in its pocket from five: from memory.
_LEAST_ROLLER, _LEAST_BEAD = 9, 5
# From so many teeth on a roller chain runs smoothly: common practice, no source.
_SMOOTH = 17


def chaining(joint: Joint, design: Design) -> Told:
    """The chain over two wheels whose pitch is told; with its links where the centres are."""
    pitch = getattr(joint.entry, "pitch", None)
    first, second = (teeth_of(joint, number, design) for number in (0, 1))
    if not isinstance(pitch, Size) or not first or not second:
        return Told()
    teeth = (first, second)
    few = tuple(_few(joint, teeth))
    if few:
        return Told(None, few)
    try:
        made = _drive(joint, pitch.mm, teeth)
        runs, steps = _runs(joint, pitch.mm, teeth, design)
    except NotDefined as refusal:
        finding = codes.CHAIN_LENGTH_WRONG.at(joint.at, refusal.reason, help=refusal.way_out)
        return Told(None, (finding,))
    rows = (*(_links(joint, made, design) if made is not None else ()), *runs)
    duty = DutyFact(joint.name, "Chain", rows, (*(made.steps if made is not None else ()), *steps))
    return Told(duty, tuple(_amiss(joint, made, design)) if made is not None else ())


def _is_bead(joint: Joint) -> bool:
    return bool(getattr(joint.entry, "bead", False))


def _drive(joint: Joint, pitch: float, teeth: tuple[int, int]) -> ChainDrive | None:
    centres = getattr(joint.entry, "centres", None)
    if not isinstance(centres, Size):
        return None
    links = getattr(joint.entry, "links", None)
    return chain_drive(pitch, *teeth, centres.mm, even=not _is_bead(joint), links=links)


def _few(joint: Joint, teeth: tuple[int, int]) -> Iterator[Diagnostic]:
    """A wheel round which a chain does not bend."""
    least = _LEAST_BEAD if _is_bead(joint) else _LEAST_ROLLER
    for end, count in zip(joint.ends, teeth, strict=False):
        if count < least:
            rough = 1 - cos(pi / max(count, 3))
            yield codes.CHAIN_TEETH_FEW.at(
                end.at,
                f"'{end.item}' has {count} teeth for its chain, whose speed would rise and fall "
                f"by {rough:.0%}",
                help=f"take {least} at the least, and {_SMOOTH} for a smooth run"
                if least == _LEAST_ROLLER
                else f"take {least} pockets at the least",
            )


def _links(joint: Joint, made: ChainDrive, design: Design) -> Rows:
    cranked = ", with a cranked link" if made.needs_cranked_link and not _is_bead(joint) else ""
    return (
        ("Links", f"{made.links}{cranked}; {made.links_exact:.2f} by the centres told"),
        ("Length", size(made.length_mm, design)),
        ("Centres for them", size(made.centres_mm, design)),
        ("Lies on the small wheel", f"{degrees(made.wrap_small_rad):.0f}°"),
    )


def _runs(
    joint: Joint, pitch: float, teeth: tuple[int, int], design: Design
) -> tuple[Rows, tuple[Step, ...]]:
    """Speed at every setting, and how it rises and falls over the corners of the wheels."""
    body = turning_of(joint.ends[0].item, design)
    speeds = sorted({abs(one) for one in body.speeds if one}) if body is not None else []
    if not speeds:
        return (), ()
    made = [chain_speed(pitch, one, *teeth) for one in speeds]
    words = ", ".join(f"{one.speed_ms:.3g}" for one in made)
    small = min(teeth)
    rough = "" if small >= _SMOOTH or _is_bead(joint) else f"; {_SMOOTH} teeth run smoothly"
    own, other = (f"{1 - cos(pi / count):.1%}" for count in teeth)
    uneven = f"by {own} over the corners of {teeth[0]} teeth, by {other} over those of {teeth[1]}"
    rows = (("Chain runs", f"{words} m/s"), ("Rises and falls", f"{uneven}{rough}"))
    return rows, made[-1].steps


def _amiss(joint: Joint, made: ChainDrive, design: Design) -> Iterator[Diagnostic]:
    centres = getattr(joint.entry, "centres", None)
    if not isinstance(centres, Size):
        return
    over = made.centres_mm / centres.mm - 1
    if -_TIGHT <= over <= _SLACK:
        return
    how = "too long" if over > 0 else "too short"
    yield codes.CHAIN_LENGTH_WRONG.at(
        centres.span,
        f"{made.links} links are {how} at {size(centres.mm, design)}",
        help=f"set the wheels {size(made.centres_mm, design)} apart, or take up the chain "
        "with a jockey",
    )
