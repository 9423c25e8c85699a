"""A choice of fit and what tool and bar give to whether the fit will come out."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import NotDefined, Step
from binder_trade.fits.drawn_rod import clearances
from binder_trade.fits.duties import Choice
from binder_trade.fits.given import Given
from binder_trade.fits.printed import span


@dataclass(frozen=True, slots=True)
class Reach:
    """Whether a fit comes out: clearances in µm wanted and got, in words, with ways out."""

    reached: bool
    tighter: bool
    looser: bool
    wanted_um: tuple[float, float]
    got_um: tuple[float, float]
    says: str
    ways_out: tuple[str, ...]
    steps: tuple[Step, ...]


def check_reachable(choice: Choice, hole: Given, shaft: Given) -> Reach:
    """Whether hole and shaft as they come give the clearance that the choice wants.

    Clearances in µm, least and most; interference is less than nothing. Raises NotDefined where
    the halves are of two nominal sizes. Source: ISO 286-1, clearance = hole − shaft.
    """
    if hole.nominal_mm != shaft.nominal_mm:
        raise NotDefined("hole and shaft are of two nominal sizes", "give both the same size")
    wanted = clearances(hole.nominal_mm, choice.hole, choice.shaft)
    got = (hole.lower_um - shaft.upper_um, hole.upper_um - shaft.lower_um)
    tighter, looser = got[0] < wanted[0], got[1] > wanted[1]
    return Reach(
        not tighter and not looser,
        tighter,
        looser,
        wanted,
        got,
        _says(wanted, got),
        _ways_out(hole, shaft, wanted, tighter=tighter, looser=looser),
        _steps(choice, hole, shaft, wanted, got),
    )


def _says(wanted: tuple[float, float], got: tuple[float, float]) -> str:
    tighter, looser = got[0] < wanted[0], got[1] > wanted[1]
    if not tighter and not looser:
        return "comes out as it is"
    if wanted[1] <= 0 < got[1]:
        return "may fall through where it should hold"
    if got[0] < 0 <= wanted[0]:
        return "may not go in at all"
    if tighter and looser:
        return "may come too tight or too loose"
    return "may come too tight" if tighter else "may come too loose"


def _ways_out(
    hole: Given, shaft: Given, wanted: tuple[float, float], *, tighter: bool, looser: bool
) -> tuple[str, ...]:
    """What would serve, the cheapest first; nothing where the fit comes out."""
    if not tighter and not looser:
        return ()
    out = ["measure both halves and keep the pair that fits"]
    if shaft.way != "turned":
        out.append("turn the shaft from the next larger bar, to the measured hole")
    if hole.way == "drilled":
        out.append("ream the hole")
    if looser and wanted[1] <= 0:
        out.append("bond it with retaining compound")
    if shaft.way not in ("turned", "ground shafting"):
        out.append("buy a ground rod of a finer class")
    return tuple(out)


def _steps(
    choice: Choice,
    hole: Given,
    shaft: Given,
    wanted: tuple[float, float],
    got: tuple[float, float],
) -> tuple[Step, ...]:
    return (
        Step("wanted", f"{choice.hole}/{choice.shaft}", span(*wanted), choice.source),
        Step(
            f"hole {hole.way}",
            hole.cls or "table",
            span(hole.lower_um, hole.upper_um),
            hole.source,
        ),
        Step(
            f"shaft {shaft.way}",
            shaft.cls or "table",
            span(shaft.lower_um, shaft.upper_um),
            shaft.source,
        ),
        Step("got", "hole − shaft", span(*got), "ISO 286-1"),
    )
