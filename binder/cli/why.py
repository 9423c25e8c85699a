"""`binder why SPEC NAME`: the chain from the lines of the spec to a number."""

from __future__ import annotations

from pathlib import Path

import click

from binder.cli.check import texts_of
from binder.cli.options import spec_argument, spec_options
from binder.cli.report import report
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.parameters.near import did_you_mean
from binder.reasons import chain, known_names


@click.command("why")
@spec_argument
@click.argument("name")
@spec_options
@click.pass_context
def command(
    ctx: click.Context,
    spec: Path,
    name: str,
    workshop: Path | None,
    overrides: tuple[str, ...],
) -> None:
    """Print how the number NAME of SPEC was reached.

    NAME is a named size (barrel), a place in the spec (parts.drum.overall), or a working
    that a plugin made (body.cut); without a match the nearest names are offered.
    """
    outcome = compiled(Job(spec, workshop, overrides), Host.load(), Phase.CHECK)
    lines = chain(name, outcome)
    if lines:
        click.echo("\n".join(lines))
        return
    report(outcome.findings, texts_of(outcome), "text")
    known = known_names(outcome)
    hint = did_you_mean(name, known) or "such as: " + ", ".join(sorted(known)[:12])
    click.echo(f"nothing is known of '{name}'; {hint}", err=True)
    ctx.exit(1)
