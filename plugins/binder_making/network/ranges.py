"""Three guesses of each time to the chance that the whole is done by a day.

Source: PERT, mean (o + 4 m + p)/6 and variance ((p − o)/6)², the activities independent, the
length of the critical path taken as normal. It is too hopeful where other paths are nearly as
long.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from binder_making.network.path import Activity, Network, critical_path
from binder_trade.explained import NotDefined


@dataclass(frozen=True, slots=True)
class Guess:
    """The shortest, the likeliest and the longest time, of one unit."""

    least: float
    likely: float
    most: float

    @property
    def mean(self) -> float:
        """The time to reckon with."""
        return (self.least + 4 * self.likely + self.most) / 6

    @property
    def variance(self) -> float:
        """The square of the standard deviation."""
        return ((self.most - self.least) / 6) ** 2


@dataclass(frozen=True, slots=True)
class Outlook:
    """The network of the means, and the spread of its length.

    `deviation` is the standard deviation along the critical path; of several the widest.
    """

    network: Network
    mean: float
    variance: float

    @property
    def deviation(self) -> float:
        """The standard deviation of the length."""
        return math.sqrt(self.variance)

    def chance_by(self, deadline: float) -> float:
        """The chance, 0 to 1, that the whole is done by then."""
        if not self.variance:
            return 1.0 if deadline >= self.mean else 0.0
        return 0.5 * (1 + math.erf((deadline - self.mean) / (self.deviation * math.sqrt(2))))


def outlook(guesses: Mapping[str, Guess], after: Mapping[str, Sequence[str]]) -> Outlook:
    """The outlook of activities by their guesses and what each waits for.

    Raises `NotDefined` where a guess is not in rising order, and as `critical_path`.
    """
    for name, guess in guesses.items():
        if not guess.least <= guess.likely <= guess.most:
            raise NotDefined(
                f"the guesses for '{name}' do not rise", "give shortest, likeliest, longest"
            )
    net = critical_path(
        [Activity(name, one.mean, tuple(after.get(name, ()))) for name, one in guesses.items()]
    )
    return Outlook(net, net.length, _widest(net, guesses, after))


def _widest(
    net: Network, guesses: Mapping[str, Guess], after: Mapping[str, Sequence[str]]
) -> float:
    """The greatest variance of a critical chain that reaches the end."""
    so_far: dict[str, float] = {}
    for name in net.critical:
        start = net.times[name].early_start
        before = [
            so_far[one]
            for one in after.get(name, ())
            if one in so_far and math.isclose(net.times[one].early_finish, start, abs_tol=1e-9)
        ]
        so_far[name] = guesses[name].variance + max(before, default=0.0)
    ends = [
        spread
        for name, spread in so_far.items()
        if math.isclose(net.times[name].early_finish, net.length, abs_tol=1e-9)
    ]
    return max(ends, default=0.0)
