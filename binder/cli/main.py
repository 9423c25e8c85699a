"""The command `binder` and its exit codes: 0 clean, 1 findings, 2 usage, 3 our own fault."""

from __future__ import annotations

import os
import sys
import traceback

import click

from binder import __version__
from binder.cli import build, check, doctor, explain, new, plugins, schema, show, why
from binder.cli.streams import prepare_streams

OUR_FAULT = 3


@click.group(context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 96})
@click.version_option(__version__, prog_name="binder")
def cli() -> None:
    """Compile a build spec of a small machine into one workshop binder.

    Findings go to stderr and data to stdout. Exit code 0: clean; 1: findings; 2: wrong
    usage; 3: a fault of binder itself.
    """


for _module in (new, check, build, show, why, explain, plugins, schema, doctor):
    cli.add_command(_module.command)


def main() -> None:
    """Runs the command line and never shows a traceback for a fault in the input."""
    prepare_streams()
    try:
        cli.main(prog_name="binder")
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except Exception as error:  # noqa: BLE001 - the last net, for our own faults
        _confess(error)
        sys.exit(OUR_FAULT)


def _confess(error: Exception) -> None:
    last = traceback.extract_tb(error.__traceback__)[-1]
    click.echo(
        f"binder itself failed ({type(error).__name__} at {last.filename}:{last.lineno}).\n"
        "The fault is not in your spec, and nothing was written. Please report it with the "
        "spec\nthat shows it; set BINDER_TRACEBACK=1 for the whole story.",
        err=True,
    )
    if os.environ.get("BINDER_TRACEBACK"):
        traceback.print_exception(error)
