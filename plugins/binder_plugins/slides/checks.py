"""Dovetail slides to findings: can they be cut, do the halves agree, can they be set."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Labelled, Size, Span, exact, shown_length
from binder_plugins.slides import codes
from binder_plugins.slides.astride import face_of, known_sides
from binder_plugins.slides.facts import Side, SlideFact
from binder_plugins.slides.wanted import owned_cutters, written_mm
from binder_trade.slides import Dovetail, NotDefined, Wanted, fit_cutter, pin_range

# Metal left under a slot, and beside it, in parts of its depth; common practice, no source.
_UNDER = 0.5
_BESIDE = 0.5
# A gib takes up no more than this; without one no more is right either.
_MOST_PLAY = 0.5
_SAME_ANGLE = 0.25
_HAIR = 1e-6


def check_slides(design: Design) -> Iterator[Diagnostic]:
    """All findings about dovetail slides."""
    for fact in design.facts.all(SlideFact):
        if fact.refusal is not None:
            yield _cannot_be_cut(fact, fact.refusal)
        elif fact.slide is None or fact.wanted is None:
            yield _size_missing(fact, design.units)
        else:
            yield from _found(fact, fact.slide, fact.wanted, design)


def check_feeds(design: Design) -> Iterator[Diagnostic]:
    """Screws that lead a part which slides, and are held by nothing else."""
    sliding = {item for fact in design.facts.all(SlideFact) for item in fact.joint.items}
    for joint in design.joints.values():
        if joint.kind != "leads" or len(joint.ends) < 2:
            continue
        screw, nut = joint.ends[0].item, joint.ends[1].item
        others = [one for one in design.joints.values() if one is not joint and screw in one.items]
        if nut in sliding and not others:
            yield codes.FEED_NOT_HELD.at(
                joint.at,
                f"'{screw}' moves '{nut}' by its thread, and nothing holds it along its axis",
                help="let it run in a bracket between two collars, or tap the bracket instead and "
                f"let its end turn in '{nut}'",
            )


def _found(
    fact: SlideFact, slide: Dovetail, wanted: Wanted, design: Design
) -> Iterator[Diagnostic]:
    yield from _halves(fact, slide, design.units)
    yield from _room(fact, slide, design.units)
    yield from _pins(fact, slide, design.units)
    yield from _cutter(fact, wanted, design)
    yield from _gib_side(fact)
    if slide.gib_mm == 0 and not fact.joint.entry.fixed:
        gib = shown_length(exact(_some_gib(slide)), design.units)
        yield codes.NOT_ADJUSTABLE.at(
            fact.joint.at,
            f"'{fact.joint.name}' cannot be set once it shakes",
            help=f"write `gib: {gib}`; the slot grows by as much along the flats, and a bit",
        )


def _gib_side(fact: SlideFact) -> Iterator[Diagnostic]:
    side, sides = fact.entry.gib_side, known_sides(fact)
    if side is not None and sides and side not in sides:
        yield codes.GIB_SIDE_WRONG.at(
            getattr(side, "span", fact.joint.at),
            f"a slot in the {face_of(fact)} of '{fact.female.end.item}' has no flank at its {side}",
            help=f"write `gib_side: {sides[0]}` or `gib_side: {sides[1]}`",
        )


def _some_gib(slide: Dovetail) -> float:
    """A strip of about a third of the depth, in halves of a millimetre."""
    return max(1.0, round(slide.female.depth_mm / 3 * 2) / 2)


def _cannot_be_cut(fact: SlideFact, refusal: NotDefined) -> Diagnostic:
    return codes.CANNOT_BE_CUT.at(
        _said(fact), f"'{fact.joint.name}': {refusal.reason}", help=refusal.way_out
    )


def _said(fact: SlideFact) -> Span:
    """The field that most likely is wrong: the one that is written, else the joint."""
    entry = fact.entry
    sizes = (entry.angle, entry.gib, entry.depth, entry.width)
    return next((size.span for size in sizes if size is not None), fact.joint.at)


def _size_missing(fact: SlideFact, units: str) -> Diagnostic:
    faces = [
        side.place.width or side.place.length for side in (fact.male, fact.female) if side.place
    ]
    across = min((face for face in faces if face is not None), default=None)
    proposed = f", say `width: {shown_length(across / 2, units)}`" if across is not None else ""
    return codes.SIZE_MISSING.at(
        fact.joint.at,
        f"nothing tells how wide the dovetail of '{fact.joint.name}' is",
        help=f"write its width across the root of the tail{proposed}",
    )


def _halves(fact: SlideFact, slide: Dovetail, units: str) -> Iterator[Diagnostic]:
    """What is written twice: at the slot, where the joint or the tail says otherwise."""
    width, tail = fact.entry.width, written_mm(fact.male)
    if width is not None and tail is not None and abs(width.mm - tail) > _HAIR:
        yield _differ(
            width.span,
            fact,
            f"the joint says {shown_length(width.exact, units)}, the tail is written "
            f"{shown_length(exact(tail), units)}",
            "leave `width:` out of the joint",
        )
    written = [side.entry.angle for side in (fact.male, fact.female) if side.entry is not None]
    angles = [size for size in (fact.entry.angle, *written) if size is not None]
    for size in angles[1:]:
        if abs(float(size.exact - angles[0].exact)) > _SAME_ANGLE:
            yield _differ(
                size.span,
                fact,
                f"flanks of {float(angles[0].exact):g}° and {float(size.exact):g}° do not bear",
                "write one angle, in the joint",
                (Labelled(angles[0].span, "the other angle"),),
            )
    yield from _entering(fact, slide, units)


def _entering(fact: SlideFact, slide: Dovetail, units: str) -> Iterator[Diagnostic]:
    slot = fact.female.entry
    feature = fact.female.feature
    size = getattr(feature.entry, feature.kind, None) if feature is not None else None
    if fact.play_mm is None or not isinstance(size, Size):
        return
    mouth = shown_length(exact(slide.female.narrow_mm), units)
    if fact.play_mm < -_HAIR:
        yield _differ(
            size.span,
            fact,
            f"the tail does not enter: the slot is {shown_length(exact(-fact.play_mm), units)} "
            "too narrow",
            f"make the slot {mouth} wide where it is narrow, or leave it `to suit`",
        )
    elif fact.play_mm > max(_MOST_PLAY, slide.clearance_mm) + _HAIR:
        yield _differ(
            size.span,
            fact,
            f"the tail has {shown_length(exact(fact.play_mm), units)} of play in the slot",
            f"make the slot {mouth} wide where it is narrow, or write a thicker `gib:`",
        )
    deep = slot.depth if slot is not None else None
    high = fact.male.entry.depth if fact.male.entry is not None else None
    if deep is not None and high is not None and high.exact >= deep.exact:
        yield _differ(
            high.span,
            fact,
            f"the tail is {shown_length(high.exact, units)} high and bottoms in the slot",
            f"make it {shown_length(exact(slide.male.depth_mm), units)} high",
            (Labelled(deep.span, "the slot is this deep"),),
        )


def _differ(
    span: Span, fact: SlideFact, message: str, way_out: str, related: tuple[Labelled, ...] = ()
) -> Diagnostic:
    return codes.HALVES_DIFFER.at(
        span, f"'{fact.joint.name}': {message}", help=way_out, related=related
    )


def _room(fact: SlideFact, slide: Dovetail, units: str) -> Iterator[Diagnostic]:
    """Metal under the slot, and on both sides of it; the tail needs its height."""
    span = fact.entry.depth.span if fact.entry.depth is not None else fact.joint.at
    thick = fact.female.place.thickness if fact.female.place is not None else None
    deep = slide.female.depth_mm
    if thick is not None and deep * (1 + _UNDER) > float(thick) + _HAIR:
        yield codes.TOO_DEEP.at(
            span,
            f"a slot {shown_length(exact(deep), units)} deep leaves "
            f"{shown_length(exact(max(0.0, float(thick) - deep)), units)} of the "
            f"'{fact.female.end.item}'",
            help=f"make it {shown_length(exact(float(thick) / (1 + _UNDER)), units)} deep at most",
        )
    high = fact.male.place.thickness if fact.male.place is not None else None
    if high is not None and slide.male.depth_mm > float(high) - _HAIR:
        yield codes.TOO_DEEP.at(
            span,
            f"the tail takes the whole thickness of the '{fact.male.end.item}'",
            help=f"make it {shown_length(high / 2, units)} high or less",
        )
    yield from _too_wide(fact, fact.male, slide.male.wide_mm, units)
    yield from _too_wide(
        fact, fact.female, slide.female.wide_mm + 2 * _BESIDE * deep, units, " with its lips"
    )


def _too_wide(
    fact: SlideFact, side: Side, across: float, units: str, lips: str = ""
) -> Iterator[Diagnostic]:
    """The direction of sliding is not told, so the longer side of the face is allowed for."""
    sizes = (side.place.length, side.place.width) if side.place is not None else ()
    room = max((size for size in sizes if size is not None), default=None)
    if room is not None and across > float(room) + _HAIR:
        span = fact.entry.width.span if fact.entry.width is not None else fact.joint.at
        yield codes.TOO_DEEP.at(
            span,
            f"the dovetail is {shown_length(exact(across), units)} wide{lips}, the "
            f"'{side.end.item}' {shown_length(room, units)}",
            help="make the dovetail narrower or shallower",
        )


def _pins(fact: SlideFact, slide: Dovetail, units: str) -> Iterator[Diagnostic]:
    pins = fact.entry.pins
    fit = pin_range(slide)
    if pins is None or fit.least_mm - _HAIR <= pins.mm <= fit.most_mm + _HAIR:
        return
    least, most = (shown_length(exact(size), units) for size in (fit.least_mm, fit.most_mm))
    yield codes.PINS_WRONG.at(
        pins.span,
        f"pins of {shown_length(pins.exact, units)} do not rest on the flanks of "
        f"'{fact.joint.name}'",
        help=f"take two of {least} to {most}, best {shown_length(exact(fit.best_mm), units)}",
    )


def _cutter(fact: SlideFact, wanted: Wanted, design: Design) -> Iterator[Diagnostic]:
    """One that cuts the slide as it stands, else what would change with one that is owned."""
    if not (fact.male.is_made or fact.female.is_made):
        return
    owned = owned_cutters(design.workshop)
    span = next(
        (size.span for size in (fact.entry.depth, fact.entry.angle) if size is not None),
        fact.joint.at,
    )
    try:
        choice = fit_cutter(owned, wanted)
    except NotDefined as refusal:
        yield codes.CUTTER_NOT_OWNED.at(
            span, f"'{fact.joint.name}': {refusal.reason}", help=refusal.way_out
        )
        return
    if choice.changes:
        cutter = choice.cutter
        size = shown_length(exact(cutter.diameter_mm), design.units)
        yield codes.CUTTER_NOT_OWNED.at(
            span,
            f"no owned cutter cuts {wanted.angle_deg:g}° and "
            f"{shown_length(exact(wanted.depth_mm), design.units)} deep",
            help=f"with the {size} cutter of {cutter.angle_deg:g}°: {' and '.join(choice.changes)}",
        )
