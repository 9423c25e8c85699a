"""Turns the words for an O-ring into the ring, or into the cord that is to be chosen from."""

from __future__ import annotations

import re

from binder.api import NotSizeError, asked_size, said_back, with_point
from binder_trade.seals import NotDefined, Ring, inch_ring, ring

_DASH = re.compile(r"(?:AS ?568[ -]*|no\.? ?|-)([0-9]{1,3})", re.IGNORECASE)
_PAIR = re.compile(r"(.+?)[ ]*[x×][ ]*(.+)")
_WAYS = "as `9 mm x 1.8 mm`, `AS568-012`, or the cord alone: `1.8 mm`"


def ring_or_cord(words: str) -> tuple[Ring | None, float | None]:
    """The ring, or the cord in mm; raises NotDefined for words that are neither."""
    text = " ".join(words.split()).removeprefix("O-ring").strip()
    if found := _DASH.fullmatch(text):
        return inch_ring(found[1]), None
    if pair := _PAIR.fullmatch(text):
        inside, cord = pair[1], pair[2]
        unit = re.sub(r"[0-9./ ]", "", cord)
        if re.fullmatch(r"[0-9.]+", inside):
            inside = f"{inside} {unit}"
        return ring(_mm(inside, text), _mm(cord, text)), None
    return None, _mm(text, text)


def _mm(text: str, whole: str) -> float:
    try:
        return float(asked_size(text).amount)
    except NotSizeError as fault:
        way_out = with_point(whole) or _WAYS
        raise NotDefined(f"{said_back(whole)} is no O-ring", way_out) from fault
