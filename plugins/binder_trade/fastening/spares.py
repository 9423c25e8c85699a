"""The number needed turned into the number to buy."""

from __future__ import annotations

import math
from typing import Final

from binder_trade.explained import NotDefined, positive

SMALL_MM: Final = 5.0
_SPARE_SHARE: Final = 10


def hardware_count(needed: int, diameter_mm: float) -> int:
    """Small ones (to 5 mm) roll under the bench: a tenth more, one at least.

    Raises NotDefined. Source: common practice, no source.
    """
    if needed < 0:
        raise NotDefined(f"{needed} is no number off", "give nothing or more")
    if needed == 0 or positive(diameter_mm, "a diameter") > SMALL_MM:
        return needed
    return needed + math.ceil(needed / _SPARE_SHARE)
