"""Designations of screws turned into a line on what each is proved to."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from binder_plugins.fasteners.asking import thread_of
from binder_trade.explained import NotDefined
from binder_trade.fastening import read_fastener, strength_note
from binder_trade.threads import NotMade, Thread, property_class

_CLASS: Final = "4.8"
SOURCE: Final = (
    "stress area × proof stress of class 4.8, ISO 898-1: an order of magnitude for a model; where "
    "people or a vessel depend on it, have it designed by a competent person"
)


def proved(whats: Iterable[str]) -> list[str]:
    """`M3: each is proved to about 1600 N` for each thread, thin to thick."""
    threads: dict[str, Thread] = {}
    for what in whats:
        try:
            name = read_fastener(what)
            thread = thread_of(name)
        except (NotDefined, NotMade):
            continue
        if thread is not None and name.kind in ("screw", "bolt", "stud"):
            threads[thread.designation] = thread
    ranked = sorted(threads.values(), key=lambda one: one.major_mm)
    return [f"{thread.designation}: {_line(thread)}" for thread in ranked]


def _line(thread: Thread) -> str:
    proof = property_class(_CLASS, thread.major_mm).proof_mpa
    return strength_note(thread.stress_area_mm2, proof).says
