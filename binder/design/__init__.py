"""What will be made: parts, features, joints, typed facts and the graph of the work."""

from binder.design.contribution import Contribution
from binder.design.design import Design
from binder.design.facts import (
    BarCut,
    BarPlan,
    BuildSequence,
    CautionFact,
    CutPiece,
    CutSize,
    Fact,
    Facts,
    ItemNumber,
    MaterialFact,
    NumberOff,
    PlacedPiece,
    Step,
)
from binder.design.graph import Before, Task, TaskKind
from binder.design.implied import exact, implied_feature, made_size
from binder.design.items import (
    Assembly,
    Bought,
    Departure,
    End,
    Fabrication,
    Feature,
    Item,
    Joint,
    Part,
)
from binder.design.meeting_facts import (
    FitFact,
    HalfFact,
    HardwareFact,
    JointFact,
    PlaceFact,
    ThreadFact,
)
from binder.design.shaft_facts import Located, Piece, Role, ShaftFact

__all__ = [
    "Assembly",
    "BarCut",
    "BarPlan",
    "Before",
    "Bought",
    "BuildSequence",
    "CautionFact",
    "Contribution",
    "CutPiece",
    "CutSize",
    "Departure",
    "Design",
    "End",
    "Fabrication",
    "Fact",
    "Facts",
    "Feature",
    "FitFact",
    "HalfFact",
    "HardwareFact",
    "Item",
    "ItemNumber",
    "Joint",
    "JointFact",
    "Located",
    "MaterialFact",
    "NumberOff",
    "Part",
    "Piece",
    "PlaceFact",
    "PlacedPiece",
    "Role",
    "ShaftFact",
    "Step",
    "Task",
    "TaskKind",
    "ThreadFact",
    "exact",
    "implied_feature",
    "made_size",
]
