"""`binder explain CODE`: what a finding means, why it matters, an example, the way out."""

from __future__ import annotations

import textwrap

import click

from binder.diagnostics import Code
from binder.host import Host
from binder.parameters.near import did_you_mean


@click.command("explain")
@click.argument("code", required=False)
@click.pass_context
def command(ctx: click.Context, code: str | None) -> None:
    """Explain the finding CODE, or list all codes."""
    codes = Host.load().codes()
    if code is None:
        for name in sorted(codes):
            click.echo(f"{name:28} {codes[name].severity:8} {codes[name].meaning}")
    elif code in codes:
        click.echo(_explained(codes[code]))
    else:
        hint = did_you_mean(code, codes) or "`binder explain` lists all codes"
        click.echo(f"there is no code '{code}'; {hint}", err=True)
        ctx.exit(2)


def _explained(code: Code) -> str:
    example = textwrap.indent(code.example, "    ")
    return (
        f"{code.name} ({code.severity})\n\n"
        f"Meaning\n  {_filled(code.meaning)}\n\n"
        f"Why it matters at the bench\n  {_filled(code.bench)}\n\n"
        f"Example\n{example}\n\n"
        f"Remedy\n  {_filled(code.remedy)}"
    )


def _filled(words: str) -> str:
    return textwrap.fill(words, 78, subsequent_indent="  ")
