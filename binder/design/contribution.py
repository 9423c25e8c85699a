"""What one step of a plugin adds to the design."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from binder.design.facts import Fact
from binder.design.graph import Before, Task
from binder.design.items import Bought, Feature
from binder.diagnostics import Diagnostic
from binder.parameters import Working


@dataclass(frozen=True, slots=True)
class Contribution:
    """Facts, implied features, bought items, tasks with their order, workings, findings.

    `shapes` are those of parts by name, with the sizes that were left to suit; a step that
    gives them `settles_shapes`.
    """

    facts: Sequence[Fact] = ()
    features: Sequence[Feature] = ()
    bought: Sequence[Bought] = ()
    tasks: Sequence[Task] = ()
    befores: Sequence[Before] = ()
    workings: Sequence[Working] = ()
    findings: Sequence[Diagnostic] = ()
    shapes: Mapping[str, object] = field(default_factory=dict)
