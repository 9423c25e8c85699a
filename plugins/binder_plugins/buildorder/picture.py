"""A build sequence to a picture in layers: boxes in columns, arrows to what comes after."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import (
    Anchor,
    BuildSequence,
    Design,
    Drawing,
    DrawnBox,
    DrawnLabel,
    Polyline,
    Stroke,
    TaskKind,
    text_width,
)
from binder_plugins.buildorder.columns import Columns, arranged

WIDTH = 176.0
HEIGHT = 205.0
MOST_COLUMNS = 12
_LETTER = 2.5
_LINE = 3.4
_ROOMY = 13.0
_TIGHT = 6.0
_SHARE = 0.78
_TAIL = (TaskKind.STRIP, TaskKind.FINISH)
_TINTS = {
    "measure": 0.0,
    "make": 0.06,
    "join": 0.12,
    "assemble": 0.2,
    "test": 0.0,
    "strip": 0.0,
    "finish": 0.12,
}


@dataclass(frozen=True, slots=True)
class Grid:
    """Where columns and rows lie on the paper, in mm."""

    columns: Columns
    pitch: float
    row: float

    @property
    def box_width(self) -> float:
        """The width of a box; the rest of the column is for arrows."""
        return self.pitch * _SHARE

    @property
    def box_height(self) -> float:
        """The height of a box."""
        return self.row - 2.2

    def place(self, name: str) -> tuple[float, float]:
        """The left end and the middle of a box or way point."""
        column, row = self.columns.places[name]
        return column * self.pitch + 0.5, (row + 0.5) * self.row + 1


def picture(sequence: BuildSequence, design: Design) -> Drawing | None:
    """The drawing; None where it would not fit a page at a readable size."""
    steps, edges = drawn(sequence, design)
    columns = arranged(layers(steps, edges), needed_edges(edges))
    row = min(_ROOMY, HEIGHT / max(columns.height, 1))
    if columns.width > MOST_COLUMNS or row < _TIGHT:
        return None
    grid = Grid(columns, WIDTH / max(columns.width, 3), row)
    shapes = [
        *(_arrow(path, grid) for path in columns.paths),
        *(shape for task in steps for shape in _box(task, grid, design)),
    ]
    return Drawing(WIDTH, columns.height * row + 2, tuple(shapes))


def is_after_trial(task: str, design: Design) -> bool:
    """Whether it is of the tail, one after the other, when all has gone together once."""
    return design.tasks[task].kind in _TAIL or task.startswith("close ")


def drawn(sequence: BuildSequence, design: Design) -> tuple[list[str], list[tuple[str, str]]]:
    """The tasks that get a box, and what waits for what: a test shares that of its assembly."""
    tasks = [step.task for step in sequence.steps if not is_after_trial(step.task, design)]
    assembled = {
        design.tasks[one].item: one for one in tasks if design.tasks[one].kind is TaskKind.ASSEMBLE
    }
    box = {
        one: assembled.get(design.tasks[one].item, one)
        if design.tasks[one].kind is TaskKind.TEST
        else one
        for one in tasks
    }
    edges = [
        (box[earlier], box[step.task])
        for step in sequence.steps
        if step.task in box
        for earlier, _ in step.after
        if earlier in box and box[earlier] != box[step.task]
    ]
    return [one for one in tasks if box[one] == one], edges


def layers(tasks: list[str], edges: list[tuple[str, str]]) -> dict[str, int]:
    """How many boxes stand before each on the longest way; the tasks are in their order."""
    found: dict[str, int] = {}
    for task in tasks:
        before = [found[earlier] for earlier, later in edges if later == task]
        found[task] = 1 + max(before) if before else 0
    return found


def needed_edges(edges: list[tuple[str, str]]) -> list[tuple[str, str]]:
    """The edges without those that a longer way says already."""
    after: dict[str, set[str]] = {}
    for earlier, later in edges:
        after.setdefault(earlier, set()).add(later)
    reach: dict[str, set[str]] = {}

    def reached(task: str) -> set[str]:
        if task not in reach:
            reach[task] = set().union(*({one} | reached(one) for one in after.get(task, ())))
        return reach[task]

    unique = list(dict.fromkeys(edges))
    return [
        (earlier, later)
        for earlier, later in unique
        if not any(later in reached(one) for one in after[earlier] if one != later)
    ]


def _arrow(path: tuple[str, ...], grid: Grid) -> Polyline:
    """From the right side of the first box to the left side of the last, by way points."""
    points: list[tuple[float, float]] = []
    for number, name in enumerate(path):
        x, y = grid.place(name)
        points += [(x, y)] if number > 0 else []
        points += [(x + grid.box_width, y)] if number < len(path) - 1 else []
    return Polyline(tuple(points), Stroke.ARROW)


def _box(task: str, grid: Grid, design: Design) -> list[DrawnBox | DrawnLabel]:
    """The box with what is done in it; a box without a verb is a part to make."""
    x, y = grid.place(task)
    tint = _TINTS[design.tasks[task].kind]
    left, top = x, y - grid.box_height / 2
    box = DrawnBox(left, top, grid.box_width, grid.box_height, tint, Stroke.THIN)
    lines = _lines(task, design, grid)
    middle = x + grid.box_width / 2
    line = min(_LINE, (grid.box_height - 0.6) / len(lines))
    first = y + _LETTER / 2 - line * (len(lines) - 1) / 2
    return [
        box,
        *(
            DrawnLabel(middle, first + line * n, words, _LETTER, Anchor.MIDDLE)
            for n, words in enumerate(lines)
        ),
    ]


def _lines(task: str, design: Design, grid: Grid) -> list[str]:
    """The verb, unless it is `make`, and the name; the name alone where the rows are low."""
    width = grid.box_width - 1.0
    kind = design.tasks[task].kind
    name = _short_title(task, design)
    if grid.row < _ROOMY - 4:
        return [_fitting(name, width)]
    if kind is not TaskKind.MAKE:
        return [_verb(kind, width), *_wrapped(name, width)]
    return _wrapped(name, width)


def _verb(kind: TaskKind, width: float) -> str:
    """The verb, or a shorter word for it where a narrow box has no room."""
    verb = "build" if kind is TaskKind.ASSEMBLE else str(kind)
    return str(kind) if text_width(str(kind), _LETTER) <= width else _fitting(verb, width)


def _wrapped(words: str, width: float) -> list[str]:
    """The words in two lines where one is too short."""
    pieces = words.split()
    for count in range(len(pieces), 0, -1):
        first = " ".join(pieces[:count])
        if text_width(first, _LETTER) <= width or count == 1:
            rest = " ".join(pieces[count:])
            return [_fitting(first, width), *([_fitting(rest, width)] if rest else [])]
    return [words]


def _short_title(task: str, design: Design) -> str:
    item = design.item(design.tasks[task].item)
    name = design.tasks[task].item.replace("_", " ").replace("-", " ")
    return item.title if item is not None and len(item.title) <= len(name) + 4 else name


def _fitting(words: str, width: float) -> str:
    """The words, cut with a point-point-point where they are wider than the box."""
    if text_width(words, _LETTER) <= width:
        return words
    while words and text_width(words + "…", _LETTER) > width:
        words = words[:-1]
    return words.rstrip() + "…"
