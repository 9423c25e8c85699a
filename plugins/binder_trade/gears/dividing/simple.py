"""Simple indexing: whole turns and holes on one circle, or the divisions nearest that go."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.dividing.plates import Plates, circles
from binder_trade.gears.trains.ratio import exact

RULE: Final = "turns of the crank = worm ratio / divisions"
_MOST: Final = 100_000


@dataclass(frozen=True, slots=True)
class Indexing:
    """One move of the crank: whole turns, and holes on a circle (0 on 0 where none is needed).

    `plate` is the plate that has the circle; `others` the same move on other circles, as
    (holes to pass, holes of the circle). `sector` is the holes between the sector's arms, the
    one that the pin stands in counted too.
    """

    turns: int
    holes: int
    circle: int
    plate: str
    others: tuple[tuple[int, int], ...]
    crank_turns: Fraction
    steps: tuple[Step, ...]

    @property
    def sector(self) -> int:
        """Holes inside the arms of the sector, with the one that the pin is in."""
        return self.holes + 1 if self.holes else 0


@dataclass(frozen=True, slots=True)
class Nearest:
    """Divisions that can be indexed when the ones wanted cannot: below, above, and the nearer."""

    wanted: int
    below: int | None
    above: int | None
    nearest: int
    steps: tuple[Step, ...]


def index(divisions: int, ratio: int, plates: Plates) -> Indexing:
    """The move for so many equal divisions with a worm of a ratio, as 40.

    Raises NotDefined where no circle has it. Source: ratio / z turns.
    """
    within(divisions, 1, _MOST, "a number of divisions")
    within(ratio, 1, 1000, "the ratio of the worm")
    return _move(Fraction(ratio, divisions), plates, f"{ratio} / {divisions}")


def index_angle(degrees: Fraction | int, ratio: int, plates: Plates) -> Indexing:
    """The move for an angle in exact degrees, at 360 / ratio to the turn. Raises NotDefined."""
    angle = exact(degrees, "an angle")
    within(float(angle), 1e-4, 360, "an angle", "°")
    within(ratio, 1, 1000, "the ratio of the worm")
    turns = angle * ratio / 360
    return _move(turns, plates, f"{float(angle):g}° × {ratio} / 360°")


def can_index(divisions: int, ratio: int, plates: Plates) -> bool:
    """Whether one circle divides so."""
    need = Fraction(ratio, divisions).denominator
    return need == 1 or any(holes % need == 0 for holes in circles(plates))


def nearest(divisions: int, ratio: int, plates: Plates, reach: int = 50) -> Nearest:
    """The nearest numbers of divisions that go, within so many on either side.

    Raises NotDefined where there is none. At a tie the greater is named: more teeth are stronger
    in form.
    """
    within(divisions, 1, _MOST, "a number of divisions")
    span = range(1, reach + 1)
    above = next((divisions + n for n in span if can_index(divisions + n, ratio, plates)), None)
    lower = (divisions - n for n in span if divisions - n >= 1)
    below = next((each for each in lower if can_index(each, ratio, plates)), None)
    found = [each for each in (above, below) if each is not None]
    if not found:
        raise NotDefined(f"nothing near {divisions} divides on these plates", "buy a plate")
    best = min(found, key=lambda each: abs(each - divisions))
    step = Step("nearest divisions", "the circles tried one by one", f"{best}", RULE)
    return Nearest(divisions, below, above, best, (step,))


def _move(turns: Fraction, plates: Plates, formula: str) -> Indexing:
    whole, rest = divmod(turns, 1)
    if not rest:
        return Indexing(int(whole), 0, 0, "", (), turns, _steps(turns, int(whole), 0, 0, formula))
    fits = [each for each in circles(plates) if each % rest.denominator == 0]
    if not fits:
        raise NotDefined(
            f"no circle of holes is divisible by {rest.denominator}",
            "index it compound, or differentially, or take another number",
        )
    moves = [(int(rest * each), each) for each in fits]
    # The largest circle: an error of the pin in its hole counts least there.
    holes, circle = moves[-1]
    plate = next(name for name, row in plates.items() if circle in row)
    steps = _steps(turns, int(whole), holes, circle, formula)
    return Indexing(int(whole), holes, circle, plate, tuple(moves[:-1]), turns, steps)


def _steps(turns: Fraction, whole: int, holes: int, circle: int, formula: str) -> tuple[Step, ...]:
    some = [f"{whole} turn{'' if whole == 1 else 's'}"] if whole else []
    some += [f"{holes} hole{'' if holes == 1 else 's'} of {circle}"] if holes else []
    return (
        Step("turns of the crank", formula, f"{turns}", RULE),
        Step("move", "whole turns, and a part on a circle", " and ".join(some), RULE),
    )
