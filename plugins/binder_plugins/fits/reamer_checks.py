"""Reamed holes to findings where no reamer of that size is owned, with what owned ones change."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import Design, Diagnostic, Feature, Labelled, Size, Span, exact, shown_length
from binder_plugins.fits import codes
from binder_plugins.fits.facts import MadeFit

# A shaft that is changed by more is another shaft; common practice, no source.
_NEAR = Fraction(15, 100)
_MOST_PLACES = 4
_DECIMALS = 2
_MOST_NAMED = 3


def check_reamers(design: Design) -> Iterator[Diagnostic]:
    """One finding for each size that is not owned, with all the holes that want it."""
    for size, holes in _wanted(design).items():
        if design.workshop.owns_reamer(size) is not None:
            continue
        count = f"{len(holes)} holes are reamed so" if len(holes) > 1 else ""
        yield codes.REAMER_NOT_OWNED.at(
            _span(holes[0]),
            f"the workshop has no {shown_length(size, design.units)} reamer",
            label=count,
            related=[
                Labelled(_span(one), f"here too, in '{one.owner}.{one.name}'")
                for one in holes[1:_MOST_PLACES]
            ],
            help=_instead(size, holes, design),
        )


def _wanted(design: Design) -> dict[Fraction, list[Feature]]:
    """The features that are reamed to each size."""
    found: dict[Fraction, list[Feature]] = {}
    for feature in design.features():
        size = getattr(feature.entry, "reamed", None)
        if feature.kind == "reamed" and not feature.is_dummy and isinstance(size, Size):
            found.setdefault(size.exact, []).append(feature)
    return found


def _span(feature: Feature) -> Span:
    size = getattr(feature.entry, "reamed", None)
    return size.span if isinstance(size, Size) and not feature.implied_by else feature.at


def _instead(size: Fraction, holes: list[Feature], design: Design) -> str:
    """Boring, an owned reamer that is near enough with all that moves with it, or buying."""
    bore = "bore to size with a plug gauge, or put the reamer on the shopping list"
    near = [one for one in design.workshop.reamers() if abs(one.mm - size) <= _NEAR * size]
    if not near:
        return bore
    best = min(near, key=lambda one: abs(one.mm - size))
    by = abs(best.mm - size)
    way = "larger" if best.mm > size else "smaller"
    change = shown_length(exact(round(float(by), _DECIMALS)), design.units)
    return f"move {_moved(holes, design)} to {best.name}, which is owned, {change} {way}; or {bore}"


def _moved(holes: list[Feature], design: Design) -> str:
    """The holes and the shafts in them: one is never moved without the other."""
    ends = {f"{one.owner}.{one.name}" for one in holes}
    fits = design.facts.all(MadeFit)
    shafts = list(dict.fromkeys(str(fit.shaft.end) for fit in fits if str(fit.hole.end) in ends))
    what = "the hole" if len(holes) == 1 else "the holes"
    if not shafts:
        return what
    if len(shafts) > _MOST_NAMED:
        return f"{what} and all {len(shafts)} places of shafts in them"
    return f"{what} and {', '.join(shafts)}"
