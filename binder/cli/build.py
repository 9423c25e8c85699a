"""`binder build`: check a spec and write its binder, HTML first and then PDF."""

from __future__ import annotations

from pathlib import Path

import click

from binder.cli.check import texts_of
from binder.cli.options import format_option, spec_argument, spec_options
from binder.cli.progress import Progress
from binder.cli.report import report, tally
from binder.compiler import Job, compiled
from binder.diagnostics import Diagnostic
from binder.host import Host
from binder.render import write_binder


@click.command("build")
@spec_argument
@spec_options
@format_option
@click.option(
    "--output",
    type=click.Path(path_type=Path, file_okay=False),
    default=Path("output"),
    show_default=True,
    help="The folder for the binder.",
)
@click.option("--no-pdf", is_flag=True, help="Write the HTML alone.")
@click.pass_context
def command(
    ctx: click.Context,
    spec: Path,
    workshop: Path | None,
    overrides: tuple[str, ...],
    style: str,
    output: Path,
    *,
    no_pdf: bool,
) -> None:
    """Check SPEC and write its binder into a folder.

    With errors nothing is written, and the last good binder stays as it is.
    """
    with Progress() as progress:
        progress.says("compiling")
        outcome = compiled(Job(spec, workshop, overrides), Host.load())
        findings = outcome.findings
        written: tuple[Path, ...] = ()
        if outcome.binder is not None and not outcome.has_errors:
            progress.says("writing the binder")
            written, more = write_binder(outcome.binder, output, spec.stem, with_pdf=not no_pdf)
            findings = (*findings, *more)
    report(findings, texts_of(outcome), style)
    _say(written, findings, style)
    ctx.exit(0 if written and all(finding.accepted for finding in findings) else 1)


def _say(written: tuple[Path, ...], findings: tuple[Diagnostic, ...], style: str) -> None:
    for path in written:
        click.echo(f"wrote {path}" if style == "text" else str(path))
    if style == "text" and not findings:
        click.echo(tally(findings))
