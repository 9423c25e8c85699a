"""The build sequence to its pages: one for the wall, and the list with every reason."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    BuildSequence,
    Checklist,
    Design,
    Diagnostic,
    Notice,
    NoticeKind,
    Paragraph,
    Picture,
    Place,
    Section,
    Step,
    Strong,
    Subheading,
    Text,
    Tick,
)
from binder_plugins.buildorder.picture import is_after_trial, picture

_MOST_IN_PICTURE = 120


def order_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """The picture of the order, then the ticked list."""
    sequence = design.facts.about(BuildSequence, "")
    if sequence is None or not sequence.steps:
        return
    blocks: list[Block] = []
    drawing = picture(sequence, design) if len(sequence.steps) <= _MOST_IN_PICTURE else None
    if drawing is not None:
        words = (
            "What comes before what: left to right, each with its number in the list. A box "
            "without a verb is a part to make; boxes in one column may come in any order. What "
            "is built is tested there and then."
        )
        if any(is_after_trial(step.task, design) for step in sequence.steps):
            words += " What is finished after that stands in the list."
        blocks.append(Picture(drawing, "the build order as a graph in layers", words))
    else:
        words = "The order is too wide to be drawn on one page; the list below has every reason."
        blocks.append(Notice(NoticeKind.NOTE, "No picture", (words,)))
    blocks.append(Subheading("The order, with the reason of every wait"))
    first = "Work down the list; a task may be taken earlier once all that it waits for is ticked."
    blocks.append(Paragraph((first,)))
    blocks.append(Checklist(tuple(_tick(step, design) for step in sequence.steps)))
    yield Section("build-order", "Build order", Place.BUILD_ORDER, tuple(blocks))


def _tick(step: Step, design: Design) -> Tick:
    task = design.tasks[step.task]
    title = task.title[0].upper() + task.title[1:]
    text: Text = (Strong(title), f": {task.detail}" if task.detail else "")
    if task.kind in ("measure", "test"):
        text = (Strong(f"Stop. {title}"), f": {task.detail}" if task.detail else "")
    return Tick(step.task, text, tuple(_reasons(step, design)))


def _reasons(step: Step, design: Design) -> Iterator[Text]:
    """The reasons, those that are alike said once."""
    by_reason: dict[str, list[str]] = {}
    for earlier, reason in step.after:
        by_reason.setdefault(reason, []).append(design.tasks[earlier].title)
    for reason, titles in by_reason.items():
        yield (f"after: {', '.join(titles)} ({reason})",)
