"""Fits to their sheets: limits, zones to scale, which half first, and the sum for the other."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Beside,
    Blank,
    Block,
    Column,
    Design,
    Diagnostic,
    Facts,
    Follows,
    Paragraph,
    Picture,
    Place,
    Reckoned,
    Section,
    Table,
    Text,
    exact,
    lengths_in,
    shown_length,
)
from binder_plugins.fits.facts import Half, MadeFit
from binder_plugins.fits.figures import how, limits_of, nominal, range_of, signed, size, with_unit
from binder_plugins.fits.order import shafts_in
from binder_plugins.fits.pressing import Pressing
from binder_plugins.fits.running import Bearing
from binder_plugins.fits.stating import aim_mm
from binder_plugins.fits.zones import zones

_WORDS = (
    "Measure the half that is made first and write its size down; the other is made to it. "
    "A plug gauge gives no number: write down the middle between its end that goes in and the one "
    "that does not. Limits hold at 20 °C (ISO 1)."
)
_COLUMNS = (
    Column("Half", 2),
    Column("Place", 4),
    Column("Class", 1.5),
    Column("Least", 2, is_figure=True),
    Column("Greatest", 2, is_figure=True),
    Column("The same in the other units", 4, is_figure=True),
    Column("How", 4),
)


def fit_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One sheet for each fit."""
    sheets = tuple(_sheet(fit, design) for fit in design.facts.all(MadeFit))
    if sheets:
        yield Section(
            "fits",
            "Fits",
            Place.JOINTS,
            (Paragraph((_WORDS,)),),
            starts_page=False,
            sections=sheets,
        )


def _sheet(fit: MadeFit, design: Design) -> Section:
    units = design.units
    rows = tuple(_row(name, half, fit, units) for name, half in _halves(fit))
    words = f"hole {_limits(fit, fit.hole, units)}, shaft {_limits(fit, fit.shaft, units)}"
    blocks: list[Block] = [
        Beside(
            Facts(tuple(_facts(fit, design))),
            Picture(zones(fit, units), f"zones of hole and shaft to scale: {words}"),
        ),
        Table(_COLUMNS, rows),
    ]
    name = fit.subject.replace(" ", "-")
    title = f"{fit.subject}: {nominal(fit.nominal, units)}"
    return Section(f"fit-{name}", title, Place.JOINTS, tuple(blocks), starts_page=False)


def _halves(fit: MadeFit) -> tuple[tuple[str, Half], ...]:
    return ("hole", fit.hole), ("shaft", fit.shaft)


def _limits(fit: MadeFit, half: Half, units: str) -> str:
    low, high = limits_of(fit, half)
    return f"{size(low, units)} to {with_unit(high, units)}"


def _row(name: str, half: Half, fit: MadeFit, units: str) -> tuple[Text, ...]:
    if not half.has_limits or half.is_ruled:
        return ((name,), (half.title,), ("–",), ("to",), ("suit",), ("",), (how(fit, name, units),))
    low, high = limits_of(fit, half)
    other = "mm" if units == "inch" else "inch"
    also = f"{size(low, other)} to {with_unit(high, other)}"
    return (
        (name,),
        (half.title,),
        (half.cls or "–",),
        (size(low, units),),
        (size(high, units),),
        (also,),
        (how(fit, name, units),),
    )


def _facts(fit: MadeFit, design: Design) -> Iterator[tuple[str, Text]]:
    units = design.units
    yield "Fit", (Reckoned(fit.wish.says, lengths_in(fit.wish.why, units), (fit.wish.source,)),)
    label = "Comes out" if not fit.suit else "Clearance" if fit.most_um > 0 else "Nip"
    yield label, (range_of(fit.least_um, fit.most_um, units),)
    if fit.suit:
        yield from _sums(fit, units)
    pressing = design.facts.about(Pressing, fit.subject)
    if pressing is not None:
        yield from _pressed(pressing, design)
    bearing = design.facts.about(Bearing, fit.subject)
    if bearing is not None:
        yield from _running(bearing, units)


def _sums(fit: MadeFit, units: str) -> Iterator[tuple[str, Text]]:
    """`bore measured ____ − 0.016 = turn to ____`."""
    made = fit.shaft if fit.suit == "shaft" else fit.hole
    master = fit.hole if made is fit.shaft else fit.shaft
    verb, what = ("turn to ", "bore") if made is fit.shaft else ("bore to ", "shaft")
    if fit.is_eased:
        verb = "polish down to, where it is thicker: "
    key = f"joint {fit.subject} {master.end.place}"
    add = aim_mm(fit)
    unit = "in" if units == "inch" else "mm"
    amount = add / 25.4 if units == "inch" else add
    yield (
        "Made to suit",
        (
            f"{what} measured ",
            Blank(key, units),
            f" {signed(add, units)} = {verb}",
            Follows(key, amount, unit),
        ),
    )


def _pressed(pressing: Pressing, design: Design) -> Iterator[tuple[str, Text]]:
    grip, units = pressing.tightest, design.units
    hub = pressing.cylinders.hub.name
    why = f"{grip.hub_use:.0%} of what {hub} bears"
    if grip.hub_use > 1:
        why = f"{hub} yields at its bore: it grips less"
    steps = tuple(f"{step.name}: {step.formula} = {step.value}" for step in grip.steps)
    yield "Grip", (Reckoned(f"up to {grip.pressure_mpa:.0f} N/mm²", why, steps),)
    if pressing.push_n is not None:
        yield "To press it in", (f"up to about {_force(pressing.push_n)}",)
    if pressing.heat is not None:
        heat = pressing.heat
        yield "To shrink it on", (f"{heat.temperature_deg:.0f} °C: {heat.says}",)
    if pressing.advice:
        closes = with_unit(pressing.closes_mm, units)
        yield "Bore of the bush", (f"closes by up to {closes}; {pressing.advice}",)
        for shaft in shafts_in(pressing, design.facts.all(MadeFit)):
            yield "Then", (f"size it for '{shaft.subject}'",)


def _running(bearing: Bearing, units: str) -> Iterator[tuple[str, Text]]:
    if bearing.length_mm is not None:
        times = bearing.length_mm / bearing.fit.mm
        count = f", {bearing.count} of them" if bearing.count > 1 else ""
        long = shown_length(exact(bearing.length_mm), units)
        yield "Bearing", (f"{long} long, {times:.1f} ⌀{count}",)
    if bearing.wear is not None:
        worn = bearing.wear
        steps = tuple(f"{step.name}: {step.formula} = {step.value}" for step in worn.steps)
        text = f"{worn.pressure_mpa:.2g} N/mm² at {worn.speed_ms:.2g} m/s"
        yield "Load and speed", (Reckoned(text, worn.says, steps),)


def _force(newtons: float) -> str:
    return f"{newtons / 1000:.1f} kN" if newtons >= 1000 else f"{newtons:.0f} N"
