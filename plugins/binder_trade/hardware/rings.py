"""Turns a shaft or bore into its circlip and the groove that it wants."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.listing import Listed, NotListed, Table, plain, table

_SLACK = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class Circlip(Listed):
    """A circlip and its groove, mm; limits of the groove's diameter in micrometres.

    `width_mm` is the least width of the groove (H13), `land_mm` the least metal beyond it, and
    `clear_mm` the circle that fitting needs: round a shaft, or left open in a bore.
    """

    d_mm: float
    thickness_mm: float
    free_mm: float
    groove_mm: float
    groove_upper_um: float
    groove_lower_um: float
    width_mm: float
    land_mm: float
    clear_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class EClip(Listed):
    """An E-clip, mm: named by its groove (h11), for shafts from one diameter to another.

    `outside_mm` is its greatest diameter when fitted; the groove may be `width_upper_um` wider.
    """

    groove_mm: float
    shaft_over_mm: float
    shaft_to_mm: float
    thickness_mm: float
    outside_mm: float
    width_mm: float
    width_upper_um: float
    land_mm: float


def circlip_shaft(d_mm: float) -> Circlip:
    """The circlip for a shaft of a diameter, mm (DIN 471, normal type); raises NotListed."""
    return _circlip(table("rings.yaml", "shaft"), d_mm, "a shaft of")


def circlip_bore(d_mm: float) -> Circlip:
    """The circlip for a bore of a diameter, mm (DIN 472, normal type); raises NotListed."""
    return _circlip(table("rings.yaml", "bore"), d_mm, "a bore of")


def e_clip(shaft_mm: float) -> EClip:
    """The largest E-clip for a shaft of a diameter, mm (DIN 6799); raises NotListed.

    Ranges of shafts overlap; the largest groove leaves most metal in the shaft.
    """
    of = table("rings.yaml", "e clip")
    fitting = [
        key
        for key, row in of.rows.items()
        if row["over"] - _SLACK <= shaft_mm <= row["to"] + _SLACK
    ]
    if not fitting:
        reason = f"DIN 6799 is not listed here for a shaft of {plain(shaft_mm)} mm"
        raise NotListed(reason, "listed: 1.4 to 15 mm")
    return _e_clip(of, max(fitting, key=float))


def e_clip_named(groove_mm: float) -> EClip:
    """The E-clip that is named by its groove, mm (DIN 6799); raises NotListed."""
    of = table("rings.yaml", "e clip")
    return _e_clip(of, of.at(groove_mm, "an E-clip of"))


def _circlip(of: Table, d_mm: float, what: str) -> Circlip:
    key = of.at(d_mm, what)
    row = of.rows[key]
    return Circlip(
        d_mm=d_mm,
        thickness_mm=row["thickness"],
        free_mm=row["free"],
        groove_mm=row["groove"],
        groove_upper_um=row["upper_um"],
        groove_lower_um=row["lower_um"],
        width_mm=row["width"],
        land_mm=row["land"],
        clear_mm=row["clear"],
        standard=of.standard,
        status=of.status_of(key),
    )


def _e_clip(of: Table, key: str) -> EClip:
    row = of.rows[key]
    return EClip(
        groove_mm=float(key),
        shaft_over_mm=row["over"],
        shaft_to_mm=row["to"],
        thickness_mm=row["thickness"],
        outside_mm=row["outside"],
        width_mm=row["width"],
        width_upper_um=row["width_upper_um"],
        land_mm=row["land"],
        standard=of.standard,
        status=of.status_of(key),
    )
