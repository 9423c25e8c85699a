"""Random sets of parts, features, set-ups and joints for the property tests."""

from __future__ import annotations

from hypothesis import strategies as st

from binder_making.operation import Operation
from tests.making.precedence.fires import FIRES

PAIRS = tuple(FIRES.values())
MACHINES = {"chuck": "lathe", "collet": "lathe", "vice": "mill", "": "bench"}
NAMES = st.sampled_from(["one", "two"])


@st.composite
def operations(draw: st.DrawFn, least: int = 4, most: int = 14) -> list[Operation]:
    """Operations of two parts, in set-ups of their own part, with tools and joints."""
    pairs = draw(st.lists(st.sampled_from(PAIRS), min_size=least // 2, max_size=most // 2))
    spoken = draw(st.permutations([words for pair in pairs for words in pair]))
    return [_operation(draw, number, words) for number, words in enumerate(spoken)]


def _operation(draw: st.DrawFn, number: int, words: str) -> Operation:
    act, *tags = words.split()
    part, holding = draw(NAMES), draw(st.sampled_from(sorted(MACHINES)))
    return Operation(
        id=f"op {number}",
        act=act,
        part=part,
        feature=draw(NAMES),
        end=draw(st.sampled_from(["left", "right"])),
        machine=MACHINES[holding],
        holding=holding,
        setup=f"{part} in the {holding}" if holding else "",
        tool=draw(st.sampled_from(["", "knife", "drill", "reamer"])),
        tags=frozenset(tags),
        meets=tuple(draw(st.lists(NAMES, max_size=1))),
        joints=tuple(draw(st.lists(NAMES, max_size=2, unique=True))),
        assemblies=tuple(draw(st.lists(NAMES, max_size=1))),
    )
