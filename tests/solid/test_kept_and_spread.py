"""Answers are kept whole or not at all, and come in the order asked for."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from binder_solid import crew, spread
from binder_solid.cache import Store
from binder_solid.forms import Ball, Box, Cylinder
from binder_solid.jobs import Drawn, Job, Refused, key_of
from binder_solid.solid import Solid
from binder_solid.spread import drawn_all
from binder_solid.views import Cutting, Edge, FreeLine, RoundLine, StraightLine, View
from tests.solid.needs_kernel import NEEDS_KERNEL

CUT = Cutting("A-A", "front", 2.0)
JOBS = [Job(Box(4, 5, n), ("front", "isometric"), (CUT,)) for n in range(1, 6)]
ANSWER = Drawn(
    Solid(1.5, 2.5, (0.1, 0.2, 1 / 3), ((1.0, 0.0, 0.0),) * 3, ((0, 0, 0), (1, 1, 1)), 1),
    (
        View(
            "front",
            (1.0, 0.0, 0.0),
            (0.0, 0.0, 1.0),
            (
                Edge("visible", StraightLine((0.0, 0.0), (1.0, 2.0))),
                Edge("hidden", RoundLine((0.0, 0.0), 3.0, 0.0, 90.0)),
                Edge("smooth", FreeLine(((0.0, 0.0), (1.0, 1.0), (2.0, 5.0)))),
            ),
            ((0.0, 0.0), (2.0, 5.0)),
        ),
    ),
    (Refused("the cutting plane misses the part", "A-A"),),
)


def test_a_kept_answer_comes_back_the_same(tmp_path: Path) -> None:
    store = Store(tmp_path / "new" / "folder")
    assert store.get("key") is None
    store.put("key", ANSWER)
    assert store.get("key") == ANSWER
    assert [path.suffix for path in store.folder.iterdir()] == [".answer"]


@pytest.mark.parametrize("spoil", ["cut", "other", "empty", "bytes", "nested"])
def test_a_spoilt_answer_is_as_none(tmp_path: Path, spoil: str) -> None:
    store = Store(tmp_path)
    store.put("key", ANSWER)
    path = next(tmp_path.iterdir())
    whole = path.read_bytes()
    spoilt = {
        "cut": whole[:-20],
        "other": whole.replace(b"1.5", b"9.5"),
        "empty": b"",
        "bytes": b"\xff\xfe" + whole,
        "nested": whole.split(b"\n")[0] + b"\n" + b"[" * 100_000,
    }[spoil]
    path.write_bytes(spoilt)
    assert store.get("key") is None


def test_text_that_is_no_answer_is_refused() -> None:
    from binder_solid.packing import unpacked

    for text in ("[]", "3", '["!os"]', '["!Solid",1]', '["!Edge","visible",[]]', "[" * 100_000):
        with pytest.raises(ValueError, match=r"."):
            unpacked(text)


def test_the_oldest_answers_go_when_the_folder_is_full(tmp_path: Path) -> None:
    store = Store(tmp_path, limit=2_500)
    for number in range(6):
        store.put(f"key{number}", ANSWER)
    store.trim()
    assert sum(path.stat().st_size for path in tmp_path.iterdir()) <= 2_500
    assert store.get("key0") is None
    assert store.get("key5") == ANSWER


def test_a_folder_that_cannot_be_written_is_no_fault(tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("here already", encoding="utf-8")
    store = Store(blocked)
    store.put("key", ANSWER)
    store.trim()
    assert store.get("key") is None


def test_a_key_hangs_on_all_that_is_asked() -> None:
    keys = {
        key_of(job)
        for job in (
            Job(Box(1, 2, 3)),
            Job(Box(1, 3, 2)),
            Job(Box(1, 2, 3), ("front",)),
            Job(Box(1, 2, 3), (), (CUT,)),
            Job(Cylinder(1, 2)),
        )
    }
    assert len(keys) == 5
    assert key_of(Job(Box(1, 2, 3))) == key_of(Job(Box(1, 2, 3)))


@NEEDS_KERNEL
def test_answers_come_in_the_order_asked_for_and_faults_stay_where_they_are() -> None:
    jobs = [JOBS[3], Job(Ball(-1)), JOBS[0], JOBS[3], Job(Box(9, 1, 1), (), (CUT,))]
    one, two, three, four, five = drawn_all(jobs, workers=1)
    assert isinstance(one, Drawn)
    assert isinstance(three, Drawn)
    assert isinstance(five, Drawn)
    assert (one.solid.volume_mm3, three.solid.volume_mm3) == pytest.approx((80, 20))
    assert [view.name for view in one.views] == ["front", "isometric"]
    assert two == Refused("not more than nothing", "form.radius")
    assert four == one
    assert five.sections == (Refused("the cutting plane misses the part", "A-A"),)


@NEEDS_KERNEL
def test_several_processes_answer_as_one_does(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(spread, "WORTH_A_CREW", 2)
    monkeypatch.setattr(spread, "WORTH_A_SPLIT", 2)
    jobs = [*JOBS, Job(Ball(-1))]
    assert drawn_all(jobs, workers=2) == drawn_all(jobs, workers=1)


@NEEDS_KERNEL
def test_a_job_that_takes_too_long_is_given_up_and_the_rest_go_on() -> None:
    answers = crew.worked_by_several(JOBS[:3], 1, patience=0.0)
    assert set(answers) == {Refused("took longer than 0 s", "form")}


@NEEDS_KERNEL
def test_where_no_process_starts_the_work_is_done_here(monkeypatch: pytest.MonkeyPatch) -> None:
    def none() -> None:
        raise crew.NoCrew("none to be had")

    monkeypatch.setattr(spread, "WORTH_A_CREW", 2)
    monkeypatch.setattr(spread, "WORTH_A_SPLIT", 2)
    monkeypatch.setattr(crew, "_hired", none)
    assert all(isinstance(answer, Drawn) for answer in drawn_all(JOBS, workers=2))


@NEEDS_KERNEL
def test_a_second_call_opens_no_kernel(tmp_path: Path) -> None:
    drawn_all(JOBS, Store(tmp_path), workers=1)
    code = (
        "import sys; from pathlib import Path; from binder_solid.cache import Store; "
        "from binder_solid.spread import drawn_all; from tests.solid.test_kept_and_spread import "
        "JOBS; answers = drawn_all(JOBS, Store(Path(sys.argv[1]))); "
        "assert 'OCP' not in sys.modules; print(len(answers))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, str(tmp_path)], check=True, capture_output=True, text=True
    )
    assert done.stdout == "5\n"
