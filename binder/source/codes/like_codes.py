"""Faults of parts that are told by their likeness to another."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

LIKE_UNKNOWN = Code(
    "like-unknown",
    Severity.ERROR,
    meaning="`like:` names a part that is not there.",
    bench="There is nothing to take the sizes from.",
    example="parts:\n  long_bush: {like: bsuh}",
    remedy="Take the name that is offered, or write the part out.",
)
LIKE_RING = Code(
    "like-ring",
    Severity.ERROR,
    meaning="Parts are told by `like:` in a ring, or one after the other in a long chain.",
    bench="None of a ring has a size to begin with, and nobody can follow a chain on paper.",
    example="parts:\n  left: {like: right}\n  right: {like: left}",
    remedy="Write one of them out, and let the others be like it.",
)
MIRRORED_ALONE = Code(
    "mirrored-alone",
    Severity.ERROR,
    meaning="A part is `mirrored`, and is not like any other.",
    bench="It cannot be told whose opposite hand it is.",
    example="parts:\n  right_cheek: {mirrored: true, material: brass}",
    remedy="Name the part under `like:`, or write `handed: true` for a pair of both hands.",
)
LIKE_NOTHING_THERE = Code(
    "like-nothing-there",
    Severity.ERROR,
    meaning="A part changes or leaves out what the part that it is like does not have.",
    bench="A step or feature that is misspelt would stay as it was, in silence.",
    example="parts:\n  bush: {features: {oil: {drilled: 1 mm}}}\n"
    "  plain_bush: {like: bush, features: {oyl: left out}}",
    remedy="Take the name of a step or feature of the other part.",
)
