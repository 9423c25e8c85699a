"""`binder reckon oring` and `packing`: a ring with its groove, a gland with its packing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    COMMAND_LINE,
    Answer,
    NotSizeError,
    Reason,
    Result,
    Workshop,
    asked_size,
    said_back,
    with_point,
)
from binder_plugins.seals.codes import BY_NAME
from binder_plugins.seals.ring_words import ring_or_cord
from binder_trade.seals import (
    Duty,
    Groove,
    NotDefined,
    Step,
    for_bore,
    for_rod,
    lead_in,
    piston_groove,
    rings,
    rod_groove,
    stuffing_box,
)

_RING_NAMES = ("bore", "rod", "ring", "moving", "standing")
_BOX_NAMES = ("rod", "packing", "rings")
_ALONE = ("moving", "standing")


def _told(words: Sequence[str], names: Sequence[str]) -> dict[str, str]:
    """What stands after each name; NotDefined for words that belong to none."""
    found: dict[str, str] = {}
    name = ""
    for word in " ".join(words).split():
        if word in names and word not in found:
            name, found[word] = word, ""
        elif name and name not in _ALONE:
            found[name] = f"{found[name]} {word}".strip()
        else:
            way_out = with_point(word) or f"the words are: {', '.join(names)}"
            raise NotDefined(f"{said_back(word)} belongs to no size", way_out)
    return found


def _mm(told: dict[str, str], name: str) -> float | None:
    if name not in told:
        return None
    try:
        return float(asked_size(told[name], f"`{name} 12 mm`").amount)
    except NotSizeError as fault:
        raise NotDefined(fault.reason, fault.way_out) from fault


def ring_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """The ring and its groove; raises NotDefined where there is none."""
    told = _told(words, _RING_NAMES)
    bore, rod = _mm(told, "bore"), _mm(told, "rod")
    if (bore is None) == (rod is None):
        raise NotDefined("an O-ring seals a bore or a rod", "as `bore 12 mm` or `rod 6 mm`")
    duty: Duty = "standing" if "standing" in told else "moving"
    groove = _groove(bore, rod, told.get("ring"), duty)
    lead = lead_in(groove.ring.cord_mm)
    return Answer(
        f"O-ring {groove.ring.name}, a {duty} seal",
        (*_results(groove), Result("lead_in", lead.length_mm, "mm", "lead-in at 15°")),
        _reasons((*groove.steps, *lead.steps)),
        findings=tuple(
            BY_NAME[one.code].at(COMMAND_LINE, f"{one.reason}: {one.why}", help=one.way_out)
            for one in groove.remarks
        ),
    )


def _groove(bore: float | None, rod: float | None, words: str | None, duty: Duty) -> Groove:
    asked, cord = ring_or_cord(words) if words else (None, None)
    if asked is not None:
        return piston_groove(asked, bore, duty) if bore else rod_groove(asked, rod or 0.0, duty)
    offered = [one for one in rings() if cord is None or abs(one.cord_mm - cord) < 0.01]
    return (for_bore(bore, duty, offered) if bore else for_rod(rod or 0.0, duty, offered))[0]


def _results(groove: Groove) -> Iterator[Result]:
    yield Result("inside", groove.ring.inside_mm, "mm", "ring inside", groove.ring.name)
    yield Result("cord", groove.ring.cord_mm, "mm", "cord")
    yield Result("groove_floor", groove.diameter_mm, "mm", "floor of the groove")
    yield Result("housing_depth", groove.depth_mm, "mm", "floor from the other surface")
    yield Result("groove_width", groove.housing.width_mm, "mm", "groove wide, at least")
    yield Result("corner", groove.housing.corner_mm, "mm", "radius in its corners")
    yield Result("squeeze", groove.squeeze, "%", "pressed by")
    yield Result("stretch", groove.stretch, "%", "stretched by")
    yield Result("fill", groove.fill, "%", "fills the groove by")


def box_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """The stuffing box; raises NotDefined where there is none."""
    told = _told(words, _BOX_NAMES)
    rod = _mm(told, "rod")
    if rod is None:
        raise NotDefined("nothing tells the rod", "as `rod 6 mm`")
    count = told.get("rings", "4")
    if not count.isascii() or not count.isdigit():
        raise NotDefined(f"{said_back(count)} is no number of rings", "as `rings 4`")
    box = stuffing_box(rod, _mm(told, "packing"), int(count[:3]))
    return Answer(
        f"Stuffing box for a {rod:g} mm rod",
        (
            Result("packing", box.section_mm, "mm", "square packing"),
            Result("rings", box.rings, "", "rings"),
            Result("box", box.box_mm, "mm", "bore of the box"),
            Result("depth", box.depth_mm, "mm", "box deep"),
            Result("gland_outside", box.gland_outside_mm, "mm", "nose of the gland"),
            Result("gland_bore", box.gland_bore_mm, "mm", "bore of the gland"),
            Result("nose", box.nose_mm, "mm", "nose long"),
            Result("ring", box.ring_mm, "mm", "each ring cut"),
        ),
        _reasons(box.steps),
        ("Stagger the joints of the rings; tighten by finger until it just drags.",),
    )


def _reasons(steps: Sequence[Step]) -> tuple[Reason, ...]:
    return tuple(Reason(one.name, one.formula, one.value, one.source) for one in steps)
