"""Holes in which a tail is riveted to the line of their callout that tells how they are sunk."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder_plugins.drawings.callouts import bare
from binder_solid.tail_end import tail_end

if TYPE_CHECKING:
    from collections.abc import Mapping

    from binder.api import Design, HalfFact
    from binder_solid.facts import FormFact

_SUNK = re.compile(r"mouth countersunk (⌀.+? × [\d.]+°)")


def sunk_lines(fact: FormFact, halves: Mapping[str, HalfFact], design: Design) -> dict[str, str]:
    """By the name of the hole: how wide its far mouth is sunk, and on which face that is."""
    found: dict[str, str] = {}
    for one in fact.located:
        half = halves.get(one.name)
        sunk = _SUNK.search(half.what) if half is not None else None
        if half is not None and sunk is not None:
            face = tail_end(fact.subject, one, half.mate.partition(".")[0], design)
            found[one.name] = bare(f"countersunk {sunk[1]} on the {face or 'outer face'}")
    return found
