"""What is doubtful about an expression that can be worked out."""

from __future__ import annotations

from collections.abc import Iterator

from binder.diagnostics import Diagnostic, Labelled
from binder.parameters import codes
from binder.parameters.environment import Environment
from binder.parameters.evaluate import Work
from binder.parameters.expression import Expression
from binder.parameters.picture import is_too_long_for
from binder.parameters.places import place_of
from binder.source.tree import Written
from binder.units import shown


def remarks_on(
    expression: Expression, text: Written, environment: Environment, place: str = ""
) -> Iterator[Diagnostic]:
    """Picks that a measure leaves in doubt, and measures far longer than the known length.

    For an expression that evaluates without fault in this environment.
    """
    if expression.value is None:
        yield from _doubtful_picks(expression, text, Work(environment, place))
        yield from _long_measures(expression, text, environment)


def _doubtful_picks(expression: Expression, text: Written, work: Work) -> Iterator[Diagnostic]:
    for choice in expression.choices():
        pick = work.pick(choice)
        if pick.rivals:
            others = " and ".join(pick.rivals)
            message = f"{pick.label} is taken for {shown(pick.wanted)}, so near is {others} too"
            span = place_of(text, choice.start, choice.end - choice.start)
            yield codes.PICK_IN_DOUBT.at(
                span, message, help="write the size that you want, or measure better"
            )


def _long_measures(
    expression: Expression, text: Written, environment: Environment
) -> Iterator[Diagnostic]:
    known = environment.picture
    for measure in expression.measures() if known is not None else ():
        if known is not None and is_too_long_for(measure.pixels, known):
            message = f"{float(measure.pixels):g} px is over four times the known length"
            span = place_of(text, measure.start, measure.end - measure.start)
            label = f"known are {float(known.pixels):g} px"
            related = (Labelled(known.text.span, label),)
            yield codes.PICTURE_KNOWN_TOO_SHORT.at(span, message, related=related)
