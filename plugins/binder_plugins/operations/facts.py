"""What the plugin works out: acts, the set-ups that they stand in, and the route of a part."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import NOWHERE, Fact, Span


@dataclass(frozen=True, slots=True)
class Act:
    """One act as the leaf prints it: `what` with its size and limits, with what, how fast.

    `act`, `tags`, `meets` and `end` are in the words of `binder_making.operation`. `ready`,
    `run` and `alone` are minutes: getting ready, doing it, and passing by itself. `lower` and
    `upper` are limits in mm, `size` the diameter that is cut, `deep` how deep, both in mm; `cuts`
    in how many it is done, 0 where that is not known, `by_motor` whether the motor holds it back.
    `trouble` names a code of the plugin and says why it is reported. `aid_mm` is how long a tool
    made for it must be, in mm, 0 where nothing asks; `is_entered` that a neck is so wide that the
    tool which begins in it goes down to its bottom.
    """

    id: str
    act: str
    what: str
    feature: str = ""
    tool: str = ""
    speed: str = ""
    feed: str = ""
    ready: float = 0.0
    run: float = 0.0
    alone: float = 0.0
    measure: str = ""
    spoils: str = ""
    end: str = ""
    tags: frozenset[str] = frozenset()
    meets: tuple[str, ...] = ()
    joints: tuple[str, ...] = ()
    lower: float | None = None
    upper: float | None = None
    size: float = 0.0
    deep: float = 0.0
    cuts: int = 0
    by_motor: bool = False
    trouble: tuple[tuple[str, str], ...] = ()
    aid_mm: float = 0.0
    is_entered: bool = False
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class Grip:
    """How work is held: by `holder` of a `kind` (chuck, collet, vice ...), `on` which surface.

    `across` is the gripped size, `long` how much of it is gripped, and `stand_out` what stands
    out of the jaws, all in mm; `support` is what carries the far end. `jaws` tells where the
    jaws are along a turned part, `land` where a steady runs on it or a
    clamp lies, `free` which end is free.
    """

    holder: str
    kind: str
    on: str
    across: float = 0.0
    long: float = 0.0
    stand_out: float = 0.0
    support: str = ""
    jaws: tuple[float, float] = (0.0, 0.0)
    free: str = ""
    land: tuple[float, float] = (0.0, 0.0)


@dataclass(frozen=True, slots=True)
class SetUp:
    """One gripping: machine (nothing at the bench), grip, datum, what must be true, and the acts.

    `place` is lathe, mill, drill, saw or bench; `until` says when it may be taken out;
    `minutes` is for mounting it. `at_once` pieces are worked in one gripping; in a stick the
    bar stays in the lathe while one piece after another is parted off it. `fluid` is what the
    metal is cut with, as `cutting oil` or `dry`; '' where that is not known.
    """

    number: int
    place: str
    machine: str
    grip: Grip
    datum: str
    acts: tuple[Act, ...]
    true: str = ""
    until: str = ""
    minutes: float = 0.0
    at_once: int = 1
    is_stick: bool = False
    fluid: str = ""

    @property
    def name(self) -> str:
        """`1`, as its acts are numbered."""
        return str(self.number)


@dataclass(frozen=True, slots=True)
class Left:
    """What a part leaves for a joint: `said` with how, the `title` of that work, and its leaf."""

    said: str
    title: str
    leaf: str


def leaf_id(task: str) -> str:
    """The id of the section that tells the work of a task on parts put together."""
    return f"together-{'-'.join(task.split())}"


@dataclass(frozen=True, slots=True)
class Route(Fact):
    """How an item is made: its set-ups in order; `left` is what waits for a joint.

    The subject is the item, or the task in which parts are worked together.

    `count` is how many are made for one model; `trouble` are codes and reasons for the whole.
    """

    title: str
    setups: tuple[SetUp, ...]
    count: int = 1
    left: tuple[Left, ...] = ()
    trouble: tuple[tuple[str, str], ...] = ()
    at: Span = NOWHERE

    @property
    def acts(self) -> tuple[Act, ...]:
        """All acts in order."""
        return tuple(act for setup in self.setups for act in setup.acts)
