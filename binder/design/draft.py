"""A valid spec and a workshop to the first design: what was written, before any plugin."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from binder.design.design import Design
from binder.design.items import (
    Assembly,
    Bought,
    Departure,
    End,
    Fabrication,
    Feature,
    Joint,
    Part,
)
from binder.diagnostics import Span
from binder.source import Document, Path
from binder.spec.models import (
    AssemblyEntry,
    BoughtEntry,
    FabricationEntry,
    FeatureEntry,
    JointEntry,
    Noted,
    PartEntry,
)
from binder.spec.validate import Spec
from binder.spec.values import Reference
from binder.workshop import Workshop


def drafted(spec: Spec, workshop: Workshop) -> Design:
    """The design as written."""
    written = spec.written
    document = spec.resolved.document
    bought = _bought(written.bought, document, "bought") | _bought(
        written.scrap_box, document, "scrap_box"
    )
    return Design(
        spec=spec,
        workshop=workshop,
        parts={name: _part(name, entry, document) for name, entry in written.parts.items()},
        bought=bought,
        fabrications={
            name: _fabrication(name, entry, document)
            for name, entry in written.fabrications.items()
        },
        assemblies={
            name: _assembly(name, entry, document) for name, entry in written.assemblies.items()
        },
        joints={
            name: _joint(section, name, entry, document)
            for section in ("drive", "joints")
            for name, entry in getattr(written, section).items()
        },
        departures=tuple(_departures(spec)),
    )


def _words(text: str | None) -> str:
    return " ".join(text.split()) if text else ""


def _title(name: str, title: str | None) -> str:
    return _words(title) or name.replace("_", " ").replace("-", " ")


def _part(name: str, entry: PartEntry, document: Document) -> Part:
    path: Path = ("parts", name)
    kind = next((key for key in entry.shape_keys if getattr(entry, key) is not None), "")
    return Part(
        name=name,
        title=_title(name, entry.title),
        at=document.span(path, of_key=True),
        quantity=entry.quantity,
        note=_words(entry.note),
        because=_words(entry.because),
        material=_words(entry.material),
        material_at=entry.material.span,
        stock=entry.stock,
        overall=entry.overall,
        handed=entry.handed,
        finish=_words(entry.finish),
        is_dummy=entry.dummy,
        shape_kind=kind,
        shape=getattr(entry, kind) if kind else None,
        features=_features(name, entry.features, document, path),
        like=_words(entry.like),
        is_mirrored=entry.mirrored,
    )


def _features(
    owner: str, entries: Mapping[str, FeatureEntry], document: Document, path: Path
) -> tuple[Feature, ...]:
    return tuple(
        Feature(
            name, owner, entry.kind, entry, document.span((*path, "features", name), of_key=True)
        )
        for name, entry in entries.items()
    )


def _bought(
    entries: Mapping[str, BoughtEntry], document: Document, section: str
) -> dict[str, Bought]:
    return {
        name: Bought(
            name=name,
            title=_words(entry.what),
            at=document.span((section, name), of_key=True),
            quantity=entry.quantity,
            note=_words(entry.note),
            because=_words(entry.because),
            what=_words(entry.what),
            sizes=tuple(entry.sizes.items()),
            measured=tuple(str(size) for size in entry.measure_first),
            is_salvaged=section == "scrap_box",
        )
        for name, entry in entries.items()
    }


def _fabrication(name: str, entry: FabricationEntry, document: Document) -> Fabrication:
    path: Path = ("fabrications", name)
    return Fabrication(
        name=name,
        title=_title(name, entry.title),
        at=document.span(path, of_key=True),
        quantity=entry.quantity,
        note=_words(entry.note),
        because=_words(entry.because),
        pieces=tuple(entry.pieces),
        joined=entry.joined,
        finish=_words(entry.finish),
        features=_features(name, entry.features, document, path),
        stack=tuple(entry.stack),
    )


def _assembly(name: str, entry: AssemblyEntry, document: Document) -> Assembly:
    return Assembly(
        name=name,
        title=_title(name, entry.title),
        at=document.span(("assemblies", name), of_key=True),
        quantity=None,
        note=_words(entry.note),
        because=_words(entry.because),
        members=tuple(entry.of),
        steps=tuple(_words(step) for step in entry.steps),
        test=_words(entry.test),
    )


def _joint(section: str, name: str, entry: JointEntry, document: Document) -> Joint:
    return Joint(
        name=name,
        kind=entry.kind,
        entry=entry,
        ends=tuple(_end(reference) for reference in entry.ends),
        master=_end(entry.master) if entry.master else None,
        made=entry.made or "to drawing",
        held_by=entry.held_by or "",
        at=document.span((section, name), of_key=True),
    )


def _end(reference: Reference) -> End:
    return End(reference.item, reference.place, reference.span)


def _departures(spec: Spec) -> Iterator[Departure]:
    for path, entry in _noted(spec):
        if entry.because:
            yield Departure(str(path[-1]), _words(entry.because), _whole(spec, path))


def _whole(spec: Spec, path: Path) -> Span:
    """From the key to the end of the entry: a finding on the thing itself points at its key."""
    value = spec.resolved.document.span(path)
    key = spec.resolved.document.span(path, of_key=True)
    return key._replace(end_line=value.end_line, end_column=value.end_column)


def _noted(spec: Spec) -> Iterator[tuple[Path, Noted]]:
    """Everything that may carry a reason, with its place; the inner ones first."""
    written = spec.written
    for section in ("parts", "fabrications"):
        for name, owner in getattr(written, section).items():
            for feature, entry in owner.features.items():
                yield (section, name, "features", feature), entry
    for section in (
        "parts",
        "bought",
        "scrap_box",
        "fabrications",
        "assemblies",
        "joints",
        "drive",
    ):
        for name, entry in getattr(written, section).items():
            yield (section, name), entry
