"""Typed facts of tolerance chains: the sizes that add up to what is left at their end."""

from __future__ import annotations

from dataclasses import dataclass

from binder.design.facts import Fact
from binder.diagnostics import NOWHERE, Span


@dataclass(frozen=True, slots=True)
class ChainLink:
    """One size of a chain: nominal and deviations in mm, and from what the deviations come.

    `factor` is what 1 mm of it does to the end: +1 opens it, −1 closes it. `key` names the
    blank into which its measured size is written. `of` are the ± in mm of the sizes that stray
    independently and make this one up, where it is no single size.
    """

    name: str
    nominal: float
    upper: float
    lower: float
    factor: float
    key: str
    why: str = ""
    of: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class ChainFact(Fact):
    """Sizes that add up; the subject is what they leave (`axle: end float`). Lengths in mm.

    `kind` is end float, shoulders, slide, centres or lap. `least` to `most` is what is wanted;
    under `jams` it binds, over `fails` it no longer works (None where that is no danger). `closing`
    names the link that is made last, to the others as measured; `is_set` is one that is
    set by hand when it is put together. `items` are the parts that meet; `closed_by` is the joint
    that draws up what stops them at the open end, '' where nothing does or that is not known.
    """

    kind: str
    title: str
    items: tuple[str, ...]
    links: tuple[ChainLink, ...]
    least: float
    most: float
    jams: float
    fails: float | None = None
    closing: str = ""
    is_set: bool = False
    way_out: str = ""
    closed_by: str = ""
    at: Span = NOWHERE
