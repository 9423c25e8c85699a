"""The table of materials, looked up by any name that a maker writes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data

PACKAGE = "binder_plugins.materials"
_FIGURES = ("density", "modulus", "expansion")


@dataclass(frozen=True, slots=True)
class Record:
    """A material: figures in g/cm³, GPa and 1e-6/K, None where no source gives one."""

    id: str
    names: tuple[str, ...]
    designation: str
    group: str
    condition: str
    density: float | None
    modulus: float | None
    expansion: float | None
    forms: tuple[str, ...]
    hazards: tuple[str, ...]
    advice: str
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Records:
    """All materials by id, and the id of each name in small letters."""

    by_id: Mapping[str, Record]
    ids: Mapping[str, str]
    by_form: Mapping[str, Mapping[str, str]]

    def find(self, name: str, form: str = "") -> Record | None:
        """The material of a name; a family word may mean another one in some forms."""
        plain = " ".join(name.lower().split())
        meant = self.by_form.get(plain, {}).get(form) or self.ids.get(plain)
        return self.by_id.get(meant) if meant else None


@cache
def records() -> Records:
    """The table, read once."""
    table: Mapping[str, Any] = load_data(PACKAGE, "materials.yaml")
    by_id = {row["id"]: _record(row, table["sources"]) for row in table["materials"]}
    ids = {name.lower(): one.id for one in by_id.values() for name in one.names}
    ids |= {one.replace("-", " "): one for one in by_id} | {one: one for one in by_id}
    return Records(by_id, {**ids, **table["defaults"]}, table["by_form"])


def _record(row: Mapping[str, Any], sources: Mapping[str, Mapping[str, Any]]) -> Record:
    return Record(
        id=row["id"],
        names=tuple(row["names"]),
        designation=row["designation"],
        group=row["group"],
        condition=row.get("condition", ""),
        **{figure: row.get(figure) for figure in _FIGURES},
        forms=tuple(row["forms"]),
        hazards=tuple(row.get("caution", ())),
        advice=row.get("notes", ""),
        sources=tuple(_sources(row, sources)),
    )


def _sources(row: Mapping[str, Any], sources: Mapping[str, Mapping[str, Any]]) -> list[str]:
    """The source of each figure that the binder prints, with the words for one not read."""
    found = []
    for figure in _FIGURES:
        key = row["source"].get(figure)
        if key is not None:
            text = sources[key]["text"]
            is_read = row["status"].get(figure) == "verified"
            found.append(text if is_read else f"{text} (from memory)")
    return list(dict.fromkeys(found))
