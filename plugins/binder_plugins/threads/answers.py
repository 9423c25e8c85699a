"""Words at the bench to answers about threads, drills and wires."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from binder.api import (
    COMMAND_LINE,
    Answer,
    Code,
    Diagnostic,
    Misread,
    Reason,
    Result,
    Workshop,
    read_thread,
    said_back,
    with_point,
)
from binder_plugins.threads import codes
from binder_plugins.threads.found import thread_of
from binder_plugins.threads.shop import shop_of
from binder_trade.drills import (
    Drill,
    NoDrill,
    all_drills,
    at_or_above,
    at_or_below,
    drill_named,
)
from binder_trade.explained import NotDefined, Step
from binder_trade.threading import (
    ClearanceDrill,
    TappingDrill,
    clearance_drill,
    over_owned,
    over_wires,
    screwcutting,
    tapping_drill,
    usable_wires,
)
from binder_trade.threads import NotMade, Thread, working

_UNIFIED = ("UNC", "UNF", "UNEF", "UNS")
_INCH = 25.4
_METRIC_LISTS = ("metric", "metric as sold")


def about_thread(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    """The sizes of a thread with its drills; those of the workshop, else all that are sold."""
    text, _, material = " ".join(words).partition(" into ")
    thread = _named(text)
    if isinstance(thread, Diagnostic):
        return thread
    drills = _drills(thread, workshop)
    results = list(_sizes(thread))
    steps = list(working(thread))
    notes = [f"drills: {_whose(workshop)}"]
    try:
        tapping = tapping_drill(thread, drills, material=material)
    except NoDrill as refused:
        notes.append(f"no tapping drill: {refused.reason}; {refused.way_out}")
    else:
        results += _tapping(tapping)
        steps += tapping.steps
        notes += _said(tapping)
    try:
        clear = clearance_drill(thread, drills)
    except NoDrill as refused:
        notes.append(f"no clearance drill: {refused.reason}; {refused.way_out}")
    else:
        results.append(_clearing(clear))
        steps += clear.steps
    notes += _lathe(thread)
    title = f"{thread.designation} ({thread.form.name}, {thread.standard})"
    return Answer(title, tuple(results), _reasons(steps), tuple(notes))


def about_drill(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    """The diameter of a drill by its name, and its neighbours of the other lists."""
    text = " ".join(words)
    try:
        drill = drill_named(text)
    except NoDrill as refused:
        return _refused(codes.DRILL_UNKNOWN, refused.reason, with_point(text) or refused.way_out)
    around = [*_neighbours(drill)]
    owned = [one.name for one in shop_of(workshop).drills if abs(one.mm - drill.mm) < 1e-6]
    notes = [f"{'owned' if owned else 'not owned'} in {workshop.name}", *around]
    result = _result("diameter", drill.mm, "mm", "diameter", drill.name)
    inch = _result("diameter_inch", drill.mm / _INCH, "in", "in inches")
    reason = Reason("diameter", "the table of drills", f"{drill.mm:.4f} mm", _source(drill))
    return Answer(drill.name, (result, inch), (reason,), tuple(notes))


def about_wires(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    """The size over three wires: of the wire that is named, else the nearest drill shank."""
    text, _, wire = " ".join(words).partition(" over ")
    thread = _named(text)
    if isinstance(thread, Diagnostic):
        return thread
    try:
        if wire:
            drill = drill_named(wire)
            over = over_wires(thread, drill.mm, drill.name)
        else:
            over = over_owned(thread, _shanks(workshop))
    except NotDefined as refused:
        return _refused(codes.DRILL_UNKNOWN, refused.reason, with_point(wire) or refused.way_out)
    wires = usable_wires(thread)
    results = (
        _result("over_wires", over.over_mm, "mm", "over three wires"),
        _result("wire", over.wire_mm, "mm", "wire in use", over.name),
        _result("best_wire", wires.best_mm, "mm", "best wire"),
        _result("wire_least", wires.least_mm, "mm", "thinnest that can be used"),
        _result("wire_most", wires.most_mm, "mm", "thickest that can be used"),
    )
    notes = ("a shank is often a little below the size of its drill: measure it",)
    return Answer(f"{thread.designation} over wires", results, _reasons(over.steps), notes)


def _result(name: str, value: float, unit: str, title: str = "", designation: str = "") -> Result:
    """A figure to a millionth, which no sum of floats reaches beyond."""
    return Result(name, round(value, 6), unit, title, designation)


def _named(text: str) -> Thread | Diagnostic:
    name = read_thread(text)
    if isinstance(name, Misread):
        way_out = with_point(text) or name.reason
        return _refused(codes.THREAD_NOT_MADE, f"{said_back(text)} names no thread", way_out)
    thread = thread_of(name)
    if isinstance(thread, NotMade):
        return _refused(codes.THREAD_NOT_MADE, thread.reason, thread.way_out)
    return thread


def _refused(code: Code, reason: str, way_out: str) -> Diagnostic:
    return code.at(COMMAND_LINE, reason, help=way_out)


def _is_built_in(workshop: Workshop) -> bool:
    """Nobody's own workshop: then every drill that is sold may be taken."""
    return workshop.document.file.startswith("<")


