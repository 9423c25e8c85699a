"""What reads the sizes of a set-up for which no gauge is told."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import parse_size

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design
    from binder_plugins.operations.facts import Act, SetUp

# Acts whose size is read even where no limit asks for a gauge; and those that tell it in words.
_TO_SIZE = frozenset({"turn", "face", "bore", "taper", "groove", "mill", "step", "file"})
_IN_WORDS = frozenset({"file", "square", "flatten"})
_ONE = r"⌀?\d[\d./]*(?: \d+/\d+)? (?:mm|in)"
_TOLD = re.compile(rf"\bto ({_ONE}(?: × {_ONE})*)")
_SIZE = re.compile(r"\d[\d./]*(?: \d+/\d+)? (?:mm|in)")


def readers(setup: SetUp, design: Design) -> tuple[str, ...]:
    """The instruments, each once: for a size in words the one for most kinds that reaches it.

    A size that none reaches is left to the steel rule, which stands among the tools of sawing.
    """
    able = [one for one in design.workshop.instruments() if "outside" in one.measures]
    able.sort(key=lambda one: (len(one.measures), one.most), reverse=True)
    found: list[str] = []
    for act in setup.acts:
        if act.measure:
            continue
        if act.act in _TO_SIZE and act.size and able:
            found.append(able[0].name)
        for size in _told(act):
            found += [one.name for one in able if float(one.most) >= size][:1]
    return tuple(dict.fromkeys(found))


def _told(act: Act) -> Iterator[float]:
    """The sizes in mm that its words bring the work to."""
    for run in _TOLD.findall(act.what) if act.act in _IN_WORDS else ():
        for one in _SIZE.findall(run):
            yield float(parse_size(one).amount)
