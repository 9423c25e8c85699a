"""Shafts of the train to their tables: what each carries, how it bends, what there is to turn."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    Column,
    Design,
    Facts,
    Paragraph,
    Subheading,
    Table,
    Text,
    TrainFact,
    exact,
    shown_length,
)
from binder_plugins.drive.carrying.facts import Bearing, CarriedFact, InertiaFact, Sag, Taken
from binder_plugins.drive.duties.shown import figure, two_figures
from binder_trade.shafting.critical import KEEP_AWAY, KEEP_AWAY_SOURCE

_FAR = 20.0
_LEAST = 0.001
_MOST_ACROSS = 4
_SHORT_S = 0.01
_NONE = "–"


def shaft_blocks(design: Design) -> Iterator[Block]:
    """The shafts and their bearings, then the inertia of the train."""
    facts = design.facts.all(CarriedFact)
    known = [one for one in facts if one.bearings]
    if known:
        yield Subheading("Shafts and their bearings")
        yield Paragraph((_how(known),))
        yield _bearings(known)
        yield from _sags(known, design)
        told = [(one.title, words) for one in known if (words := _shaft_words(one))]
        yield Facts(tuple((title, (words,)) for title, words in told))
    unknown = [one for one in facts if not one.bearings]
    if unknown:
        words = "; ".join(f"{one.title}: {one.refusal}" for one in unknown)
        yield Paragraph((f"Not reckoned: {words}.",))
    inertia = design.facts.about(InertiaFact, "")
    if inertia is not None:
        yield from _inertia(inertia, design)


def _how(known: list[CarriedFact]) -> str:
    low, high = KEEP_AWAY
    words = (
        f"The worst of all settings and of both ways round, by {known[0].basis}. A push whose "
        "direction is not known is added to the others by its full size. Pressure is on diameter "
        "× length; what a metal bears are usual limits for a bush that is oiled. A shaft is run "
        f"below {low:g} of the speed at which it whirls, or above {high:g} ({KEEP_AWAY_SOURCE})."
    )
    if any(one.thrusts for one in known):
        words += (
            " A thrust along a shaft acts where the teeth touch, and so tilts it as well; the hand "
            "of a helix is not told, and both are tried."
        )
    rows = [one.title for one in known if not one.is_placed]
    if rows:
        words += (
            f" Of {', '.join(rows)} the row along the shaft tells where things stand, and all "
            "that pushes is taken in one plane."
        )
    return words


def _bearings(known: list[CarriedFact]) -> Table:
    columns = (
        Column("Shaft", 2.2),
        Column("Runs in", 2.4),
        Column("Load, N", 1.3, is_figure=True),
        Column("Pressure, N/mm²", 1.7, is_figure=True),
        Column("Speed, m/s", 1.4, is_figure=True),
        Column("Pressure × speed", 1.8, is_figure=True),
        Column("What the metal bears of each", 3.8),
    )
    rows = [_bearing(fact, one) for fact in known for one in fact.bearings]
    return Table(columns, tuple(rows))


def _bearing(fact: CarriedFact, one: Bearing) -> tuple[Text, ...]:
    if one.wear is None:
        words = one.refusal or ("no limits known" if fact.fastest else "stands still")
        figures: tuple[Text, ...] = ((_NONE,), (_NONE,), (_NONE,), (words,))
    else:
        wear, metal = one.wear, one.wear.material
        most = (metal.pressure_mpa, metal.speed_ms, metal.pv)
        bears = ", ".join(f"{limit:g}" if limit is not None else _NONE for limit in most)
        figures = (
            (_small(wear.pressure_mpa),),
            (_small(wear.speed_ms),),
            (_small(wear.pv),),
            (f"{metal.material}: {bears}",),
        )
    title = f"{one.title} (half)" if one.is_half else one.title
    return ((fact.title,), (title,), (figure(one.load),), *figures)


def _small(value: float) -> str:
    return figure(value) if value >= _LEAST else f"under {_LEAST:g}"


def _sags(known: list[CarriedFact], design: Design) -> Iterator[Block]:
    columns = (
        Column("Shaft", 2.2),
        Column("Under", 2.6),
        Column("Gives way", 1.8, is_figure=True),
        Column("Allowed", 1.8, is_figure=True),
        Column("Leans, rad", 1.8, is_figure=True),
        Column("Allowed", 1.8, is_figure=True),
    )
    rows = [_sag(fact, one, design) for fact in known for one in fact.sags]
    if rows:
        yield Table(columns, tuple(rows))
        sources = dict.fromkeys(one.source for fact in known for one in fact.sags)
        yield Paragraph((f"Allowed: {'; '.join(sources)}.",))


def _sag(fact: CarriedFact, one: Sag, design: Design) -> tuple[Text, ...]:
    item = design.item(one.item)
    title = item.title if item is not None else one.item
    most = f"{one.lean_allowed:g}" if one.lean_allowed is not None else _NONE
    return (
        (fact.title,),
        (title,),
        (_thousandth(one.sag, design),),
        (_thousandth(one.allowed, design),),
        (f"{one.lean:.1g}" if one.lean >= 1e-4 else "under 0.0001",),
        (most,),
    )


def _thousandth(mm: float, design: Design) -> str:
    if mm < 0.0005:
        return f"under {shown_length(exact(0.001), design.units)}"
    return shown_length(exact(round(mm, 3)), design.units)


def _shaft_words(fact: CarriedFact) -> str:
    words = [f"{figure(fact.stress)} N/mm² of shear where it is worst"] if fact.stress else []
    if fact.whirl is not None and fact.fastest:
        first = fact.whirl.first_rpm
        if first > _FAR * fact.fastest:
            words.append(f"whirls far above the {figure(fact.fastest)} r/min that it runs")
        else:
            words.append(
                f"whirls at {two_figures(first)} r/min, runs at {figure(fact.fastest)} r/min"
            )
    words += [_thrust(one) for one in fact.thrusts]
    if fact.missing:
        words.append(f"left out: {', '.join(fact.missing)}")
    return "; ".join(words)


def _thrust(one: Taken) -> str:
    """`a thrust of 12 N to its right end, taken by the collar against the cheek`."""
    end = "right" if one.way > 0 else "left"
    told = "what takes it is not told" if one.by_what is None else "nothing takes it"
    return f"a thrust of {figure(one.size)} N to its {end} end, " + (
        f"taken by {one.by_what}" if one.by_what else told
    )


def _inertia(fact: InertiaFact, design: Design) -> Iterator[Block]:
    yield Subheading("What there is to set turning")
    train = design.facts.about(TrainFact, "")
    labels = (
        [label or "Of it at the mover" for label in train.settings] if train is not None else []
    )
    columns = (
        Column("Inertia, kg·mm²", 2.6),
        Column("Its own", 1.4, is_figure=True),
        Column("All, felt there", 2.4, is_figure=True),
        *(Column(label, 2, is_figure=True) for label in labels[:_MOST_ACROSS]),
    )
    rows: list[tuple[Text, ...]] = [
        ((one.title,), (figure(one.own),), (_range(one.all_here),), *_cells(one.felt))
        for one in fact.bodies
    ]
    rows += [((f"load of '{name}'",), ("",), ("",), *_cells(felt)) for name, felt in fact.loads]
    rows.append((("All at the mover",), ("",), ("",), *_cells(fact.total)))
    if any(one is not None for one in fact.run_up):
        times = tuple((_seconds(one),) for one in fact.run_up[:_MOST_ACROSS])
        rows.append((("Time to speed",), ("",), ("",), *times))
    yield Table(columns, tuple(rows))
    yield Paragraph((_felt(fact),))


def _cells(values: tuple[float, ...]) -> tuple[Text, ...]:
    return tuple((figure(one),) for one in values[:_MOST_ACROSS])


def _range(values: tuple[float | None, ...]) -> str:
    """The least and the most of all settings."""
    known = [one for one in values if one is not None]
    if not known:
        return _NONE
    low, high = figure(min(known)), figure(max(known))
    return low if low == high else f"{low} to {high}"


def _seconds(time: float | None) -> str:
    if time is None:
        return _NONE
    return f"{time:.2g} s" if time >= _SHORT_S else f"under {_SHORT_S:g} s"


def _felt(fact: InertiaFact) -> str:
    words = (
        f"The mover is the {fact.title}; what is felt goes by the square of the speeds. Pieces by "
        "plain geometry."
    )
    missing = dict.fromkeys(name for one in fact.bodies for name in one.missing)
    if missing:
        words += f" Not weighed: {', '.join(missing)}."
    if any(one is not None for one in fact.run_up):
        words += " The time is that of the torque which the load leaves over, if it is steady."
    return words
