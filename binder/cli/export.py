"""`binder export`: check a spec and write what others can open: solids, outlines, drawings."""

from __future__ import annotations

from pathlib import Path

import click

from binder.api.contributions import ExportFile
from binder.cli.check import texts_of
from binder.cli.options import format_option, spec_argument, spec_options
from binder.cli.progress import Progress
from binder.cli.report import report, tally
from binder.compiler import Job, Outcome, Phase, compiled
from binder.diagnostics import Diagnostic
from binder.host import Host
from binder.render.files import named_files, wanted_files, write_files

Named = tuple[tuple[str, ExportFile], ...]


@click.command("export")
@spec_argument
@spec_options
@format_option
@click.option(
    "--output",
    type=click.Path(path_type=Path, file_okay=False),
    default=Path("output"),
    show_default=True,
    help="The folder for the files.",
)
@click.option(
    "--only",
    multiple=True,
    metavar="KIND|ITEM",
    help="Leave out what is not of this kind or for this item; may be given several times.",
)
@click.option("--list", "only_list", is_flag=True, help="Name the files and write none.")
def command(
    spec: Path,
    workshop: Path | None,
    overrides: tuple[str, ...],
    style: str,
    output: Path,
    only: tuple[str, ...],
    *,
    only_list: bool,
) -> None:
    """Check SPEC and write its parts for other hands.

    Solids as STEP, flat parts at full size as DXF, drawings and paper templates as SVG. With
    errors nothing is written.
    """
    written: tuple[Path, ...] = ()
    with Progress() as progress:
        progress.says("compiling")
        host = Host.load()
        outcome = compiled(Job(spec, workshop, overrides, for_files=True), host, Phase.CHECK)
        files, found = _offered(outcome, host, only, spec.stem)
        findings = (*outcome.findings, *found)
        if not only_list:
            progress.says("writing the files")
            written, more = write_files(files, output) if files else ((), ())
            findings = (*findings, *more)
    report(findings, texts_of(outcome), style)
    for line in [name for name, _ in files] if only_list else _said(written, style):
        click.echo(line)
    if style == "text" and not findings:
        click.echo(tally(findings))
    is_clean = bool(files) and all(finding.accepted for finding in findings)
    click.get_current_context().exit(0 if is_clean else 1)


def _offered(
    outcome: Outcome, host: Host, only: tuple[str, ...], model: str
) -> tuple[Named, tuple[Diagnostic, ...]]:
    """The files that are asked for, under their names; none where the spec has errors."""
    if outcome.design is None or outcome.has_errors:
        return (), ()
    files, faults = host.exports(outcome.design)
    # Names are given before any file is left out, so that a file has one name for good.
    named = {id(file): name for name, file in named_files(files, model)}
    wanted, found = wanted_files(files, only)
    return tuple((named[id(file)], file) for file in wanted), (*faults, *found)


def _said(written: tuple[Path, ...], style: str) -> list[str]:
    """Paths alone for another program."""
    return [f"wrote {path}" if style == "text" else str(path) for path in written]
