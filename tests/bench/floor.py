"""The bare floor: the interpreter, the imports of `binder check`, YAML parsed and validated.

The imports are all that check makes, binder's own modules among them, and nothing they do.
Run as `python floor.py SPEC MODULES`; MODULES is a file that names what check imports. The
models are as plain as pydantic allows: every value stays a text.
"""

from __future__ import annotations

import gc
import importlib
import sys
from pathlib import Path

import yaml
from pydantic import BaseModel, ConfigDict


class Plain(BaseModel):
    """Closed, strict tables, as ours are."""

    model_config = ConfigDict(strict=True, extra="forbid", frozen=True)


class Head(Plain):
    """The head of a generated spec."""

    title: str
    issue: str
    units: str


class Step(Plain):
    """A step of turned work."""

    name: str
    diameter: str
    length: str


class Feature(Plain):
    """Any feature of a generated spec."""

    reamed: str | None = None
    chamfered: str | None = None
    grooved: str | None = None
    on: str
    depth: str | None = None


class Part(Plain):
    """A part of a generated spec."""

    material: str
    stock: str
    turned: list[Step]
    overall: str
    features: dict[str, Feature]


class Joint(Plain):
    """A joint of a generated spec."""

    slides: list[str]


class Assembly(Plain):
    """An assembly of a generated spec."""

    of: list[str]
    test: str | None = None


class Spec(Plain):
    """A generated spec."""

    format: str
    model: Head
    sizes: dict[str, str]
    parts: dict[str, Part]
    joints: dict[str, Joint]
    assemblies: dict[str, Assembly]


def main(spec: str, modules: str) -> None:
    """Imports, parses and validates; prints nothing."""
    gc.disable()
    for name in Path(modules).read_text(encoding="utf-8").split():
        importlib.import_module(name)
    text = Path(spec).read_text(encoding="utf-8")
    # The base loader leaves every scalar a text, as binder does.
    Spec.model_validate(yaml.load(text, Loader=yaml.CBaseLoader))  # noqa: S506


if __name__ == "__main__":
    main(*sys.argv[1:])
