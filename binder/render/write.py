"""Bytes to a file that is wholly the old one or wholly the new one, whatever happens."""

from __future__ import annotations

import errno
import os
import re
import stat
import time
from contextlib import suppress
from pathlib import Path

from binder.render.lock import is_alive

_STALE_SECONDS = 3600.0


def write_whole(path: Path, content: bytes) -> None:
    """Replaces a file in one step: written beside, forced to the disk, renamed.

    A new file gets the mode that the umask leaves, an old one keeps its own. Raises OSError;
    then the old file stands as it was. A link, a folder or a device as target is refused:
    a folder from a stranger could point it anywhere.
    """
    target = path.parent.resolve(strict=True) / path.name
    mode = _mode_of(target)
    _sweep(target)
    beside = target.with_name(f".{target.name}.{os.getpid()}.tmp")
    try:
        _write_through(beside, content, mode)
        beside.replace(target)
    except BaseException:
        with suppress(OSError):
            beside.unlink()
        raise
    _sync_folder(target.parent)


def _mode_of(target: Path) -> int | None:
    """Permission bits of the regular file there, None where nothing is."""
    try:
        found = target.lstat().st_mode
    except FileNotFoundError:
        return None
    if not stat.S_ISREG(found):
        raise OSError(errno.EINVAL, "is a link, a folder or a device; name a plain file", target)
    return stat.S_IMODE(found)


def _write_through(beside: Path, content: bytes, mode: int | None) -> None:
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    with os.fdopen(os.open(beside, flags, 0o666), "wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())
    if mode is not None:
        beside.chmod(mode)


def _sweep(target: Path) -> None:
    """Removes what killed writers of this file have left beside it."""
    pattern = re.compile(rf"\.{re.escape(target.name)}\.([0-9]+)\.tmp")
    for left in sorted(target.parent.iterdir()):
        match = pattern.fullmatch(left.name)
        if match and _is_stale(left, int(match[1][:12])):
            left.unlink(missing_ok=True)


def _is_stale(left: Path, pid: int) -> bool:
    if pid == os.getpid() or not is_alive(pid):
        return True
    try:
        return time.time() - left.lstat().st_mtime > _STALE_SECONDS
    except FileNotFoundError:
        return False


def _sync_folder(folder: Path) -> None:
    """Forces the rename itself to the disk, where the system lets a folder be opened."""
    if os.name == "nt":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
