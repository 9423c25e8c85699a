"""Cams to the table of their maker, on the leaf of the part."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    Block,
    Column,
    Design,
    Inset,
    Joint,
    Paragraph,
    Subheading,
    Table,
    Text,
    exact,
    shown_length,
)
from binder_plugins.drive.cams.made import Cam, made_cam
from binder_plugins.drive.cams.table import Place, table_of
from binder_plugins.drive.duties.shown import INCH
from binder_trade.explained import NotDefined

_SETS = 3
_REST_MM = 0.0005
_WAY = "Angles run the way in which the follower meets the cam: against its turning."


def cam_leaves(design: Design) -> Iterator[Inset]:
    """A table for each cam that is made here."""
    for joint in design.joints.values():
        if joint.kind == "cams" and joint.ends[0].item in design.parts:
            try:
                cam = made_cam(joint)
            except NotDefined:
                continue
            yield Inset(f"part-{joint.ends[0].item}", tuple(_blocks(cam, joint, design)))


def _blocks(cam: Cam, joint: Joint, design: Design) -> Iterator[Block]:
    rests, lifted = _rests_and_lifts(table_of(cam))
    yield Subheading("Contour of the cam")
    yield Paragraph((f"{_WAY} {_setting_words(cam)}{_rest_words(cam, rests, design)}",))
    yield _table(cam, lifted, design)
    if getattr(joint.entry, "radii", None) is not None:
        yield Paragraph(("Between the radii as drawn the line is laid smoothly.",))


def _rests_and_lifts(places: Sequence[Place]) -> tuple[list[Place], list[Place]]:
    """The angles within its rest, and the others with the last of its rest on either side."""
    count = len(places)
    is_up = [one.lift_mm > _REST_MM for one in places]
    near = [is_up[n - 1] or is_up[n] or is_up[(n + 1) % count] for n in range(count)]
    rests = [one for one, shown in zip(places, near, strict=True) if not shown]
    return rests, [one for one, shown in zip(places, near, strict=True) if shown]


def _rest_words(cam: Cam, rests: Sequence[Place], design: Design) -> str:
    if not rests:
        return ""
    base = shown_length(exact(round(cam.base_mm, 3)), design.units)
    setting = shown_length(exact(round(cam.base_mm + cam.roller_mm, 3)), design.units)
    also = f", the setting {setting}" if _has_setting(cam) else ""
    return f" At all other angles the radius is {base}{also}."


def _has_setting(cam: Cam) -> bool:
    return cam.follower == "flat" or cam.roller_mm > 0


def _setting_words(cam: Cam) -> str:
    """What the last column is set by, with the cutter over the cam's middle."""
    if cam.follower == "roller" and cam.roller_mm:
        return "Setting: from the cam's middle to that of a cutter as thick as the roller."
    if cam.follower == "flat":
        return "Setting: from the cam's middle to the end of the cutter, or a file held square."
    return "Mark out the radius at each angle, join the marks, file to the line."


def _table(cam: Cam, places: Sequence[Place], design: Design) -> Table:
    """Sets beside one another, each read downwards, in the units of the model."""
    unit = "mm" if design.units == "mm" else "in"
    heads = [("At", 1.0), (f"Lift, {unit}", 1.4), ("Radius", 1.4)]
    heads += [("Setting", 1.4)] if _has_setting(cam) else []
    high = -(-len(places) // _SETS)
    columns = tuple(Column(name, wide, is_figure=True) for name, wide in heads * _SETS)
    rows: list[tuple[Text, ...]] = []
    for row in range(high):
        cells: list[Text] = []
        for number in range(row, high * _SETS, high):
            cells += (
                _cells(places[number], cam, design)
                if number < len(places)
                else [("",)] * (len(heads))
            )
        rows.append(tuple(cells))
    return Table(columns, tuple(rows))


def _cells(one: Place, cam: Cam, design: Design) -> list[Text]:
    sizes = [one.lift_mm, one.radius_mm, *([one.setting_mm] if _has_setting(cam) else [])]
    return [(f"{one.angle_deg}°",), *((_size(size, design),) for size in sizes)]


def _size(mm: float, design: Design) -> str:
    return f"{mm:.2f}" if design.units == "mm" else f"{mm / INCH:.4f}"
