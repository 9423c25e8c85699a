"""`binder reckon train` and `ratio`: what wheels give, and the wheels for a ratio or a pitch."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from binder.api import (
    Answer,
    Asked,
    NotAskedError,
    NotSizeError,
    Result,
    Workshop,
    asked,
    asked_size,
    reasons,
    unread,
)
from binder_plugins.drive.asking.answering import ratio_of, wheels_of, whole
from binder_trade.gears.trains.change_wheels import pitch_of, screws
from binder_trade.gears.trains.compound import MeshOf, run_train
from binder_trade.gears.trains.search import search

_TRAIN = "18/54 20/60 speed 60"
_RATIO = "1:3.75 wheels 20 25 30 40 50 60 75"
_PAIR = re.compile(r"([0-9]{1,4})[/:]([0-9]{1,4})")
_TPI = re.compile(r"([0-9]{1,3}(?:\.[0-9]{1,3})?) ?tpi")
_MOST_PAIRS = 12


def train_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """Pairs of driver and driven to the speed of the last shaft."""
    given = asked(words, ("speed", "torque"))
    pairs = given.words.get("", "").split()
    found = [_PAIR.fullmatch(pair) for pair in pairs]
    if not 1 <= len(found) <= _MOST_PAIRS or not all(found):
        raise unread(given.words.get("", ""), "no row of driver / driven", f"as `{_TRAIN}`")
    meshes = [MeshOf(int(one[1]), int(one[2])) for one in found if one is not None]
    speed = given.number("speed") or 1.0
    made = run_train(meshes, speed)
    last = made.shafts[-1]
    return Answer(
        f"train of {len(meshes)} pairs" if len(meshes) > 1 else "one pair of gears",
        (
            Result("ratio", float(made.ratio), "", "turns of the last for one of the first"),
            Result("speed", last.rpm, "r/min", "of the last shaft"),
        ),
        reasons(made.steps),
        ("Each pair of outside gears turns the next shaft the other way.",),
    )


def ratio_answer(words: Sequence[str], workshop: Workshop) -> Answer:
    """The best trains for a ratio, or for a pitch on a leadscrew."""
    given = asked(words, ("wheels", "pitch", "leadscrew", "sizes"))
    wheels = _wheels(given, workshop)
    sizes = _sizes(given)
    if "pitch" in given.words:
        return _screw(given, wheels, sizes, workshop)
    wanted = ratio_of(given.words.get("", ""), _RATIO)
    found = search(wanted, wheels, sizes=sizes)
    if not found.trains:
        raise NotAskedError("no train can be made of so few wheels", f"as `{_RATIO}`")
    results = [
        Result(f"train_{number}", float(one.ratio), "", f"{float(one.error) * 1e6:+.1f} ppm off",
               one.name)
        for number, one in enumerate(found.trains, 1)
    ]  # fmt: skip
    return Answer(f"trains for {float(wanted):.6g}", tuple(results), reasons(found.steps))


def _wheels(given: Asked, workshop: Workshop) -> tuple[int, ...]:
    if "wheels" in given.words:
        return wheels_of(given.words["wheels"], _RATIO)
    owned = [lathe.change_wheels for lathe in workshop.entry.machines.lathes.values()]
    found = next((tuple(int(one) for one in row) for row in owned if row), None)
    if found is None:
        raise NotAskedError("no wheels are told, and the workshop has none", f"as `{_RATIO}`")
    return found


def _sizes(given: Asked) -> tuple[int, ...]:
    if "sizes" not in given.words:
        return (2, 4)
    return tuple(whole(one, "number of wheels", "sizes 2 4 6") for one in
                 given.words["sizes"].split())  # fmt: skip


def _pitch(text: str) -> Fraction:
    found = _TPI.fullmatch(text.strip())
    if found:
        return pitch_of(Fraction(found[1]))
    try:
        return asked_size(text, "`pitch 1.5 mm` or `pitch 20 tpi`").amount
    except NotSizeError as fault:
        raise NotAskedError(fault.reason, fault.way_out) from fault


def _screw(
    given: Asked, wheels: tuple[int, ...], sizes: tuple[int, ...], workshop: Workshop
) -> Answer:
    pitch = _pitch(given.words["pitch"])
    leads = [lathe.leadscrew for lathe in workshop.entry.machines.lathes.values()]
    own = next((lead.exact for lead in leads if lead is not None), None)
    lead = _pitch(given.words["leadscrew"]) if "leadscrew" in given.words else own
    if lead is None:
        raise NotAskedError("no leadscrew is told", "add `leadscrew 8 tpi`")
    found = screws(pitch, lead, wheels, sizes=sizes)
    results = [
        Result(f"train_{number}", float(one.pitch_mm), "mm",
               f"{one.error_ppm:+.1f} ppm, {one.per_100_mm:+.4f} mm on 100 mm", one.train.name)
        for number, one in enumerate(found, 1)
    ]  # fmt: skip
    steps = [step for one in found[:1] for step in one.steps]
    return Answer(
        f"change wheels for {float(pitch):.4g} mm on a leadscrew of {float(lead):.4g} mm",
        tuple(results),
        reasons(steps),
        ("First driver on the spindle's stud, last driven wheel on the leadscrew.",),
    )
