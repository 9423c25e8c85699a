"""A workshop file, or the built-in default, to a Workshop."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from importlib.resources import files
from pathlib import Path
from typing import Any

from binder.diagnostics import Diagnostic
from binder.parameters import Environment
from binder.source import Document, read_spec, read_text
from binder.spec.validate import typed
from binder.workshop.faults import faults
from binder.workshop.models import WorkshopEntry
from binder.workshop.owned import owned
from binder.workshop.runs import SetReading
from binder.workshop.workshop import Workshop

BUILT_IN = "<built-in workshop>"


def read_workshop(
    path: Path | None, environment: Environment
) -> tuple[Workshop | None, tuple[Diagnostic, ...]]:
    """The workshop of a file, or the built-in one for None, with all findings.

    None where a finding is an error. The environment gives the series and gauges by which
    sizes may be told.
    """
    document, found = _document(path)
    if document is None or any(finding.is_error for finding in found):
        return None, found
    reading = SetReading(environment, bare_help="")
    entry, more = typed(document, document.root, WorkshopEntry, reading)
    found = (*found, *more)
    if entry is None:
        return None, found
    tools = owned(entry, document)
    found = (*found, *faults(entry, tools, document))
    if any(finding.is_error for finding in found):
        return None, found
    return Workshop(entry, document, tools), found


@lru_cache(maxsize=1)
def _built_in() -> tuple[Document | None, tuple[Diagnostic, ...]]:
    text = files("binder.workshop").joinpath("default.yaml").read_text(encoding="utf-8")
    return read_text(text, BUILT_IN)


def _document(path: Path | None) -> tuple[Document | None, tuple[Diagnostic, ...]]:
    if path is not None:
        return read_spec(path)
    return _built_in()


def workshop_schema() -> dict[str, Any]:
    """The JSON Schema of a workshop file, as editors take it (draft 2020-12)."""
    schema: Mapping[str, Any] = WorkshopEntry.model_json_schema()
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        **schema,
        "title": "A workshop file for binder, format 1",
    }
