"""A folder to one that only this process builds into."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

NAME = ".binder.lock"


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
    if _made(lock):
        return
    holder = _holder(lock)
    if is_alive(holder):
        raise FolderBusyError(lock.parent, holder)
    _set_aside(lock, holder)
    if not _made(lock):
        raise FolderBusyError(lock.parent, _holder(lock))


def _made(lock: Path) -> bool:
    """Whether the lock came into being here, whole with its process id, by one link."""
    own = lock.with_name(f"{NAME}.{os.getpid()}.tmp")
    own.write_text(f"{os.getpid()}\n", encoding="utf-8")
    try:
        os.link(own, lock)
    except FileExistsError:
        return False
    finally:
        own.unlink()
    return True


def _set_aside(lock: Path, holder: int) -> None:
    """Takes a dead process's lock away, and gives it back if it turns out to be another's."""
    aside = lock.with_name(f"{NAME}.{os.getpid()}.old")
    try:
        lock.rename(aside)
    except FileNotFoundError:
        return
    if _holder(aside) != holder:
        with suppress(FileExistsError):
            os.link(aside, lock)
    aside.unlink()


def _holder(lock: Path) -> int:
    """The process id in a lock, 0 where there is none to read."""
    try:
        text = lock.read_text(encoding="ascii").strip()
    except (FileNotFoundError, UnicodeDecodeError):
        return 0
    return int(text) if re.fullmatch(r"[0-9]{1,10}", text) else 0


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
