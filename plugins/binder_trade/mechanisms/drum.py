"""A winding drum, its rope and its falls to turns, layers and the force on the crank."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, mm, not_negative, positive, within
from binder_trade.fits.printed import figures

LAYERS: Final = "layers one rope thick, mean diameter D + (2 k − 1) d"
TACKLE: Final = "each sheave passes on its efficiency: W = P (η + η² + … over the falls)"


@dataclass(frozen=True, slots=True)
class Layer:
    """One layer of rope on a drum: turns, and the diameter at the rope's middle in mm."""

    turns: float
    diameter_mm: float


@dataclass(frozen=True, slots=True)
class Drum:
    """A drum with its rope wound on; mm. `turns` includes those that stay on.

    `flange_mm` is the least diameter of the flanges; `is_too_thin` says that the rope is bent
    more sharply than is usual.
    """

    layers: tuple[Layer, ...]
    turns: float
    rope_mm: float
    flange_mm: float
    least_core_mm: float
    is_too_thin: bool
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Tackle:
    """Falls of rope between two blocks, the efficiency of a sheave, and fixed sheaves before them.

    The falls hang between a fixed and a moving block and the rope comes off the fixed one,
    whose last sheave counts as the first lead.
    """

    falls: int = 1
    sheave: float = 0.94
    leads: int = 1


PLAIN: Final = Tackle()


@dataclass(frozen=True, slots=True)
class Hoist:
    """What it takes to raise a load; forces in N, torque in N mm.

    `holding_n` is what the crank must hold, friction left out, so that the load hangs still;
    `turns_per_metre` of lift. `velocity_ratio` is travel of the handle over that of the load.
    """

    rope_n: float
    drum_nmm: float
    handle_n: float
    holding_n: float
    turns_per_metre: float
    velocity_ratio: float
    efficiency: float
    steps: tuple[Step, ...]


def drum(
    core_mm: float,
    width_mm: float,
    rope_mm: float,
    length_mm: float,
    rope_kind: str = "laid cord",
    dead_turns: float | None = None,
) -> Drum:
    """How a length of working rope lies on a drum; mm. Two turns more stay on.

    Raises NotDefined for rope that no ten layers hold. Source: `LAYERS`.
    """
    core, width = positive(core_mm, "the drum"), positive(width_mm, "the width of the drum")
    rope, length = positive(rope_mm, "the rope"), positive(length_mm, "the length of rope")
    each = math.floor(width / rope + 1e-9)
    if each < 1:
        raise NotDefined("the rope is thicker than the drum is wide", "widen the drum")
    stays = (
        _data()["dead_turns"]["least"] if dead_turns is None else not_negative(dead_turns, "turns")
    )
    layers = _wound(core, each, rope, length, stays)
    least = least_core(rope, rope_kind)
    outside = layers[-1].diameter_mm + rope
    flange = outside + 2 * _data()["flange"]["above"] * rope
    turns = sum(layer.turns for layer in layers)
    steps = (
        Step("turns in a layer", "width / rope, whole", str(each), LAYERS),
        Step("layers", "until the rope is on", str(len(layers)), LAYERS),
        Step(
            "turns", f"with {stays:g} that stay on", f"{turns:.1f}", _data()["dead_turns"]["source"]
        ),
        Step("flange", "last layer + 2 ropes each side", mm(flange), _data()["flange"]["source"]),
        Step("least drum", "ratio × rope − rope", mm(least), _rope(rope_kind)["source"]),
    )
    return Drum(layers, turns, length, flange, least, core < least - 1e-9, steps)


def least_core(rope_mm: float, rope_kind: str) -> float:
    """The least diameter in mm of a drum or sheave for this rope, at the floor of its groove."""
    rope = positive(rope_mm, "the rope")
    return float(_rope(rope_kind)["ratio"] * rope - rope)


def rope_kinds() -> tuple[str, ...]:
    """The kinds of rope whose least drum is kept."""
    return tuple(_data()["ropes"])


def least_lead(width_mm: float, *, grooved: bool = False) -> tuple[float, str]:
    """How far, mm, the first sheave stands off a drum of this width, with the source."""
    rule = _data()["fleet"]
    angle = math.radians(rule["grooved" if grooved else "smooth"])
    return positive(width_mm, "the width of the drum") / 2 / math.tan(angle), rule["source"]


def tackle_pull(load_n: float, tackle: Tackle = PLAIN) -> float:
    """The pull in N on the rope behind the leading sheaves. Source: `TACKLE`."""
    load = amount(load_n, "the load in N")
    count = int(within(tackle.falls, 1, 12, "the number of falls"))
    share = within(tackle.sheave, 0.5, 1, "the efficiency of a sheave")
    fixed = int(within(tackle.leads, 0, 12, "the number of leading sheaves"))
    return load / sum(share**each for each in range(count)) / share**fixed


def hoist(
    load_n: float,
    drum_mm: float,
    crank_mm: float,
    *,
    gear: float = 1.0,
    tackle: Tackle = PLAIN,
    train: float = 0.9,
) -> Hoist:
    """A load on a drum turned by a crank; N, mm. `drum_mm` is at the rope's middle.

    `gear` is turns of the crank for one of the drum, `train` the efficiency from crank to drum.
    Raises NotDefined. Source: `TACKLE`, statics.
    """
    size, arm = positive(drum_mm, "the drum"), positive(crank_mm, "the crank")
    ratio = amount(gear, "the ratio of the crank to the drum")
    share = within(train, 0.05, 1, "the efficiency of the train")
    pull = tackle_pull(load_n, tackle)
    torque = pull * size / 2
    handle = torque / ratio / share / arm
    turns = 1000 * tackle.falls * ratio / (math.pi * size)
    velocity = 2 * arm * ratio * tackle.falls / size
    told = f"falls: {tackle.falls}, leading sheaves: {tackle.leads}"
    steps = (
        Step("pull on the rope", told, figures(pull, "N"), TACKLE),
        Step("torque of the drum", "pull × D / 2", figures(torque, "N mm"), "statics"),
        Step("force on the crank", "torque / (gear × η × crank)", figures(handle, "N"), "statics"),
        Step("turns for a metre", "1000 × falls × gear / π D", f"{turns:.2f}", "geometry"),
    )
    efficiency = load_n / velocity / handle
    return Hoist(pull, torque, handle, load_n / velocity, turns, velocity, efficiency, steps)


def _wound(core: float, each: int, rope: float, length: float, stays: float) -> tuple[Layer, ...]:
    layers: list[Layer] = []
    left = length
    for number in range(1, 11):
        middle = core + (2 * number - 1) * rope
        held = min(stays, each) if number == 1 else 0.0
        free = min(each - held, left / (math.pi * middle))
        layers.append(Layer(held + free, middle))
        left -= free * math.pi * middle
        if left <= 1e-6:
            return tuple(layers)
    raise NotDefined(
        f"{length:g} mm of rope do not go on this drum in ten layers",
        "take a wider or thicker drum, or thinner rope",
    )


def _rope(kind: str) -> Mapping[str, Any]:
    rows: Mapping[str, Any] = _data()["ropes"]
    if kind not in rows:
        raise NotDefined(f"no rope “{kind[:40]}” is kept here", "one of: " + ", ".join(rows))
    row: Mapping[str, Any] = rows[kind]
    return row


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.mechanisms", "hoist.yaml")
    return data
