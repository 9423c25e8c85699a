"""What is asked of a form, and what comes back."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from functools import lru_cache
from importlib.metadata import PackageNotFoundError, version

from .forms import Form
from .solid import Clash, NamedForm, Solid
from .views import Cutting, Projection, View

EDITION = 1
"""Raised when the same form would give another answer, so that kept answers are left alone."""


@dataclass(frozen=True, slots=True)
class Job:
    """A form to be measured, and the views and sections wanted of it."""

    form: Form
    projections: tuple[Projection, ...] = ()
    cuttings: tuple[Cutting, ...] = ()


@dataclass(frozen=True, slots=True)
class Gathering:
    """Forms that stand together, each where it is, and the views wanted of them all."""

    forms: tuple[Form, ...]
    projections: tuple[Projection, ...]


@dataclass(frozen=True, slots=True)
class Crowd:
    """Forms of which it is asked whether they stand in one another; some pairs may."""

    forms: tuple[NamedForm, ...]
    allowed: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Refused:
    """A form or cutting that nothing can be made of: why, and where in it."""

    reason: str
    where: str = ""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A form measured and drawn, in the order in which the views were asked for."""

    solid: Solid
    views: tuple[View, ...] = ()
    sections: tuple[View | Refused, ...] = ()


@dataclass(frozen=True, slots=True)
class Pictured:
    """For each view that was asked for, what is seen of each form."""

    pictures: tuple[tuple[View, ...], ...]


@dataclass(frozen=True, slots=True)
class Crowded:
    """The pairs that stand in one another."""

    clashes: tuple[Clash, ...]


Outcome = Drawn | Refused
Answer = Drawn | Refused | Pictured | Crowded
Question = Job | Gathering | Crowd


def key_of(job: Question) -> str:
    """Names a job by all that its answer hangs on."""
    text = f"{EDITION} {_kernel_edition()} {job!r}"
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


@lru_cache(maxsize=1)
def _kernel_edition() -> str:
    try:
        return version("cadquery-ocp-novtk")
    except PackageNotFoundError:
        return "none"
