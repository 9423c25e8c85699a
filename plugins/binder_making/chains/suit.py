"""A chain and what is wanted at its end to the limits of the link that is made last."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from binder_making.chains.chain import Chain, Link
from binder_trade.explained import NotDefined


@dataclass(frozen=True, slots=True)
class Suited:
    """The size of the closing link in mm: between `least_mm` and `most_mm` all is well.

    `target_mm` is their middle. `sum_text` is the sum for the bench, with a box for each
    size that is measured first.
    """

    name: str
    target_mm: float
    least_mm: float
    most_mm: float
    sum_text: str

    @property
    def half_mm(self) -> float:
        """How far from the target it may be; mm."""
        return (self.most_mm - self.least_mm) / 2


def made_to_suit(
    whole: Chain,
    name: str,
    wanted: tuple[float, float],
    measured: Mapping[str, float] | None = None,
) -> Suited:
    """The link `name` so that the end lies between the two wanted, in mm, in the worst case.

    `measured` has the links that are made already, by name: they have no tolerance any more.
    Raises `NotDefined` where the link is not in the chain, or the others alone take more than
    is wanted.
    """
    found = dict(measured or {})
    closing = next((one for one in whole.links if one.name == name), None)
    if closing is None:
        names = ", ".join(one.name for one in whole.links)
        raise NotDefined(f"'{name}' is not a link of this chain", f"one of: {names}")
    low, high = sorted(wanted)
    others = [_as_made(one, found) for one in whole.links if one.name != name]
    middle = sum(one.factor * one.middle_mm for one in others)
    half = sum(one.half_mm for one in others)
    room = (high - low) / 2 - half
    if room < -1e-9:
        raise NotDefined(
            f"the other links alone take ± {half:.3f} mm, and ± {(high - low) / 2:.3f} is wanted",
            "measure the others first and make this one to them, or widen what is wanted",
        )
    target = ((low + high) / 2 - middle) / closing.factor
    spare = max(room, 0.0) / abs(closing.factor)
    return Suited(
        name, target, target - spare, target + spare, _sum_text(closing, others, low, high)
    )


def _as_made(link: Link, measured: Mapping[str, float]) -> Link:
    if link.name not in measured:
        return link
    return Link(link.name, measured[link.name], factor=link.factor)


def _sum_text(closing: Link, others: list[Link], low: float, high: float) -> str:
    """`washer = housing − collar − 0.15`, which a pencil can follow."""
    signs = [(-one.factor / closing.factor, one.name) for one in others]
    terms = [_term(factor, name) for factor, name in signs]
    wanted = _term((low + high) / 2 / closing.factor, "")
    return f"{closing.name} = " + " ".join([*terms, wanted]).removeprefix("+ ")


def _term(factor: float, name: str) -> str:
    sign = "−" if factor < 0 else "+"
    size = f"{abs(factor):g}"
    if not name:
        return f"{sign} {size}"
    return f"{sign} {name}" if size == "1" else f"{sign} {size} × {name}"
