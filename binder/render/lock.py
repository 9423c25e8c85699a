"""A folder to one that only this process builds into."""

from __future__ import annotations

import os
import re
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import NamedTuple

NAME = ".binder.lock"

# A lock without a number is one that its maker is just writing, unless it is older than the
# first. No build lasts as long as the second: its process number is by now another's.
_WRITING_SECONDS = 5.0
_BUILD_SECONDS = 3600.0


class FolderBusyError(Exception):
    """Another build is writing into the folder; `pid` is its process id, 0 if unknown."""

    def __init__(self, folder: Path, pid: int) -> None:
        who = f"process {pid}" if pid else "another process"
        super().__init__(f"{who} is building into {folder}")
        self.folder = folder
        self.pid = pid


class _Lock(NamedTuple):
    """Who holds the folder, 0 where the lock does not say, and for how many seconds."""

    holder: int
    age: float

    @property
    def is_held(self) -> bool:
        """Whether its holder may still be building."""
        if self.holder == 0:
            return self.age < _WRITING_SECONDS
        return is_alive(self.holder) and self.age < _BUILD_SECONDS


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
    seen = _seen(lock)
    if (seen and seen.is_held) or not _taken_over(lock):
        raise FolderBusyError(lock.parent, seen.holder if seen else 0)


def _taken_over(lock: Path) -> bool:
    """Puts our lock in a dead one's place, under a second lock so that one alone does it."""
    guard = lock.with_name(f"{NAME}.taking")
    if not _made(guard, os.getpid()):
        left = _seen(guard)
        if left and left.age > _WRITING_SECONDS:
            guard.unlink(missing_ok=True)
        return False
    try:
        seen = _seen(lock)
        if seen and not seen.is_held:
            lock.unlink(missing_ok=True)
        return _made(lock, os.getpid())
    finally:
        guard.unlink(missing_ok=True)


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


def _seen(lock: Path) -> _Lock | None:
    """What a lock says, number and age of the same file; None where there is none."""
    try:
        with lock.open("rb") as file:
            text = file.read(20).strip()
            age = time.time() - os.fstat(file.fileno()).st_mtime
    except FileNotFoundError:
        return None
    return _Lock(int(text) if re.fullmatch(rb"[0-9]{1,10}", text) else 0, age)


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
