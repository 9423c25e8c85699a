"""A wider sweep: every limit that a general fastener library carries from ASME B1.1 and B1.13M.

Its one figure that is left out, the least pitch diameter of M12 (0.42023 in), contradicts the
library's own least minor diameter, which lies 0.616025 P below: 0.42045 is meant.
"""

from __future__ import annotations

from typing import Any

import pytest

from binder_trade.threads import Thread, ThreadLimits, limits, thread

library = pytest.importorskip(
    "screw_thread_lib.data", reason="screw-thread-lib is a test dependency"
)
INCH = 25.4
# ASME B1.1 prints four decimals, and three for the bores of nuts from no. 8 up; its allowance
# and tolerance are each rounded before they are taken off.
UNIFIED_WITHIN = {"D1min": 0.00051, "D1max": 0.00051}
UNIFIED_ELSE = 0.00015
# ASME B1.13M rounds to a micrometre before it is printed in inches.
METRIC_WITHIN = 0.00004
SLIPS = {("M12-1.75", "d2min")}


def sizes(screw: ThreadLimits, nut: ThreadLimits) -> dict[str, float | None]:
    return {
        "dmax": screw.major_max,
        "dmin": screw.major_min,
        "d2max": screw.effective_max,
        "d2min": screw.effective_min,
        "d1max": screw.minor_max,
        "d1min": screw.minor_min,
        "D1min": nut.minor_min,
        "D1max": nut.minor_max,
        "D2min": nut.effective_min,
        "D2max": nut.effective_max,
    }


def compare(
    one: Thread, key: str, row: dict[str, Any], within: dict[str, float], other: float
) -> int:
    count = 0
    for name, size in sizes(limits(one), limits(one, is_internal=True)).items():
        if (key, name) not in SLIPS:
            assert size is not None
            assert size / INCH == pytest.approx(row[name], abs=within.get(name, other)), name
            count += 1
    return count


def test_unified_limits_are_those_of_the_library() -> None:
    rows: dict[str, dict[str, Any]] = library.ASME_UN_2A2B_dict
    count = 0
    for key, row in rows.items():
        one = thread(row["series"], row["dbsc"] * INCH, tpi=row["n"])
        count += compare(one, key, row, UNIFIED_WITHIN, UNIFIED_ELSE)
    assert count == 110


def test_metric_limits_are_those_of_the_library() -> None:
    rows: dict[str, dict[str, Any]] = library.ASME_M_6g6H_dict
    count = 0
    for key, row in rows.items():
        one = thread("metric", round(row["dbsc"] * INCH, 3), pitch_mm=INCH / row["n"])
        count += compare(one, key, row, {}, METRIC_WITHIN)
    assert count == 39
