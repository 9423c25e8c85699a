"""Which tool of a workshop can tell a size: the rule of ten, common practice, no source.

The default workshop owns a micrometer (0 to 25 mm, 0.01 mm) and a caliper (0 to 150 mm, 0.01).
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import HalfFact, Workshop
from binder.parameters import Environment
from binder.workshop import read_workshop
from binder_making.measuring import PLUG
from binder_plugins.inspection.gauging import if_out, is_hole, said_of, tool_for


@pytest.fixture(scope="module")
def workshop() -> Workshop:
    """The built-in one."""
    found, findings = read_workshop(None, Environment({}, {}, {}, None))
    assert found is not None
    assert not findings
    return found


def half(what: str, lower: float | None, upper: float | None) -> HalfFact:
    """One half of a joint with its limits in mm."""
    return HalfFact("j: a.b", "j", "a", "b", what, "c", "to drawing", lower=lower, upper=upper)


@pytest.mark.parametrize(
    ("what", "lower", "upper", "tool"),
    [
        ("turn ⌀12", 11.9, 12.0, "micrometer"),  # 0.1 wide: a step of 0.01 is a tenth
        ("turn ⌀12", 11.95, 12.0, "micrometer, read twice"),  # a fifth
        ("turn ⌀12", 11.98, 11.99, "micrometer, then its own mate"),  # as wide as the step
        ("ream ⌀6 H7", 6.0, 6.012, "a plug turned to size"),
        ("bore ⌀40", 40.0, 40.16, "digital caliper"),
        ("turn ⌀300", 299.0, 300.0, "rule, then its own mate"),  # over every range but the rule's
    ],
)
def test_the_step_is_a_tenth_of_the_limits(
    workshop: Workshop, what: str, lower: float, upper: float, tool: str
) -> None:
    assert tool_for(half(what, lower, upper), workshop) == tool


def test_a_half_without_limits_needs_no_tool(workshop: Workshop) -> None:
    assert not tool_for(half("as bought", None, None), workshop)


def test_what_is_out_is_made_good_the_other_way_round() -> None:
    assert is_hole(half("ream ⌀6 H7", 6.0, 6.012))
    assert "other half" in if_out(replace(half("bore ⌀6 H7", 6.0, 6.012), is_master=True))
    assert "bush the hole" in if_out(half("bore ⌀6 H7", 6.0, 6.012))
    assert "polish" in if_out(half("turn ⌀6 f7", 5.978, 5.99))
    assert "bush" not in if_out(half("turn ⌀6 f7", 5.978, 5.99))  # a solid pin has no bush


def test_a_plug_is_told_by_the_sizes_of_its_ends() -> None:
    # Taylor's principle of limit gauges (ISO 1938): go at the least bore, not go at the greatest.
    bore = half("ream ⌀6 H7", 6.0, 6.012)
    assert said_of(PLUG, bore, "mm") == f"{PLUG}: 6.000 goes in, 6.012 does not"
    assert said_of("caliper", bore, "mm") == "caliper"


def test_what_is_made_to_its_mate_is_judged_by_what_it_differs_from_it(workshop: Workshop) -> None:
    # Aimed 15 µm wide, but 8 to 74 µm over the mate are right: 66 µm, a fifth of which is 0.013.
    bush = replace(half("turn ⌀10", 10.034, 10.049), suits=(0.008, 0.074))
    assert tool_for(bush, workshop, by_mate=False) == "micrometer, read twice"
    assert (
        tool_for(replace(bush, suits=None), workshop, by_mate=False)
        == "micrometer, against a known piece"
    )


def test_the_half_that_is_made_first_is_read_not_tried(workshop: Workshop) -> None:
    # 0.01 wide and read to 0.01: its mate, which is made to it, is not there yet.
    first = replace(half("turn ⌀12", 11.98, 11.99), is_master=True)
    assert tool_for(first, workshop) == "micrometer, as near as it reads"
    assert tool_for(replace(first, is_master=False), workshop) == "micrometer, then its own mate"
    assert tool_for(replace(first, lower=400.0, upper=400.01), workshop) == "a borrowed instrument"


@pytest.mark.parametrize(
    ("is_inside", "read", "tool"),
    [
        (False, 19.2, "micrometer, over two pins"),
        (False, 40.0, "digital caliper, over two pins"),
        (True, 9.2, "digital caliper, between two pins"),
        (True, 400.0, "a borrowed instrument, between two pins"),
    ],
)
def test_a_dovetail_is_read_over_its_pins(
    workshop: Workshop, read: float, tool: str, *, is_inside: bool
) -> None:
    """Common practice, no source: a micrometer goes over pins, a caliper between them."""
    one = replace(half("dovetail", None, None), over=read, pin=3.0, is_inside=is_inside)
    assert tool_for(one, workshop) == tool
    assert ("gib" in if_out(one)) is is_inside
