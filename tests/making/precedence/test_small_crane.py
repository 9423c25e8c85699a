"""A small model in full: its routes, told backwards, come out as an instructor would have them.

The routes are of our own wharf crane; what goes before what is common practice, no source.
"""

from __future__ import annotations

import pytest

from binder_making.operation import Operation
from binder_making.order import Order, in_order
from binder_making.precedence import edges

# part / feature / end / machine: set-up / act tags / joints / meets
ROUTES = """
axle | stock | | | saw | |
axle | stock | left | lathe: collet | face first-end | |
axle | stock | left | lathe: collet | centre first-end | |
axle | journal | left | lathe: collet | turn rough | axle in bush |
axle | journal | left | lathe: collet | turn finish fit journal | axle in bush |
axle | relief | left | lathe: collet | undercut first-end | | thread
axle | thread | left | lathe: collet | die first-end | |
axle | stock | | lathe: collet | part-off | |
axle | stock | right | lathe: other end | face back | |
axle | pin hole | | mill: vice | drill cross | drum on axle |
axle | journal | | lathe: polishing | polish | axle in bush |
axle | stock | | | deburr | axle in bush |
bush | bore | left | lathe: bush | drill | |
bush | outside | left | lathe: bush | turn finish outside | bush in cheek |
bush | bore | left | | press bush | bush in cheek, other bush in cheek |
bush | oil hole | | mill: cheek | drill oil-hole later | bush in cheek | bore
bush | bore | | mill: cheek | ream bush in-line later finish | bush in cheek, other bush in cheek |
bush | bore | | | measure master | axle in bush |
cheek | plate | | | mark-out | |
cheek | holes | | mill: stack | clamp-stack | cheeks |
cheek | holes | | mill: stack | drill stacked | cheeks |
cheek | holes | | mill: stack | ream stacked master | cheeks |
cheek | holes | | | separate | cheeks |
cheek | outline | | | outline delicate | |
cheek | seat | | mill: stack | bore stacked finish fit | cheeks, bush in cheek |
cheek | plate | | | deburr | cheeks |
cheek | plate | | | degrease | |
cheek | plate | | | mask | |
cheek | plate | | | paint | |
pawl | stock | | | saw | |
pawl | outline | | | outline | |
pawl | hole | | mill: vise | centre | |
pawl | hole | | mill: vise | drill | |
pawl | stock | | | deburr | |
pawl | stock | | | harden | |
pawl | stock | | | temper | |
pawl | tip | | | polish | |
crane | all | | | dry-assemble | axle in bush, bush in cheek |
crane | all | | | strip | |
crane | all | | | assemble | axle in bush, bush in cheek |
crane | all | | | run-in | |
crane | all | | | clean-out | |
crane | all | | | oil | |
"""


def planned() -> list[Operation]:
    """The operations, the last line first."""
    lines = [line for line in ROUTES.strip().splitlines() if line]
    return [_operation(line) for line in reversed(lines)]


def _operation(line: str) -> Operation:
    part, feature, end, at, words, joints, meets = (piece.strip() for piece in line.split("|"))
    act, *tags = words.split()
    machine, _, setup = at.partition(": ")
    return Operation(
        id=f"{part}: {act} {feature} {' '.join(tags)}".strip(),
        act=act,
        part=part,
        feature=feature,
        end=end,
        machine=machine,
        setup=f"{part} {setup}" if setup else "",
        tags=frozenset(tags),
        joints=tuple(one for one in joints.split(", ") if one),
        meets=tuple(one for one in meets.split(", ") if one),
        assemblies=("crane",) if part == "crane" or act == "paint" else (),
    )


@pytest.fixture(scope="module")
def sequence() -> list[str]:
    work = planned()
    order = in_order(work, edges(work))
    assert isinstance(order, Order), order
    return list(order.sequence)


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("axle: saw stock", "axle: face stock first-end"),
        ("axle: face stock first-end", "axle: centre stock first-end"),
        ("axle: turn journal rough", "axle: turn journal finish fit journal"),
        ("axle: undercut relief first-end", "axle: die thread first-end"),
        ("axle: die thread first-end", "axle: part-off stock"),
        ("axle: part-off stock", "axle: face stock back"),
        ("axle: drill pin hole cross", "axle: polish journal"),
        ("bush: press bore bush", "bush: ream bore bush in-line later finish"),
        ("bush: drill oil hole oil-hole later", "bush: ream bore bush in-line later finish"),
        ("bush: ream bore bush in-line later finish", "bush: measure bore master"),
        ("bush: measure bore master", "axle: turn journal finish fit journal"),
        ("cheek: clamp-stack holes", "cheek: drill holes stacked"),
        ("cheek: bore seat stacked finish fit", "cheek: separate holes"),
        ("cheek: mask plate", "cheek: paint plate"),
        ("crane: strip all", "cheek: paint plate"),
        ("pawl: drill hole", "pawl: harden stock"),
        ("pawl: harden stock", "pawl: temper stock"),
        ("pawl: temper stock", "pawl: polish tip"),
        ("axle: deburr stock", "crane: dry-assemble all"),
        ("crane: dry-assemble all", "crane: strip all"),
        ("crane: run-in all", "crane: clean-out all"),
        ("crane: clean-out all", "crane: oil all"),
        ("bush: turn outside finish outside", "bush: press bore bush"),
        ("cheek: bore seat stacked finish fit", "bush: press bore bush"),
        ("axle: face stock first-end", "axle: turn journal rough"),
        ("axle: turn journal rough", "axle: undercut relief first-end"),
        ("axle: turn journal finish fit journal", "axle: drill pin hole cross"),
        ("cheek: mark-out plate", "cheek: drill holes stacked"),
        ("cheek: separate holes", "cheek: deburr plate"),
        ("cheek: deburr plate", "cheek: degrease plate"),
        ("cheek: degrease plate", "cheek: paint plate"),
        ("cheek: deburr plate", "cheek: mask plate"),
        ("pawl: deburr stock", "pawl: harden stock"),
        ("cheek: paint plate", "crane: assemble all"),
        ("crane: dry-assemble all", "crane: assemble all"),
        ("crane: assemble all", "crane: run-in all"),
        ("axle: polish journal", "crane: dry-assemble all"),
        ("cheek: degrease plate", "cheek: mask plate"),
    ],
)
def test_an_instructors_order(sequence: list[str], before: str, after: str) -> None:
    assert sequence.index(before) < sequence.index(after)
