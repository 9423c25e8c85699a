"""`binder schema`: the JSON Schema of the language, for editors."""

from __future__ import annotations

import json

import click

from binder.host import Host
from binder.spec.schema import spec_schema
from binder.workshop import workshop_schema


@click.command("schema")
@click.option("--workshop", is_flag=True, help="The schema of a workshop file instead.")
def command(*, workshop: bool) -> None:
    """Print the JSON Schema of a spec, all installed plugins included."""
    schema = workshop_schema() if workshop else spec_schema(Host.load().kinds())
    click.echo(json.dumps(schema, indent=2, ensure_ascii=False, sort_keys=True))
