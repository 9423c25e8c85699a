"""Paper to a count of what makes it hard to read: lines through words, leaders that cross."""

from __future__ import annotations

from itertools import combinations

from binder_drafting.paper import Paper
from binder_drafting.plane import cross

# Words keep so much of their box clear of lines; less is the air about them.
_AIR = 0.35


def flaws_of(paper: Paper) -> int:
    """How many lines run through words, and how many leaders cross words or one another."""
    boxes = [word.box.grown(-_AIR) for word in paper.words]
    struck = sum(paper.taken.lines_through(box) for box in boxes)
    shaded = sum(paper.shaded.is_struck(box) for box in boxes)
    led = sum(paper.taken.words_on(*leader) for leader in paper.leaders)
    crossed = sum(
        cross(*one, *two) for one, two in combinations(paper.leaders, 2) if not {*one} & {*two}
    )
    return struck + shaded + led + crossed
