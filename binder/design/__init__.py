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
    JointFact,
    MaterialFact,
    NumberOff,
    PlacedPiece,
    Step,
)
from binder.design.graph import Before, Task, TaskKind
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
    "Item",
    "ItemNumber",
    "Joint",
    "JointFact",
    "MaterialFact",
    "NumberOff",
    "Part",
    "PlacedPiece",
    "Step",
    "Task",
    "TaskKind",
]
