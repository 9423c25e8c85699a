"""The command `binder` and its exit codes: 0 clean, 1 findings, 2 usage, 3 our own fault."""

from __future__ import annotations

import gc
import os
import sys
import traceback
from importlib import import_module

import click

from binder import __version__
from binder.cli.streams import prepare_streams

OUR_FAULT = 3


class Commands(click.Group):
    """The commands by name; each module is imported when its command is asked for."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """In the order of a first visit."""
        return list(_COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command of a name, None where there is none."""
        if cmd_name not in _COMMANDS:
            return None
        command: click.Command = import_module(f"binder.cli.{cmd_name}").command
        return command


_COMMANDS = (
    "new",
    "check",
    "build",
    "export",
    "show",
    "why",
    "reckon",
    "explain",
    "plugins",
    "schema",
    "doctor",
)


@click.group(
    cls=Commands, context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 96}
)
@click.version_option(__version__, prog_name="binder")
def cli() -> None:
    """Compile a build spec of a small machine into one workshop binder.

    Findings go to stderr and data to stdout. Exit code 0: clean; 1: findings; 2: wrong
    usage; 3: a fault of binder itself.
    """


def main() -> None:
    """Runs the command line and never shows a traceback for a fault in the input."""
    prepare_streams()
    # One short run: nothing is gained by looking for rings among values that all stay.
    gc.disable()
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
