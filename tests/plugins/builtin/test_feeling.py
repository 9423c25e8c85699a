"""How a fit feels when it is put together: the words go by its clearance."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from binder.api import FitFact
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.joints.feeling import felt

JACK = Path(__file__).parents[3] / "specs" / "screw-jack" / "screw-jack.yaml"
STEP = "slide it in; it moves by hand without shake"


@pytest.mark.parametrize(
    ("upper", "lower", "suit", "is_felt"),
    [
        # H7/f7 at 6 mm, 0.010 to 0.034 mm (ISO 286, from memory): no finger feels it.
        (12.0, 0.0, "", False),
        # A 3.1 mm drill round a 3 mm rod, up to 0.2 mm: it rocks. Common practice, no source.
        (202.0, 75.0, "", True),
        # Made to the measured half, it has what is wanted, whatever the raw limits say.
        (202.0, 75.0, "shaft", False),
    ],
)
def test_shake_is_told_where_a_finger_feels_it(
    upper: float, lower: float, suit: str, *, is_felt: bool, host: Host
) -> None:
    design = compiled(Job(JACK), host, Phase.EXPAND).design
    assert design is not None
    fit = FitFact("it", Fraction(3), "", "", "", "", "", upper, lower, 0.0, -14.0, suit)
    said = felt(STEP, fit, design)
    assert ("without shake" not in said) == is_felt
    assert ("0.075 to 0.216 mm" in said) == is_felt
