"""Shows the sums behind the sizes of a thread, step by step."""

from __future__ import annotations

from binder_trade.explained import Step, mm
from binder_trade.threads.basic import INCH
from binder_trade.threads.thread import MOVING, Thread


def working(thread: Thread) -> tuple[Step, ...]:
    """The steps from the designation to the stress area, values in mm and mm²."""
    form = thread.form
    return (
        *_stated(thread),
        Step("depth of thread", _depth(thread), mm(thread.depth_mm), form.standard),
        Step("effective diameter", _effective(thread), mm(thread.effective_mm), form.standard),
        Step("bore of the nut", _bore(thread), mm(thread.minor_internal_mm), form.standard),
        Step("core of the screw", "D − 2 × depth", mm(thread.minor_external_mm), form.standard),
        Step("stress area", *_area(thread)),
    )


def _stated(thread: Thread) -> tuple[Step, ...]:
    standard = thread.standard
    if thread.family == "BA":
        number = thread.designation.split(" ")[0]
        major = f"6 × (0.9^{number})^1.2, to two figures"
        pitch = f"0.9^{number}, to 0.01"
    elif thread.family in ("metric", "Tr", "square"):
        major, pitch = "as named", "the coarse pitch" if thread.is_coarse else "as named"
    else:
        major = f"{thread.major_mm / INCH:.4g} in × 25.4"
        pitch = f"25.4 ÷ {INCH / thread.pitch_mm:.4g} to the inch"
    if thread.family == "BSP":
        major = f"of the table for {thread.designation}"
    return (
        Step("diameter D", major, mm(thread.major_mm), standard),
        Step("pitch p", pitch, mm(thread.pitch_mm), standard),
    )


def _depth(thread: Thread) -> str:
    form = thread.form
    if thread.family in MOVING and form.angle_deg:
        return "p ÷ 2 + clearance at the crest"
    return "0.6 p, to 0.005" if form.is_rounded else f"{form.depth:.4f} p"


def _effective(thread: Thread) -> str:
    form = thread.form
    is_by_depth = form.is_rounded or form.effective_drop == form.depth
    return "D − depth" if is_by_depth else f"D − {form.effective_drop:.4f} p"


def _bore(thread: Thread) -> str:
    form = thread.form
    is_by_depth = form.is_rounded or form.effective_drop == form.depth
    return "D − 2 × depth" if is_by_depth else f"D − {form.internal_drop:.4f} p"


def _area(thread: Thread) -> tuple[str, str, str]:
    value = f"{thread.stress_area_mm2:.4g} mm²"
    if thread.family == "metric":
        return "π/4 × (D − 0.9382 p)²", value, "ISO 898-1"
    if thread.form.angle_deg == 60:
        return "π/4 × (D − 0.9743 p)²", value, "ASME B1.1"
    return "π/4 × ((effective + core) ÷ 2)²", value, "mean diameter, common practice"
