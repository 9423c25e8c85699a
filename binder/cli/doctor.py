"""`binder doctor`: is everything here that a whole binder needs?"""

from __future__ import annotations

import sys
import tempfile
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

import click

from binder.host import Host
from binder.pages import Binder
from binder.render import write_pdf

_EMPTY = Binder("trial", "A", "", "0" * 64, "", (), ())
_PACKAGES = ("pydantic", "PyYAML", "pint", "pluggy", "Jinja2", "networkx", "Pillow")


@click.command("doctor")
@click.pass_context
def command(ctx: click.Context) -> None:
    """Look whether this machine has all that a whole binder needs."""
    faults = [fault for look in (_python, _packages, _yaml, _pdf, _plugins) for fault in look()]
    for fault in faults:
        click.echo(f"wanting: {fault}")
    click.echo("all is well" if not faults else f"{len(faults)} to mend")
    ctx.exit(1 if faults else 0)


def _python() -> list[str]:
    click.echo(f"Python {sys.version.split()[0]} on {sys.platform}")
    return []


def _packages() -> list[str]:
    missing = []
    for name in _PACKAGES:
        try:
            click.echo(f"{name} {version(name)}")
        except PackageNotFoundError:
            missing.append(f"{name} is not installed; run `make binder` or reinstall build-binder")
    return missing


def _yaml() -> list[str]:
    import yaml

    if hasattr(yaml, "CParser"):
        return []
    return ["PyYAML has no libyaml here: specs are read some ten times slower"]


def _pdf() -> list[str]:
    """Makes an empty binder's PDF, the surest way to know."""
    with tempfile.TemporaryDirectory() as folder:
        outcome = write_pdf(_EMPTY, Path(folder) / "trial.pdf")
    if outcome.ok:
        click.echo("PDF: can be made")
        return []
    return [f"no PDF can be made: {outcome.reason}. {outcome.help}"]


def _plugins() -> list[str]:
    host = Host.load()
    click.echo(f"plugins: {', '.join(plugin.name for plugin in host.plugins)}")
    return [finding.message for finding in host.findings]
