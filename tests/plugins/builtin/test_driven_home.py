"""Screws driven while their heads are reached; where what stands is reckoned by hand.

A blade needs 3 mm round its axis and a handle 14 mm: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome
from binder_plugins.buildorder.closing import joints_closed_in
from binder_plugins.buildorder.driven_home import past
from binder_solid.driver_way import beside_heads

Compile = Callable[..., Outcome]

# The heads lie 6 mm in from the corners of 50 mm x 40 mm: 19 mm and 14 mm from the post's axis,
# and the deck begins 20 mm over them.
MAST = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base: {material: oak, board: {length: 90 mm, width: 60 mm, thickness: 20 mm}}
  foot: {material: brass, plate: {length: 50 mm, width: 40 mm, thickness: 3 mm}, features: {seat: {bored: 8 mm, on: top, depth: through}}}
  post: {material: brass, turned: [{name: spigot, diameter: 8 mm, length: 3 mm}, {name: mast, diameter: 12 mm, length: HIGH}, {name: deck, diameter: WIDE, length: 3 mm}]}
joints:
  post on foot: {pressed: [post.spigot, foot.seat]}
  foot on base: {screwed: [foot.underside, base.top], pattern: "4 off at the corners, 6 mm in", fastener: no. 4 x 1/2 in brass wood screw}
stands: base
positions: {foot: {at: middle of base}}
assemblies:
"""  # noqa: E501
BUILT_FIRST = "  mast: {of: [post, foot]}\n  all: {of: [mast, base]}\n"
AT_ONCE = "  all: {of: [post, foot, base]}\n"


def _design(outcome: Outcome) -> Design:
    assert outcome.design is not None
    return outcome.design


def _mast(compile_text: Compile, wide: str, high: str, assemblies: str) -> Outcome:
    return compile_text(MAST.replace("WIDE", wide).replace("HIGH", high) + assemblies)


@pytest.mark.parametrize(
    ("wide", "assemblies", "found"),
    [
        ("46 mm", BUILT_FIRST, True),  # 23 mm out: over heads 19 mm and 14 mm out
        ("20 mm", BUILT_FIRST, False),  # 10 mm out: 4 mm short of every head
        ("46 mm", AT_ONCE, False),
    ],
)
def test_a_deck_over_the_heads_is_found(
    compile_text: Compile, wide: str, assemblies: str, found: bool
) -> None:
    outcome = _mast(compile_text, wide, "20 mm", assemblies)
    assert ("head-out-of-reach" in [one.code.name for one in outcome.findings]) is found


def test_what_stands_over_the_heads_goes_on_after_them(compile_text: Compile) -> None:
    text = MAST.replace("pressed: [post.spigot", "slides: [post.spigot")
    text = text.replace("WIDE", "46 mm").replace("HIGH", "20 mm") + AT_ONCE
    design = _design(compile_text(text))
    order = [one.name for one in joints_closed_in(design.assemblies["all"], design)]
    assert order == ["foot on base", "post on foot"]


def test_a_blade_is_as_long_as_what_stands_beside_it(compile_text: Compile) -> None:
    """80 mm of mast and 3 mm of deck, 4 mm from the axis: 83 mm, told as 90 mm."""
    design = _design(_mast(compile_text, "20 mm", "80 mm", BUILT_FIRST))
    words = past(design.joints["foot on base"], design.assemblies["all"], design)
    assert words == "; a driver with a blade of 90 mm or more, past the post"


def test_how_far_off_and_how_high_is_reckoned_from_the_axis(compile_text: Compile) -> None:
    """The deck's box is 10 mm out to either side, the heads 19 mm and 14 mm: 9.85 mm apart."""
    design = _design(_mast(compile_text, "20 mm", "80 mm", BUILT_FIRST))
    found = list(beside_heads(design.joints["foot on base"], design))
    assert len(found) == 4
    for one in found:
        assert one.item == "post"
        assert one.gap == pytest.approx((9**2 + 4**2) ** 0.5, abs=1e-3)
        assert one.top == pytest.approx(83.0, abs=1.0)


# A no. 6 head is 0.262 to 0.279 in across (ASME B18.6.1): more than 3 mm and less than 4 mm to
# either side of the axis. The heads are 19 mm and 14 mm out, so a deck over 14 mm out bars its
# 19 mm less its own half.
BUTTONED = (
    MAST.replace("screwed: [foot", "buttoned: [foot")
    .replace("no. 4 x 1/2 in brass wood screw", '"no. 6 x 1/2 in brass wood screw, round head"')
    .replace("4 off at the corners, 6 mm in", "2 by 2 grid at 38 mm x 28 mm")
)


