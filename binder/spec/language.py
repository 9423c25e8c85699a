"""Kinds to one typed model of a whole spec: core and plugins as a single language."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache, reduce
from operator import or_
from typing import Annotated, Any, cast

from pydantic import Discriminator, Field, Tag, create_model

from binder.spec.kinds import Kind, Kinds, Slot
from binder.spec.models import FabricationEntry, PartEntry, SpecEntry


def tag_of(key: str) -> str:
    """The union tag of a kind: a text that cannot be a key, so that it shows in no place."""
    return f"<{key}>"


@lru_cache(maxsize=4)  # the same kinds are one language, however many specs are read in it
def language(kinds: Kinds) -> type[SpecEntry]:
    """The model of a whole spec with all kinds in it."""
    features = _table_of(kinds.of(Slot.FEATURE))
    part = _part_model(kinds.of(Slot.SHAPE), features)
    fabrication = create_model("Fabrication", __base__=FabricationEntry, features=features)
    sections = {key: _optional(kind) for key, kind in kinds.of(Slot.SECTION).items()}
    fields: dict[str, Any] = {
        "parts": (_named(part), ...),
        "fabrications": (_named(fabrication), Field(default_factory=dict)),
        "joints": _table_of(kinds.of(Slot.JOINT)),
        "drive": _table_of(kinds.of(Slot.DRIVE)),
        **sections,
    }
    return cast("type[SpecEntry]", create_model("Spec", __base__=SpecEntry, **fields))


def _part_model(shapes: Mapping[str, Kind], features: Any) -> type[PartEntry]:  # noqa: ANN401
    fields: dict[str, Any] = {key: _optional(kind) for key, kind in shapes.items()}
    model = create_model("Part", __base__=PartEntry, features=features, **fields)
    model.shape_keys = tuple(sorted(shapes))
    return model


def _optional(kind: Kind) -> tuple[Any, None]:
    model: Any = kind.model
    return (Annotated[model | None, Field(description=kind.says)], None)


def _named(entry: Any) -> Any:  # noqa: ANN401
    """A table of names to entries: a type that is only known now."""
    return dict.__class_getitem__((str, entry))


def _table_of(kinds: Mapping[str, Kind]) -> tuple[Any, Any]:
    """A table of names to one of several kinds, told apart by the key that each must have."""
    if not kinds:
        return (dict[str, Any], Field(default_factory=dict, max_length=0))
    tagged: list[Any] = [
        Annotated[kind.model, Tag(tag_of(key))] for key, kind in sorted(kinds.items())
    ]
    union: Any = reduce(or_, tagged)
    entry: Any = Annotated[union, Discriminator(_chooser(frozenset(kinds)))]
    return (_named(entry), Field(default_factory=dict))


def _chooser(keys: frozenset[str]) -> Callable[[object], str | None]:
    def choose(value: object) -> str | None:
        if not isinstance(value, dict):
            return None
        found = [key for key in value if key in keys]
        return tag_of(found[0]) if len(found) == 1 else None

    return choose
