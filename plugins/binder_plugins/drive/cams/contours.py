"""The outline of a cam to the contour of its part: arcs, flats and smooth lines."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

from binder.api import Contribution, Design, Diagnostic, Joint
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.cams.made import Cam, Spot, made_cam
from binder_plugins.drive.duties.shown import size
from binder_solid.facts import ContourFact, Datum
from binder_solid.forms import Arc, Curve, Outline, Segment, Straight
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.cam_laws import CamMotion
from binder_trade.mechanisms.cam_outlines import OutlinePoint

# Points of a smooth line: one of so many of the outline's own.
_EVERY = 6
_NEAR_MM = 1e-6
_CALLED = {"roller": "roller", "flat": "flat", "knife": "pointed"}


def settle_contours(design: Design) -> Contribution:
    """The contour of each cam whose part leaves it to the drive, or why there is none."""
    facts: list[ContourFact] = []
    findings: list[Diagnostic] = []
    for joint in design.joints.values():
        part = design.parts.get(joint.ends[0].item) if joint.kind == "cams" else None
        if part is None or part.shape_kind != "cam":
            continue
        try:
            facts.append(_contour(part.name, joint, design))
        except NotDefined as refusal:
            findings.append(impossible(joint, refusal))
    return Contribution(facts=facts, findings=findings)


def impossible(joint: Joint, refusal: NotDefined) -> Diagnostic:
    """The finding for a cam that cannot be made."""
    return codes.CAM_IMPOSSIBLE.at(joint.at, refusal.reason, help=refusal.way_out)


def _contour(item: str, joint: Joint, design: Design) -> ContourFact:
    cam = made_cam(joint)
    if cam.is_undercut and not cam.drawn:
        raise NotDefined(
            "the outline of the cam crosses itself: it cannot be cut",
            "a larger base circle, a smaller roller, or a gentler law",
        )
    return ContourFact(
        subject=item,
        outline=outline_of(cam, is_smooth=getattr(joint.entry, "radii", None) is not None),
        reach_mm=max(math.hypot(*spot) for spot in cam.outline),
        data=tuple(_data(cam, joint, design)),
        joint=joint.name,
        cutter=_cutter(cam, design),
        cutter_mm=2 * cam.roller_mm if cam.follower == "roller" else 0.0,
    )


def _cutter(cam: Cam, design: Design) -> str:
    """A cutter of the follower's own form makes the contour whatever the steps are."""
    if cam.follower == "roller" and cam.roller_mm:
        return f"with a cutter of {size(2 * cam.roller_mm, design)}, as the roller"
    return "with the end of the cutter" if cam.follower == "flat" else ""


def _data(cam: Cam, joint: Joint, design: Design) -> Iterator[Datum]:
    """What a drawing of the cam tells in its table."""
    yield Datum("Base circle", f"⌀{size(2 * cam.base_mm, design)}")
    yield Datum("Lift", size(cam.motion.lift_mm, design))
    with_size = f" ⌀{size(2 * cam.roller_mm, design)}" if cam.roller_mm else ""
    yield Datum("Follower", f"{_CALLED[cam.follower]}{with_size}")
    nose, flank = getattr(joint.entry, "nose", None), getattr(joint.entry, "flank", None)
    if nose is not None:
        yield Datum("Nose", f"R{size(nose.mm, design)}")
        yield Datum("Flanks", f"R{size(flank.mm, design)}" if flank is not None else "flat")
    yield Datum("Contour", "by the table in its leaf")


def outline_of(cam: Cam, *, is_smooth: bool) -> Outline:
    """The closed line round the cam, as few pieces as it has."""
    if is_smooth:
        spots = cam.outline[::_EVERY]
        return Outline(spots[0], (Curve((*spots[1:], spots[0])),))
    if cam.drawn:
        return _of_pieces(cam.drawn)
    return _by_law(cam)


def _of_pieces(points: Sequence[OutlinePoint]) -> Outline:
    """Each arc through its middle, each flat to its end."""
    starts = [n for n, one in enumerate(points) if one.begins]
    segments: list[Segment] = []
    for start, end in pairwise([*starts, len(points)]):
        piece = points[start:end]
        to = _spot(piece[-1])
        if math.dist(_spot(piece[0]), to) < _NEAR_MM:
            continue
        if math.isfinite(piece[0].radius_mm):
            segments.append(Arc(_spot(piece[len(piece) // 2]), to))
        else:
            segments.append(Straight(to))
    return Outline(_spot(points[0]), tuple(segments))


def _spot(point: OutlinePoint) -> Spot:
    return point.x_mm, point.y_mm


def _by_law(cam: Cam) -> Outline:
    """A smooth line for each rise and fall, an arc for each rest."""
    spots, motion = cam.outline, cam.motion
    count = len(spots)
    segments: list[Segment] = []
    turn = 0.0
    here = 0
    for part in motion.segments if isinstance(motion, CamMotion) else ():
        turn += part.angle_deg
        end = round(turn / 360 * count)
        if end <= here:
            continue
        if part.change_mm:
            middle = range(here + _EVERY, end - 1, _EVERY)
            segments.append(Curve((*(spots[n] for n in middle), spots[end % count])))
        else:
            segments += _rests(spots, here, end)
        here = end
    return Outline(spots[0], tuple(segments))


def _rests(spots: Sequence[Spot], start: int, end: int) -> Iterator[Segment]:
    """Arcs of less than half a turn."""
    count = len(spots)
    half = (start + end) // 2
    if half - start > count // 6:
        yield from _rests(spots, start, half)
        yield from _rests(spots, half, end)
    elif end - start > 1:
        yield Arc(spots[half % count], spots[end % count])
    else:
        yield Straight(spots[end % count])
