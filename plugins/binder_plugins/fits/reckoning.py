"""Questions at the bench: limits of a class, a fit, a press fit."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from binder.api import (
    LENGTH,
    NOWHERE,
    Answer,
    Diagnostic,
    ExpressionFault,
    Reason,
    Reckoning,
    Result,
    Workshop,
    parse_size,
    reasons,
)
from binder_plugins.fits import codes
from binder_plugins.fits.figures import range_of, size, with_unit
from binder_trade.explained import NotDefined
from binder_trade.fits.duties import choose
from binder_trade.fits.to_suit import says, wanted_um
from binder_trade.limits import Fit, fit, limits, name_of, read_fit, working

_AT = NOWHERE._replace(file="<command line>")
_SIZE = re.compile(r"\s*(.{1,60}?(?:mm|inch|inches|in|thou|\"|″|”))(?![A-Za-z])\s*(.*)", re.DOTALL)
_CLASSES = re.compile(r"[A-Za-z]{1,3} ?[0-9]{1,3} ?[/ ] ?[A-Za-z]{1,3} ?[0-9]{1,3}")
Ask = Callable[[str, Workshop], Answer]


def reckonings() -> list[Reckoning]:
    """The questions about limits and fits."""
    return [
        Reckoning("limits", '"12 mm" H7', "the limits of a tolerance class", asked(_limits)),
        Reckoning(
            "fit",
            '"12 mm" H7/g6, or "12 mm" runs slow and oiled',
            "both halves of a fit, by class or by duty",
            asked(_fit),
        ),
    ]


class UnreadableError(Exception):
    """The words of a question cannot be read; `way_out` is what would be."""

    def __init__(self, message: str, way_out: str) -> None:
        super().__init__(message)
        self.message = message
        self.way_out = way_out


def asked(ask: Ask) -> Callable[[Sequence[str], Workshop], Answer | Diagnostic]:
    """A question whose faults are findings at the command line."""

    def run(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
        try:
            return ask(" ".join(words), workshop)
        except UnreadableError as unread:
            return codes.QUESTION_UNREAD.at(_AT, unread.message, help=unread.way_out)
        except NotDefined as refused:
            return codes.CLASS_UNDEFINED.at(_AT, refused.reason, help=refused.way_out)

    return run


def size_first(text: str, example: str) -> tuple[float, str]:
    """The size in mm with which a question begins, and its other words."""
    found = _SIZE.fullmatch(text)
    if found is None:
        raise UnreadableError("there is no size with its unit", f"write it as {example}")
    return millimetres(found[1], example), found[2].strip()


def millimetres(text: str, example: str) -> float:
    """A length as typed, in mm."""
    try:
        quantity = parse_size(text)
    except ExpressionFault as fault:
        message = f"'{text.strip()[:40]}' is no size"
        raise UnreadableError(message, f"write it as {example}") from fault
    if quantity.dimension != LENGTH:
        raise UnreadableError(f"'{text.strip()[:40]}' is no length", f"write it as {example}")
    return float(quantity.amount)


def _limits(text: str, workshop: Workshop) -> Answer:
    nominal, cls = size_first(text, 'limits "12 mm" H7')
    if not cls:
        raise UnreadableError("no class is named", "write one after the size, as H7 or g6")
    found = limits(nominal, cls)
    units = workshop.units
    low, high = nominal + found.lower_um / 1000, nominal + found.upper_um / 1000
    both = ", ".join(f"{size(low, one)} to {with_unit(high, one)}" for one in ("mm", "inch"))
    return Answer(
        f"limits of ⌀{with_unit(nominal, units)} {found.cls}",
        (
            Result("upper", found.upper_um, "um", "upper deviation"),
            Result("lower", found.lower_um, "um", "lower deviation"),
        ),
        reasons(working(found)),
        (both,),
    )


def _fit(text: str, workshop: Workshop) -> Answer:
    nominal, words = size_first(text, 'fit "12 mm" H7/g6')
    if not words:
        raise UnreadableError("no class and no duty is named", "as H7/g6, or runs slow and oiled")
    hole, shaft, why = classes(words, nominal)
    return fit_answer(fit(nominal, hole, shaft), workshop, why)


def classes(words: str, nominal: float) -> tuple[str, str, tuple[Reason, ...]]:
    """The two classes by their names, or by a duty with its reason."""
    if _CLASSES.fullmatch(words):
        hole, shaft = read_fit(words.replace(" ", ""))
        return hole, shaft, ()
    choice = choose(words, nominal)
    reason = Reason("duty", choice.duty, f"{choice.hole}/{choice.shaft}: {choice.why}",
                    choice.source)  # fmt: skip
    return choice.hole, choice.shaft, (reason,)


def fit_answer(pair: Fit, workshop: Workshop, why: tuple[Reason, ...] = ()) -> Answer:
    """A fit with its deviations, clearances, name and sum for the bench."""
    units = workshop.units
    nominal = pair.hole.nominal_mm
    aim = wanted_um(pair.clearance_min_um, pair.clearance_max_um)
    comes = range_of(pair.clearance_min_um, pair.clearance_max_um, units)
    notes = (
        f"{name_of(pair.designation, nominal)}: {comes}",
        f"to suit: {says('hole', aim)}",
    )
    return Answer(
        f"fit {pair.designation} at ⌀{with_unit(nominal, units)}",
        (
            Result("hole_upper", pair.hole.upper_um, "um", f"hole {pair.hole.cls}, upper"),
            Result("hole_lower", pair.hole.lower_um, "um", f"hole {pair.hole.cls}, lower"),
            Result("shaft_upper", pair.shaft.upper_um, "um", f"shaft {pair.shaft.cls}, upper"),
            Result("shaft_lower", pair.shaft.lower_um, "um", f"shaft {pair.shaft.cls}, lower"),
            Result("clearance_max", pair.clearance_max_um, "um", "greatest clearance"),
            Result("clearance_min", pair.clearance_min_um, "um", "least clearance"),
        ),
        (*why, *reasons(working(pair))),
        notes,
    )
