"""Pydantic's error details to findings in the trade's words, at their exact places."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from pydantic import BaseModel
from pydantic_core import ErrorDetails

from binder.diagnostics import Diagnostic
from binder.parameters.near import did_you_mean
from binder.source import Document, Path, Row, Table
from binder.spec import codes
from binder.spec.kinds import Kinds, Slot
from binder.spec.refusal import Refusal

_SLOT_OF = {"features": Slot.FEATURE, "joints": Slot.JOINT, "drive": Slot.DRIVE}


def finding_of(
    fault: ErrorDetails, document: Document, kinds: Kinds, model: type[BaseModel]
) -> Diagnostic:
    """The finding that one pydantic error stands for."""
    path = written_path(fault["loc"])
    kind = fault["type"]
    if kind == "refused":
        return _refusal(fault["ctx"]["refusal"], path, document)
    if kind == "extra_forbidden":
        return _unknown_key(path, document, _known_keys(fault["loc"], model))
    if kind == "missing":
        return _missing(path, document)
    if kind.startswith("union_tag"):
        return _kind_fault(path, document, kinds)
    if kind in ("too_short", "too_long"):
        return _length(fault, path, document)
    return _shape(kind, path, document)


def written_path(loc: Iterable[str | int]) -> Path:
    """The steps of an error's place that exist in the source: union tags are none."""
    return tuple(step for step in loc if not (isinstance(step, str) and step.startswith("<")))


def _refusal(refusal: Refusal, path: Path, document: Document) -> Diagnostic:
    span = document.span(path)
    node = document.node(path)
    if refusal.length and span.line == span.end_line:
        quote = 1 if getattr(node, "is_quoted", False) else 0
        span = span.within(refusal.start + quote, refusal.length)
    return refusal.code.at(span, refusal.message, label=refusal.label, help=refusal.help)


def _unknown_key(path: Path, document: Document, known: list[str]) -> Diagnostic:
    key = str(path[-1])
    where = f" in '{_named(path[:-1])}'" if len(path) > 1 else ""
    help = did_you_mean(key, known) or (
        f"known here: {', '.join(known)}" if known else "take it out, or look at its spelling"
    )
    return codes.UNKNOWN_KEY.at(
        document.span(path, of_key=True), f"'{key}' is not known{where}", help=help
    )


def _missing(path: Path, document: Document) -> Diagnostic:
    parent = path[:-1]
    name = f"'{_named(parent)}'" if parent else "the file"
    span = document.span(parent, of_key=True) if parent else document.span(())
    return codes.KEY_MISSING.at(span, f"{name} has no `{path[-1]}`", help=f"add `{path[-1]}:`")


def _named(path: Path) -> str | int:
    """The last step that is a name: a line of a list goes by the list's."""
    return next((step for step in reversed(path) if isinstance(step, str)), path[-1])


def _kind_fault(path: Path, document: Document, kinds: Kinds) -> Diagnostic:
    slot = next((_SLOT_OF[str(step)] for step in reversed(path) if step in _SLOT_OF), Slot.FEATURE)
    known = kinds.of(slot)
    node = document.node(path)
    span = document.span(path, of_key=True)
    if not isinstance(node, Table):
        return codes.WRONG_SHAPE.at(span, f"'{path[-1]}' is no table", help=_kinds_help(known))
    found = [key for key in node if key in known]
    if len(found) > 1:
        return codes.KIND_TWICE.at(
            node.key_spans[found[1]],
            f"'{path[-1]}' is both {found[0]} and {found[1]}",
            help="give each its own name",
        )
    near = [(key, did_you_mean(key, known)) for key in node]
    key, hint = next(((key, hint) for key, hint in near if hint), ("", ""))
    span = node.key_spans[key] if key else span
    return codes.KIND_UNKNOWN.at(
        span, f"what kind of {slot} is '{path[-1]}'?", help=hint or _kinds_help(known)
    )


def _kinds_help(known: Iterable[str]) -> str:
    return f"one of: {', '.join(sorted(known))}"


def _length(fault: ErrorDetails, path: Path, document: Document) -> Diagnostic:
    ctx = fault.get("ctx", {})
    if fault["type"] == "too_short":
        wanted = f"at least {ctx.get('min_length')}"
    else:
        wanted = f"at most {ctx.get('max_length')}"
    message = f"'{path[-1]}' wants {wanted}, it has {ctx.get('actual_length')}"
    return codes.LIST_LENGTH.at(document.span(path), message)


_WANTED = {
    "list_type": "a list, as [a, b] or lines that begin with a dash",
    "dict_type": "a table of names, each with its own lines",
    "model_type": "a table of keys",
    "model_attributes_type": "a table of keys",
}


def _shape(kind: str, path: Path, document: Document) -> Diagnostic:
    wanted = _WANTED.get(kind, "something else")
    node = document.node(path)
    found = {Table: "a table", Row: "a list", type(None): "nothing"}.get(type(node), "plain words")
    name = f"'{_named(path)}'" if path else "the file"
    return codes.WRONG_SHAPE.at(
        document.span(path), f"{name} is {found}", help=f"write {wanted} here"
    )


def _known_keys(loc: tuple[str | int, ...], model: Any) -> list[str]:  # noqa: ANN401
    """The keys that may stand beside the last step of an error's place."""
    return sorted(_fields_at(loc[:-1], model))


def _fields_at(loc: tuple[str | int, ...], model: Any) -> Iterable[str]:  # noqa: ANN401
    from binder.spec.fields_at import model_at

    found = model_at(model, loc)
    return found.model_fields if found is not None else ()
