"""Parts with routes of fifteen operations, joined in pairs, as many as are asked for."""

from __future__ import annotations

from collections.abc import Iterator

from binder_making.operation import Operation

# act, set-up of the part, tool, feature, end, tags
ROUTE = (
    ("saw", "", "hacksaw", "", "", ""),
    ("face", "chuck", "knife tool", "", "first", ""),
    ("centre", "chuck", "centre drill", "bore", "first", ""),
    ("drill", "chuck", "drill", "bore", "first", ""),
    ("bore", "chuck", "boring bar", "bore", "first", "finish master fit"),
    ("turn", "chuck", "roughing tool", "seat", "", "rough"),
    ("turn", "chuck", "knife tool", "seat", "", "finish fit"),
    ("measure", "chuck", "", "bore", "", "master"),
    ("groove", "chuck", "grooving tool", "seat", "", ""),
    ("part-off", "chuck", "parting tool", "", "", ""),
    ("face", "collet", "knife tool", "", "second", "back"),
    ("drill", "vice", "drill", "cross", "", "cross"),
    ("tap", "vice", "tap", "cross", "", ""),
    ("deburr", "", "file", "", "", ""),
    ("assemble", "", "", "", "", ""),
)
_MACHINES = {"chuck": "lathe", "collet": "lathe", "vice": "mill", "": "bench"}


def many_parts(count: int) -> list[Operation]:
    """`count` parts of fifteen operations; part 2n+1 is turned to fit part 2n."""
    return [one for number in range(count) for one in _part(number)]


def _part(number: int) -> Iterator[Operation]:
    joints = (f"joint {number // 2}", f"joint {(number + 1) // 2} of {number % 7}")
    for step, (act, setup, tool, feature, end, tags) in enumerate(ROUTE):
        spoken = frozenset(tags.split()) - ({"master"} if number % 2 else set())
        sized = f"{tool} {number % 5 + 3}" if tool in {"drill", "tap"} else tool
        yield Operation(
            id=f"part {number} step {step}",
            act=act,
            part=f"part {number}",
            feature=feature,
            end=end,
            machine=_MACHINES[setup],
            holding=setup,
            setup=f"part {number} {setup}" if setup else "",
            tool=sized,
            tags=spoken,
            joints=joints,
        )
