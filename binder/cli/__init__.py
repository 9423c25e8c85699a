"""The command line: arguments in, data to stdout, findings to stderr, exit codes out."""

from binder.cli.main import main

__all__ = ["main"]
