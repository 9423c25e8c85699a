"""A workshop's taps, dies and drills to threads that can be cut, told by their shape."""

from __future__ import annotations

from dataclasses import dataclass, field

from binder.api import Workshop
from binder_plugins.threads.found import thread_in
from binder_trade.drills import Drill, NoDrill
from binder_trade.threading import TappingDrill, tapping_drill
from binder_trade.threads import Thread, is_alike

# Blunt to slender: the last tap of a blind hole is the bluntest that there is.
BLUNT_FIRST = ("plug", "second", "taper")
_SOLD = ("metric", "BA", "UNC", "UNF", "BSW", "BSF")


@dataclass(frozen=True, slots=True)
class Shop:
    """What cuts threads here: taps with their kinds, dies, and drills.

    A model taps the same few threads over and over, so what was found out is kept.
    """

    taps: tuple[tuple[Thread, tuple[str, ...]], ...]
    dies: tuple[Thread, ...]
    drills: tuple[Drill, ...]
    _kinds: dict[Thread, tuple[str, ...]] = field(default_factory=dict, repr=False)
    _drills: dict[tuple[Thread, str], TappingDrill | NoDrill] = field(
        default_factory=dict, repr=False
    )

    def tap_kinds(self, thread: Thread) -> tuple[str, ...]:
        """The kinds of tap that cut this thread, bluntest first; none where it cannot be cut."""
        if thread not in self._kinds:
            kinds = {kind for one, owned in self.taps if is_alike(one, thread) for kind in owned}
            self._kinds[thread] = tuple(kind for kind in BLUNT_FIRST if kind in kinds)
        return self._kinds[thread]

    def drill_for(self, thread: Thread, material: str = "") -> TappingDrill | NoDrill:
        """The owned drill for tapping this thread in a material, or why there is none."""
        key = (thread, material)
        if key not in self._drills:
            try:
                self._drills[key] = tapping_drill(thread, self.drills, material=material)
            except NoDrill as refused:
                self._drills[key] = refused
        return self._drills[key]

    def has_die(self, thread: Thread) -> bool:
        """Whether a die cuts this thread, whatever it is called."""
        return any(is_alike(die, thread) for die in self.dies)

    def cuts(self, thread: Thread, *, is_internal: bool) -> bool:
        """Whether one half of a thread can be cut."""
        return bool(self.tap_kinds(thread)) if is_internal else self.has_die(thread)

    @property
    def both_halves(self) -> tuple[Thread, ...]:
        """The threads of which both halves can be had: tap, and die or screws that are sold."""
        return tuple(tap for tap, _ in self.taps if self.has_die(tap) or tap.family in _SOLD)


def shop_of(workshop: Workshop) -> Shop:
    """The cutting tools of a workshop; a name that is no thread is left out."""
    taps = [(thread_in(tap.designation), tap.kinds) for tap in workshop.taps()]
    dies = [thread_in(die.designation) for die in workshop.dies()]
    return Shop(
        taps=tuple((thread, kinds) for thread, kinds in taps if thread is not None),
        dies=tuple(thread for thread in dies if thread is not None),
        drills=tuple(Drill(one.name, float(one.mm), "owned") for one in workshop.drills()),
    )
