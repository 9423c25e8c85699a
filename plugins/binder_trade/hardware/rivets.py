"""Turns the size of a rivet as bought, and its head, into the dimensions of the rivet."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.listing import Listed, NotListed, Table, listing, tables
from binder_trade.hardware.steps_sold import steps_within, texts_within

RIVET_HEADS = ("snap", "countersunk")


@dataclass(frozen=True, slots=True, kw_only=True)
class Rivet(Listed):
    """A solid rivet, mm; lengths from under a snap head, of a countersunk one over all."""

    size: str
    head: str
    d_mm: float
    dk_mm: float
    k_mm: float
    angle_deg: float | None
    lengths_mm: tuple[float, ...]
    length_texts: tuple[str, ...]


def rivet(size: str, head: str) -> Rivet:
    """A rivet by its size as written, 1/16 in or 2 mm, and its head (RIVET_HEADS), mm.

    Raises NotListed. Sources: DIN 660 and 661; BS 641.
    """
    of = _table(size, head)
    row = of.row(size, f"a rivet of {size[:20]}")
    return Rivet(
        size=size,
        head=head,
        d_mm=row["d"],
        dk_mm=row["dk"],
        k_mm=row["k"],
        angle_deg=row.get("angle_deg"),
        lengths_mm=steps_within(of.words["list"], row),
        length_texts=texts_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(size),
    )


def _table(size: str, head: str) -> Table:
    unit = "in" if size.endswith(" in") else "mm"
    of = tables("rivets.yaml").get(f"{head} {unit}")
    if of is None:
        reason = f"no rivet with a {head[:20]} head is listed"
        raise NotListed(reason, f"listed: {listing(RIVET_HEADS)}")
    return of
