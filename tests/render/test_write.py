"""A file is wholly the old one or wholly the new one, whichever step fails."""

from __future__ import annotations

import errno
import os
import signal
import stat
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import BinaryIO, Self

import pytest

from binder.render.write import write_whole

OLD, NEW = b"old binder", b"new binder, longer"


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_a_new_file_takes_the_mode_that_the_umask_leaves(tmp_path: Path) -> None:
    before = os.umask(0o027)
    try:
        write_whole(tmp_path / "a.html", NEW)
    finally:
        os.umask(before)
    assert (tmp_path / "a.html").read_bytes() == NEW
    assert stat.S_IMODE((tmp_path / "a.html").stat().st_mode) == 0o640
    assert names(tmp_path) == ["a.html"]


def test_an_old_file_keeps_its_mode(tmp_path: Path) -> None:
    path = tmp_path / "a.html"
    path.write_bytes(OLD)
    path.chmod(0o604)
    write_whole(path, NEW)
    assert path.read_bytes() == NEW
    assert stat.S_IMODE(path.stat().st_mode) == 0o604


@pytest.mark.parametrize("code", [errno.EIO, errno.ENOSPC, errno.EACCES])
@pytest.mark.parametrize("call", ["open", "fdopen", "fsync", "replace", "chmod"])
def test_a_failing_step_leaves_the_old_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str, code: int
) -> None:
    path = tmp_path / "a.html"
    path.write_bytes(OLD)
    reached = failing(monkeypatch, call, code)
    with pytest.raises(OSError, match="made to fail") as raised:
        write_whole(path, NEW)
    monkeypatch.undo()
    assert reached
    assert raised.value.errno == code
    assert path.read_bytes() == OLD
    assert names(tmp_path) == ["a.html"]


def failing(monkeypatch: pytest.MonkeyPatch, call: str, code: int) -> list[str]:
    """Makes one call of the module `os` fail; what is returned fills when it was reached."""
    reached: list[str] = []

    def fail(*_: object, **__: object) -> None:
        reached.append(call)
        raise OSError(code, "made to fail")

    monkeypatch.setattr(os, call, fail)
    return reached


def test_a_full_disk_in_the_middle_of_the_file_leaves_the_old_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "a.html"
    path.write_bytes(OLD)
    real = os.fdopen

    def half(handle: int, _mode: str) -> Half:
        return Half(real(handle, "wb"))

    monkeypatch.setattr(os, "fdopen", half)
    with pytest.raises(OSError, match="half way"):
        write_whole(path, NEW)
    assert path.read_bytes() == OLD
    assert names(tmp_path) == ["a.html"]


class Half:
    """A file that takes half of what it is given and then has no room."""

    def __init__(self, file: BinaryIO) -> None:
        self.file = file

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.file.close()

    def write(self, content: bytes) -> None:
        self.file.write(content[: len(content) // 2])
        raise OSError(errno.ENOSPC, "half way")


@pytest.mark.parametrize("kind", ["link", "dangling link", "folder", "pipe"])
def test_what_is_no_plain_file_is_refused(tmp_path: Path, kind: str) -> None:
    victim = tmp_path / "victim"
    victim.write_bytes(OLD)
    path = tmp_path / "a.html"
    makers: dict[str, Callable[[], object]] = {
        "link": lambda: path.symlink_to(victim),
        "dangling link": lambda: path.symlink_to(tmp_path / "nowhere"),
        "folder": path.mkdir,
        "pipe": lambda: os.mkfifo(path),
    }
    makers[kind]()
    with pytest.raises(OSError, match="name a plain file"):
        write_whole(path, NEW)
    assert victim.read_bytes() == OLD
    assert names(tmp_path) == ["a.html", "victim"]


def test_a_linked_folder_is_followed(tmp_path: Path) -> None:
    (tmp_path / "real").mkdir()
    (tmp_path / "linked").symlink_to(tmp_path / "real")
    write_whole(tmp_path / "linked" / "a.html", NEW)
    assert (tmp_path / "real" / "a.html").read_bytes() == NEW


def test_what_killed_writers_left_is_swept_and_nothing_else(tmp_path: Path) -> None:
    dead = subprocess.Popen([sys.executable, "-c", ""])
    dead.wait()
    living = f".a.html.{os.getppid()}.tmp"
    for name in (f".a.html.{dead.pid}.tmp", living, ".b.html.1.tmp", ".a.html.x.tmp", "a.html.tmp"):
        (tmp_path / name).write_bytes(b"")
    write_whole(tmp_path / "a.html", NEW)
    kept = {".a.html.x.tmp", living, ".b.html.1.tmp", "a.html", "a.html.tmp"}
    assert set(names(tmp_path)) == kept


def test_a_temporary_an_hour_old_is_swept_though_its_number_lives(tmp_path: Path) -> None:
    left = tmp_path / f".a.html.{os.getppid()}.tmp"
    left.write_bytes(b"")
    long_ago = time.time() - 4000
    os.utime(left, (long_ago, long_ago))
    write_whole(tmp_path / "a.html", NEW)
    assert names(tmp_path) == ["a.html"]


WRITER = """
import sys
from pathlib import Path
from binder.render.write import write_whole
path = Path(sys.argv[1])
print("ready", flush=True)
while True:
    for letter in (b"a", b"b"):
        write_whole(path, letter * 2_000_000)
"""


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="needs a signal that cannot be caught")
def test_a_killed_writer_leaves_a_whole_file(tmp_path: Path) -> None:
    path = tmp_path / "a.html"
    for moment in range(8):
        with subprocess.Popen(
            [sys.executable, "-c", WRITER, str(path)], stdout=subprocess.PIPE
        ) as writer:
            assert writer.stdout is not None
            writer.stdout.readline()
            time.sleep(0.02 + 0.013 * moment)
            writer.kill()
        if path.exists():
            content = path.read_bytes()
            assert len(content) == 2_000_000
            assert len(set(content)) == 1
    write_whole(path, NEW)
    assert names(tmp_path) == ["a.html"]
