"""Turns a problem and a packing of it into the best one, or the best within a node limit.

Branch and bound, heaviest piece first: each goes on an open bar, on a new one, or, where
no bar that can be bought takes it, nowhere. The limit counts nodes, never time, so that
equal input gives equal answers on every machine.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import accumulate

from binder_plugins.cutlist.covering import bars_to_cover, dropped, length_to_buy
from binder_plugins.cutlist.loads import Packing, Score
from binder_plugins.cutlist.node import Node, branches, packing, root
from binder_plugins.cutlist.problem import Problem


@dataclass(frozen=True, slots=True)
class Found:
    """The best packing met; `is_proven` where every other was ruled out."""

    packing: Packing
    is_proven: bool


def search(problem: Problem, start: Packing, target: Score, nodes: int) -> Found:
    """The best packing within `nodes` nodes; one that scores the target ends the search."""
    best, score = start, start.score(problem)
    remaining = tuple(accumulate(reversed(problem.weights), initial=0))[::-1]
    waiting, seen = [root(problem)], dict[object, Score]()
    while waiting and score > target:
        if nodes <= 0:
            return Found(best, is_proven=False)
        nodes -= 1
        node = waiting.pop()
        if min(score, seen.get(node.state, score)) <= node.spent:
            continue
        seen[node.state] = node.spent
        if node.decided == len(problem.weights):
            best, score = packing(problem, node), node.spent
        elif least(problem, node, remaining) < score:
            waiting.extend(reversed(tuple(branches(problem, node))))
    return Found(best, is_proven=True)


def least(problem: Problem, node: Node, remaining: tuple[int, ...]) -> Score:
    """No way to finish the node scores less: by weight alone, with open bars filled up.

    `remaining[n]` is the weight of all pieces but the n heaviest.
    """
    more, weight = _to_leave(problem, node)
    need = remaining[node.decided + more] - sum(bar.room for bar in node.bars)
    return Score(
        node.spent.unplaced + more,
        node.spent.unplaced_weight + weight,
        node.spent.bought + length_to_buy(problem.kinds, node.stock, need),
        node.spent.bars + bars_to_cover(problem.kinds, node.stock, need),
    )


def _to_leave(problem: Problem, node: Node) -> tuple[int, int]:
    """How many more pieces find no bar, and what as many of the lightest of them weigh."""
    weights = problem.weights[node.decided : problem.scarce]
    if not weights:
        return 0, 0
    able = sum(bar.room for bar in node.bars if bar.room >= weights[-1])
    for kind, count in zip(problem.kinds, node.stock, strict=True):
        able += kind.capacity * (count or 0) if kind.capacity >= weights[-1] else 0
    more = dropped(weights, sum(weights) - able)
    return more, sum(weights[len(weights) - more :])
