"""Findings as values: where, what, why it matters and what to do."""

from binder.diagnostics.code import Code, Severity
from binder.diagnostics.diagnostic import Diagnostic, Labelled, sorted_findings
from binder.diagnostics.span import NOWHERE, Span

__all__ = ["NOWHERE", "Code", "Diagnostic", "Labelled", "Severity", "Span", "sorted_findings"]
