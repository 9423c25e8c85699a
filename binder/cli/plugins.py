"""`binder plugins`: what is installed and what each plugin adds."""

from __future__ import annotations

from collections.abc import Iterator

import click

from binder.cli.report import report
from binder.host import Host, Plugin


@click.command("plugins")
@click.pass_context
def command(ctx: click.Context) -> None:
    """List the installed plugins with their versions and what each adds."""
    host = Host.load()
    for plugin in host.plugins:
        click.echo(f"{plugin.name}  ({plugin.distribution} {plugin.version})")
        for line in _adds(plugin):
            click.echo(f"    {line}")
    report(host.findings, {}, "text")
    ctx.exit(1 if host.findings else 0)


def _adds(plugin: Plugin) -> Iterator[str]:
    for kind in plugin.kinds:
        yield f"{kind.slot:8} {kind.key}: {kind.says}"
    for series in plugin.series:
        yield f"sizes    {series.name}: {series.title}"
    for step in plugin.steps:
        facts = ", ".join(fact.__name__ for fact in step.gives)
        yield f"step     {step.name}" + (f" -> {facts}" if facts else "")
    for check in plugin.checks:
        yield f"check    {check.name}"
    for page in plugin.pages:
        yield f"page     {page.name}"
    for export in plugin.exports:
        yield f"export   {export.name}"
    if plugin.codes:
        yield f"codes    {', '.join(code.name for code in plugin.codes)}"
