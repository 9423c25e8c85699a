"""A half-made packing, and what one more decision makes of it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from binder_plugins.cutlist.covering import Stock
from binder_plugins.cutlist.loads import Load, Packing, Score
from binder_plugins.cutlist.problem import Problem

NOWHERE = -1


class Open(NamedTuple):
    """An open bar with its number and kind, while the lightest piece still fits."""

    room: int
    number: int
    kind: int


class Step(NamedTuple):
    """Which bar a piece went on, or NOWHERE, and the steps before it."""

    number: int
    kind: int
    before: Step | None


class Node(NamedTuple):
    """So many pieces decided: the open bars in order of room, stock, spent, and how."""

    decided: int
    bars: tuple[Open, ...]
    stock: Stock
    spent: Score
    trail: Step | None

    @property
    def state(self) -> tuple[int, tuple[int, ...], Stock]:
        """All that the rest of the packing depends on."""
        return self.decided, tuple(bar.room for bar in self.bars), self.stock


def root(problem: Problem) -> Node:
    """Nothing decided, everything in stock."""
    stock = tuple(kind.count for kind in problem.kinds)
    return Node(0, (), stock, Score(0, 0, 0, 0), None)


def branches(problem: Problem, node: Node) -> Iterator[Node]:
    """The next piece decided in every way that matters, likeliest first.

    Of bars with equal room one is tried. A piece that just fills a bar goes there: what
    else would fill it fits wherever the piece would go. Not so a scarce piece, which
    might go nowhere.
    """
    weight = problem.weights[node.decided]
    is_scarce = node.decided < problem.scarce
    fitting = {bar.room: bar for bar in node.bars if bar.room >= weight}
    if weight in fitting and not is_scarce:
        yield _placed(problem, node, fitting[weight])
        return
    for room in sorted(fitting):
        yield _placed(problem, node, fitting[room])
    for kind, count in enumerate(node.stock):
        if count != 0 and problem.kinds[kind].capacity >= weight:
            yield _on_new_bar(problem, node, kind)
    if is_scarce:
        yield _left_over(node, weight)


def _placed(problem: Problem, node: Node, bar: Open) -> Node:
    room = bar.room - problem.weights[node.decided]
    bars = [other for other in node.bars if other is not bar]
    if room >= problem.weights[-1]:
        bars.append(Open(room, bar.number, bar.kind))
    trail = Step(bar.number, bar.kind, node.trail)
    return Node(node.decided + 1, tuple(sorted(bars)), node.stock, node.spent, trail)


def _on_new_bar(problem: Problem, node: Node, kind: int) -> Node:
    bought, count = problem.kinds[kind].price, node.stock[kind]
    left = None if count is None else count - 1
    spent = node.spent._replace(bought=node.spent.bought + bought, bars=node.spent.bars + 1)
    bar = Open(problem.kinds[kind].capacity, node.spent.bars, kind)
    stock = (*node.stock[:kind], left, *node.stock[kind + 1 :])
    return _placed(problem, node._replace(bars=(*node.bars, bar), stock=stock, spent=spent), bar)


def _left_over(node: Node, weight: int) -> Node:
    spent = node.spent._replace(
        unplaced=node.spent.unplaced + 1, unplaced_weight=node.spent.unplaced_weight + weight
    )
    trail = Step(NOWHERE, NOWHERE, node.trail)
    return node._replace(decided=node.decided + 1, spent=spent, trail=trail)


def packing(problem: Problem, leaf: Node) -> Packing:
    """The loads that the steps of a finished node come to."""
    bars = dict[tuple[int, int], list[int]]()
    step = leaf.trail
    for weight in reversed(problem.weights):
        if step is None:
            raise ValueError("not every piece is decided")
        bars.setdefault((step.number, step.kind), []).insert(0, weight)
        step = step.before
    unplaced = bars.pop((NOWHERE, NOWHERE), [])
    loads = (Load(kind, tuple(weights)) for (_, kind), weights in bars.items())
    return Packing(tuple(loads), tuple(unplaced))
