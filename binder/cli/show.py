"""`binder show PHASE SPEC`: what a phase gave, as JSON."""

from __future__ import annotations

import json
from pathlib import Path

import click

from binder.cli.check import texts_of
from binder.cli.options import format_option, spec_argument, spec_options
from binder.cli.plain import plain
from binder.cli.report import report
from binder.compiler import Job, Outcome, Phase, compiled
from binder.diagnostics.records import as_json
from binder.host import Host


@click.command("show")
@click.argument("phase", type=click.Choice([str(phase) for phase in Phase]))
@spec_argument
@spec_options
@format_option
@click.pass_context
def command(
    ctx: click.Context,
    phase: str,
    spec: Path,
    workshop: Path | None,
    overrides: tuple[str, ...],
    style: str,
) -> None:
    """Print what PHASE makes of SPEC, as JSON."""
    wanted = Phase(phase)
    outcome = compiled(Job(spec, workshop, overrides), Host.load(), wanted)
    text = _output(outcome, wanted)
    if text is not None:
        click.echo(text)
    report(outcome.findings, texts_of(outcome), style)
    ctx.exit(0 if outcome.is_clean else 1)


def _output(outcome: Outcome, phase: Phase) -> str | None:
    if phase is Phase.CHECK:
        return as_json(outcome.findings)
    found = {
        Phase.READ: outcome.document and outcome.document.root,
        Phase.RESOLVE: outcome.resolved and outcome.resolved.sizes,
        Phase.VALIDATE: outcome.spec and outcome.spec.written,
        Phase.EXPAND: outcome.design and _design(outcome),
        Phase.COMPOSE: outcome.binder,
    }[phase]
    if found is None:
        return None
    return json.dumps(plain(found), indent=2, ensure_ascii=False)


def _design(outcome: Outcome) -> dict[str, object]:
    design = outcome.design
    if design is None:
        return {}
    names = ("parts", "bought", "fabrications", "assemblies", "joints", "tasks", "befores")
    tables = {name: getattr(design, name) for name in names}
    facts = {kind.__name__: design.facts.all(kind) for kind in design.facts.kinds()}
    return {**tables, "facts": facts, "workings": design.workings}
