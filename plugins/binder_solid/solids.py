"""What the kernel makes of forms, called without knowing the kernel.

Importing this loads nothing; each call raises NoKernel where the extra is missing, and
Unbuildable for a form that is no body.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from typing import Literal

from .forms import Form
from .solid import Clash, NamedForm, Solid
from .views import Cutting, Projection, View


def measured(form: Form) -> Solid:
    """Makes a form and measures it."""
    from .kernel import measure

    return measure.measured(form)


def views(forms: Form | tuple[Form, ...], projections: Iterable[Projection]) -> tuple[View, ...]:
    """Draws one form, or several in one picture, from each side asked for."""
    from .kernel import project

    return project.views(forms, projections)


def gathered(
    forms: tuple[Form, ...], projections: Iterable[Projection]
) -> tuple[tuple[View, ...], ...]:
    """Draws forms that stand together: for each side what is seen of each of them."""
    from .kernel import project

    return tuple(project.gathered(forms, side) for side in projections)


def sectioned(form: Form, cutting: Cutting) -> View:
    """Cuts a form by a plane and draws what is left, hidden edges and all."""
    from .kernel import section

    return section.sectioned(form, cutting)


def step_bytes(
    parts: Sequence[NamedForm],
    title: str = "",
    schema: Literal["AP242", "AP214"] = "AP242",
    stamp: str = "",
) -> bytes:
    """Writes parts as STEP (ISO 10303-21), the same bytes for the same parts."""
    from .kernel import step

    return step.step_bytes(parts, title, schema, stamp)


def step_volume(data: bytes) -> float:
    """Reads STEP and gives the volume of all that is in it, in mm³."""
    from .kernel import step

    return step.step_volume(data)


def clashes(
    placed: Sequence[NamedForm], allowed: Collection[tuple[str, str]] = frozenset()
) -> tuple[Clash, ...]:
    """Finds the pairs of parts that share some volume; touching is no clash."""
    from .kernel import clash

    return clash.clashes(placed, allowed)
