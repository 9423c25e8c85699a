"""The `sizes` of a spec and the `--set` of the command line to texts by name."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field

from binder.diagnostics import Diagnostic, Span
from binder.parameters import codes
from binder.parameters.environment import Origin
from binder.parameters.faults import quoted
from binder.parameters.functions import USES
from binder.parameters.near import did_you_mean
from binder.source.tree import Document, Table, Written
from binder.units import UNIT_WORDS

COMMAND_LINE = "<command line>"
SIZES = "sizes"
_NAME = re.compile(r"[A-Za-z][A-Za-z0-9_]*")
_NOT_NAME = re.compile(r"[^A-Za-z0-9_]+")


@dataclass(frozen=True, slots=True)
class WrittenSize:
    """A size before it is worked out."""

    text: Written
    origin: Origin = "spec"


@dataclass(slots=True)
class WrittenSizes:
    """The sizes by name, the names that stand for none, and what was found wrong."""

    texts: dict[str, WrittenSize] = field(default_factory=dict)
    faulty: set[str] = field(default_factory=set)
    findings: list[Diagnostic] = field(default_factory=list)


def written_sizes(
    document: Document, taken: Mapping[str, str], overrides: Sequence[str]
) -> WrittenSizes:
    """The texts of all sizes; `taken` says of names that no size may have what they are."""
    found = WrittenSizes()
    node = document.root.get(SIZES)
    if isinstance(node, Table):
        for name, value in node.items():
            _read(found, name, value, node.key_spans[name], taken)
    elif SIZES in document.root and node is not None:
        message = "`sizes` is no table of names"
        found.findings.append(codes.SIZES_MALFORMED.at(document.span((SIZES,)), message))
    _override(found, overrides)
    return found


def names_taken(series: Collection[str], gauges: Collection[str]) -> dict[str, str]:
    """The names that no size may have, each with what it is."""
    return {
        **dict.fromkeys(gauges, "a gauge"),
        **dict.fromkeys(series, "a series of sizes"),
        **dict.fromkeys(USES, "a function"),
        **dict.fromkeys(UNIT_WORDS, "a unit"),
    }


def _read(
    found: WrittenSizes, name: str, value: object, key: Span, taken: Mapping[str, str]
) -> None:
    unusable = _why_unusable(name, taken)
    if unusable:
        message, help = unusable
        found.findings.append(codes.SIZE_NAME_UNUSABLE.at(key, message, help=help))
        found.faulty.add(name)
    elif isinstance(value, Written):
        found.texts[name] = WrittenSize(value)
    else:
        message = f"{quoted(name)} is no plain text" if value else f"{quoted(name)} has no size"
        help = "write one size after the colon, as 20 mm"
        found.findings.append(codes.SIZES_MALFORMED.at(key, message, help=help))
        found.faulty.add(name)


def _why_unusable(name: str, taken: Mapping[str, str]) -> tuple[str, str] | None:
    if not _NAME.fullmatch(name):
        better = _NOT_NAME.sub("_", name).strip("_")
        help = f"write it as {quoted(better)}" if _NAME.fullmatch(better) else ""
        return f"a size cannot be called {quoted(name)}", help
    if name in taken:
        return (
            f"{quoted(name)} is {taken[name]}",
            f"call it {name}_size, or say what it is a size of",
        )
    return None


def _override(found: WrittenSizes, overrides: Sequence[str]) -> None:
    done: set[str] = set()
    for override in overrides:
        name, _, text = override.partition("=")
        name = name.strip()
        if not name or not text.strip():
            message = f"--set {quoted(override)} is not name=value"
            found.findings.append(codes.SET_MALFORMED.at(_span(0, len(override)), message))
        elif name in done:
            message = f"{quoted(name)} is set twice"
            found.findings.append(codes.SET_MALFORMED.at(_span(0, len(override)), message))
        else:
            done.add(name)
            _set(found, override, name, text)


def _set(found: WrittenSizes, override: str, name: str, text: str) -> None:
    """Puts the text of a `--set` in the place of the spec's, if it has the name."""
    if name not in found.texts and name not in found.faulty:
        message = f"--set {quoted(override)}: no size is called {quoted(name)}"
        help = did_you_mean(name, found.texts)
        span = _span(override.find(name), len(name))
        found.findings.append(codes.SET_NAME_UNKNOWN.at(span, message, help=help))
    elif name in found.texts:
        span = _span(len(override) - len(text.lstrip()), len(text.strip()))
        found.texts[name] = WrittenSize(Written(text.strip(), span), "command line")


def _span(start: int, length: int) -> Span:
    """A place in the text of one `--set`, counted from 1 in its only line."""
    return Span(COMMAND_LINE, 0, start + 1, 0, start + 1 + length)
