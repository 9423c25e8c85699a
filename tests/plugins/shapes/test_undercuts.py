"""Holes beside dovetails and T-slots: what metal they leave, or that they break in.

Places are plane geometry, worked here; how much metal must stay is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from tests.plugins.shapes.test_findings import BLOCK, part

Compile = Callable[..., Outcome]
WAY = "way: {dovetailed: 12 mm, on: top, inside: true, depth: 4 mm}"
TAIL = "tail: {dovetailed: 12 mm, on: top, depth: 4 mm}"
TEE = "tee: {t_slotted: 6 mm, on: top, depth: 10 mm, head: 12 mm, head_depth: 4 mm}"
NAMES = ("wall-too-thin", "features-overlap")
END, THREAD = "drilled: 3 mm, on: left, depth: 5 mm", "tapped: M3, on: left, depth: 5 mm"
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
        (TAIL, "drilled: 3 mm, on: top, depth: 10 mm, at: 19.3 mm from front", "wall-too-thin"),
        (TAIL, "drilled: 3 mm, on: top, depth: 10 mm, at: 18 mm from front", ""),
        (TEE, "drilled: 3 mm, on: top, depth: 12 mm, at: 23 mm from front", "wall-too-thin"),
        (TEE, "drilled: 3 mm, on: top, depth: 4 mm, at: 23 mm from front", ""),
    ],
)
def test_holes_in_patterns_and_from_the_face(
    compile_text: Compile, cut: str, hole: str, code: str
) -> None:
    """The slot is 7.732 to each side 3 mm down; the tail 6 at its root, the head of the tee too."""
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
