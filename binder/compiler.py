"""A spec to a binder: the phases in order, each from one frozen noun to the next."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path

from binder.checks import accepted, check_structure
from binder.design import Design
from binder.design.draft import drafted
from binder.diagnostics import Diagnostic, sorted_findings
from binder.host import Host
from binder.pages import Binder
from binder.parameters import Environment, Resolved, resolve
from binder.source import Document, read_spec
from binder.spec.validate import Spec, validate
from binder.workshop import Workshop, read_workshop


class Phase(StrEnum):
    """The phases whose output can be shown."""

    READ = "read"
    RESOLVE = "resolve"
    VALIDATE = "validate"
    EXPAND = "expand"
    CHECK = "check"
    COMPOSE = "compose"

    @property
    def rank(self) -> int:
        """0 for the first."""
        return list(Phase).index(self)


@dataclass(frozen=True, slots=True)
class Job:
    """What to compile: the spec, the workshop (None for the built-in), and `--set` texts.

    `for_files` runs the slow steps where no binder is composed: files are exported.
    """

    spec: Path
    workshop: Path | None = None
    overrides: Sequence[str] = ()
    for_files: bool = False


@dataclass(frozen=True, slots=True)
class Outcome:
    """What each phase gave, as far as it went, and all findings."""

    document: Document | None = None
    resolved: Resolved | None = None
    spec: Spec | None = None
    design: Design | None = None
    binder: Binder | None = None
    findings: tuple[Diagnostic, ...] = ()

    @property
    def has_errors(self) -> bool:
        """Whether any finding stops the binder."""
        return any(finding.is_error for finding in self.findings)

    @property
    def is_clean(self) -> bool:
        """Whether nothing was found that the maker has not answered."""
        return all(finding.accepted for finding in self.findings)


def compiled(job: Job, host: Host, upto: Phase = Phase.COMPOSE) -> Outcome:
    """Runs the phases up to one of them, or as far as the findings let it."""
    outcome = _written(job, host, upto)
    if outcome.spec is None or outcome.has_errors or upto.rank <= Phase.VALIDATE.rank:
        return _tidy(outcome)
    outcome = _designed(job, host, outcome, upto)
    design = outcome.design
    if upto is Phase.COMPOSE and design is not None and not outcome.has_errors:
        from binder.compose import compose

        outcome = _tidy(outcome)
        binder, faults = compose(design, outcome.findings, host)
        outcome = replace(outcome, binder=binder, findings=(*outcome.findings, *faults))
    return _tidy(outcome)


def _written(job: Job, host: Host, upto: Phase) -> Outcome:
    """Read, resolve, validate."""
    document, findings = read_spec(job.spec)
    findings = (*host.findings, *findings)
    if document is None or upto is Phase.READ:
        return Outcome(document, findings=findings)
    resolved, found = resolve(document, host.series(), host.gauges(), job.overrides)
    findings = (*findings, *found)
    if upto is Phase.RESOLVE:
        return Outcome(document, resolved, findings=findings)
    spec, found = validate(resolved, host.kinds())
    return Outcome(document, resolved, spec, findings=(*findings, *found))


def _designed(job: Job, host: Host, outcome: Outcome, upto: Phase) -> Outcome:
    """Expand and check."""
    if outcome.spec is None:
        return outcome
    workshop, found = _workshop(job, host)
    findings = (*outcome.findings, *found)
    if workshop is None:
        return replace(outcome, findings=findings)
    design = drafted(outcome.spec, workshop)
    findings = (*findings, *check_structure(design))
    if any(finding.is_error for finding in findings):
        return replace(outcome, design=design, findings=findings)
    design, found = host.settle(design)
    findings = (*findings, *found)
    if any(finding.is_error for finding in found):
        return replace(outcome, design=design, findings=findings)
    design, found = host.expand(design, for_pages=job.for_files or upto is Phase.COMPOSE)
    findings = (*findings, *found, *host.check(design))
    findings = accepted(findings, design.departures)
    return replace(outcome, design=design, findings=findings)


def _workshop(job: Job, host: Host) -> tuple[Workshop | None, tuple[Diagnostic, ...]]:
    environment = Environment({}, host.series(), host.gauges(), None)
    return read_workshop(job.workshop, environment)


def _tidy(outcome: Outcome) -> Outcome:
    return replace(outcome, findings=sorted_findings(outcome.findings))
