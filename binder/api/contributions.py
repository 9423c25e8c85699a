"""What the hooks return: steps, checks, pages and files, each a name and a function."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from binder.api.answers import Answer
from binder.design import Contribution, Design, Fact
from binder.diagnostics import Diagnostic
from binder.pages import Drawing, Inset, Section
from binder.workshop import Workshop


@dataclass(frozen=True, slots=True)
class PlanStep:
    """A step of the expand phase.

    It runs after every step that gives a fact type in `needs`; `after` are fact types of
    which it uses what there is, without needing them. A step `for_pages` is slow and serves
    the binder alone: it is left out where a spec is only checked. One that `settles_shapes`
    runs before all others, and an error that it finds ends the phase: nobody may guess a size.
    """

    name: str
    run: Callable[[Design], Contribution]
    needs: tuple[type[Fact], ...] = ()
    gives: tuple[type[Fact], ...] = ()
    after: tuple[type[Fact], ...] = ()
    for_pages: bool = False
    settles_shapes: bool = False


@dataclass(frozen=True, slots=True)
class Check:
    """A check of the finished design."""

    name: str
    run: Callable[[Design], Iterable[Diagnostic]]


@dataclass(frozen=True, slots=True)
class Page:
    """A maker of sections, or of insets in them, from the finished design and its findings."""

    name: str
    run: Callable[[Design, tuple[Diagnostic, ...]], Iterable[Section | Inset]]


@dataclass(frozen=True, slots=True)
class ExportFile:
    """A file that `binder export` may write, made only when it is asked for.

    `kind` is the plain word by which a maker asks for it (`solid`, `flat`), `item` the part
    that it shows ('' for the whole model), `ending` that of its name, as `dxf`. `make` gives
    its bytes, a drawing (which is written as SVG), or the finding that says why there is none.
    """

    kind: str
    item: str
    ending: str
    make: Callable[[], bytes | Drawing | Diagnostic]


@dataclass(frozen=True, slots=True)
class Export:
    """An offer of files that others can open, from the finished design."""

    name: str
    run: Callable[[Design], Iterable[ExportFile]]


@dataclass(frozen=True, slots=True)
class Reckoning:
    """A one-off question at the bench: `usage` shows its words, `says` what comes out.

    `run` takes the words as typed and the workshop, and gives the answer, or the finding
    that says why there is none.
    """

    name: str
    usage: str
    says: str
    run: Callable[[Sequence[str], Workshop], Answer | Diagnostic]
