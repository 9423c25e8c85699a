"""The gap that compound, solder or glue needs, and what a gap that was made will do."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, within
from binder_trade.fits.naming import cited, plain, way_out
from binder_trade.fits.printed import span

CONVENTION = "gap on diameter; some tables mean the gap between the faces, which is half"
_MOST_UM = 1e6


@dataclass(frozen=True, slots=True)
class Gap:
    """The gap on diameter in µm that a filler wants, the limits of failing, temperatures in °C."""

    kind: str
    filler: str
    least_um: float
    most_um: float
    tight_um: float
    wide_um: float
    hottest_deg: float | None
    melts_deg: float | None
    too_tight: str
    too_wide: str
    convention: str
    source: str


@dataclass(frozen=True, slots=True)
class GapVerdict:
    """What a range of gaps will do: good all over, workable, or likely to fail, and why."""

    good: bool
    fails: bool
    says: str
    steps: tuple[Step, ...]


def gap(kind: str) -> Gap:
    """The gap of a kind of joint: `retained`, `silver soldered`, `soft soldered`, `glued`.

    Raises NotDefined for another kind. Source: printed with each.
    """
    rows = {row["kind"]: row for row in _table()["gaps"]}
    asked = plain(kind)
    if asked not in rows:
        raise NotDefined(f"no gap is known for “{asked}”", way_out(asked, rows, rows))
    row = rows[asked]
    return Gap(
        row["kind"],
        row["filler"],
        float(row["least"]),
        float(row["most"]),
        float(row["tight"]),
        float(row["wide"]),
        row.get("hottest"),
        row.get("melts"),
        row["too_tight"],
        row["too_wide"],
        CONVENTION,
        cited(row),
    )


def filler(kind: str, *, is_wood: bool = False) -> str:
    """What fills a kind of joint, `is_wood` where both its halves are; '' where nothing does.

    Source: that of the gaps; wood glue between woods is common practice, no source.
    """
    rows = (row for row in _table()["gaps"] if row["kind"] == plain(kind.replace("_", " ")))
    row = next(rows, None)
    if row is None:
        return ""
    return str(row.get("between_wood", row["filler"]) if is_wood else row["filler"])


def judge_gap(kind: str, least_um: float, most_um: float) -> GapVerdict:
    """What a joint does whose clearance on diameter lies between two amounts in µm.

    Less than nothing is interference. Raises NotDefined for amounts that are no numbers.
    """
    wanted = gap(kind)
    first = within(least_um, -_MOST_UM, _MOST_UM, "the least gap")
    low, high = sorted((first, within(most_um, -_MOST_UM, _MOST_UM, "the greatest gap")))
    good = wanted.least_um <= low and high <= wanted.most_um
    tight, wide = low < wanted.tight_um, high > wanted.wide_um
    return GapVerdict(
        good,
        tight or wide,
        _says(wanted, good=good, tight=tight, wide=wide),
        (
            Step(
                "gap wanted",
                f"for {wanted.filler}",
                span(wanted.least_um, wanted.most_um),
                wanted.source,
            ),
            Step("gap made", "hole − shaft", span(low, high), CONVENTION),
        ),
    )


def hottest_deg(kind: str) -> float:
    """The temperature in °C above which a joint lets go; raises NotDefined where none is known."""
    wanted = gap(kind)
    if wanted.hottest_deg is None:
        raise NotDefined(f"{wanted.filler} holds until it melts", "see where it melts")
    return wanted.hottest_deg


def _says(wanted: Gap, *, good: bool, tight: bool, wide: bool) -> str:
    if good:
        return f"right for {wanted.filler}"
    faults = [wanted.too_tight] * tight + [wanted.too_wide] * wide
    return "; ".join(faults) or f"{wanted.filler} will do it, though not at its best"


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.fits", "gaps.yaml")
    return table
