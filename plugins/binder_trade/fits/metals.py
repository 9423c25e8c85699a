"""The name of a shop metal to what the sums of press and shrink fits need of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined
from binder_trade.fits.naming import cited, plain, way_out


@dataclass(frozen=True, slots=True)
class Metal:
    """A metal: modulus and strength in MPa, expansion a kelvin, Poisson's ratio without unit.

    `strength_mpa` is the yield or proof stress; of a brittle metal it is the tensile strength.
    """

    name: str
    modulus_mpa: float
    poisson: float
    expansion_per_k: float
    strength_mpa: float
    brittle: bool = False
    porous: bool = False
    source: str = "as given"


@dataclass(frozen=True, slots=True)
class Friction:
    """The friction of a pressed or shrunk joint, least and most, without unit."""

    least: float
    most: float
    source: str


def metal(name: str) -> Metal:
    """A metal by family name or by id (`brass`, `silver steel`, `phosphor-bronze`).

    Raises NotDefined for a metal that is not in the table. Source: printed with each.
    """
    table = _table()
    asked = plain(name)
    wanted = table["defaults"].get(asked, asked)
    rows = {row["id"]: row for row in table["metals"]}
    if wanted not in rows:
        known = [*table["defaults"], *rows]
        raise NotDefined(f"no figures for “{asked}” in a press fit", way_out(asked, known, rows))
    return _metal(rows[wanted])


def friction(joint: str, against: Metal) -> Friction:
    """The friction of a `pressed` or `shrunk` joint between steel and another metal.

    Raises NotDefined for another joint. Source: DIN 7190-1 clauses 5.2 and 5.3.
    """
    family = _family(against)
    for row in _table()["friction"]:
        if row["joint"] == joint and row["with"] == family:
            return Friction(row["least"], row["most"], cited(row))
    raise NotDefined(f"no friction for a {joint[:40]} joint", "say pressed or shrunk")


def flattening_parts(convention: str) -> tuple[float, str]:
    """The part of both Rz together that flattening takes from an interference, and its source.

    Raises NotDefined for a convention other than `DIN 7190-1`, `DIN 7190` and `tenth`.
    """
    rows = _table()["flattening"]
    for row in rows:
        if row["convention"] == convention:
            return float(row["parts"]), cited(row)
    known = ", ".join(row["convention"] for row in rows)
    raise NotDefined(f"no convention “{convention[:40]}” for roughness", f"there are {known}")


def _family(against: Metal) -> str:
    if against.brittle:
        return "cast iron"
    if any(word in against.name for word in ("bronze", "brass", "gunmetal", "copper")):
        return "brass"
    return "light alloy" if "alumin" in against.name else "steel"


def _metal(row: Mapping[str, Any]) -> Metal:
    sources = "; ".join(_table()["sources"][key] for key in row["source"])
    return Metal(
        row["says"],
        row["modulus"] * 1000.0,
        row["poisson"],
        row["expansion"] * 1e-6,
        float(row["strength"]),
        row.get("brittle", False),
        row.get("porous", False),
        cited({"source": sources, "status": row["status"]}),
    )


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.fits", "metals.yaml")
    return table
