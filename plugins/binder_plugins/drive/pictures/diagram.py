"""The train to a diagram: a line for each shaft, its wheels on it, belts and teeth between."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import accumulate

from binder.api import (
    Anchor,
    Block,
    Design,
    Drawing,
    DrawnBox,
    DrawnLabel,
    Joint,
    Line,
    Passed,
    Picture,
    Stroke,
    TrainFact,
    TurningFact,
)

_ROW, _LEFT = 22.0, 38.0
_MARGIN = 3.0
_COLUMN, _WHEEL = 30.0, 5.0
_MOST_COLUMNS = 4
_FACING = ("meshes", "bevels", "worms", "skews", "rubs", "indexes", "orbits")
_LINE, _MOST_LINES = 4.0, 5
_STEPPED = 14.0  # more for a column whose ratios name their steps
_SHARE = 0.32  # of the row, the two radii of a belt's wheels together
_Shapes = list[Line | DrawnBox | DrawnLabel]


def diagram_of(train: TrainFact, design: Design) -> Iterator[Block]:
    """The diagram, where the train has room on the page."""
    if not train.passed or len(train.passed) > _MOST_COLUMNS:
        return
    rows = {name: number for number, name in enumerate(train.order)}
    columns = list(accumulate(map(_column, train.passed), initial=_LEFT))
    width = columns[-1] + 20
    radii = [_radii(one, rows) for one in train.passed]
    top = _MARGIN + max(
        max(driver - _ROW * rows[one.driver], driven - _ROW * rows[one.driven], 3.0)
        for one, (driver, driven) in zip(train.passed, radii, strict=True)
    )
    foot = _MARGIN + max(
        max(driver + _ROW * rows[one.driver], driven + _ROW * rows[one.driven])
        for one, (driver, driven) in zip(train.passed, radii, strict=True)
    )
    shapes: _Shapes = []
    for name, number in rows.items():
        body = design.facts.about(TurningFact, name)
        y = top + _ROW * number
        shapes.append(Line(_LEFT, y, width - 6, y, Stroke.CENTRE))
        title = body.title if body is not None else name
        shapes.append(DrawnLabel(_LEFT - 2, y + 1.2, title[:20], 3.0, Anchor.END))
    for column, passed in enumerate(train.passed):
        x = columns[column] + 14
        levels = (top + _ROW * rows[passed.driver], top + _ROW * rows[passed.driven])
        shapes += _pair(passed, design.joints[passed.joint], x, levels, radii[column])
    high = top + max(foot, _ROW * (len(rows) - 1) + _MARGIN)
    drawing = Drawing(width, high, tuple(shapes))
    names = ", ".join(passed.joint for passed in train.passed)
    yield Picture(drawing, f"diagram of the train: {names}", "The train, from the mover on")


def _column(passed: Passed) -> float:
    return _COLUMN + (_STEPPED if 1 < len(passed.ratios) <= _MOST_LINES else 0.0)


def _radii(passed: Passed, rows: dict[str, int]) -> tuple[float, float]:
    """The wheels as large as their ratio, touching where they face one another."""
    apart = abs(rows[passed.driven] - rows[passed.driver]) * _ROW
    ratio = abs(passed.ratios[0]) or 1.0
    share = 1.0 if passed.kind in _FACING else _SHARE
    driver = share * apart * ratio / (1 + ratio)
    return driver, share * apart - driver


def _pair(
    passed: Passed,
    joint: Joint,
    x: float,
    levels: tuple[float, float],
    radii: tuple[float, float],
) -> _Shapes:
    (y1, y2), (driver, driven) = levels, radii
    shapes = [*_wheel(x, y1, driver), *_wheel(x, y2, driven)]
    if passed.kind not in _FACING:
        down = 1.0 if y2 > y1 else -1.0
        crossed = -1.0 if getattr(joint.entry, "crossed", False) else 1.0
        left, right = x - _WHEEL / 2, x + _WHEEL / 2
        shapes.append(Line(left, y1 + down * driver, left if crossed > 0 else right,
                           y2 - down * driven))  # fmt: skip
        shapes.append(Line(right, y1 + down * driver, right if crossed > 0 else left,
                           y2 - down * driven))  # fmt: skip
    return [*shapes, *_ratios(passed, x + _WHEEL, (y1 + y2) / 2)]


def _ratios(passed: Passed, x: float, middle: float) -> Iterator[DrawnLabel]:
    """The ratio of every step, one under the other; of too many the ends alone."""
    ratios = [abs(one) or 1.0 for one in passed.ratios]
    if len(ratios) == 1:
        words = [_ratio(ratios[0])]
    elif len(ratios) <= _MOST_LINES:
        words = [
            f"step {number}\u00a0\u00a0\u00a0{_ratio(one)}" for number, one in enumerate(ratios, 1)
        ]
    else:
        words = [f"{len(ratios)} steps,", _ratio(min(ratios)), "to", _ratio(max(ratios))]
    top = middle + 1.2 - _LINE * (len(words) - 1) / 2
    for number, one in enumerate(words):
        yield DrawnLabel(x, top + _LINE * number, one, 3.0)


def _wheel(x: float, y: float, radius: float) -> _Shapes:
    radius = max(radius, 1.2)
    return [DrawnBox(x - _WHEEL / 2, y - radius, _WHEEL, 2 * radius, 0.12)]


def _ratio(ratio: float) -> str:
    return f"{ratio:.3g} : 1" if ratio >= 1 else f"1 : {1 / ratio:.3g}"
