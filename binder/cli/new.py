"""`binder new NAME`: a commented starter spec, and the schema for the editor beside it."""

from __future__ import annotations

import json
import re
from importlib.resources import files
from pathlib import Path

import click

from binder.host import Host
from binder.spec.schema import spec_schema

SCHEMA_FILE = "binder.schema.json"
_NAME = re.compile(r"[a-z0-9][a-z0-9-]{0,59}")


@click.command("new")
@click.argument("name")
@click.option(
    "--in",
    "folder",
    type=click.Path(path_type=Path, file_okay=False, exists=True),
    default=Path(),
    help="The folder to make it in; the present one if left out.",
)
@click.pass_context
def command(ctx: click.Context, name: str, folder: Path) -> None:
    """Make a folder NAME with a starter spec in it."""
    if not _NAME.fullmatch(name):
        click.echo("a name is made of small letters, figures and -, as in tilt-hammer", err=True)
        ctx.exit(2)
    home = folder / name
    try:
        home.mkdir()
    except OSError as error:
        click.echo(f"cannot make {home}: {error.strerror}", err=True)
        ctx.exit(2)
    spec = home / f"{name}.yaml"
    spec.write_text(_starter(name), encoding="utf-8", newline="\n")
    schema = json.dumps(spec_schema(Host.load().kinds()), indent=1, sort_keys=True)
    (home / SCHEMA_FILE).write_text(schema + "\n", encoding="utf-8", newline="\n")
    click.echo(f"wrote {spec}\nnext: binder check {spec}")


def _starter(name: str) -> str:
    text = files("binder.cli").joinpath("starter.yaml").read_text(encoding="utf-8")
    title = name.replace("-", " ").capitalize()
    return text.replace("TITLE", title).replace("SCHEMA", SCHEMA_FILE)
