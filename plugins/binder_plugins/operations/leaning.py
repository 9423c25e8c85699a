"""Helical, bevel and worm teeth: how they are cut here, or that they cannot be."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import TYPE_CHECKING

from binder.api import LeaningFact
from binder_plugins.operations.bench import divider, mill_for
from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.form_cutters import form_cutter_name
from binder_plugins.operations.set_up import set_up
from binder_trade.gears.dividing.owned import divided
from binder_trade.gears.trains.change_wheels import screws

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning

_INCH = 25.4
# Minutes for a tooth with its indexing: a bevel is gone round three times, a worm wheel is gashed
# and then hobbed. The diameter of a gear cutter in mm. Common practice, no source.
_BEVEL_MIN, _WHEEL_MIN, _CUTTER_MM = 6.0, 3.0, 50.0
# A worm whose lead is off by more than this part of itself binds in a wheel of its module.
_LEAD_OFF = 1e-3
# The share of its depth to which a worm wheel is gashed: the hob takes the rest. Common practice.
_GASHED = 0.9


@dataclass(frozen=True, slots=True)
class Held:
    """How the blank is held, what the sizes go by, and what must be true."""

    grip: Grip
    datum: str
    true: str

    @property
    def round(self) -> str:
        """What must run true, without how the axis of plain teeth lies."""
        return self.true.partition(";")[0]


def leaning_of(turning: Turning) -> tuple[LeaningFact, ...]:
    """The leaning teeth of a part, one for each drive."""
    facts = turning.work.design.facts.all(LeaningFact)
    return tuple(one for one in facts if one.subject == turning.work.name)


def leaning_setups(turning: Turning, number: int, held: Held) -> Iterator[SetUp]:
    """One set-up for each; what is amiss stands on the route."""
    for one in leaning_of(turning):
        yield _CUT[one.kind](turning, one, number, held)
        number += 1


def _said(turning: Turning, one: LeaningFact) -> str:
    if one.is_dp:
        return f"{_INCH / one.module:.4g} DP"
    return f"module {turning.work.mm(one.module)}"


def _cutter(turning: Turning, one: LeaningFact) -> str:
    """The cutter of the set, by the teeth that it sees and not by those that are cut."""
    said = _said(turning, one)
    seen = int(one.seen) if math.isfinite(one.seen) else 1000
    return form_cutter_name(turning.work, said, one.module, seen, is_inch=one.is_dp)


def _act(turning: Turning, one: LeaningFact, words: str, machine: str, tool: str) -> Act:
    act = turning.work.act(
        "cut-teeth",
        words,
        machine=machine,
        feature=_feature(turning),
        tool=tool,
        size=_CUTTER_MM,
        tags=("indexed",),
    )
    joints = tuple(dict.fromkeys((*act.joints, one.joint)))
    return replace(act, deep=one.depth, joints=joints)


def _feature(turning: Turning) -> str:
    own = (one.name for one in turning.work.item.features if one.kind == "toothed")
    return next(own, "teeth")


def _index(turning: Turning, count: int) -> str:
    how = divided(count, turning.work.design.workshop.dividers())
    return f"; {how}" if how else ""


def _helical(turning: Turning, one: LeaningFact, number: int, held: Held) -> SetUp:
    """No table that turns the head as it goes is known of any workshop file: they are sent out."""
    mm = turning.work.mm
    said = f"{one.count} helical teeth of '{turning.work.name}', a lead of {mm(one.lead)}"
    why = "want a dividing head geared to the table of the mill, which no shop file tells of"
    turning.trouble.append(("helix-not-cut-here", f"{said}, {why}"))
    words = (
        f"have {one.count} teeth cut, {_said(turning, one)} normal, helix {one.angle:.4g}°, "
        f"{one.hand}, lead {mm(one.lead)}, {mm(one.depth)} deep, by the cutter for "
        f"{one.seen:.1f} teeth; the blank goes with its bore or shank finished, and with this line"
    )
    act = _act(turning, one, words, "", "a shop that cuts helical gears")
    return set_up(number, "bench", "", Grip("by hand", "hand", "the blank"), held.datum, [act])


def _bevel(turning: Turning, one: LeaningFact, number: int, held: Held) -> SetUp:
    """Three times round: through the middle, then each flank of the large end.

    Turned back by a quarter of a tooth, the blank's small end goes aside by a quarter of its
    pitch, π m_i / 4; the cutter follows by so much, and takes π (m − m_i) / 4 off the flank of
    the large end, which is what the space there is wider by. Geometry of the cone.
    """
    work, workshop = turning.work, turning.work.design.workshop
    mill, mm = mill_for(workshop), work.mm
    if not mill or not divider(workshop):
        words = f"the bevel teeth of '{work.name}' are milled by dividing, and that is not owned"
        turning.trouble.append(("no-machine-for-it", words))
    aside, space = (mm(round(math.pi * one.inner_module / part, 2)) for part in (4, 2))
    words = (
        f"set the axis at {one.angle:.2f}° to the travel of the table, so that the foot of the "
        f"teeth lies along it; with a cutter no thicker at the pitch line than {space} cut "
        f"{one.count} bevel teeth through the middle, "
        f"{mm(one.depth)} deep at the large end{_index(turning, one.count)}; then turn the blank "
        f"by {90 / one.count:.3g}°, shift it {aside} back till the cutter just passes the small "
        "end, and go round once more for one flank; the other way, twice as far, for the "
        f"other; last "
        "file the tips of the small ends till it rolls with its mate"
    )
    act = _act(turning, one, words, mill, _cutter(turning, one))
    spoils = "turning and shifting the same way: the tooth comes out thin"
    act = replace(act, run=_BEVEL_MIN * one.count, spoils=spoils)
    return _milled(mill, number, held, act)


def _worm(turning: Turning, one: LeaningFact, number: int, held: Held) -> SetUp:
    """Screwcut by change wheels to the lead; the starts one after another."""
    work, mm = turning.work, turning.work.mm
    lathe = work.design.workshop.entry.machines.lathes.get(turning.lathe)
    train = ""
    if lathe is not None and lathe.leadscrew is not None and lathe.change_wheels:
        wheels = [int(wheel) for wheel in lathe.change_wheels]
        lead = Fraction(one.lead).limit_denominator(10**6)
        found = screws(lead, lathe.leadscrew.exact, wheels)
        if found and abs(found[0].error_ppm) <= _LEAD_OFF * 1e6:
            train = f" by {found[0].train.name}"
    if not train:
        words = f"the lead of {mm(one.lead)} of '{work.name}' comes from no change wheels here"
        turning.trouble.append(("no-machine-for-it", words))
    starts = (
        f", {one.count} starts, the work turned {360 / one.count:g}° between"
        if one.count > 1
        else ""
    )
    words = (
        f"screwcut the worm, {one.hand}: lead {mm(one.lead)}{train}{starts}, {mm(one.depth)} deep, "
        f"the thread {mm(one.long)} long at the least"
    )
    across = one.outside[0]
    act = work.act(
        "screwcut",
        words,
        machine=turning.lathe,
        feature=_feature(turning),
        tool=f"threading tool ground to {2 * one.pressure:g}°, its end flat",
        size=across,
        amount=one.long * one.count,
        end=turning.plan.free,
    )
    joints = tuple(dict.fromkeys((*act.joints, one.joint)))
    act = replace(act, deep=one.depth, joints=joints)
    grip = replace(held.grip, holder=held.grip.holder.partition(" on ")[0], kind="chuck")
    return set_up(
        number, "lathe", turning.lathe, grip, "the axis", [act], "the outside within 0.02 mm"
    )


def _wheel(turning: Turning, one: LeaningFact, number: int, held: Held) -> SetUp:
    """Gashed at the lead angle, then hobbed free, at the distance that it will run at."""
    work, workshop = turning.work, turning.work.design.workshop
    mill, mm = mill_for(workshop), work.mm
    if not mill or not divider(workshop):
        words = f"the teeth of '{work.name}' are gashed by dividing, and that is not owned"
        turning.trouble.append(("no-machine-for-it", words))
    gash = (
        f"set the axis {one.angle:.2f}° out of the cutter's plane, leaning as the {one.hand} "
        f"wants; gash {one.count} teeth in the middle of the face, straight in, "
        f"{mm(round(_GASHED * one.depth, 2))} deep{_index(turning, one.count)}"
    )
    hob = (
        "set the axis back into the plane, let the blank turn freely, and hob it: the hob, cut "
        "like the worm, turns it, and goes in till the centres are those of the drive"
    )
    first = replace(
        _act(turning, one, gash, mill, _cutter(turning, one)), run=_WHEEL_MIN * one.count
    )
    then = replace(_act(turning, one, hob, mill, "hob as the worm"), run=_WHEEL_MIN * one.count)
    return _milled(mill, number, held, first, then)


def _milled(mill: str, number: int, held: Held, *acts: Act) -> SetUp:
    place = "mill" if mill else "bench"
    return set_up(number, place, mill, held.grip, held.datum, acts, held.round)


_CUT: Mapping[str, Callable[[Turning, LeaningFact, int, Held], SetUp]] = {
    "helical": _helical,
    "bevel": _bevel,
    "worm": _worm,
    "worm wheel": _wheel,
}
