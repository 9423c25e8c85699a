"""Findings to records for other programs: plain JSON, SARIF 2.1.0, and build annotations."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from binder.diagnostics.code import Severity
from binder.diagnostics.diagnostic import Diagnostic
from binder.diagnostics.printable import printable
from binder.diagnostics.span import Span

_SARIF_LEVEL = {
    Severity.ERROR: "error",
    Severity.WARNING: "warning",
    Severity.CAUTION: "warning",
    Severity.ADVICE: "note",
}
_ANNOTATION = {
    Severity.ERROR: "error",
    Severity.WARNING: "warning",
    Severity.CAUTION: "warning",
    Severity.ADVICE: "notice",
}


def as_json(findings: Iterable[Diagnostic]) -> str:
    """A list of objects, one for each finding; lines and columns count from 1."""
    return json.dumps([_record(finding) for finding in findings], indent=2, ensure_ascii=False)


def _record(finding: Diagnostic) -> dict[str, Any]:
    return {
        "code": finding.code.name,
        "severity": str(finding.severity),
        "message": finding.message,
        **_place(finding.span),
        "label": finding.label,
        "related": [{**_place(one.span), "label": one.label} for one in finding.related],
        "notes": list(finding.notes),
        "help": finding.help,
        "accepted": finding.accepted,
    }


def _place(span: Span) -> dict[str, Any]:
    return {
        "file": span.file,
        "line": span.line,
        "column": span.column,
        "end_line": span.end_line,
        "end_column": span.end_column,
    }


def as_sarif(findings: Iterable[Diagnostic], version: str) -> str:
    """A log after SARIF 2.1.0 (OASIS), one run, a rule for each code that was met."""
    found = tuple(findings)
    codes = {finding.code.name: finding.code for finding in found}
    rules = [
        {
            "id": code.name,
            "shortDescription": {"text": code.meaning},
            "fullDescription": {"text": code.bench},
            "help": {"text": code.remedy},
        }
        for code in codes.values()
    ]
    driver = {"name": "binder", "version": version, "rules": rules}
    log = {
        "$schema": "https://json.schemastore.org/sarif-2.1.0.json",
        "version": "2.1.0",
        "runs": [{"tool": {"driver": driver}, "results": [_result(one) for one in found]}],
    }
    return json.dumps(log, indent=2, ensure_ascii=False)


def _result(finding: Diagnostic) -> dict[str, Any]:
    result: dict[str, Any] = {
        "ruleId": finding.code.name,
        "level": _SARIF_LEVEL[finding.severity],
        "message": {"text": _sentence(finding)},
        "locations": [_location(finding.span)],
    }
    if finding.related:
        result["relatedLocations"] = [
            {**_location(one.span), "message": {"text": one.label}} for one in finding.related
        ]
    if finding.accepted:
        result["suppressions"] = [{"kind": "inSource", "justification": finding.accepted}]
    return result


def _sentence(finding: Diagnostic) -> str:
    return f"{finding.message}; {finding.help}" if finding.help else finding.message


def _location(span: Span) -> dict[str, Any]:
    place: dict[str, Any] = {"artifactLocation": {"uri": span.file}}
    if span.line:
        place["region"] = {
            "startLine": span.line,
            "startColumn": span.column,
            "endLine": span.end_line,
            "endColumn": span.end_column,
        }
    return {"physicalLocation": place}


def as_annotations(findings: Iterable[Diagnostic]) -> str:
    """Workflow commands of a hosted build, one line for each finding."""
    return "\n".join(_annotation(finding) for finding in findings)


def _annotation(finding: Diagnostic) -> str:
    span = finding.span
    place = f"file={_property(span.file)}"
    if span.line:
        place += f",line={span.line},col={span.column},endLine={span.end_line}"
    title = _property(finding.code.name)
    words = printable(_sentence(finding)).replace("%", "%25")
    return f"::{_ANNOTATION[finding.severity]} {place},title={title}::{words}"


def _property(text: str) -> str:
    escaped = printable(text).replace("%", "%25")
    return escaped.replace(":", "%3A").replace(",", "%2C")
