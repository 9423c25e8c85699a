"""Cuts from all the faces of a part against each other: those that meet, or nearly do."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import combinations

from binder.api import Design, Diagnostic, Feature, Joint, ThreadFact
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.judging.bores import HELD, Bore, Look, looks
from binder_plugins.shapes.judging.gaps import Gap, of_bore, of_bores, of_hollows
from binder_plugins.shapes.judging.hollows import PLAIN, UNDERCUT, Hollow, hollows
from binder_plugins.shapes.judging.undercuts import across_of

# Less than this in mm is printed as nothing.
_SAME, _SEEN = 1e-6, 0.005


@dataclass(frozen=True, slots=True)
class Cut:
    """One hole, slot or pocket of a feature, `across` in mm, over the thread where it has one."""

    feature: Feature
    body: Bore | Hollow
    across: float
    is_undercut: bool = False


@dataclass(frozen=True, slots=True)
class Close:
    """Two cuts with too little metal between them; the first is the one to move."""

    one: Cut
    other: Cut
    gap: Gap


def check_crossing(design: Design) -> Iterator[Diagnostic]:
    """Of each two features the worst place alone."""
    for look in looks(design):
        cuts = list(_cuts(look, design))
        worst: dict[tuple[str, str], Close] = {}
        for close in _close(cuts, design):
            names = (close.one.feature.name, close.other.feature.name)
            if names not in worst or close.gap.left < worst[names].gap.left:
                worst[names] = close
        for close in worst.values():
            yield _finding(look, close)


def _cuts(look: Look, design: Design) -> Iterator[Cut]:
    for bore in look.bores:
        yield Cut(bore.feature, bore, across_of(look, bore, design))
        drilled = _drilled(look, bore, design)
        if drilled is not None:
            yield Cut(bore.feature, drilled, 2 * drilled.radius)
    features = {one.name: one for one in look.part.features}
    for one in look.form.located if look.is_box else ():
        feature = features.get(one.name)
        if feature is None or (one.kind == "dovetailed" and not _is_inside(feature)):
            continue
        for cut in hollows(one, (*PLAIN, *UNDERCUT)):
            sizes = [high - low for low, high in cut.spans]
            yield Cut(feature, cut, min(sizes), one.kind in UNDERCUT)


def _drilled(look: Look, bore: Bore, design: Design) -> Bore | None:
    """The drill's hole of a blind thread, which goes on past the last full turn."""
    thread = design.facts.about(ThreadFact, f"{look.part.name}.{bore.feature.name}")
    if thread is None or not bore.located.is_thread or thread.drill_depth is None:
        return None
    deeper = thread.drill_depth - (bore.end - bore.start)
    if bore.located.depth is None or deeper < _SEEN:
        return None
    start, end = (
        (bore.start - deeper, bore.end) if bore.side > 0 else (bore.start, bore.end + deeper)
    )
    return replace(bore, radius=thread.drill_mm / 2, start=start, end=end)


def _is_inside(feature: Feature) -> bool:
    return bool(getattr(feature.entry, "inside", False))


def _close(cuts: list[Cut], design: Design) -> Iterator[Close]:
    for pair in combinations(cuts, 2):
        one, other = sorted(pair, key=lambda cut: (isinstance(cut.body, Hollow), cut.across))
        if _is_meant(one.feature, other.feature, design):
            continue
        gap = _gap(one, other, strangers=_are_strangers(one.feature, other.feature, design))
        if gap is not None and gap.left < gap.least - _SAME:
            yield Close(one, other, gap)


def _gap(one: Cut, other: Cut, *, strangers: bool) -> Gap | None:
    match one.body, other.body:
        case Bore() as bore, Bore() as second:
            return of_bores(bore, one.across / 2, second, other.across / 2, strangers=strangers)
        case Bore() as bore, Hollow() as cut:
            # Holes beside undercuts are judged along their leaning sides.
            is_judged = other.is_undercut
            return None if is_judged else of_bore(bore, one.across / 2, cut, strangers=strangers)
        case Hollow() as first, Hollow() as cut:
            return of_hollows(first, cut, strangers=strangers)
    return None


def _is_meant(one: Feature, other: Feature, design: Design) -> bool:
    """Of one feature or joint, cut in the other, or by a joint that names the other."""
    if one.name == other.name or (one.implied_by and one.implied_by == other.implied_by):
        return True
    return _names(one, other, design) or _names(other, one, design)


def _names(one: Feature, other: Feature, design: Design) -> bool:
    if str(getattr(one.entry, "on", None) or "") == other.name:
        return True
    place = (other.owner, other.name)
    return any(
        joint.name == one.implied_by or _holder(joint)
        for joint in design.joints_at(other.owner)
        if any((end.item, end.place) == place for end in joint.ends)
    )


def _holder(joint: Joint) -> str:
    """What holds the joint of a bore, as a keeper, mostly goes into the side of that bore."""
    return str(getattr(joint.entry, "held_by", None) or "")


def _are_strangers(one: Feature, other: Feature, design: Design) -> bool:
    """Two that different joints made for their fasteners: neither has anything in the other."""
    return all(_is_for_fastener(each, design) for each in (one, other))


def _is_for_fastener(one: Feature, design: Design) -> bool:
    joint = design.joints.get(one.implied_by)
    if joint is None or joint.kind not in HELD:
        return False
    return all((end.item, end.place) != (one.owner, one.name) for end in joint.ends)


def _finding(look: Look, close: Close) -> Diagnostic:
    one, other, left, least = close.one, close.other, close.gap.left, close.gap.least
    first = f"the thread of '{one.feature.name}'" if _is_thread(one) else f"'{one.feature.name}'"
    move = f"move one of the two {least - left:.2f} mm away{_where(close)}"
    if left <= -_SEEN:
        return form_codes.FEATURES_OVERLAP.at(
            one.feature.at,
            f"{first} runs {-left:.2f} mm into '{other.feature.name}' on '{look.part.name}'",
            help=f"{move}, or make it shallower: {least:.2f} mm of metal is the least",
        )
    metal = f"{left:.2f} mm of metal is" if left >= _SEEN else "no metal is"
    return form_codes.WALL_TOO_THIN.at(
        one.feature.at,
        f"{metal} left between {first} and '{other.feature.name}' on '{look.part.name}'; "
        f"{least:.2f} mm is the least",
        help=f"{move}, or make it smaller or shallower",
    )


def _is_thread(one: Cut) -> bool:
    return isinstance(one.body, Bore) and one.body.located.is_thread


def _where(close: Close) -> str:
    """What joints made is moved where they are written."""
    joints = dict.fromkeys(
        f"'{cut.feature.implied_by}'" for cut in (close.one, close.other) if cut.feature.implied_by
    )
    return f", by `pattern:` or `places:` of {' or '.join(joints)}" if joints else ""
