"""A number of parts to a spec of as many, of the usual kinds, no two of the same size.

About fifteen acts to a part. Bushes are made in pairs with the spindles that run in them.
"""

from __future__ import annotations

from collections.abc import Iterator

# What is reamed, and the round bar that a flange about it is turned from; mm.
_REAMED = {4: 20, 5: 20, 6: 20, 8: 22, 10: 25}
_THREADS = ("M3", "M4", "M5")


def workpieces(parts: int) -> str:
    """A spec of so many parts that checks without an error, as YAML."""
    return "\n".join(_lines(parts)) + "\n"


def _lines(parts: int) -> Iterator[str]:
    yield "format: 1"
    yield "model: {title: Workpieces, issue: A, units: mm}"
    yield "parts:"
    for number in range(parts):
        kind = (_bush, _spindle, _lever, _plate)[number % 4]
        yield f"  p{number}: {kind(number // 4)}"
    yield "joints:"
    for number in range(0, parts - 1, 4):
        yield f"  runs{number}: {{runs_in: [p{number + 1}.journal, p{number}.bore], duty: runs}}"


def _bush(pair: int) -> str:
    bore, bar = list(_REAMED.items())[pair % len(_REAMED)]
    return (
        f"{{material: bronze, stock: {bar} mm round bar, turned: ["
        f"{{name: flange, diameter: {bar - 2} mm, length: 3 mm}},"
        f" {{name: outside, diameter: {bore + 6} mm, length: {_more(12, pair)} mm}}],"
        f" features: {{bore: {{reamed: {bore} mm, on: flange, depth: through}},"
        " oil: {drilled: 1.5 mm, across: outside, at: 6 mm from right,"
        f" depth: {bore / 2 + 3} mm}},"
        " edge: {chamfered: 0.5 mm, on: outside}}}"
    )


def _spindle(pair: int) -> str:
    journal = list(_REAMED)[pair % len(_REAMED)]
    return (
        f"{{material: mild steel, stock: {journal + 6} mm round bar, turned: ["
        f"{{name: collar, diameter: {journal + 4.3} mm, length: {_more(4, pair)} mm}},"
        f" {{name: journal, diameter: {journal} mm, length: {_more(15, pair)} mm}},"
        f" {{name: end, diameter: 3 mm, length: 8 mm}}],"
        " features: {thread: {screwed: M3, on: end, length: 6 mm},"
        " edge: {chamfered: 0.5 mm, on: collar}}}"
    )


def _lever(pair: int) -> str:
    thread = _THREADS[pair % len(_THREADS)]
    return (
        "{material: mild steel, stock: 12 mm x 6 mm flat bar,"
        f" cut: {_more(50, pair)} mm, features: {{"
        f"eye: {{reamed: {4 + pair % 3} mm, on: top, depth: through, at: 7 mm from left}},"
        f" middle: {{drilled: {_more(3, pair % 90)} mm, on: top, depth: through, at: middle}},"
        f" end: {{tapped: {thread}, on: top, depth: through, at: 7 mm from right}},"
        f" blind: {{drilled: {_more(2, pair % 90)} mm, on: top, depth: 4 mm,"
        " at: 15 mm from left}}}"
    )


def _plate(pair: int) -> str:
    return (
        "{material: brass, stock: 3 mm sheet,"
        f" plate: {{length: {_more(60, pair)} mm, width: {_more(40, pair)} mm, thickness: 3 mm}},"
        " features: {eye: {reamed: 8 mm, on: top, depth: through, at: middle},"
        " taps: {tapped: M4, on: top, depth: through, off: 2, pattern: 24 mm apart},"
        f" holes: {{drilled: {_more(3, pair % 90)} mm, on: top, depth: through, off: 4,"
        ' pattern: "4 off at the corners, 6 mm in"}}}'
    )


def _more(least: float, number: int) -> str:
    """A size in mm, which grows by a hundredth with each."""
    return f"{least + number / 100:g}"
