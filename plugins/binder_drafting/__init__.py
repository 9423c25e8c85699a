"""Technical drawings: edges and sizes to a sheet that can be read at the bench."""

from binder_drafting.draft import draft
from binder_drafting.edges import Bow, Chain, Edge, on_circle
from binder_drafting.plane import Rectangle
from binder_drafting.request import A4_LEAF, Datum, Fields, Request
from binder_drafting.sheet import PlacedLabel, PlacedView, Sheet
from binder_drafting.sizes import (
    Across,
    Along,
    AngleOf,
    Around,
    Balloon,
    Note,
    Radius,
    Size,
)
from binder_drafting.solid import edges_of, outlines_of
from binder_drafting.views import (
    AxisLine,
    Break,
    CentreMark,
    CuttingLine,
    Detail,
    Mark,
    Outline,
    PitchCircle,
    Surface,
    ThreadCircle,
    ThreadLine,
    View,
)

__all__ = [
    "A4_LEAF",
    "Across",
    "Along",
    "AngleOf",
    "Around",
    "AxisLine",
    "Balloon",
    "Bow",
    "Break",
    "CentreMark",
    "Chain",
    "CuttingLine",
    "Datum",
    "Detail",
    "Edge",
    "Fields",
    "Mark",
    "Note",
    "Outline",
    "PitchCircle",
    "PlacedLabel",
    "PlacedView",
    "Radius",
    "Rectangle",
    "Request",
    "Sheet",
    "Size",
    "Surface",
    "ThreadCircle",
    "ThreadLine",
    "View",
    "draft",
    "edges_of",
    "on_circle",
    "outlines_of",
]
