"""Says why a thread is not made and which is the nearest that is."""

from __future__ import annotations

from typing import Final

from binder_trade.threads.basic import INCH
from binder_trade.threads.inches import is_close, spoken, spoken_number
from binder_trade.threads.series import all_threads
from binder_trade.threads.thread import NotMade, Thread

_SISTERS: Final = (("UNC", "UNF", "UNEF", "UNS"), ("BSW", "BSF", "ME", "brass"))


def refuse_value(what: str) -> NotMade:
    """For a diameter, pitch or count that is nought, negative or no number."""
    return NotMade(f"the {what} is no size that can be cut", f"write the {what} as a plain number")


def refuse_two_pitches(pitch_mm: float, other_mm: float) -> NotMade:
    """For a pitch and a count of threads that contradict each other."""
    return NotMade(
        f"a pitch of {pitch_mm:.4g} mm is not {INCH / other_mm:g} to the inch",
        "state the pitch or the threads to the inch, not both",
    )


def refuse_number(family: str, number: str) -> NotMade:
    """For a numbered size that its family has not."""
    listed = all_threads(family)
    return NotMade(
        f"there is no size no. {number[:20]} of {family}",
        f"sizes run from {listed[0].designation} to {listed[-1].designation}",
    )


def refuse_size(family: str, major_mm: float | None, number: str) -> NotMade:
    """For a diameter or number that the family does not list; names the neighbours."""
    listed = all_threads(family)
    if major_mm is None:
        reason = f"no {family} thread is called {number[:20]!r}" if number else "no size is stated"
        return NotMade(
            reason, f"sizes run from {listed[0].designation} to {listed[-1].designation}"
        )
    near = _neighbours(listed, major_mm)
    return NotMade(f"nobody makes {_called(family, major_mm)}", f"the nearest is {_or(near)}")


def refuse_pitch(
    of_size: tuple[Thread, ...], pitch_mm: float | None, *, asked: Thread | None = None
) -> NotMade:
    """For a pitch that a diameter is not made with; names those that it is made with."""
    first = of_size[0]
    called = _called(first.family, first.major_mm)
    made = f"write {_or(of_size)}"
    if pitch_mm is None:
        return NotMade(f"{called} has no usual pitch", made)
    if asked is not None:
        return NotMade(f"{asked.designation} is not a special: {first.family} has it", made)
    sister = _sister(first, pitch_mm)
    way_out = f"{sister.designation} has that pitch; or {made}" if sister else made
    return NotMade(f"nobody makes {called} with {_pitch(first, pitch_mm)}", way_out)


def _pitch(of: Thread, pitch_mm: float) -> str:
    if of.family in {"metric", "BA"}:
        return f"a pitch of {pitch_mm:.4g} mm"
    return f"{INCH / pitch_mm:.4g} threads to the inch"


def _called(family: str, major_mm: float) -> str:
    if family == "metric":
        return f"M{major_mm:.6g}"
    number = spoken_number(major_mm) if family.startswith("UN") else None
    size = spoken(major_mm)
    if number is not None:
        return f"no. {number} {family}"
    return f"{size} in {family}" if size else f"{major_mm:.5g} mm {family}"


def _sister(of: Thread, pitch_mm: float) -> Thread | None:
    """The thread of the same form and size that has the pitch in another series."""
    for families in _SISTERS:
        if of.family in families:
            for family in families:
                for one in all_threads(family):
                    if is_close(one.major_mm, of.major_mm) and is_close(one.pitch_mm, pitch_mm):
                        return one
    return None


def _neighbours(listed: tuple[Thread, ...], major_mm: float) -> tuple[Thread, ...]:
    """The usual threads next below and next above a diameter."""
    usual = [one for one in listed if one.is_coarse] or list(listed)
    below = [one for one in usual if one.major_mm < major_mm][-1:]
    above = [one for one in usual if one.major_mm > major_mm][:1]
    return (*below, *above)


def _or(threads: tuple[Thread, ...]) -> str:
    names = [one.designation for one in threads]
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} or {names[-1]}"
