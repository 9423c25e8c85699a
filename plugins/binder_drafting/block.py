"""One view with all its sizes to a block of paper, whatever stands elsewhere on the sheet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from binder_drafting.angles import draw_opening
from binder_drafting.balloons import draw_balloons
from binder_drafting.breaks import shortened
from binder_drafting.callouts import Callout, draw_callout
from binder_drafting.choosing import Ways, ways_of
from binder_drafting.crossings import draw_crossing
from binder_drafting.details import draw_detail_circle
from binder_drafting.flaws import flaws_of
from binder_drafting.lines import draw_lines, on_paper, outline_of
from binder_drafting.paper import Paper
from binder_drafting.plane import Rectangle
from binder_drafting.rings import Pointing
from binder_drafting.running import draw_running
from binder_drafting.sides import ABOVE, BELOW, LEFT, RIGHT, Side
from binder_drafting.sizes import Balloon, Size
from binder_drafting.style import ROOMY, Style
from binder_drafting.tiers import draw_tiers
from binder_drafting.views import Detail, View
from binder_drafting.words import Words, Written

_TITLE = 5.0


@dataclass(frozen=True)
class Block:
    """A view on paper of its own, its origin at 0,0; `outline` is what its lines fill."""

    view: View
    scale: float
    outline: Rectangle
    paper: Paper

    @property
    def extent(self) -> Rectangle:
        """All that is drawn."""
        return self.paper.extent or self.outline

    @cached_property
    def flaws(self) -> int:
        """How much on it is hard to read."""
        return flaws_of(self.paper)


@dataclass(frozen=True, slots=True)
class Content:
    """What one view shows beside its own lines."""

    sizes: tuple[Size, ...] = ()
    details: tuple[Detail, ...] = ()
    balloons: tuple[Balloon, ...] = ()


def draw_block(
    view: View, content: Content, scale: float, title: str = "", style: Style = ROOMY
) -> Block:
    """Draws a view with all that it shows, and a title above."""
    sizes: Sequence[Size] = content.sizes
    if view.breaks:
        view, sizes = shortened(view, sizes, scale)
    paper = Paper(style=style)
    draw_lines(view, scale, paper, has_words=bool(sizes or content.details))
    outline = outline_of(view, scale)
    ways = ways_of(sizes, view, scale, paper)
    for name in (BELOW, ABOVE, LEFT, RIGHT):
        _draw_side(ways, Side(name, outline), paper)
    callouts = _draw_in_place(ways, outline, paper)
    for detail in content.details:
        draw_detail_circle(detail, scale, paper)
    for callout in callouts:
        draw_callout(callout, paper, outline)
    draw_balloons([_pointing(one, scale) for one in content.balloons], paper)
    block = Block(view, scale, outline, paper)
    if title:
        words = Words((Written(0.0, 0.0, title, _TITLE),))
        middle = outline.middle[0] - words.width / 2
        paper.write(words, (middle, block.extent.top - words.drop - 2.0))
    return block


def _draw_side(ways: Ways, side: Side, paper: Paper) -> None:
    running = ways.running[side.name]
    reach = 0.0
    if ways.spans[side.name]:
        passing = [side.local(span.end)[0] for spans in running for span in spans]
        reach = draw_tiers(ways.spans[side.name], side, paper, passing)
    for spans in running:
        reach = draw_running(spans, side, paper, reach)


def _pointing(balloon: Balloon, scale: float) -> Pointing:
    return Pointing(balloon.id, balloon.number, on_paper(balloon.at, scale), balloon.target)


def _draw_in_place(ways: Ways, outline: Rectangle, paper: Paper) -> list[Callout]:
    """Draws diameters across their steps and angles; gives what is left for leaders.

    From both ends inwards, for figures run outwards: no later line then goes through them.
    """
    middle = outline.middle[0]
    callouts = list(ways.callouts)
    callouts += [
        Callout(one.id, one.words, one.at)
        for one in sorted(
            ways.flanks, key=lambda one: (-abs(one.start[0] - middle), one.start, one.id)
        )
        if not draw_crossing(one, outline, paper)
    ]
    for opening in ways.openings:
        draw_opening(opening, paper)
    # The longest words first: short ones find a place anywhere.
    return sorted(callouts, key=lambda one: (-one.words.width, one.at, one.id))
