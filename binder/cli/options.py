"""Arguments and options that several commands share."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

import click

Command = TypeVar("Command", bound=Callable[..., Any])

FORMATS = ("text", "json", "sarif", "github")


def spec_argument(command: Command) -> Command:
    """SPEC: the file to compile."""
    return click.argument("spec", type=click.Path(path_type=Path))(command)


def spec_options(command: Command) -> Command:
    """`--workshop` and `--set`."""
    workshop = click.option(
        "--workshop",
        type=click.Path(path_type=Path),
        help="The workshop file; a modest metric one is built in.",
    )
    overrides = click.option(
        "--set",
        "overrides",
        multiple=True,
        metavar="NAME=VALUE",
        help="Give a named size another value for this run.",
    )
    return workshop(overrides(command))


def format_option(command: Command) -> Command:
    """`--format` of findings."""
    return click.option(
        "--format",
        "style",
        type=click.Choice(FORMATS),
        default="text",
        show_default=True,
        help="How findings are printed.",
    )(command)
