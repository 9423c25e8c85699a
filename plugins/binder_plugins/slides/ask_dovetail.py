"""`binder reckon dovetail`: both halves and both measures over pins."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Answer, Asked, Result, Workshop, asked, reasons, with_nothing_loose
from binder_plugins.slides.wanted import USUAL_ANGLE, owned_cutters
from binder_trade.slides import (
    Dovetail,
    NotDefined,
    OverPins,
    Wanted,
    corners,
    dovetail,
    fit_cutter,
    hand_sliding,
    over_pins,
    owned_pin,
    pin_range,
)

_NAMES = ("root", "top", "depth", "angle", "gib", "clearance", "pins", "pin")


def dovetail_answer(words: Sequence[str], workshop: Workshop) -> Answer:
    """The answer; raises NotAskedError or NotDefined where there is none."""
    given = with_nothing_loose(asked(words, _NAMES), _NAMES)
    wanted = Wanted(
        given.needed("depth"),
        given.degrees("angle") or USUAL_ANGLE,
        given.mm("root"),
        given.mm("top"),
        given.mm("clearance") or 0.0,
        given.mm("gib") or 0.0,
    )
    slide = dovetail(wanted)
    pins = over_pins(slide, _pin(given, slide, workshop))
    return Answer(
        f"Dovetail of {slide.angle_deg:g}°, {slide.female.depth_mm:g} mm deep",
        tuple(_results(slide, pins)),
        reasons((*slide.steps, *pins.steps, *corners(slide).steps)),
        tuple(_notes(wanted, slide, workshop)),
    )


def _pin(given: Asked, slide: Dovetail, workshop: Workshop) -> float:
    told = given.mm("pins") or given.mm("pin")
    if told is not None:
        return told
    try:
        return owned_pin(slide, (float(drill.mm) for drill in workshop.drills()))
    except NotDefined:
        return pin_range(slide).best_mm


def _results(slide: Dovetail, pins: OverPins) -> Iterator[Result]:
    tail, slot = slide.male, slide.female
    yield Result("width_root", tail.narrow_mm, "mm", "tail across its root")
    yield Result("width_top", tail.wide_mm, "mm", "tail across its top")
    yield Result("height_male", tail.depth_mm, "mm", "tail high")
    yield Result("width_mouth", slot.narrow_mm, "mm", "slot across its mouth")
    yield Result("width_floor", slot.wide_mm, "mm", "slot across its floor")
    yield Result("depth_female", slot.depth_mm, "mm", "slot deep")
    yield Result("over_pins_male", pins.male_over_mm, "mm", "tail over two pins")
    yield Result("between_pins_female", pins.female_between_mm, "mm", "slot between two pins")
    yield Result("pin", pins.pin_mm, "mm", "pins")


def _notes(wanted: Wanted, slide: Dovetail, workshop: Workshop) -> Iterator[str]:
    fit = pin_range(slide)
    yield (
        f"Pins of {fit.least_mm:.2f} to {fit.most_mm:.2f} mm rest on the flanks; "
        f"{fit.best_mm:.2f} mm is best."
    )
    if slide.gib_mm == 0:
        play = hand_sliding(slide.male.narrow_mm)
        yield (
            f"Without a gib leave {play.least_mm:.3f} to {play.most_mm:.3f} mm to slide by hand."
        )
    try:
        choice = fit_cutter(owned_cutters(workshop), wanted)
    except NotDefined as refusal:
        yield f"{refusal.reason.capitalize()}: {refusal.way_out}."
        return
    cutter = choice.cutter
    changes = f": {' and '.join(choice.changes)}" if choice.changes else " as it stands"
    yield f"The owned cutter, {cutter.diameter_mm:g} mm of {cutter.angle_deg:g}°, cuts it{changes}."
