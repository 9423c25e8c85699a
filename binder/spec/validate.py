"""A resolved document to a typed spec, with every fault at its place."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from binder.diagnostics import Diagnostic
from binder.parameters import ExpressionFault, Resolved, parse
from binder.parameters.codes import SIZE_AT_FAULT
from binder.source import Document, Table
from binder.spec import codes
from binder.spec.kinds import Kinds
from binder.spec.language import language
from binder.spec.models import SpecEntry
from binder.spec.reading import Reading
from binder.spec.wording import finding_of

MOST_FINDINGS = 100
_NOT_OURS = ("sizes", "picture")
NO_KINDS = Kinds(())
M = TypeVar("M", bound=BaseModel)


@dataclass(frozen=True, slots=True)
class Spec:
    """A valid spec: what was written, typed, with the document and the sizes behind it.

    `used` are the names of the sizes that something asks for.
    """

    written: SpecEntry
    resolved: Resolved
    kinds: Kinds
    used: frozenset[str] = frozenset()


def validate(resolved: Resolved, kinds: Kinds) -> tuple[Spec | None, tuple[Diagnostic, ...]]:
    """The spec, or none and what is wrong with it."""
    model = language(kinds)
    root = resolved.document.root
    entry = {key: value for key, value in root.items() if key not in _NOT_OURS}
    reading = Reading(resolved.environment, _bare_unit(entry))
    written, findings = typed(resolved.document, entry, model, reading, kinds)
    findings = (*findings, *reading.remarks)
    if written is None:
        return None, findings
    return Spec(written, resolved, kinds, _used(resolved, reading)), findings


def typed(
    document: Document,
    entry: Mapping[str, object],
    model: type[M],
    reading: Reading,
    kinds: Kinds = NO_KINDS,
) -> tuple[M | None, tuple[Diagnostic, ...]]:
    """A document's entry as its model, or none and every fault at its place."""
    try:
        return model.model_validate(entry, context=reading), ()
    except ValidationError as error:
        return None, _findings(error, document, kinds, model)


def _used(resolved: Resolved, reading: Reading) -> frozenset[str]:
    """Sizes that a field names, or another size, or the picture."""
    names = set(reading.used)
    picture = resolved.document.root.get("picture")
    texts = [str(size.text) for size in resolved.sizes.values()]
    if isinstance(picture, Table) and isinstance(known := picture.get("known"), Table):
        texts.append(str(known.get("is")))
    for text in texts:
        names |= _names(text)
    return frozenset(names)


def _names(text: str) -> frozenset[str]:
    try:
        return parse(text).names
    except ExpressionFault:
        return frozenset()


def _bare_unit(entry: Mapping[str, object]) -> str:
    head = entry.get("model")
    unit = head.get("bare_numbers") if isinstance(head, Table) else None
    return {"mm": "mm", "inch": "in"}.get(str(unit), "")


def _findings(
    error: ValidationError, document: Document, kinds: Kinds, model: type[BaseModel]
) -> tuple[Diagnostic, ...]:
    faults = error.errors(include_url=False, include_input=False)
    shown = [finding_of(fault, document, kinds, model) for fault in faults[:MOST_FINDINGS]]
    rest = len(faults) - MOST_FINDINGS
    if rest > 0:
        span = document.root.span
        shown.append(codes.TOO_MANY_FINDINGS.at(span, f"and {rest} more faults not shown"))
    # What follows from a size at fault is silent: the size itself is reported.
    return tuple(finding for finding in shown if finding.code is not SIZE_AT_FAULT)
