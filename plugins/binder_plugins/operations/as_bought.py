"""Bar that is bought at the finished size: said, since nothing is left on it to turn true."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.lengthwise import is_turned

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact

_TOOTHED = frozenset({"gear", "ratchet", "sprocket"})


def left_as_bought(work: Work, form: FormFact) -> str:
    """What stays as the bar came; that of teeth is trued first, since they follow the bore.

    Drawn rod is bought to be left so, and its joints say it.
    """
    if work.stock_form != "round bar":
        return ""
    kept = [one for one in form.stretches if not one.corners and not is_turned(one, work)]
    kept = [one for one in kept if abs(one.across - work.stock_across) < 1e-6]
    if not kept:
        return ""
    names = " and the ".join(one.name.replace("_", " ") or "outside" for one in kept)
    stays = "stays" if len(kept) == 1 else "stay"
    said = f"; the {names} {stays} ⌀{work.mm(work.stock_across)} as bought"
    is_toothed = any(one.kind in _TOOTHED for one in form.located) or any(
        one.kind == "toothed" for one in work.item.features
    )
    if not is_toothed:
        return said
    return f"{said}: run it true by the indicator first, the teeth are true to the bore alone"
