"""The sheets of fits."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import combinations

import pytest

from binder.compiler import Outcome, Phase
from binder.pages import (
    Anchor,
    Beside,
    Binder,
    Box,
    Facts,
    Follows,
    Label,
    Line,
    Section,
    text_of,
)
from binder.pages.font_metrics import text_width
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.zones import zones

Compile = Callable[..., Outcome]
TEXT = (
    "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
    "  axle: {material: silver steel, stock: round bar, turned:"
    " [{name: journal, diameter: 6 mm, length: 40 mm}]}\n"
    "  arm: {material: brass, block: {length: 40 mm, width: 30 mm, height: 8 mm},"
    " features: {bore: {reamed: 6 mm, on: top, depth: through}}}\n"
)
JOINT = "joints:\n  axle in arm: {runs_in: [axle.journal, arm.bore]}\n"


def sheets(outcome: Outcome) -> list[Section]:
    assert isinstance(outcome.binder, Binder)
    found = [one for one in outcome.binder.sections if one.id == "fits"]
    return [sheet for section in found for sheet in section.sections]


def head(sheet: Section) -> Beside:
    """The facts of the fit with its zones beside them."""
    (found,) = [block for block in sheet.blocks if isinstance(block, Beside)]
    return found


def pairs(sheet: Section) -> Iterator[tuple[str, str]]:
    facts = head(sheet).block
    assert isinstance(facts, Facts)
    for name, text in facts.pairs:
        yield name, text_of(text)


def test_the_sum_for_the_other_half_is_printed(compile_text: Compile) -> None:
    (sheet,) = sheets(compile_text(TEXT + JOINT, Phase.COMPOSE))
    facts = dict(pairs(sheet))
    assert facts["Made to suit"] == "bore measured ____ mm − 0.022 = turn to ____ mm"
    assert facts["Clearance"] == "0.010 to 0.034 mm clear"
    assert facts["Fit"] == "H7/f7, runs"  # the reamer that is owned gives H7


def test_the_tablet_moves_the_mate(compile_text: Compile) -> None:
    (sheet,) = sheets(compile_text(TEXT + JOINT, Phase.COMPOSE))
    facts = head(sheet).block
    assert isinstance(facts, Facts)
    follows = [run for _, text in facts.pairs for run in text if isinstance(run, Follows)]
    assert [(one.key, round(one.add, 6)) for one in follows] == [("joint axle in arm bore", -0.022)]


def test_the_zones_are_to_scale(compile_text: Compile) -> None:
    # ISO 286-2 at 6 mm: H7 0 to +12, f7 −22 to −10: both 12 high, 10 apart.
    (sheet,) = sheets(compile_text(TEXT + JOINT, Phase.COMPOSE))
    hole, shaft = [shape for shape in head(sheet).picture.drawing.shapes if isinstance(shape, Box)]
    assert abs(hole.height - shaft.height) < 1e-9
    gap = shaft.y - (hole.y + hole.height)
    assert abs(gap / hole.height - 10 / 12) < 1e-9


def test_no_fit_no_page(compile_text: Compile) -> None:
    apart = TEXT.replace("diameter: 6 mm", "diameter: 5 mm")
    assert sheets(compile_text(apart, Phase.COMPOSE)) == []


@pytest.mark.parametrize("upper", [-14, -3, -1, 0, 1, 3, 14])
@pytest.mark.parametrize("lower", [-30, -14, -1, 0, 1])
def test_no_figure_of_the_zones_is_struck_by_the_zero_line(
    compile_text: Compile, upper: float, lower: float
) -> None:
    design = compile_text(TEXT + JOINT, Phase.CHECK).design
    assert design is not None
    (fit,) = design.facts.all(MadeFit)
    low = min(lower, upper)
    made = replace(
        fit,
        hole=replace(fit.hole, lower_um=low, upper_um=upper),
        shaft=replace(fit.shaft, lower_um=low, upper_um=upper),
    )
    shapes = zones(made, "mm").shapes
    (zero,) = [shape for shape in shapes if isinstance(shape, Line)]
    figures = [
        shape
        for shape in shapes
        if isinstance(shape, Label) and shape.anchor is not Anchor.MIDDLE and shape.x > zero.x1
    ]
    assert len(figures) == 4
    for one in figures:
        # A label's height is that of its capitals, and figures are as high (ISO 3098-1); a
        # round one swells over both ends of it.
        swell = 0.03 * one.height
        assert not one.y - one.height - swell < zero.y1 < one.y + swell, one.text
    for over, under in zip(figures[::2], figures[1::2], strict=True):
        assert over.y <= under.y - under.height, over.text


@pytest.mark.parametrize("nominal", [0.8, 6.0, 10.0, 38.0, 125.0])
@pytest.mark.parametrize("units", ["mm", "inch"])
def test_no_word_of_the_zones_is_cut_off_or_covers_another(
    compile_text: Compile, nominal: float, units: str
) -> None:
    design = compile_text(TEXT + JOINT, Phase.CHECK).design
    assert design is not None
    (fit,) = design.facts.all(MadeFit)
    drawing = zones(replace(fit, nominal=Fraction(str(nominal))), units)
    spans = []
    for shape in drawing.shapes:
        if isinstance(shape, Label):
            wide = text_width(shape.text, shape.height)
            left = shape.x - wide * {"start": 0.0, "middle": 0.5, "end": 1.0}[shape.anchor.value]
            assert left >= 0.0, shape.text
            assert left + wide <= drawing.width, shape.text
            spans.append((left, left + wide, shape.y - shape.height, shape.y))
    for one, two in combinations(spans, 2):
        is_apart = one[1] <= two[0] or two[1] <= one[0] or one[3] <= two[2] or two[3] <= one[2]
        assert is_apart, (one, two)
