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
_LEAST_LETTER = 2.0
_LINE = 3.4
_MOST_LINES = 3
_ROOMY = 13.0
_TIGHT = 6.0
_SHARE = 0.82
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
    number = {step.task: n for n, step in enumerate(sequence.steps, 1)}
    shapes = [
        *(_arrow(path, grid) for path in columns.paths),
        *(shape for task in steps for shape in _box(task, number[task], grid, design)),
    ]
    return Drawing(WIDTH, columns.height * row + 2, tuple(shapes))


def is_after_trial(task: str, design: Design) -> bool:
    """Whether it is of the tail, one after the other, when all has gone together once."""
    return design.tasks[task].kind in _TAIL or task.startswith(("close ", "lock "))


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


def _box(task: str, number: int, grid: Grid, design: Design) -> list[DrawnBox | DrawnLabel]:
    """The box with its number in the list and what is done in it."""
    x, y = grid.place(task)
    tint = _TINTS[design.tasks[task].kind]
    left, top = x, y - grid.box_height / 2
    box = DrawnBox(left, top, grid.box_width, grid.box_height, tint, Stroke.THIN)
    lines, letter = _lines(task, number, design, grid)
    middle = x + grid.box_width / 2
    line = min(_LINE, (grid.box_height - 0.6) / len(lines))
    first = y + letter / 2 - line * (len(lines) - 1) / 2
    return [
        box,
        *(
            DrawnLabel(middle, first + line * n, words, letter, Anchor.MIDDLE)
            for n, words in enumerate(lines)
        ),
    ]


def _lines(task: str, number: int, design: Design, grid: Grid) -> tuple[list[str], float]:
    """The number with the verb, unless it is `make`, and the name; and the size of the letters.

    Where the rows are low all stands in one line. The letters are as small as the longest word
    asks for; only a word that has no room then is cut.
    """
    width = grid.box_width - 0.8
    kind = design.tasks[task].kind
    name = _short_title(task, design)
    if grid.row < _ROOMY - 4:
        return [_fitting(f"{number} {name}", width, _LETTER)], _LETTER
    head = [str(number)] if kind is TaskKind.MAKE else [str(number), _verb(task, design)]
    for letter in (_LETTER, (_LETTER + _LEAST_LETTER) / 2, _LEAST_LETTER):
        lines = _wrapped([*head, *name.split()], width, letter)
        if len(lines) <= _MOST_LINES and all(text_width(one, letter) <= width for one in lines):
            break
    kept = [*lines[: _MOST_LINES - 1], " ".join(lines[_MOST_LINES - 1 :])]
    return [_fitting(one, width, letter) for one in kept if one], letter


def _verb(task: str, design: Design) -> str:
    """The first word of its title; a shorter one for `assemble`."""
    word = design.tasks[task].title.split()[0]
    return "build" if word == "assemble" else word


def _wrapped(pieces: list[str], width: float, letter: float) -> list[str]:
    """The pieces, none of them torn, in as few lines as hold them."""
    lines = [pieces[0]]
    for piece in pieces[1:]:
        longer = f"{lines[-1]} {piece}"
        if text_width(longer, letter) <= width:
            lines[-1] = longer
        else:
            lines.append(piece)
    return lines


def _short_title(task: str, design: Design) -> str:
    item = design.item(design.tasks[task].item)
    name = design.tasks[task].item.replace("_", " ").replace("-", " ")
    return item.title if item is not None and len(item.title) <= len(name) + 4 else name


def _fitting(words: str, width: float, letter: float) -> str:
    """The words, cut with a point-point-point where they are wider than the box."""
    if text_width(words, letter) <= width:
        return words
    while words and text_width(words + "…", letter) > width:
        words = words[:-1]
    return words.rstrip() + "…"
