"""Steps of turned work to their lengths, the rest worked out, and the largest section."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from binder.api import Diagnostic, Labelled, Part, Size, shown_length
from binder_plugins.shapes import codes
from binder_plugins.shapes.kinds import TurnedStep

# Across corners of a hexagon and a square of one across flats: 2/sqrt(3) and sqrt(2), rounded
# up so that the bar that is asked for is never too small.
HEXAGON_CORNERS = Fraction(11548, 10000)
SQUARE_CORNERS = Fraction(14143, 10000)


@dataclass(frozen=True, slots=True)
class Measured:
    """A step with its place along the axis, from the first face, in mm."""

    step: TurnedStep
    start: Fraction
    length: Fraction
    is_rest: bool

    @property
    def end(self) -> Fraction:
        """Where the step ends."""
        return self.start + self.length


def measured(
    part: Part, steps: Sequence[TurnedStep]
) -> tuple[tuple[Measured, ...], tuple[Diagnostic, ...]]:
    """The steps with their lengths, or none and what is wrong with them."""
    findings = tuple(_faults(part, steps))
    if findings:
        return (), findings
    known = sum((_exact(step) for step in steps), Fraction(0))
    rest = part.overall.exact - known if part.overall is not None else Fraction(0)
    placed: list[Measured] = []
    start = Fraction(0)
    for step in steps:
        is_rest = not isinstance(step.length, Size)
        length = rest if is_rest else _exact(step)
        placed.append(Measured(step, start, length, is_rest))
        start += length
    return tuple(placed), ()


def _exact(step: TurnedStep) -> Fraction:
    return step.length.exact if isinstance(step.length, Size) else Fraction(0)


def _faults(part: Part, steps: Sequence[TurnedStep]) -> Iterator[Diagnostic]:
    for step in steps:
        yield from _section_faults(step)
    open_ends = [step for step in steps if not isinstance(step.length, Size)]
    if len(open_ends) > 1:
        yield codes.REST_TWICE.at(
            open_ends[1].length.span,
            f"two steps of '{part.name}' take the rest",
            related=(Labelled(open_ends[0].length.span, "the first one"),),
            help="give one of them a length",
        )
    known = sum((_exact(step) for step in steps), Fraction(0))
    if open_ends and part.overall is None:
        yield codes.SIZE_MISSING.at(
            open_ends[0].length.span,
            f"'{part.name}' has a rest and no overall length",
            help="add `overall:` to the part",
        )
    elif part.overall is not None:
        yield from _overall_faults(part, part.overall, known, has_rest=bool(open_ends))


_SECTIONS = ("diameter", "taper", "hexagon", "square", "ball", "web")


def _section_faults(step: TurnedStep) -> Iterator[Diagnostic]:
    given = [one for name in _SECTIONS if (one := getattr(step, name)) is not None]
    if len(given) != 1:
        yield codes.SECTION_UNCLEAR.at(
            given[1].span if given else step.length.span,
            "a step needs one section" if not given else "a step has two sections",
            help="write one of diameter, taper, hexagon, square, ball or web",
        )
    elif step.web is not None and step.throw is None:
        yield codes.SIZE_MISSING.at(
            step.web.span,
            "a web does not say how far its pin is thrown",
            help="add `throw:`, from the axis to the middle of the pin",
        )
    elif step.throw is not None and step.diameter is None and step.web is None:
        yield codes.SECTION_UNCLEAR.at(
            step.throw.span,
            "only a round step or a web is thrown off the axis",
            help="give it a `diameter:`, or leave `throw:` out",
        )
    elif step.ball is not None and _exact(step) > step.ball.exact:
        yield codes.SIZES_DO_NOT_ADD.at(
            step.length.span,
            f"a ball of {shown_length(step.ball.exact)} is not {shown_length(_exact(step))} long",
            help="make it shorter: a stem is a step of its own",
        )


def _overall_faults(
    part: Part, overall: Size, known: Fraction, *, has_rest: bool
) -> Iterator[Diagnostic]:
    left = overall.exact - known
    if (has_rest and left <= 0) or (not has_rest and left != 0):
        sum_text = shown_length(known)
        yield codes.SIZES_DO_NOT_ADD.at(
            overall.span,
            f"the steps of '{part.name}' come to {sum_text}, overall it is "
            f"{shown_length(overall.exact)}",
            label="nothing is left for the rest" if has_rest else "",
            help="correct one, or give one step `length: rest`",
        )


def bar_needed(steps: Sequence[TurnedStep], form: str) -> Fraction:
    """The size of the smallest round, hexagon or square bar that holds all steps, mm.

    A hexagon that is left on hexagon bar needs no more than its own flats; so does a square.
    """
    return max(_across(step, form) for step in steps)


def _across(step: TurnedStep, form: str) -> Fraction:
    """Over the axis: a step with a throw swings its far side round."""
    throw = step.throw.exact if step.throw is not None else Fraction(0)
    return _section(step, form) + 2 * throw


def _section(step: TurnedStep, form: str) -> Fraction:
    if step.taper is not None:
        return max(step.taper.start.exact, step.taper.end.exact)
    if step.hexagon is not None:
        return step.hexagon.exact * (1 if form == "hexagon bar" else HEXAGON_CORNERS)
    if step.square is not None:
        return step.square.exact * (1 if form == "square bar" else SQUARE_CORNERS)
    across = step.diameter or step.ball or step.web
    return across.exact if across is not None else Fraction(0)
