"""Holes beside dovetails and T-slots: what metal they leave, or that they break in.

Places are plane geometry, worked here; how much metal must stay is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from tests.plugins.shapes.test_findings import BLOCK, part

Compile = Callable[..., Outcome]
WAY = "way: {dovetailed: 12 mm, on: top, inside: true, depth: 4 mm}"
TAIL = "tail: {dovetailed: 12 mm, on: top, depth: 4 mm}"
TEE = "tee: {t_slotted: 6 mm, on: top, depth: 10 mm, head: 12 mm, head_depth: 4 mm}"
ACROSS = TEE.replace("depth: 10", "runs: across, depth: 10")
NAMES = ("wall-too-thin", "features-overlap")
END, THREAD = "drilled: 3 mm, on: left, depth: 5 mm", "tapped: M3, on: left, depth: 5 mm"
FRONT = "drilled: 3 mm, on: front, depth: 5 mm"
PAIR = "off: 2, at: 16 mm from underside, pattern"


def found(compile_text: Compile, cut: str, hole: str) -> list[tuple[str, str]]:
    """The findings about a hole in a block of 40 × 30 × 20 with one cut along it."""
    outcome = compile_text(part(BLOCK, cut, f"hole: {{{hole}}}"))
    assert all(one.help for one in outcome.findings)
    return [(one.code.name, one.message) for one in outcome.findings if one.code.name in NAMES]


@pytest.mark.parametrize(
    ("hole", "front", "up", "code"),
    [
        (END, 26.9, 16, ""),
        (END, 26.0, 16, "wall-too-thin"),
        (END, 24.5, 16, "features-overlap"),
        (END, 3.1, 16, ""),
        (END, 4.0, 16, "wall-too-thin"),
        (END, 15.0, 12, ""),
        (THREAD, 26.4, 16, ""),
        (THREAD, 26.2, 16, "wall-too-thin"),
        ("drilled: 6 mm, on: left, depth: through", 15.0, 14, ""),
        ("tapped: M6, on: left, depth: through", 15.0, 14, "features-overlap"),
    ],
)
def test_a_hole_along_a_dovetail_leaves_metal_beside_it(
    compile_text: Compile, hole: str, front: float, up: float, code: str
) -> None:
    """A slot of 12 that is 4 deep reaches 4 / tan 60° = 2.309 farther at its floor: from 6.691 to
    23.309 of 30, 16 up. A hole of 3 wants half of that beside it; over its thread M3 is 3 mm. A
    plain channel in the floor alone is meant.
    """
    place = f'at: "{front:g} mm from front, {up} mm from underside"'
    assert [one for one, _ in found(compile_text, WAY, f"{hole}, {place}")] == [code][: bool(code)]


@pytest.mark.parametrize(
    ("cut", "hole", "code"),
    [
        (WAY, f'{END}, {PAIR}: "24 mm apart"', ""),
        (WAY, f'{END}, {PAIR}: "20 mm apart"', "wall-too-thin"),
        (WAY, f'{END}, {PAIR}: "18 mm apart"', "features-overlap"),
        (WAY, "drilled: 3 mm, on: top, depth: 10 mm, at: 26 mm from front", "wall-too-thin"),
        (WAY, "drilled: 3 mm, on: top, depth: 3 mm, at: 26 mm from front", ""),
        (WAY, "drilled: 3 mm, on: top, depth: 10 mm, at: 24 mm from front", "features-overlap"),
        (WAY, "drilled: 3 mm, on: top, depth: through, at: middle", ""),
        (WAY, "drilled: 3 mm, on: front, depth: through, at: 13.5 mm from underside",
         "wall-too-thin"),
        (WAY, "drilled: 3 mm, on: front, depth: through, at: 13 mm from underside", ""),
        (WAY, "drilled: 3 mm, on: front, depth: through, at: 14.6 mm from underside",
         "features-overlap"),
        (WAY, "tapped: M3, on: back, depth: 10 mm, at: 17.4 mm from underside", ""),
        (ACROSS, f'{FRONT}, at: "28.5 mm from left, 12 mm from underside"', "wall-too-thin"),
        (ACROSS, f'{FRONT}, at: "29.5 mm from left, 12 mm from underside"', ""),
        (TAIL, "drilled: 3 mm, on: top, depth: 10 mm, at: 19.3 mm from front", "wall-too-thin"),
        (TAIL, "drilled: 3 mm, on: top, depth: 10 mm, at: 18 mm from front", ""),
        (TEE, "drilled: 3 mm, on: top, depth: 12 mm, at: 23 mm from front", "wall-too-thin"),
        (TEE, "drilled: 3 mm, on: top, depth: 4 mm, at: 23 mm from front", ""),
    ],
)  # fmt: skip
def test_holes_in_patterns_and_from_the_face(
    compile_text: Compile, cut: str, hole: str, code: str
) -> None:
    """The slot is 7.732 to each side 3 mm down; the tail 6 at its root, the head of the tee too.

    Its floor is 16 up; what comes in through its flank, as the screws of a gib, is meant.
    """
    assert [one for one, _ in found(compile_text, cut, hole)] == [code][: bool(code)]


def test_it_is_told_how_far_a_thread_breaks_in(compile_text: Compile) -> None:
    """25 to the middle, less 1.5 of M3, less 23.309: 0.19 is left; 24.5 breaks 0.31 in."""
    ((_, thin),) = found(
        compile_text, WAY, f'{THREAD}, at: "25 mm from front, 16 mm from underside"'
    )
    ((_, into),) = found(
        compile_text, WAY, f'{THREAD}, at: "24.5 mm from front, 16 mm from underside"'
    )
    assert "0.19 mm of metal is left between the thread of 'hole' and 'way'" in thin
    assert "the thread of 'hole' breaks 0.31 mm into the side of 'way'" in into


def test_screws_that_a_joint_asks_for_are_found_where_it_is_written(
    host: Host, tmp_path: Path
) -> None:
    """24 apart on 50 comes to 37; M3 reaches to 35.5, and the floor of the way, 19.396 about
    25.966, to 35.664: it breaks 0.16 in. The other, at 13, leaves 1.77, more than half of 3."""
    for file in (Path(__file__).parents[3] / "specs" / "tilt-hammer").glob("*.yaml"):
        text = file.read_text(encoding="utf-8").replace("2 off, 28 mm apart", "2 off, 24 mm apart")
        (tmp_path / file.name).write_text(text, encoding="utf-8")
    outcome = compiled(Job(tmp_path / "tilt-hammer.yaml"), host, Phase.CHECK)
    (finding,) = [one for one in outcome.findings if one.code.name in NAMES]
    assert "'bracket_on_bed' breaks 0.16 mm into the side of 'way' on 'bed'" in finding.message
    assert outcome.design is not None
    assert finding.span == outcome.design.joints["bracket on bed"].at
