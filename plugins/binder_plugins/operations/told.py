"""An act to the words of its row: in how many cuts, what to mind, by hand or at how many turns."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.words import row

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act

# Where a slip costs the part, or the tool in it, the row says what spoils it.
_RISKY = frozenset({"tap", "part-off", "cut-teeth", "screwcut", "silver-solder", "braze", "weld"})
_BY_HAND = frozenset({"tap", "die", "chase", "ream"})
_BY_POWER = "under power, with oil; reverse it out"


def turns(act: Act) -> str:
    """Its r/min, or that it is turned by hand."""
    return act.speed or ("by hand" if act.act in _BY_HAND else "")


def minded(act: Act) -> str:
    """What is added to what is done: cuts, how deep they go, and what spoils it."""
    return "".join(f"; {one}" for one in (_cut(act), _power(act), _mind(act)) if one)


def _cut(act: Act) -> str:
    if act.by_motor:
        held = "as light as the motor asks" if act.act == "drill" else "no deeper: the motor"
        return f"in {act.cuts} cuts, {held}" if act.cuts > 1 else held
    return f"in {act.cuts} cuts" if act.cuts > 1 else ""


def _power(act: Act) -> str:
    return _BY_POWER if act.act == "tap" and act.speed else ""


def _mind(act: Act) -> str:
    """What was found for this very act, else what usually spoils a risky one."""
    is_own = act.spoils and act.spoils != row(act.act)["spoils"]
    return f"mind: {act.spoils}" if is_own or act.act in _RISKY else ""
