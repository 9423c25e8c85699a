"""Two builds never write into one folder at once, and a dead one locks nobody out."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path

import pytest

from binder.render.lock import NAME, FolderBusyError, folder_lock, is_alive


def test_a_second_build_is_refused_and_told_who_builds(tmp_path: Path) -> None:
    with folder_lock(tmp_path):
        with pytest.raises(FolderBusyError) as raised, folder_lock(tmp_path):
            pytest.fail("two held the lock")
        assert raised.value.pid == os.getpid()
        assert (tmp_path / NAME).exists()
    assert list(tmp_path.iterdir()) == []


def test_the_lock_is_given_back_when_the_build_fails(tmp_path: Path) -> None:
    with pytest.raises(RuntimeError), folder_lock(tmp_path):
        raise RuntimeError
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("content", ["", "0", "-1", "not a number", "٣", "9" * 30])
def test_a_lock_that_names_nobody_is_taken_over_after_a_while(tmp_path: Path, content: str) -> None:
    lock = tmp_path / NAME
    lock.write_text(content, encoding="utf-8")
    with pytest.raises(FolderBusyError), folder_lock(tmp_path):
        pytest.fail("its maker may be just writing it")
    long_ago = time.time() - 60
    os.utime(lock, (long_ago, long_ago))
    with folder_lock(tmp_path):
        assert (tmp_path / NAME).read_text(encoding="utf-8") == f"{os.getpid()}\n"
    assert list(tmp_path.iterdir()) == []


def test_the_lock_of_a_dead_process_is_taken_over(tmp_path: Path) -> None:
    dead = subprocess.Popen([sys.executable, "-c", ""])
    dead.wait()
    assert not is_alive(dead.pid)
    (tmp_path / NAME).write_text(f"{dead.pid}\n", encoding="utf-8")
    with folder_lock(tmp_path):
        pass
    assert list(tmp_path.iterdir()) == []


def test_a_lock_older_than_any_build_is_taken_over_though_its_number_lives(tmp_path: Path) -> None:
    lock = tmp_path / NAME
    lock.write_text(f"{os.getppid()}\n", encoding="utf-8")
    with pytest.raises(FolderBusyError), folder_lock(tmp_path):
        pytest.fail("a living process holds it")
    long_ago = time.time() - 4000
    os.utime(lock, (long_ago, long_ago))
    with folder_lock(tmp_path):
        pass
    assert list(tmp_path.iterdir()) == []


def test_of_many_builds_at_once_each_has_the_folder_to_itself(tmp_path: Path) -> None:
    (tmp_path / "inside").mkdir()
    command = [sys.executable, "-c", BUILDER, str(tmp_path)]
    builders = [subprocess.Popen(command, stdout=subprocess.PIPE, text=True) for _ in range(4)]
    answers = [builder.communicate()[0].split() for builder in builders]
    assert all(answer[0] == "0" for answer in answers)
    assert sum(int(answer[1]) for answer in answers) > 0


# Says how often another was found inside, and how often the lock was won.
BUILDER = """
import sys
from pathlib import Path
from binder.render.lock import FolderBusyError, folder_lock
folder = Path(sys.argv[1])
mark = folder / "inside" / "builder"
clashes = won = 0
for _ in range(200):
    try:
        with folder_lock(folder):
            try:
                mark.mkdir()
            except FileExistsError:
                clashes += 1
            else:
                mark.rmdir()
            won += 1
    except FolderBusyError:
        pass
print(clashes, won)
"""
