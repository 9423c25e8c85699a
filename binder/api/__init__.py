"""Everything that a plugin may import."""

from binder.api.answers import Answer, Reason, Result, reasons
from binder.api.asked import COMMAND_LINE, NotSizeError, asked_size, said_back, with_point
from binder.api.cautioned import CautionLines, cautions_at
from binder.api.contributions import Check, Export, ExportFile, Page, PlanStep, Reckoning
from binder.api.data import load_data
from binder.api.hooks import GROUP, hookimpl
from binder.api.late import late
from binder.api.lengths import lengths_in, parse_size, shown_length, size_text
from binder.api.named_sizes import Asked, NotAskedError, asked, unread, with_nothing_loose
from binder.design import (
    ActsFact,
    AsideFact,
    Assembly,
    BarCut,
    BarPlan,
    BarUse,
    Before,
    Bought,
    BuildSequence,
    CautionFact,
    ChainFact,
    ChainLink,
    ClosedWithFact,
    Contribution,
    CordFact,
    CutPiece,
    CutSize,
    Design,
    End,
    Fabrication,
    Fact,
    Feature,
    FitFact,
    HalfFact,
    HardwareFact,
    HoursFact,
    Item,
    ItemNumber,
    Joint,
    JointFact,
    LayerFact,
    LeaningFact,
    LoadFact,
    Located,
    MaterialFact,
    NumberOff,
    OffMiddleFact,
    Part,
    Passed,
    Piece,
    PlacedPiece,
    PlaceFact,
    Role,
    RoundBottomFact,
    ShaftFact,
    SmallWork,
    Step,
    StepSizeFact,
    SummedFact,
    SupplyFact,
    Task,
    TaskKind,
    TaskTime,
    ThreadFact,
    TimeLine,
    TogetherFact,
    TraceFact,
    TrainFact,
    TreatmentFact,
    TreatmentStep,
    TurningFact,
    exact,
    filed_stretch,
    implied_feature,
    made_at,
    made_places,
    made_size,
    metal_at,
)
from binder.diagnostics import NOWHERE, Code, Diagnostic, Labelled, Severity, Span
from binder.pages import (
    Anchor,
    Beside,
    Blank,
    Block,
    Checklist,
    Column,
    Drawing,
    Facts,
    Follows,
    Group,
    Inset,
    Line,
    Link,
    Listing,
    Notice,
    NoticeKind,
    Paragraph,
    Picture,
    Place,
    Polyline,
    Reckoned,
    Section,
    Stroke,
    Strong,
    Subheading,
    Table,
    Text,
    TickBox,
    text_of,
)
from binder.pages import Arc as DrawnArc
from binder.pages import Area as DrawnArea
from binder.pages import Box as DrawnBox
from binder.pages import Check as Tick
from binder.pages import Code as Typed
from binder.pages import Disc as DrawnDisc
from binder.pages import Label as DrawnLabel
from binder.pages import Shape as DrawnShape
from binder.pages.font_metrics import text_width
from binder.parameters import ExpressionFault, Gauge, Given, Series, Working, series_of
from binder.parameters.near import did_you_mean
from binder.spec.choices import OneOf
from binder.spec.fields import (
    Angle,
    At,
    Count,
    Flag,
    Force,
    Length,
    LengthOrRest,
    LengthOrSuit,
    LengthOrThrough,
    LengthToCome,
    Mass,
    MemberOf,
    Name,
    Number,
    Offset,
    Power,
    RangeOf,
    Ref,
    Speed,
    TaperOf,
    Thread,
    ThreadOrSuit,
    Torque,
    Words,
)
from binder.spec.kinds import Kind, Slot
from binder.spec.meeting import Meeting
from binder.spec.meetings import drive_kind, joint_kinds
from binder.spec.models import FeatureEntry, JointEntry, LayerEntry, Model, Noted
from binder.spec.values import Member, Position, Reference, Size, Stock, Taper
from binder.units import (
    LENGTH,
    NUMBER,
    Misread,
    Quantity,
    ThreadName,
    read_thread,
    shown,
)
from binder.workshop import Workshop
from binder.workshop.tools import Divider, StockPiece

__all__ = sorted(name for name in dir() if not name.startswith("_"))
