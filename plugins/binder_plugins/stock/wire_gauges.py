"""The number of a wire or sheet gauge to its thickness."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from binder_plugins.stock.tables import all_sizes

_INCH: Final = 25.4
_GAUGE: Final = re.compile(
    r"(?P<number>[2-7]/0|0{2,4}|[0-9]{1,2}) ?(?P<series>swg|awg)", re.IGNORECASE
)
_AWG_STEPS: Final = 39
_LARGEST_AWG, _SMALLEST_AWG = -3, 40
_AWG_SOURCE: Final = "ASTM B258: 0.005 in × 92 ^ ((36 − n) / 39), where 0000 is n = −3"


@dataclass(frozen=True, slots=True)
class Thickness:
    """What a gauge comes to, in mm, with the rule or table that says so."""

    name: str
    mm: float
    formula: str
    source: str


def thickness(text: str) -> Thickness | None:
    """The thickness of `12 swg`, `7/0 swg` or `22 awg`, or None where no gauge is so called.

    Source: BS 3737 (table) and ASTM B258 (formula).
    """
    found = _GAUGE.fullmatch(" ".join(text.split()))
    if found is None:
        return None
    number = found["number"]
    noughts = int(number[0]) if "/" in number else len(number) if set(number) == {"0"} else 0
    return _awg(number, noughts) if found["series"].lower() == "awg" else _swg(number, noughts)


def _swg(number: str, noughts: int) -> Thickness | None:
    gauge = next(one for one in all_sizes() if one.name == "swg")
    key = f"{noughts}/0" if noughts > 1 else "0" if noughts else str(int(number))
    sizes = getattr(gauge, "sizes", {})
    if key not in sizes:
        return None
    mm = float(sizes[key].amount)
    return Thickness(f"{key} swg", mm, "the table of the standard wire gauge", gauge.source)


def _awg(number: str, noughts: int) -> Thickness | None:
    place = 1 - noughts if noughts else int(number)
    if not _LARGEST_AWG <= place <= _SMALLEST_AWG:
        return None
    mm = 0.005 * 92 ** ((36 - place) / _AWG_STEPS) * _INCH
    name = f"{'0' * noughts or place} awg"
    return Thickness(name, mm, "0.005 in × 92 ^ ((36 − n) / 39)", _AWG_SOURCE)