def _whose(workshop: Workshop) -> str:
    if _is_built_in(workshop):
        return "all that are sold, because no workshop is named"
    return f"those of {workshop.name}"


def _drills(thread: Thread, workshop: Workshop) -> tuple[Drill, ...]:
    if not _is_built_in(workshop):
        return shop_of(workshop).drills
    if thread.family == "metric":
        return tuple(drill for drill in all_drills() if drill.system in _METRIC_LISTS)
    if thread.family in _UNIFIED:
        return tuple(drill for drill in all_drills() if drill.system not in _METRIC_LISTS)
    return all_drills()


def _shanks(workshop: Workshop) -> tuple[Drill, ...]:
    return all_drills() if _is_built_in(workshop) else shop_of(workshop).drills


def _sizes(thread: Thread) -> Iterable[Result]:
    yield _result("major", thread.major_mm, "mm", "diameter")
    yield _result("effective", thread.effective_mm, "mm", "effective diameter")
    yield _result("minor_internal", thread.minor_internal_mm, "mm", "bore of the nut")
    yield _result("minor_external", thread.minor_external_mm, "mm", "core of the screw")
    tpi = f"{thread.tpi} to the inch" if thread.tpi is not None else ""
    yield _result("pitch", thread.pitch_mm, "mm", "pitch", tpi)
    yield _result("depth", thread.depth_mm, "mm", "depth of thread")
    yield _result("stress_area", thread.stress_area_mm2, "mm²", "stress area")


def _tapping(chosen: TappingDrill) -> list[Result]:
    got = chosen.percent
    basis = "3/4 H, US charts" if got.three_quarters is not None else "full depth"
    results = [
        _result("tapping_drill", chosen.drill.mm, "mm", "tapping drill", chosen.drill.name),
        _result("tapping_percent", got.on_chart, "%", "thread it leaves", basis),
    ]
    if got.three_quarters is not None:
        iso = _result("tapping_percent_iso", got.of_form, "%", "the same on 5/8 H", "ISO 68-1")
        results.append(iso)
    return results


def _said(chosen: TappingDrill) -> Iterable[str]:
    yield chosen.why
    for other in chosen.others:
        yield f"or {other.drill.name}: {other.why}"
    for one in chosen.published:
        yield f"published: {one.name} ({one.source})"


def _clearing(clear: ClearanceDrill) -> Result:
    return _result("clearance_drill", clear.drill.mm, "mm", "clearance drill", clear.drill.name)


def _lathe(thread: Thread) -> Iterable[str]:
    figures = screwcutting(thread)
    for infeed in figures.infeeds:
        yield (
            f"screwcut with a {infeed.point}: {infeed.depth_mm:.3f} mm square in, or "
            f"{infeed.along_slide_mm:.3f} mm along a slide at {figures.slide_deg:g}°"
        )
    yield f"for a die turn to {figures.die_blank_mm:.2f} mm"


def _neighbours(drill: Drill) -> Iterable[str]:
    others = [one for one in all_drills() if one.system != drill.system]
    below, above = at_or_below(drill.mm, others), at_or_above(drill.mm, others)
    for word, one in (("next below", below), ("next above", above)):
        if one is not None:
            yield f"{word}: {one.name} ({one.mm:.4f} mm)"


def _source(drill: Drill) -> str:
    if drill.system == "metric":
        return "BS 328"
    return "usual ranges, no standard" if drill.system == "metric as sold" else "ASME B94.11M"


def _reasons(steps: Iterable[Step]) -> tuple[Reason, ...]:
    return tuple(Reason(one.name, one.formula, one.value, one.source) for one in steps)
