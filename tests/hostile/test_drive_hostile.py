"""Drives as a careless and as a spiteful maker writes them: findings, never a fault."""

from __future__ import annotations

import time
from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drive.facts import TurningFact
from binder_plugins.drive.kinds import kinds

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
HAND = "hand: {turns: [a], by: hand, speeds: [60 r/min]}"
CORD = "bought:\n  cord: {what: braided cord}\n"


def spec(names: str, *drive: str, more: str = "") -> str:
    discs = "".join(
        f"  {name}: {{material: brass, disc: {{diameter: 30 mm, thickness: 4 mm}}}}\n"
        for name in names.split()
    )
    return f"{HEAD}parts:\n{discs}{more}drive:\n" + "".join(f"  {line}\n" for line in drive)


def meshes(first: str, second: str, teeth: str = "20, 40") -> str:
    return f"{{meshes: [{first}, {second}], teeth: [{teeth}], module: 1 mm}}"


# What is written, and the code that it earns.
WRONG = {
    "a closed loop of shafts that locks": (
        "drive-locks",
        spec("a b c", HAND, f"x: {meshes('a', 'b')}", f"y: {meshes('b', 'c')}",
             f"z: {meshes('c', 'a')}"),
    ),
    "a closed loop of shafts that agrees": (
        "drive-in-a-ring",
        spec("a b c", HAND, "x: {rubs: [a, b], diameters: [20 mm, 40 mm]}",
             "y: {rubs: [b, c], diameters: [40 mm, 20 mm]}",
             "z: {belted: [c, a], diameters: [20 mm, 20 mm]}"),
    ),
    "no teeth": ("bad-count", spec("a b", HAND, f"x: {meshes('a', 'b', '0, 54')}")),
    "fewer teeth than none": ("bad-count", spec("a b", HAND, f"x: {meshes('a', 'b', '-9, 54')}")),
    "a million teeth": ("bad-count", spec("a b", HAND, f"x: {meshes('a', 'b', '1000000, 54')}")),
    "a ratio below nothing": (
        "cone-impossible",
        spec("a b", HAND, "x: {belted: [a, b], ratios: [-1, 2], smallest: 20 mm, centres: 90 mm}"),
    ),
    "a ratio of nothing": (
        "cone-impossible",
        spec("a b", HAND, "x: {belted: [a, b], ratios: [0, 2], smallest: 20 mm, centres: 90 mm}"),
    ),
    "ratios that no pulleys have": (
        "cone-impossible",
        spec("a b", HAND, "x: {belted: [a, b], ratios: [0.01, 9], smallest: 20 mm, "
             "centres: 90 mm}"),
    ),
    "ratios alone": ("cone-impossible", spec("a b", HAND, "x: {belted: [a, b], ratios: [1, 2]}")),
    "a pulley of no diameter": (
        "out-of-range", spec("a b", HAND, "x: {belted: [a, b], diameters: [0 mm, 40 mm]}"),
    ),
    "a belt between shafts that are not there": (
        "item-unknown", spec("a b", HAND, "x: {belted: [c, d], diameters: [20 mm, 40 mm]}"),
    ),
    "a belt that slips wholly": (
        "slip-impossible",
        spec("a b", HAND, "x: {belted: [a, b], diameters: [20 mm, 40 mm], slip: 1}"),
    ),
    "a gear that meshes with itself": (
        "joint-with-itself", spec("a b", HAND, f"x: {meshes('a', 'a')}"),
    ),
    "a belt on one shaft": (
        "drive-locks",
        spec("a b", HAND, "x: {belted: [a, b], diameters: [20 mm, 40 mm]}",
             more="joints:\n  on: {glued: [a.top, b.underside]}\n"),
    ),
    "one name for a joint and a drive": (
        "name-twice",
        spec("a b", HAND, f"x: {meshes('a', 'b')}",
             more="joints:\n  x: {glued: [a.top, b.underside]}\n"),
    ),
    "a mover of a part that turns nothing": (
        "turns-nothing",
        spec("a b c", HAND.replace("[a]", "[c]"), f"x: {meshes('a', 'b')}"),
    ),
    "a mover that stands": (
        "turns-nothing", spec("a b", HAND.replace("60", "0"), f"x: {meshes('a', 'b')}"),
    ),
    "a mover that goes backwards": ("out-of-range", spec("a b", HAND.replace("60", "-60"))),
    "a mover that is not there": ("item-unknown", spec("a b", HAND.replace("[a]", "[nobody]"))),
    "a diametral pitch of nothing": (
        "gear-impossible", spec("a b", HAND, "x: {meshes: [a, b], teeth: [20, 40], dp: 0}"),
    ),
    "a ratchet of one tooth": (
        "gear-impossible", spec("a b", HAND, "x: {ratchets: [a, b], teeth: 1}"),
    ),
    "a slotted wheel of one slot": (
        "linkage-cannot-turn", spec("a b", HAND, "x: {indexes: [a, b], slots: 1}"),
    ),
    "a tackle of forty lines": (
        "tackle-impossible",
        spec("a", HAND, "x: {winds: [a, cord], diameter: 20 mm, rope: 1 mm, load: 1 kg, "
             "lines: 40}", more=CORD),
    ),
    "a planet that holds its mover": (
        "drive-locks",
        spec("a b c d", HAND, "x: {orbits: [a, b, c, d], teeth: [12, 18, 48], held: a}"),
    ),
}  # fmt: skip


def _named(outcome: Outcome) -> dict[str, str]:
    found = {one.code.name: one.help for one in outcome.findings}
    assert not {"plugin-broken", "plugin-failed"} & set(found), outcome.findings
    return {name: text or "" for name, text in found.items()}


@pytest.mark.parametrize("name", WRONG)
def test_what_is_wrong_is_found(name: str, compile_text: Compile) -> None:
    code, text = WRONG[name]
    found = _named(compile_text(text))
    assert code in found
    assert found[code] or code in {"drive-locks", "drive-in-a-ring"}


DRIVES = tuple(sorted(kind.key for kind in kinds() if kind.key != "toothed"))


@pytest.mark.parametrize("kind", DRIVES)
def test_a_drive_with_all_its_fields_missing(kind: str, compile_text: Compile) -> None:
    for ends in ("a", "a, b", "a, b, c, d"):
        outcome = compile_text(spec("a b c d", HAND, f"x: {{{kind}: [{ends}]}}"))
        _named(outcome)
        assert all(one.message for one in outcome.findings)


def test_a_train_of_two_hundred_gears_is_solved_in_time(compile_text: Compile) -> None:
    """The last shaft turns at the product of all ratios: 200 pairs of 20 and 20 teeth."""
    names = " ".join(f"g{number}" for number in range(201))
    lines = (
        f"x{number}: {meshes(f'g{number}', f'g{number + 1}', '20, 20')}" for number in range(200)
    )
    text = spec(names, HAND.replace("[a]", "[g0]"), *lines)
    start = time.monotonic()
    outcome = compile_text(text)
    assert time.monotonic() - start < 30
    _named(outcome)
    assert outcome.design is not None
    last = outcome.design.facts.about(TurningFact, "g200")
    assert last is not None
    assert last.speeds == (60,)
