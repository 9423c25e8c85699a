"""The fits to choose first, and the trade's names for them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from binder.api import load_data
from binder_trade.limits.fits import fit
from binder_trade.limits.reading import read_fit

Basis = Literal["hole", "shaft"]
BASES: tuple[Basis, ...] = ("hole", "shaft")


@dataclass(frozen=True, slots=True)
class PreferredFit:
    """One fit to choose first.

    `name`, `kind` and `use` are empty where ANSI B4.2 does not name the fit; `note` says where
    the name misleads. `sources` are the lists that have the fit; `status` is "verified" (read
    in a second published table) or "memory".
    """

    designation: str
    basis: Basis
    name: str
    kind: str
    use: str
    note: str
    sources: tuple[str, ...]
    status: str


@cache
def preferred_fits() -> tuple[PreferredFit, ...]:
    """The preferred fits: those with a name, loosest first, then what ISO 286-1 has besides.

    Source: ANSI B4.2-1978 (names and pairs); ISO 286-1:2010, preferred fits of the hole-basis
    and of the shaft-basis system (the latter from memory).
    """
    named = tuple(_named())
    known = {(one.basis, one.designation) for one in named}
    unnamed = (one for one in _listed() if (one.basis, one.designation) not in known)
    return named + tuple(unnamed)


def name_of(designation: str, nominal_mm: float) -> str:
    """The trade's name of a fit such as "H7/g6" at a size in mm.

    Where the size makes another kind of fit of it than the name says, that is added: H7/p6 is a
    transition fit up to 3 mm. A fit without a name is called by its kind.

    Raises:
        NotDefined: the text is no fit, or it is not defined at that size.

    Source: ANSI B4.2-1978.
    """
    here = fit(nominal_mm, *read_fit(designation))
    for one in preferred_fits():
        if one.name and one.designation == here.designation:
            as_named = one.kind == here.kind
            return one.name if as_named else f"{one.name} (a {here.kind} fit at this size)"
    return f"{here.kind} fit"


def _content() -> dict[str, Any]:
    content: dict[str, Any] = load_data("binder_trade.limits", "preferred.yaml")
    return content


def _pairs(basis: Basis) -> tuple[str, ...]:
    """The fits that ISO 286-1 lists on one basis."""
    if basis == "hole":
        rows = _content()["hole_basis"]["shafts_by_hole"]
        return tuple(f"{hole}/{shaft}" for hole, shafts in rows.items() for shaft in shafts)
    rows = _content()["shaft_basis"]["holes_by_shaft"]
    return tuple(f"{hole}/{shaft}" for shaft, holes in rows.items() for hole in holes)


def _named() -> Iterator[PreferredFit]:
    table = _content()["named"]
    for basis in BASES:
        pairs, also = _pairs(basis), _content()[f"{basis}_basis"]["source"]
        for row in table["fits"]:
            designation = row[f"{basis}_basis"]
            yield PreferredFit(
                designation,
                basis,
                row["name"],
                row["kind"],
                row["use"],
                row.get(f"note_on_{basis}_basis", ""),
                (table["source"], also) if designation in pairs else (table["source"],),
                table["status"],
            )


def _listed() -> Iterator[PreferredFit]:
    for basis in BASES:
        table = _content()[f"{basis}_basis"]
        for pair in _pairs(basis):
            yield PreferredFit(pair, basis, "", "", "", "", (table["source"],), table["status"])
