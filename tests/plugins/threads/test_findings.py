"""Every finding about threads points at its mark, and a right spec does not get it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
FORK = (
    "  fork:\n    material: brass\n    block: {length: 30 mm, width: 20 mm, height: 12 mm}\n"
    "    features: {%s}\n"
)
ROD = (
    "  rod:\n    material: mild steel\n    stock: round bar\n    turned:\n"
    "      - {name: shank, diameter: 10 mm, length: 20 mm}\n"
    "      - {name: spigot, diameter: %s, length: 15 mm}\n    features: {%s}\n"
)
BOTH = "joints:\n  rod in fork: {threaded: [rod.tip, fork.hole]}\n"


def fork(features: str, more: str = "") -> str:
    """A spec of one block with these features."""
    return HEAD + FORK % features + more


def rod(features: str, spigot: str = "6 mm", more: str = "") -> str:
    """A spec of one stepped rod with these features."""
    return HEAD + ROD % (spigot, features) + more


def joined(tip: str, hole: str, joint: str = BOTH, spigot: str = "6 mm") -> str:
    """A rod that is screwed into a block."""
    return HEAD + ROD % (spigot, f"tip: {tip}") + FORK % f"hole: {hole}" + joint


TURNING = (
    "  cheek: {material: bronze, plate: {length: 30 mm, width: 30 mm, thickness: 10 mm},"
    " features: {bore: {reamed: 10 mm, on: top, depth: through}}}\n"
    "joints:\n  rod in cheek: {runs_in: [rod.shank, cheek.bore]}\n"
)
TIP = "{screwed: M6, on: spigot, length: 12 mm}"

STRUCK = (
    HEAD + "  wheel: {material: mild steel, ratchet: {teeth: 4, outside: 28 mm, depth: 6 mm,"
    " width: 8 mm}, features: {bore: {reamed: 6 mm, depth: through}}}\n"
    "  lever: {material: brass, block: {length: 60 mm, width: 12 mm, height: 9 mm},"
    " features: {cone: {centred: 1 mm, on: front}}}\n"
    "  post: {material: mild steel, block: {length: 40 mm, width: 12 mm, height: 8 mm},"
    " features: {seat: {tapped: M4, on: front, depth: through}}}\n"
    "  pivot: {material: silver steel, turned: [{name: point, taper: 1 mm to 4 mm, length: 2.6 mm},"
    " {name: shank, diameter: 4 mm, length: 15 mm}],"
    " features: {thread: {screwed: M4, on: shank, length: 15 mm}}}\n"
    "bought: {lock_nut: {what: M4 nut}}\n"
    "joints:\n  pivot in post: {threaded: [%s, post.seat]%s}\n"
    "  lever on pivot: {hinged: [pivot.point, lever.cone]}\n"
    "drive:\n  blow: {trips: [wheel, lever], lifts: 4, lift: 6 mm}\n"
)
LOCKED = ", held_by: lock_nut"

KNOB = (
    "  knob: {material: brass, stock: 8 mm round bar, turned: [{name: ball, diameter: 8 mm,"
    " length: 9 mm}], features: {hole: {tapped: M3, on: ball, depth: 5 mm}, %s}}\n"
)

# Each with its mark, and the same spec put right.
CASES = {
    # 8 - 2 x 3 = 2 mm of the end is left, and the thread is 3 mm wide; 8 - 2 x 2 = 4.
    "thread-mouth-rounded-off": (
        HEAD + KNOB % "⟪edge⟫: {rounded: 3 mm, on: ball}",
        HEAD + KNOB % "edge: {rounded: 2 mm, on: ball}",
    ),
    "thread-not-made": (
        fork("hole: {tapped: ⟪M6 x 3⟫, on: top, depth: through}"),
        fork("hole: {tapped: M6 x 0.75, on: top, depth: through}"),
    ),
    "thread-not-said": (
        joined(
            "{screwed: to suit, on: spigot, length: 12 mm}",
            "{tapped: to suit, on: top}",
            ("joints:\n  ⟪rod in fork⟫: {threaded: [rod.tip, fork.hole]}\n"),
        ),
        joined(
            "{screwed: to suit, on: spigot, length: 12 mm}",
            "{tapped: to suit, on: top}",
            ("joints:\n  rod in fork: {threaded: [rod.tip, fork.hole], thread: M6}\n"),
        ),
    ),
    "thread-halves-differ": (
        joined("{screwed: ⟪M6⟫, on: spigot, length: 12 mm}", "{tapped: 0 BA, on: top}"),
        joined(TIP, "{tapped: M6, on: top}"),
    ),
    "thread-engagement-short": (
        joined(
            "{screwed: M6, on: spigot, length: 5 mm}",
            "{tapped: M6, on: top}",
            ("joints:\n  ⟪rod in fork⟫: {threaded: [rod.tip, fork.hole]}\n"),
        ),
        joined("{screwed: M6, on: spigot, length: 9 mm}", "{tapped: M6, on: top}"),
    ),
    # The spigot is 15 mm long and its shank is a shoulder.
    "screw-bottoms": (
        joined("{screwed: ⟪M6⟫, on: spigot, length: 12 mm}", "{tapped: M6, on: top, depth: 7 mm}"),
        joined(TIP, "{tapped: M6, on: top, depth: through}"),
    ),
    "thread-claimed-twice": (
        joined(
            TIP, "{tapped: M6, on: top}", (f"{BOTH}  again: {{threaded: [rod.tip, ⟪fork.hole⟫]}}\n")
        ),
        joined(
            TIP,
            "{tapped: M6, on: top, off: 2}",
            (f"{BOTH}  again: {{threaded: [rod.tip, fork.hole]}}\n"),
        ),
    ),
    "unscrews-in-use": (
        joined(
            TIP,
            "{tapped: M6, on: top}",
            (f"{TURNING}  ⟪rod in fork⟫: {{threaded: [rod.tip, fork.hole]}}\n"),
        ),
        joined(
            TIP,
            "{tapped: M6, on: top}",
            (f"{TURNING}  rod in fork: {{threaded: [rod.tip, fork.hole], fixed: true}}\n"),
        ),
    ),
    # A blow turns a screw that nothing locks: common practice, no source.
    "screw-shakes-loose": (STRUCK % ("⟪pivot.thread⟫", ""), STRUCK % ("pivot.thread", LOCKED)),
    "lookalike-thread": (
        fork("one: {tapped: M3, on: top}, two: {tapped: ⟪5 BA⟫, on: top, at: left}"),
        fork("one: {tapped: M3, on: top}, two: {tapped: M4, on: top, at: left}"),
    ),
    "tap-or-die-not-owned": (
        fork("hole: {tapped: ⟪M3.5⟫, on: top}"),
        fork("hole: {tapped: M3, on: top}"),
    ),
    "tapping-drill-too-small": (
        fork("pilot: {drilled: ⟪2.4 mm⟫, on: top}, hole: {tapped: M3, on: top}"),
        fork("pilot: {drilled: 2.5 mm, on: top}, hole: {tapped: M3, on: top}"),
    ),
    "tapping-drill-too-large": (
        fork("pilot: {drilled: ⟪2.8 mm⟫, on: top}, hole: {tapped: M3, on: top}"),
        fork("way: {drilled: 1 mm, on: top}, hole: {tapped: M3, on: top}"),
    ),
    "blind-hole-too-shallow": (
        fork("hole: {tapped: ⟪M6⟫, on: top, depth: 11 mm}"),
        fork("hole: {tapped: M6, on: top, depth: through}"),
    ),
    "drill-point-breaks-through": (
        fork("hole: {tapped: ⟪M6⟫, on: top, depth: 9 mm}"),
        fork("hole: {tapped: M6, on: top, depth: 8 mm}"),
    ),
    "thread-wall-too-thin": (
        rod("hole: {tapped: ⟪M5⟫, on: spigot, depth: 10 mm}"),
        rod("hole: {tapped: M4, on: spigot, depth: 10 mm}"),
    ),
    "thread-to-shoulder": (
        rod("tip: {screwed: ⟪M6⟫, on: spigot, length: 15 mm}"),
        rod(
            "tip: {screwed: M6, on: spigot, length: 15 mm},"
            " run_out: {undercut: 2 mm, on: spigot, depth: 0.8 mm}"
        ),
    ),
    "thread-off-size": (
        rod("tip: {screwed: ⟪M5⟫, on: spigot, length: 10 mm}"),
        rod("tip: {screwed: M5, on: spigot, length: 10 mm}", "4.95 mm"),
    ),
    "slit-before-thread": (
        rod("⟪slit⟫: {slotted: 1 mm, on: spigot, depth: 2 mm}, tip: " + TIP),
        rod("tip: " + TIP + ", slit: {slotted: 1 mm, on: spigot, depth: 2 mm}"),
    ),
    "cross-hole-meets-thread": (
        rod(
            "⟪oil⟫: {drilled: 1 mm, across: spigot}, tip: {screwed: M6, on: spigot, length: 15 mm}"
        ),
        rod("tip: {screwed: M6, on: spigot, length: 15 mm}, oil: {drilled: 1 mm, across: spigot}"),
    ),
}


def _marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    plain = plain.replace("⟫", "")
    return plain, (*_place(plain, start), *_place(plain, end))


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


def names(outcome: Outcome) -> list[str]:
    return [one.code.name for one in outcome.findings]


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Compile) -> None:
    text, place = _marked(CASES[code][0])
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place
    assert found[0].help


@pytest.mark.parametrize("code", sorted(CASES))
def test_what_was_put_right_is_not_remarked(code: str, compile_text: Compile) -> None:
    assert code not in names(compile_text(CASES[code][1]))


def test_a_drill_is_missing_where_none_suits_a_tap_that_is_owned(
    compile_text: Compile, shop: Callable[[str], Compile]
) -> None:
    text, place = _marked(fork("hole: {tapped: ⟪M3⟫, on: top}"))
    outcome = shop("drills: {odd: [2 mm, 3 mm]}\ntaps: {sets: [M3]}\ndies: [M3]\n")(text)
    (found,) = [one for one in outcome.findings if one.code.name == "drill-for-thread-not-owned"]
    assert (found.span.line, found.span.column) == place[:2]
    assert "2.46 to 2.68 mm" in found.help
    assert "drill-for-thread-not-owned" not in names(compile_text(text))


def test_a_taper_tap_alone_bottoms_in_a_blind_hole(
    compile_text: Compile, shop: Callable[[str], Compile]
) -> None:
    # Full thread 6 mm, taper lead 8 × 0.5 = 4 mm, point 0.75: more than 10 mm of metal.
    text = fork("hole: {tapped: M3, on: top, depth: 8 mm}")
    outcome = shop("drills: {tenths: 1 mm to 9 mm by 0.1 mm}\ntaps: {taper: [M3]}\ndies: [M3]\n")(
        text
    )
    assert "tap-bottoms" in names(outcome)
    assert "tap-bottoms" not in names(compile_text(text))


def test_a_thread_that_suits_nothing_is_told(compile_text: Compile) -> None:
    text, place = _marked(fork("hole: {tapped: ⟪to suit⟫, on: top}"))
    (found,) = [one for one in compile_text(text).findings if one.code.name == "thread-not-said"]
    assert (found.span.line, found.span.column) == place[:2]


@pytest.mark.parametrize("ends", ["rod.tip, fork", "rod.spigot, fork.top", "rod, fork.hole"])
def test_an_end_may_mean_the_one_thread_that_is_there(ends: str, compile_text: Compile) -> None:
    joint = f"joints:\n  rod in fork: {{threaded: [{ends}]}}\n"
    outcome = compile_text(joined(TIP, "{tapped: 0 BA, on: top}", joint))
    assert "thread-halves-differ" in names(outcome)
    assert "thread-not-said" not in names(outcome)


def test_one_thread_is_told_once_with_all_its_places(compile_text: Compile) -> None:
    text = fork("one: {tapped: M3.5, on: top}, two: {tapped: M3.5, on: top, at: left, off: 3}")
    found = [one for one in compile_text(text).findings if one.code.name == "tap-or-die-not-owned"]
    assert len(found) == 1
    assert len(found[0].related) == 1
    assert "4 places" in found[0].label


def test_substitutes_are_worked_through(compile_text: Compile) -> None:
    outcome = compile_text(fork("hole: {tapped: 5-40 UNC, on: top}"))
    (found,) = [one for one in outcome.findings if one.code.name == "tap-or-die-not-owned"]
    assert found.help.startswith("M3 serves: drill 2.5 mm, 77 % of thread; −4 % strength")
    assert any("weaker" in note for note in found.notes)


def test_one_thread_under_two_names_is_owned(
    compile_text: Compile, shop: Callable[[str], Compile]
) -> None:
    # 1/4 BSF has 26 to the inch on the Whitworth form, as the brass thread has.
    owned = shop("drills: {all: 1 mm to 9 mm by 0.1 mm}\ntaps: {sets: [1/4 BSF]}\n")
    text = fork("hole: {tapped: 1/4 x 26 brass, on: top, depth: through}")
    assert "tap-or-die-not-owned" not in names(owned(text))
    assert "tap-or-die-not-owned" not in names(
        compile_text(fork("hole: {tapped: M3 x 0.5, on: top}"))
    )


def test_a_dummy_thread_is_left_alone(compile_text: Compile) -> None:
    text = fork("hole: {tapped: M3.5, on: top, dummy: true}")
    assert "tap-or-die-not-owned" not in names(compile_text(text))


@pytest.mark.parametrize("depth", ["0.001 mm", "9999 mm", "11.999 mm"])
def test_odd_depths_are_findings_and_never_a_broken_plugin(
    depth: str, compile_text: Compile
) -> None:
    outcome = compile_text(fork(f"hole: {{tapped: M6, on: top, depth: {depth}}}"))
    assert "plugin-broken" not in names(outcome)
    assert not any("Error" in one.message for one in outcome.findings)


CROSSED = "nut: {tapped: ⟪M4⟫, on: left, depth: %s}, %s"
# In a block 30 x 20 x 12 with the thread along its middle from the left.
CUTS = (
    "way: {drilled: 3 mm, on: top, at: 8 mm from left, depth: through}",
    "way: {drilled: 3 mm, on: top, off: 2, pattern: 14 mm apart, depth: through}",
    "way: {tapped: M3, on: front, at: 8 mm from left, depth: through}",
)
MEETS_ON_PURPOSE = (
    "oil: {drilled: 1.5 mm, on: top, at: 8 mm from left, depth: 6 mm}",  # ends on the axis
    "bore: {reamed: 8 mm, on: top, at: 10 mm from left, depth: through}",  # tapped into a bore
    "way: {drilled: 3 mm, on: top, at: 18 mm from left, depth: through}",  # beyond the thread
    'way: {drilled: 3 mm, on: top, at: "8 mm from left, 4 mm from front", depth: through}',
)


@pytest.mark.parametrize("other", CUTS)
def test_a_hole_that_cuts_through_a_tapped_one_is_told(other: str, compile_text: Compile) -> None:
    """Middle at 8, radius 1.5: 6.5 of thread stand before it. Wanted apart: 2 + 1.5 + 1 = 4.5."""
    text, at = _marked(fork(CROSSED % ("12 mm", other)))
    (one,) = [
        one for one in compile_text(text).findings if one.code.name == "cross-hole-meets-thread"
    ]
    assert (one.span.line, one.span.column, one.span.end_line, one.span.end_column) == at
    assert "8 mm down" in one.message
    assert (
        one.help
        == ("end the thread 6.5 mm deep, before the hole; or move one of the two by 4.5 mm")
        or "tapped" in other
    )


@pytest.mark.parametrize("other", MEETS_ON_PURPOSE)
def test_a_hole_that_may_meet_a_thread_is_let_pass(other: str, compile_text: Compile) -> None:
    text, _ = _marked(fork(CROSSED % ("12 mm", other)))
    assert "cross-hole-meets-thread" not in names(compile_text(text))


def test_a_thread_that_ends_before_the_hole_is_let_pass(compile_text: Compile) -> None:
    text, _ = _marked(fork(CROSSED % ("6 mm", CUTS[0])))
    assert "cross-hole-meets-thread" not in names(compile_text(text))


def test_a_pin_through_a_screw_is_let_pass(compile_text: Compile) -> None:
    joint = "  pin: {pinned: [fork.way, rod.tip], fastener: 1.5 mm dowel pin}\n"
    hole = "{tapped: M6, on: left, depth: 14 mm}"
    way = "way: {drilled: to suit, on: front, at: 6 mm from left, depth: through}"
    text = joined("{screwed: M6, on: spigot, length: 12 mm}", f"{hole}, {way}", BOTH + joint)
    assert "cross-hole-meets-thread" not in names(compile_text(text))


@pytest.mark.parametrize(
    ("high", "shank", "bottoms"),
    [
        ("40 mm", "10 mm", False),  # 15 mm into 15 mm: the shoulder comes down with the end
        ("40 mm", "6 mm", False),  # no shoulder: it stops where it is wanted
        ("12 mm", "10 mm", True),
    ],
)
def test_a_spigot_seats_only_in_a_hole_as_deep(
    compile_text: Compile, high: str, shank: str, *, bottoms: bool
) -> None:
    deep = "15 mm" if high == "40 mm" and shank == "10 mm" else "7 mm"
    text = joined(TIP, f"{{tapped: M6, on: top, depth: {deep}}}")
    text = text.replace("height: 12 mm", f"height: {high}")
    text = text.replace("{name: shank, diameter: 10 mm", f"{{name: shank, diameter: {shank}")
    assert ("screw-bottoms" in {one.code.name for one in compile_text(text).findings}) is bottoms
