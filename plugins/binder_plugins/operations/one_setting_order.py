"""The reasons of the whole order, as two tapers at one setting of the top-slide leave them."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from binder_making.operation import Operation
    from binder_making.precedence import Edge
    from binder_plugins.operations.one_setting import Pair

# The rule by which a half is measured before its mate is made to the figure.
_MEASURED = "master-then-follow"


def at_the_taper(
    reasons: Sequence[Edge],
    tapers: Sequence[Pair],
    operations: Sequence[Operation],
    piece_of: Mapping[str, str],
) -> Iterator[Edge]:
    """The reasons, that of such a joint between its two tapers alone.

    Else all of the first half would come before the first act on the other, and the slide could
    not stand for both. Nothing waits for its figure: the second is tried on the half itself.
    """
    first = {piece_of[one.id]: one.id for one in reversed(operations)}
    last = {piece_of[one.id]: one.id for one in operations}
    by_items = {(one.first.item, one.second.item): one for one in tapers}
    for edge in reasons:
        items = (_item(edge.before, piece_of), _item(edge.after, piece_of))
        pair = by_items.get(items)
        if pair is None or not {pair.first.piece, pair.second.piece} <= first.keys():
            yield edge
        elif edge.reason.startswith(f"{pair.joint}: "):
            yield replace(edge, before=last[pair.first.piece], after=first[pair.second.piece])
        elif edge.rule != _MEASURED or edge.after != pair.second.act.id:
            yield edge


def _item(operation: str, piece_of: Mapping[str, str]) -> str:
    """The item of an operation's set-up."""
    return piece_of[operation].rpartition(" ")[0]
