"""`binder check`: all findings about a spec, and nothing written."""

from __future__ import annotations

from pathlib import Path

import click

from binder.cli.options import format_option, spec_argument, spec_options
from binder.cli.report import report, tally
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host


@click.command("check")
@spec_argument
@spec_options
@format_option
@click.pass_context
def command(
    ctx: click.Context,
    spec: Path,
    workshop: Path | None,
    overrides: tuple[str, ...],
    style: str,
) -> None:
    """Check SPEC and report what is wrong with it."""
    outcome = compiled(Job(spec, workshop, overrides), Host.load(), Phase.CHECK)
    report(outcome.findings, texts_of(outcome), style)
    if style == "text" and outcome.is_clean:
        click.echo(f"{spec}: {tally(outcome.findings)}")
    ctx.exit(0 if outcome.is_clean else 1)


def texts_of(outcome: Outcome) -> dict[str, str]:
    """The source files by name, for excerpts."""
    return outcome.document.texts if outcome.document is not None else {}
