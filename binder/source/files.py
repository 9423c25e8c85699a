"""A file's name to its bytes, never through a link, never out of the folder, never too many."""

from __future__ import annotations

import errno
import os
import stat
from dataclasses import dataclass
from pathlib import Path

from binder.diagnostics import Code, Diagnostic, Span
from binder.source.bounds import megabytes
from binder.source.codes.file_codes import (
    FILE_NOT_FOUND,
    FILE_NOT_READABLE,
    FILE_OUTSIDE_FOLDER,
    FILE_TOO_LARGE,
    NOT_A_FILE,
)
from binder.source.names import parts_of
from binder.source.quoting import quoted

_NO_FOLLOW: int = getattr(os, "O_NOFOLLOW", 0)
_FOLDER: int = os.O_RDONLY | getattr(os, "O_DIRECTORY", 0) | getattr(os, "O_CLOEXEC", 0)
# Without O_NONBLOCK the opening of a named pipe waits for a writer for ever.
_FILE: int = (
    os.O_RDONLY
    | getattr(os, "O_NONBLOCK", 0)
    | getattr(os, "O_NOCTTY", 0)
    | getattr(os, "O_CLOEXEC", 0)
    | getattr(os, "O_BINARY", 0)
)
_CAN_WALK = bool(_NO_FOLLOW) and os.open in os.supports_dir_fd
_NOT_FILES = {errno.ELOOP, errno.EMLINK, errno.ENOTDIR, errno.EISDIR, errno.ENXIO, errno.ENODEV}


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a file was not read."""

    code: Code
    message: str
    help: str = ""

    def at(self, span: Span) -> Diagnostic:
        """The refusal as a finding, at the place that names the file."""
        return self.code.at(span, self.message, help=self.help)


def read_file(path: str | os.PathLike[str], limit: int) -> bytes | Refusal:
    """The bytes of a file that the user himself has named, at most `limit` of them."""
    name = os.fspath(path)
    try:
        return _read(os.open(name, _FILE), name, limit)
    except OSError as error:
        return _refusal(error, name)
    except ValueError:
        return Refusal(FILE_NOT_FOUND, f"{quoted(name)} cannot be the name of a file")


def read_file_in(folder: str | os.PathLike[str], name: str, limit: int) -> bytes | Refusal:
    """The bytes of a file that a spec names, which must lie in `folder` or below it.

    At most `limit` bytes. No step of the name may be a link, and what is read must be a
    regular file: a pipe or a device is refused without being opened for good.
    """
    parts = parts_of(name)
    if isinstance(parts, str):
        help = "name a file in the spec's own folder, such as `jib.yaml` or `pictures/quay.png`"
        return Refusal(FILE_OUTSIDE_FOLDER, f"{quoted(name)} is refused: {parts}", help)
    open_in = _open_by_steps if _CAN_WALK else _open_resolved
    try:
        return _read(open_in(folder, parts), name, limit)
    except OSError as error:
        return _refusal(error, name)


def _open_by_steps(folder: str | os.PathLike[str], parts: tuple[str, ...]) -> int:
    """Opened one step at a time from the folder's descriptor, so that nothing can be swapped."""
    here = os.open(folder, _FOLDER)
    try:
        for part in parts[:-1]:
            below = os.open(part, _FOLDER | _NO_FOLLOW, dir_fd=here)
            os.close(here)
            here = below
        return os.open(parts[-1], _FILE | _NO_FOLLOW, dir_fd=here)
    finally:
        os.close(here)


def _open_resolved(folder: str | os.PathLike[str], parts: tuple[str, ...]) -> int:
    """For systems that cannot open by steps: the resolved path must be the plain one."""
    plain = Path(folder).resolve(strict=True).joinpath(*parts)
    if plain.resolve(strict=True) != plain:
        raise OSError(errno.ELOOP, "a step of the name is a link")
    return os.open(plain, _FILE)


def _read(descriptor: int, name: str, limit: int) -> bytes | Refusal:
    try:
        status = os.fstat(descriptor)
        if not stat.S_ISREG(status.st_mode):
            return _not_a_file(name)
        if status.st_size > limit:
            return _too_large(name, limit)
        with open(descriptor, "rb", closefd=False) as file:
            data = file.read(limit + 1)
    finally:
        os.close(descriptor)
    return _too_large(name, limit) if len(data) > limit else data


def _refusal(error: OSError, name: str) -> Refusal:
    if error.errno == errno.ENOENT:
        return Refusal(FILE_NOT_FOUND, f"there is no file {quoted(name)}")
    if error.errno in _NOT_FILES:
        return _not_a_file(name)
    reason = (error.strerror or "the system gives no reason").lower()
    return Refusal(FILE_NOT_READABLE, f"{quoted(name)} cannot be read: {reason}")


def _not_a_file(name: str) -> Refusal:
    message = f"{quoted(name)} is not an ordinary file"
    return Refusal(NOT_A_FILE, message, "links, folders, pipes and devices are not read")


def _too_large(name: str, limit: int) -> Refusal:
    message = f"{quoted(name)} is larger than {megabytes(limit)}"
    return Refusal(FILE_TOO_LARGE, message)
