"""Stress area and class turned into what a screw holds, as an order of magnitude only."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.fastening.steps import step

DEFERS: Final = (
    "an order of magnitude for a model; where people or a vessel depend on it, have it designed "
    "by a competent person"
)
_SHARE_USED: Final = 0.1


@dataclass(frozen=True, slots=True)
class StrengthNote:
    """The proof load of one screw and the share that a load takes of all of them."""

    proof_n: float
    share: float | None
    says: str
    steps: tuple[Step, ...]
    defers: str = DEFERS


def strength_note(
    stress_area_mm2: float, proof_mpa: float, count: int = 1, load_n: float | None = None
) -> StrengthNote:
    """Proof load = As × Sp (ISO 898-1), shared evenly; N; raises NotDefined."""
    if count < 1:
        raise NotDefined("no screw holds nothing", "give one screw or more")
    proof = positive(stress_area_mm2, "a stress area") * positive(proof_mpa, "a proof stress")
    steps = [step("proof load of one", "stress area × proof stress", f"{proof:.0f} N", "ISO 898-1")]
    if load_n is None:
        return StrengthNote(proof, None, f"each is proved to about {_round(proof)} N", tuple(steps))
    share = positive(load_n, "a load") / (count * proof)
    steps.append(step("share of the proof load", "load / (number × proof load)", f"{share:.1%}"))
    size = "a small part" if share <= _SHARE_USED else "a good part"
    if share > 1:
        size = "more than all"
    says = f"the load is {size} ({share:.0%}) of what {count} screws are proved to"
    return StrengthNote(proof, share, says, tuple(steps))


def _round(newtons: float) -> str:
    """Two figures are more than is known."""
    return f"{float(f'{newtons:.2g}'):.0f}"
