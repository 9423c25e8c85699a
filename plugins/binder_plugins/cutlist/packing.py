"""Turns pieces and bars into a cutting plan that says honestly how good it is.

Bounds first, then a packing at once, then, for small jobs, a search for the best.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from binder_plugins.cutlist.bounds import fewest_unplaced, floor
from binder_plugins.cutlist.greedy import greedy
from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.layout import laid_out
from binder_plugins.cutlist.loads import settled
from binder_plugins.cutlist.plan import Plan
from binder_plugins.cutlist.problem import Problem, measured
from binder_plugins.cutlist.search import Found, search

# So many nodes take about half a second; more pieces than this they hardly ever settle.
MOST_NODES = 50_000
MOST_SEARCHED = 40


def pack(
    pieces: Iterable[Piece], bars: Iterable[Bar], sawing: Sawing, nodes: int = MOST_NODES
) -> Plan:
    """The best plan found, the same for equal input in any order.

    The work grows with the number of pieces and with `nodes`, the most steps of the search;
    the caller bounds both. What finds no bar is listed in the plan.
    """
    job = measured(pieces, bars, sawing)
    found = _best(job.problem, nodes)
    packing = settled(job.problem, found.packing)
    score = packing.score(job.problem)
    least = score if found.is_proven else floor(job.problem, score.unplaced)
    cut, unplaced = laid_out(job, packing)
    bought_bound = Fraction(least.bought, job.per_mm)
    return Plan(cut, unplaced, least.bars, bought_bound, found.is_proven)


def _best(problem: Problem, nodes: int) -> Found:
    packing = greedy(problem)
    target = floor(problem, fewest_unplaced(problem))
    if packing.score(problem) == target:
        return Found(packing, is_proven=True)
    if len(problem.weights) > MOST_SEARCHED:
        return Found(packing, is_proven=False)
    return search(problem, packing, target, nodes)
