"""Random sets of parts and of joints between them, as specs, for the property tests."""

from __future__ import annotations

from hypothesis import strategies as st

from tests.plugins.operations.conftest import HEAD

METALS = st.sampled_from(["mild steel", "brass", "bronze", "cast iron", "silver steel"])
BORES = st.sampled_from([4, 5, 6, 8, 10])
HOW = st.sampled_from(
    [
        "runs_in: [{pin}.seat, {bush}.bore], duty: runs",
        "runs_in: [{pin}.seat, {bush}.bore], duty: runs, made: reamed in line",
        "runs_in: [{pin}.seat, {bush}.bore], duty: slow and oiled, master: {pin}.seat",
        "pressed: [{pin}.seat, {bush}.bore]",
        "slides: [{pin}.seat, {bush}.bore]",
        "retained: [{bush}.bore, {pin}.seat]",
        "silver_soldered: [{bush}.bore, {pin}.seat]",
    ]
)


@st.composite
def specs(draw: st.DrawFn) -> str:
    """One to three pairs that meet in a bore, and up to three plates, bolted or joined as one."""
    parts: dict[str, str] = {}
    joints: list[str] = []
    for number in range(draw(st.integers(1, 3))):
        across = draw(BORES)
        bush, pin = f"bush{number}", f"pin{number}"
        parts[bush] = draw(st.sampled_from([_bush, _eye]))(draw, across)
        parts[pin] = _pin(draw, across)
        joints.append(f"pair{number}: {{{draw(HOW).format(bush=bush, pin=pin)}}}")
    if draw(st.booleans()):
        parts["hub"], parts["arbor"] = _taper(draw)
        ends = draw(st.permutations(["hub.bore", "arbor.nose"]))
        joints.append(f"cone: {{tapered: [{', '.join(ends)}]}}")
    plates = [f"plate{number}" for number in range(draw(st.integers(0, 3)))]
    parts.update((name, _plate(draw)) for name in plates)
    frame = ""
    if len(plates) > 1 and draw(st.booleans()):
        frame = _frame(draw, plates)
        parts["stud"] = _pin(draw, 6)
        joints.append(f"stud: {{{draw(HOW).format(bush='frame', pin='stud')}}}")
    else:
        joints += [_screwed(draw, number) for number in range(1, len(plates))]
    names = draw(st.permutations(list(parts)))
    lines = [f"  {name}: {parts[name]}" for name in names]
    lines += ["fabrications:", f"  frame: {frame}"] if frame else []
    lines += ["joints:", *(f"  {one}" for one in draw(st.permutations(joints)))]
    return HEAD + "\n".join(lines) + "\n"


def _bush(draw: st.DrawFn, across: int) -> str:
    long = draw(st.integers(10, 30))
    more = [f"bore: {{{draw(_made_bore(across))}, on: body, depth: through}}"]
    if draw(st.booleans()):
        deep = across / 2 + 4
        more.append(f"oil: {{drilled: 2 mm, across: body, at: 5 mm from left, depth: {deep} mm}}")
    if draw(st.booleans()):
        more.append("edge: {chamfered: 0.5 mm, on: body}")
    return _turned(draw, across + 10, [("body", across + 8, long)], more)


def _eye(draw: st.DrawFn, across: int) -> str:
    more = [f"bore: {{{draw(_made_bore(across))}, on: top, depth: through, at: 12 mm from left}}"]
    if draw(st.booleans()):
        more.append("tip: {tapped: M4, on: top, depth: through, at: 6 mm from right}")
    long = draw(st.integers(40, 80))
    return (
        f"{{material: {draw(METALS)}, stock: 20 mm x 10 mm flat bar, cut: {long} mm,"
        f" features: {{{', '.join(more)}}}}}"
    )


def _pin(draw: st.DrawFn, across: int) -> str:
    steps = [("head", across + 4, draw(st.integers(3, 8))), ("seat", across, 20)]
    more = []
    if draw(st.booleans()):
        steps.append(("end", 3, 8))
        more.append("thread: {screwed: M3, on: end, length: 6 mm}")
    if draw(st.booleans()):
        more.append(f"ring: {{grooved: {draw(st.integers(1, 2))} mm, on: seat, depth: 0.5 mm}}")
    return _turned(draw, across + 6, steps, more)


def _taper(draw: st.DrawFn) -> tuple[str, str]:
    """A hub with a taper bore, and the arbor that it goes on."""
    long, end = draw(st.integers(10, 28)), draw(st.sampled_from(["left", "right"]))
    bore = [f"bore: {{bored: to suit, on: {end}, depth: through}}"]
    if draw(st.booleans()):
        bore.append("mouth: {chamfered: 0.5 mm, on: bore}")
    hub = _turned(draw, 30, [("rim", 28, long), ("boss", 20, draw(st.integers(4, 10)))], bore)
    nose = "{name: nose, taper: 14 mm to 12 mm, length: 20 mm}"
    shank = "{name: shank, diameter: 18 mm, length: 20 mm}"
    arbor = f"{{material: {draw(METALS)}, stock: 18 mm round bar, turned: [{shank}, {nose}]}}"
    return hub, arbor


def _plate(draw: st.DrawFn) -> str:
    more = ["eye: {drilled: 9 mm, on: top, depth: through, at: middle}"]
    if draw(st.booleans()):
        more.append(
            "holes: {tapped: M3, on: top, depth: 6 mm, off: 4, pattern: '4 off on 30 mm PCD'}"
        )
    return (
        f"{{material: {draw(METALS)}, stock: plate, plate: {{width: 60 mm,"
        f" length: {draw(st.integers(70, 72))} mm, thickness: {draw(st.sampled_from([6, 8]))} mm}},"
        f" features: {{{', '.join(more)}}}}}"
    )


def _frame(draw: st.DrawFn, plates: list[str]) -> str:
    how = draw(st.sampled_from(["silver_soldered", "bonded", "glued", "riveted", "welded"]))
    return (
        f"{{pieces: [{', '.join(plates)}], joined: {how},"
        " features: {bore: {reamed: 6 mm, on: top, depth: through, at: 15 mm from left}}}"
    )


def _screwed(draw: st.DrawFn, number: int) -> str:
    made = draw(st.sampled_from(["", ", made: spotted through"]))
    return (
        f"bolts{number}: {{screwed: [plate{number}.top, plate{number - 1}.underside],"
        f" fastener: M4 socket cap screw, pattern: '4 off at the corners, 7 mm in'{made}}}"
    )


def _turned(draw: st.DrawFn, bar: int, steps: list[tuple[str, int, int]], more: list[str]) -> str:
    told = ", ".join(f"{{name: {n}, diameter: {d} mm, length: {long} mm}}" for n, d, long in steps)
    return (
        f"{{material: {draw(METALS)}, stock: {bar} mm round bar, turned: [{told}],"
        f" features: {{{', '.join(more)}}}}}"
    )


def _made_bore(across: int) -> st.SearchStrategy[str]:
    return st.sampled_from([f"reamed: {across} mm", f"bored: {across} mm", "reamed: to suit"])
