"""A folder to one that only this process builds into."""

from __future__ import annotations

import os
import re
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

NAME = ".binder.lock"

# A lock without a number is one that its maker is just writing, unless it is older than the
# first. No build lasts as long as the second: its process number is by now another's.
_WRITING_SECONDS = 5.0
_BUILD_SECONDS = 3600.0


class FolderBusyError(Exception):
    """Another build, whose process id is `pid`, is writing into the folder."""

    def __init__(self, folder: Path, pid: int) -> None:
        super().__init__(f"process {pid} is building into {folder}")
        self.folder = folder
        self.pid = pid


@contextmanager
def folder_lock(folder: Path) -> Iterator[None]:
    """Holds the folder while the block runs; FolderBusyError if a living process holds it."""
    lock = folder / NAME
    _take(lock)
    try:
        yield
    finally:
        lock.unlink(missing_ok=True)


def _take(lock: Path) -> None:
    if _made(lock, os.getpid()):
        return
    holder = _holder(lock)
    if _is_held(lock, holder):
        raise FolderBusyError(lock.parent, holder)
    _set_aside(lock, holder)
    if not _made(lock, os.getpid()):
        raise FolderBusyError(lock.parent, _holder(lock))


def _made(lock: Path, pid: int) -> bool:
    """Whether the lock came into being here; no hard link, which a memory stick cannot have."""
    try:
        handle = os.open(lock, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o644)
    except FileExistsError:
        return False
    try:
        os.write(handle, f"{pid}\n".encode("ascii"))
    finally:
        os.close(handle)
    return True


def _set_aside(lock: Path, holder: int) -> None:
    """Takes a dead process's lock away, and gives it back if it turns out to be another's."""
    aside = lock.with_name(f"{NAME}.{os.getpid()}.old")
    try:
        lock.rename(aside)
    except FileNotFoundError:
        return
    found = _holder(aside)
    aside.unlink()
    if found != holder:
        _made(lock, found)


def _holder(lock: Path) -> int:
    """The process id in a lock, 0 where there is none to read."""
    try:
        text = lock.read_text(encoding="ascii").strip()
    except (FileNotFoundError, UnicodeDecodeError):
        return 0
    return int(text) if re.fullmatch(r"[0-9]{1,10}", text) else 0


def _is_held(lock: Path, holder: int) -> bool:
    try:
        age = time.time() - lock.stat().st_mtime
    except FileNotFoundError:
        return False
    if holder == 0:
        return age < _WRITING_SECONDS
    return is_alive(holder) and age < _BUILD_SECONDS


def is_alive(pid: int) -> bool:
    """Whether a process of this number runs here; on Windows, where asking ends it, yes."""
    if pid <= 0:
        return False
    if os.name == "nt":
        return True
    try:
        os.kill(pid, 0)
    except (ProcessLookupError, OverflowError):
        return False
    except PermissionError:
        return True
    return True
