"""What a metal is cut with, told once a set-up for the tools that need it most."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from binder_plugins.operations.facts import Act, SetUp
    from binder_plugins.operations.work import Work

# Which act is spoiled, or its tool broken, where it is cut with the wrong thing: a chip that
# welds to a tap, a parting tool that seizes. Common practice, no source.
_TOOLS = {
    "ream": "reamer",
    "tap": "tap",
    "die": "die",
    "chase": "tap",
    "screwcut": "threading tool",
    "part-off": "parting tool",
}
_DRY = "dry"


def wetted(work: Work, setups: Iterable[SetUp]) -> tuple[SetUp, ...]:
    """The set-ups with what their metal is cut with, where an act of theirs asks for it.

    The words are those of the metal's row in `binder_making.cutting`.
    """
    fluid = work.group.cuts.partition(",")[0] if work.group is not None else ""
    return tuple(replace(one, fluid=fluid) if fluid and _tools(one) else one for one in setups)


def wetted_together(works: Iterable[Work], setups: Iterable[SetUp]) -> tuple[SetUp, ...]:
    """The same where one tool goes through several parts: what any of their metals asks for.

    Dry only where none of them wants anything: common practice, no source.
    """
    asked = [one.group.cuts.partition(",")[0] for one in works if one.group is not None]
    wet = next((one for one in asked if one and one != _DRY), "")
    fluid = wet or next((one for one in asked if one), "")
    return tuple(replace(one, fluid=fluid) if fluid and _tools(one) else one for one in setups)


def said(setup: SetUp) -> str:
    """`Cutting oil on the tap and the parting tool`, `The reamer cuts dry`; '' for nothing."""
    tools = _tools(setup)
    if not setup.fluid or not tools:
        return ""
    named = [f"the {one}" for one in tools]
    words = f"{', '.join(named[:-1])} and {named[-1]}" if len(named) > 1 else named[0]
    if setup.fluid == _DRY:
        return f"{words[0].upper()}{words[1:]} cut{'' if len(named) > 1 else 's'} dry"
    return f"{setup.fluid[0].upper()}{setup.fluid[1:]} on {words}"


def _tools(setup: SetUp) -> tuple[str, ...]:
    """The tools of a set-up that are spoken of, each once."""
    acts = [act for act in setup.acts if act.act in _TOOLS and not _is_sawn(act)]
    return tuple(dict.fromkeys(_TOOLS[act.act] for act in acts))


def _is_sawn(act: Act) -> bool:
    """A bar that is too thick for the parting tool is sawn off, and a hacksaw wants nothing."""
    return act.tool == "hacksaw"