@pytest.mark.parametrize(
    ("wide", "found"),
    [
        ("46 mm", True),  # over the heads
        ("31.6 mm", True),  # 3.2 mm beside their axes: the blade goes by, the head does not
        ("29 mm", False),  # 4.5 mm
    ],
)
def test_heads_over_slots_are_driven_home_too(
    compile_text: Compile, wide: str, found: bool
) -> None:
    spec = BUTTONED.replace("WIDE", wide).replace("HIGH", "20 mm") + BUILT_FIRST
    assert ("head-out-of-reach" in [one.code.name for one in compile_text(spec).findings]) is found


def test_where_two_bar_one_another_both_ways_out_are_told(compile_text: Compile) -> None:
    """The post is screwed to the foot from beneath, where the base comes; its deck stands over the
    heads that hold the foot: neither can be driven first."""
    spec = BUTTONED.replace(
        "pressed: [post.spigot, foot.seat]",
        "screwed: [foot.top, post.left], fastener: M3 socket cap screw, pattern: 2 off 7 mm apart",
    ).replace("{name: spigot, diameter: 8 mm, length: 3 mm}, ", "")
    spec = spec.replace(", features: {seat: {bored: 8 mm, on: top, depth: through}}", "")
    outcome = compile_text(spec.replace("WIDE", "46 mm").replace("HIGH", "20 mm") + AT_ONCE)
    (found,) = [one for one in outcome.findings if one.code.name == "head-out-of-reach"]
    assert "bring the heads of " in (found.help or "")


# A full M3 nut is 2.4 mm high and 6.0 mm over corners (ISO 4032, from memory); its thread end,
# a spanner and a finger need about as much again: common practice, no source.
BOLTED = (
    MAST.replace("oak, board:", "brass, plate:")
    .replace(
        "foot on base: {screwed: [foot.underside, base.top]",
        "foot on base: {bolted: [foot.underside, base.top]",
    )
    .replace("no. 4 x 1/2 in brass wood screw", "M3 hexagon bolt")
)
# The post stands under the base, where the other ends of the bolts are.
UNDER = BOLTED.replace(
    "thickness: 20 mm}",
    "thickness: 20 mm}, features: {hub: {bored: 8 mm, on: underside, depth: 3 mm}}",
).replace(
    "post on foot: {pressed: [post.spigot, foot.seat]}",
    "post under base: {pressed: [post.spigot, base.hub]}",
)
POST_FIRST = "  mast: {of: [post, base]}\n  all: {of: [mast, foot]}\n"


def _bolted(
    compile_text: Compile, wide: str, high: str, assemblies: str, spec: str = BOLTED
) -> Outcome:
    return compile_text(spec.replace("WIDE", wide).replace("HIGH", high) + assemblies)


@pytest.mark.parametrize(("spec", "first"), [(BOLTED, BUILT_FIRST), (UNDER, POST_FIRST)])
@pytest.mark.parametrize(
    ("wide", "high", "is_late", "found"),
    [
        ("46 mm", "5 mm", True, True),  # 23 mm out, 5 mm over the nuts
        ("46 mm", "30 mm", True, False),  # a spanner goes in under it
        ("20 mm", "5 mm", True, False),  # 6 mm clear of every axis
        ("46 mm", "5 mm", False, False),
    ],
)
def test_a_deck_low_over_a_nut_or_head_is_found(
    compile_text: Compile, spec: str, first: str, wide: str, high: str, is_late: bool, found: bool
) -> None:
    outcome = _bolted(compile_text, wide, high, first if is_late else AT_ONCE, spec)
    names = [one.code.name for one in outcome.findings]
    assert ("head-out-of-reach" in names) is found, names
    told = [one for one in outcome.findings if one.code.name == "head-out-of-reach"]
    assert all("bolted" in one.message and "spanner" in (one.help or "") for one in told)


def test_no_blade_is_told_for_a_nut(compile_text: Compile) -> None:
    """A spanner comes from the side: how high the post is does not matter."""
    design = _design(_bolted(compile_text, "20 mm", "80 mm", BUILT_FIRST))
    assert past(design.joints["foot on base"], design.assemblies["all"], design) == ""


def test_what_shuts_a_nut_in_goes_on_after_it(compile_text: Compile) -> None:
    text = BOLTED.replace("pressed: [post.spigot", "slides: [post.spigot")
    text = text.replace("WIDE", "46 mm").replace("HIGH", "5 mm") + AT_ONCE
    design = _design(compile_text(text))
    order = [one.name for one in joints_closed_in(design.assemblies["all"], design)]
    assert order == ["foot on base", "post on foot"]
