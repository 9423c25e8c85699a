"""What so many teeth are divided on: a head first, then a rotary table; sums by hand."""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.api import Workshop
from binder.parameters import Environment
from binder.workshop import read_workshop
from binder_trade.gears.dividing import can_divide, divided


@pytest.fixture(scope="module")
def workshop() -> Workshop:
    """The built-in one: a rotary table of 72 turns with a dial of 0.1°, and no dividing head."""
    found, _ = read_workshop(None, Environment({}, {}, {}, None))
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("teeth", "said"),
    [
        (18, "rotary table: 4 turns"),  # 72 / 18
        # A turn is 5°, 50 marks. 360° / 54 = 6.667° is 66.67 marks: 67 are a turn and 17, and a
        # third of a mark of 6′ is 2′.
        (
            54,
            (
                "rotary table: 1 turn and 17 marks of 0.1°; tooth n at (n − 1) × 360° / 54 from "
                "the first, to the nearest mark, off by 2′ at the most"
            ),
        ),
        # 360° / 50 = 7.2° is a turn and 22 marks, and no mark is missed.
        (
            50,
            (
                "rotary table: 1 turn and 22 marks of 0.1°; tooth n at (n − 1) × 360° / 50 from "
                "the first, to the nearest mark"
            ),
        ),
    ],
)
def test_a_rotary_table_divides_where_no_head_is_owned(
    workshop: Workshop, teeth: int, said: str
) -> None:
    assert divided(teeth, workshop.dividers()) == said
    assert can_divide(teeth, workshop.dividers())


def test_a_table_takes_what_the_head_cannot() -> None:
    """127 is prime and on no circle of that shop's head; 54 is 20 holes of its 27."""
    shop = Path(__file__).parents[1] / "toollist" / "full.yaml"
    found, _ = read_workshop(shop, Environment({}, {}, {}, None))
    assert found is not None
    assert divided(127, found.dividers()).startswith("round table: ")
    assert divided(24, found.dividers()).startswith("head: ")  # of its direct holes
