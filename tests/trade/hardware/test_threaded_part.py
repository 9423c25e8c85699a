"""How far screws are threaded, by the rule of each standard, in every row."""

from __future__ import annotations

import pytest

from binder_trade.hardware.listing import table
from binder_trade.hardware.thread_keys import printed, thread_key

INCH = 25.4
SLOTTED = {
    # b and full for threads to M3, then for larger ones (ISO 1207, 1580, 2009, 7045, 7046-1).
    "cheese M": ((25, 30), (38, 40)),
    "pan M": ((25, 30), (38, 40)),
    "countersunk M": ((25, 30), (38, 45)),
    "pan cross M": ((25, 25), (38, 40)),
    "countersunk cross M": ((25, 30), (38, 45)),
}


@pytest.mark.parametrize("name", SLOTTED)
def test_slotted_and_recessed_screws(name: str) -> None:
    small, large = SLOTTED[name]
    for key, row in table("lengths.yaml", name).rows.items():
        assert (row["b"], row["full"]) == (small if float(key) <= 3 else large), key


@pytest.mark.parametrize("name", ["cap M", "button M", "countersunk socket M"])
def test_socket_screws(name: str) -> None:
    """b = 2 d + 12 (ISO 4762, 7380-1, 10642); no screw that is threaded to its head is shorter."""
    for key, row in table("lengths.yaml", name).rows.items():
        assert row["b"] == pytest.approx(2 * float(key) + 12, abs=0.21), key
        assert row["b"] < row["full"] + 0.01
        assert row["full"] <= max(row["to"], 3.5 * float(key) + 20)


def test_hexagon_bolts() -> None:
    """b = 2 d + 6 (ISO 4014), and the shortest bolt has some plain shank."""
    for key, row in table("lengths.yaml", "hexagon bolt M").rows.items():
        assert row["b"] == pytest.approx(2 * float(key) + 6, abs=0.21), key
        assert row["from"] > row["b"]


RULES = {
    "socket UN": ("UNC", 0.5),
    "hexagon bolt UN": ("UNC", 0.25),
    "hexagon bolt BS": ("BSW", 0.25),
}


@pytest.mark.parametrize("name", RULES)
def test_inch_screws(name: str) -> None:
    """2 D + 1/2 in (ASME B18.3, rounded up to 1/8 in to no. 10) or 2 D + 1/4 in."""
    series, more = RULES[name]
    for key, row in table("lengths.yaml", name).rows.items():
        if key == "0":
            continue  # no UNC thread of no. 0; B18.3 gives it 1/2 in
        by_rule = 2 * thread_key(printed(series, key)).nominal_mm + more * INCH
        step = INCH / 8 if name == "socket UN" else 0.0
        assert by_rule - step < row["b"] + 0.01, key
        assert row["b"] <= by_rule + step + 0.01, key
        assert row["full"] == row["b"]
