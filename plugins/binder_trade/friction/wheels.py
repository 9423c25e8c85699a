"""Two wheels pressed together to what they carry by friction before they slip."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, positive, within
from binder_trade.fits.printed import figures

COULOMB: Final = "Coulomb friction, F = μ N / margin"


@dataclass(frozen=True, slots=True)
class FrictionDrive:
    """A pair of wheels; forces in N, torques in N mm. `ratio` is driven turns for one driver turn.

    `press_n` is the push between shafts that carries the torque; None of `per_mm_use` means
    that the face was not given.
    """

    ratio: float
    friction: float
    pull_n: float
    press_n: float
    per_mm_use: float | None
    steps: tuple[Step, ...]


def pairs() -> tuple[str, ...]:
    """The pairs of materials that are kept."""
    return tuple(_data()["rows"])


def friction_drive(
    driver_mm: float,
    driven_mm: float,
    torque_nmm: float,
    pair: str,
    face_mm: float | None = None,
    groove_deg: float = 180.0,
) -> FrictionDrive:
    """The push that carries a torque on the driver, with a margin of a half; N, N mm.

    Least friction of the pair is taken. With grooved rims the included angle of the groove
    wedges. Raises NotDefined for another pair. Source: `COULOMB`; figures of the pair.
    """
    one, two = positive(driver_mm, "the driver's diameter"), positive(driven_mm, "the driven wheel")
    rows = _data()["rows"]
    if pair not in rows:
        raise NotDefined(f"no friction known for “{pair[:40]}”", "one of: " + ", ".join(rows))
    row, margin = rows[pair], _data()["margin"]["least"]
    half = math.radians(within(groove_deg, 20, 180, "the angle of the groove", "°") / 2)
    mu = row["friction"][0]
    pull = amount(torque_nmm, "the torque in N mm") / (one / 2)
    press = pull * margin * math.sin(half) / mu
    use = None if face_mm is None else press / positive(face_mm, "the face") / row["per_mm"]
    steps = (
        Step("force at the rims", "torque / radius", figures(pull, "N"), COULOMB),
        Step(
            "push between the wheels",
            f"{margin:g} × force × sin(half groove) / {mu:g}",
            figures(press, "N"),
            _data()["source"],
        ),
    )
    return FrictionDrive(one / two, mu, pull, press, use, steps)


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.friction", "pairs.yaml")
    return data
