"""`binder reckon gear`: a gear's sizes from its teeth and pitch, or what a found gear is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Answer, Asked, NotAskedError, Result, Workshop, asked, reasons, unread
from binder_plugins.drive.asking.answering import whole
from binder_trade.explained import NotDefined, Step
from binder_trade.gears.dividing.owned import divided
from binder_trade.gears.form_cutters import cutter_for
from binder_trade.gears.gear import Blank, Gear, blank
from binder_trade.gears.identify import Identified, identify
from binder_trade.gears.measuring import over_pins, span
from binder_trade.gears.pair import mesh
from binder_trade.gears.racks import rack
from binder_trade.gears.undercut import limits

_NAMES = ("module", "dp", "angle", "shift", "helix", "outside", "bore", "mate")
_EXAMPLE = "54 module 0.5 mm"
_RACKS = {("module", 20.0): "A", ("DP", 20.0): "20 DP", ("DP", 14.5): "14.5 DP"}
_INCH = 25.4


def gear_answer(words: Sequence[str], workshop: Workshop) -> Answer:
    """The answer; raises NotAskedError or NotDefined where there is none."""
    given = asked(words, _NAMES)
    text = given.words.get("", "").removesuffix(" teeth")
    teeth = whole(text, "number of teeth", _EXAMPLE)
    if "outside" in given.words:
        return _found(teeth, given)
    gear = _gear(teeth, given)
    made = blank(gear)
    results, steps = list(_sizes(made)), list(made.steps)
    for more, why in _measured(gear):
        results.append(more)
        steps += why
    if "mate" in given.words:
        pair = mesh(*sorted((gear, _gear(whole(given.words["mate"], "number of teeth", "mate 18"),
                                         given)), key=lambda one: one.teeth))  # fmt: skip
        results.append(Result("centres", pair.centres_mm, "mm", "to its mate, without play"))
        results.append(Result("contact_ratio", pair.contact_ratio, "", "teeth in contact"))
        steps += pair.steps
    return Answer(_title(gear), tuple(results), reasons(steps), tuple(_notes(gear, workshop)))


def _gear(teeth: int, given: Asked) -> Gear:
    module, dp = given.mm("module"), given.number("dp")
    if (module is None) == (dp is None):
        raise NotAskedError(
            "a gear is told by its module or its diametral pitch", f"as `{_EXAMPLE}`"
        )
    angle = given.degrees("angle") or 20.0
    system = "DP" if dp is not None else "module"
    key = _RACKS.get((system, angle))
    if key is None:
        raise unread(f"{angle:g}°", "no usual pressure angle here", "20 deg, or 14.5 deg with dp")
    if dp is not None and dp <= 0:
        raise unread(f"{dp:g}", "no diametral pitch", "as `dp 48`")
    size = module if module is not None else _INCH / (dp or 1.0)
    return Gear(teeth, size, rack(key), given.number("shift") or 0.0, given.degrees("helix") or 0.0)


def _title(gear: Gear) -> str:
    pitch = (
        f"{_INCH / gear.module_mm:g} DP"
        if gear.rack.system == "DP"
        else f"module {gear.module_mm:g}"
    )
    return f"gear of {gear.teeth} teeth, {pitch}, {gear.rack.angle_deg:g}°"


def _sizes(made: Blank) -> Iterator[Result]:
    yield Result("blank", made.blank_mm, "mm", "turn the blank to")
    yield Result("pitch_diameter", made.pitch_mm, "mm", "pitch diameter")
    yield Result("root", made.root_mm, "mm", "at the roots")
    yield Result("depth", made.depth_mm, "mm", "depth of cut")


def _measured(gear: Gear) -> Iterator[tuple[Result, tuple[Step, ...]]]:
    """What can be measured of it; what cannot is left out."""
    try:
        over = span(gear)
        yield Result("span", over.span_mm, "mm", f"over {over.across} teeth"), over.steps
    except NotDefined:
        pass
    try:
        pins = over_pins(gear)
        yield Result("over_pins", pins.size_mm, "mm", f"over {pins.pin_mm:.3f} mm pins"), pins.steps
    except NotDefined:
        pass
    try:
        cutter = cutter_for(gear)
        yield Result("cutter", cutter.number, "", "cutter of the set of eight"), cutter.steps
    except NotDefined:
        pass


def _notes(gear: Gear, workshop: Workshop) -> Iterator[str]:
    said = divided(gear.teeth, workshop.dividers())
    if said:
        yield f"Divide it: {said}."
    found = limits(gear)
    if found.is_undercut:
        yield (
            f"Its teeth are undercut: {found.least_teeth:.1f} is the least without a shift; "
            f"a shift of {found.least_shift:.2f} modules saves it."
        )


def _found(teeth: int, given: Asked) -> Answer:
    """What a gear of unknown pitch may be, likeliest first."""
    said = identify(given.needed("outside"), teeth, bore_mm=given.mm("bore"))
    results = [
        Result(
            f"candidate_{number}", one.pitch.module_mm, "mm",
            f"off by {one.outside_off_mm:+.3f} mm outside", f"{one.pitch.name}, {one.rack.name}",
        )
        for number, one in enumerate(said.candidates, 1)
    ]  # fmt: skip
    return Answer(
        f"a gear of {teeth} teeth, {given.needed('outside'):g} mm outside",
        (Result("module_estimate", said.module_mm, "mm", "outside / (teeth + 2)"), *results),
        reasons(said.steps),
        tuple(_next(said)),
    )


def _next(said: Identified) -> Iterator[str]:
    if said.is_settled:
        yield "The first stands clear of the others."
    for one in said.measure_next:
        readings = "; ".join(f"{name}: {value:.3f} mm" for name, value in one.readings)
        yield f"Measure {one.what}, {one.how}: {readings}."
