"""Evenings end well: one family, a safe stop, no risk at the end, cures over night."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.sessions import Day, Job, Lengths, evenings
from binder_trade.explained import NotDefined


def job(name: str, minutes: float = 30, **more: object) -> Job:
    return Job(id=name, minutes=minutes, **more)  # type: ignore[arg-type]


def packed(*jobs: Job) -> list[tuple[str, ...]]:
    return [one.jobs for one in evenings(jobs)]


def test_an_evening_leaves_seventy_to_a_hundred_minutes() -> None:
    # Common practice, no source: 1.5 to 2.5 h from door to door.
    assert 70 <= Lengths().useful_min <= 100


def test_evenings_are_filled() -> None:
    assert packed(*(job(name) for name in "abcdef")) == [("a", "b", "c"), ("d", "e", "f")]


def test_one_family_in_an_evening() -> None:
    lathe = [job(name, family="lathe", setup="s") for name in "ab"]
    mill = [job(name, family="mill", setup="t") for name in "cd"]
    assert packed(*lathe, *mill) == [("a", "b"), ("c", "d")]


def test_an_evening_ends_where_the_work_can_be_left() -> None:
    jobs = [job("a"), job("b"), job("c", is_safe_after=False), job("d"), job("e")]
    found = evenings(jobs)
    assert [one.jobs for one in found] == [("a", "b"), ("c", "d", "e")]
    assert not any(one.remarks for one in found)


def test_a_set_up_is_not_left_over_night() -> None:
    jobs = [job("a"), job("b", setup="s", family="l"), job("c", setup="s", family="l"),
            job("d", setup="s", family="l")]  # fmt: skip
    assert packed(*jobs) == [("a",), ("b", "c", "d")]


def test_a_risky_job_does_not_come_last() -> None:
    jobs = [job("a"), job("tap", is_risky=True), job("b")]
    (first, *_) = evenings(jobs)
    assert first.jobs[-1] != "tap"
    jobs = [job("a"), job("tap", is_risky=True)]
    (only,) = evenings(jobs)
    assert only.jobs == ("tap", "a")


def test_a_risky_job_stays_last_where_it_waits_for_the_others_and_is_told() -> None:
    bored = job("a", setup="s", is_safe_after=False)
    (only,) = evenings([bored, job("tap", setup="s", is_risky=True, after=("a",))])
    assert only.jobs == ("a", "tap")
    assert "risky" in only.remarks[0]


def test_a_risky_job_that_has_to_wait_begins_the_next_evening() -> None:
    assert packed(job("a"), job("tap", is_risky=True, after=("a",))) == [("a",), ("tap",)]


def test_a_cure_is_started_at_the_end() -> None:
    (only,) = evenings([job("bond", cure_minutes=600), job("b"), job("c")])
    assert only.jobs == ("b", "c", "bond")
    assert only.cures == ("bond",)


def test_nothing_comes_between_a_job_that_must_not_be_left_and_the_next() -> None:
    """A cure stays behind what holds it, a risky job is left for the next evening."""
    held = job("clamp", 10, is_safe_after=False)
    assert packed(held, job("bond", 10, cure_minutes=600), job("b", 10)) == [("clamp", "bond", "b")]
    tap = job("tap", 10, is_risky=True)
    assert packed(job("a", 10), held, job("part", 10), tap) == [("a", "clamp", "part"), ("tap",)]
    assert packed(job("a", 10), job("b", 10), tap) == [("tap", "a", "b")]


def test_what_waits_for_a_cure_waits_for_the_next_evening() -> None:
    jobs = [job("bond", 10, cure_minutes=600), job("ream", 10, after=("bond",))]
    assert packed(*jobs) == [("bond",), ("ream",)]


def test_heat_has_its_own_day() -> None:
    jobs = [job("a"), job("solder", day=Day.HEAT), job("b")]
    found = evenings(jobs)
    assert [one.jobs for one in found] == [("a",), ("solder",), ("b",)]
    assert any("heat" in remark for remark in found[1].remarks)


def test_gates_tools_and_those_of_the_next_evening() -> None:
    jobs = [
        job("a", 60, tools=("knife", "drill 3"), gate="bore of the bush"),
        job("b", 60, tools=("reamer 6", "drill 3")),
    ]
    first, second = evenings(jobs)
    assert first.tools == ("knife", "drill 3")
    assert first.gates == ("bore of the bush",)
    assert first.next_tools == second.tools == ("reamer 6", "drill 3")
    assert second.next_tools == ()


def test_a_job_that_is_longer_than_an_evening_is_told() -> None:
    (only,) = evenings([job("fit", 150)])
    assert only.spare_min < 0
    assert "begin early" in only.remarks[0]


FAMILIES = st.sampled_from(["", "lathe", "mill"])


@st.composite
def works(draw: st.DrawFn) -> list[Job]:
    count = draw(st.integers(1, 25))
    return [
        Job(
            id=f"job {n}",
            minutes=draw(st.integers(1, 60)),
            family=(family := draw(FAMILIES)),
            setup=f"{family} {draw(st.integers(1, 2))}" if family else "",
            tools=tuple(draw(st.lists(st.sampled_from(["knife", "tap"]), max_size=2))),
            is_risky=draw(st.booleans()),
            is_safe_after=draw(st.booleans()),
            cure_minutes=draw(st.sampled_from([0, 0, 0, 600])),
            day=draw(st.sampled_from(list(Day))),
            after=tuple(
                f"job {one}" for one in sorted(draw(st.sets(st.integers(0, n - 1), max_size=2)))
            )
            if n
            else (),
        )
        for n in range(count)
    ]


@given(works())
def test_all_is_done_once_in_time_and_after_what_it_waits_for(jobs: list[Job]) -> None:
    found = evenings(jobs)
    by_id = {one.id: one for one in jobs}
    done = [name for evening in found for name in evening.jobs]
    assert sorted(done) == sorted(by_id)
    place = {name: n for n, name in enumerate(done)}
    night = {name: evening.number for evening in found for name in evening.jobs}
    for one in jobs:
        for earlier in one.after:
            assert place[earlier] < place[one.id]
            assert night[earlier] < night[one.id] or not by_id[earlier].cure_minutes
    for evening in found:
        assert evening.spare_min >= 0 or len(evening.jobs) == 1
        assert evening.minutes == sum(by_id[name].minutes for name in evening.jobs)


@given(works())
def test_a_bad_end_is_always_told(jobs: list[Job]) -> None:
    by_id = {one.id: one for one in jobs}
    found = evenings(jobs)
    for evening, following in zip(found, [*found[1:], None], strict=True):
        last = by_id[evening.jobs[-1]]
        after = by_id[following.jobs[0]].setup if following else ""
        goes_on = bool(last.setup) and after == last.setup
        words = " ".join(evening.remarks)
        assert ("risky" in words) is (last.is_risky and len(evening.jobs) > 1)
        assert ("in its grip" in words) is goes_on
        is_bad = not last.is_safe_after and evening is not found[-1]
        assert ("safe" in words) is (is_bad and not goes_on)


def test_a_set_up_longer_than_an_evening_is_stopped_in_its_grip() -> None:
    """What is told of the one end is never that it must go on and that it may be stopped."""
    stop = "stop with a gap cut right through"
    first_half = job("pinion 3, part 1 of 2", 90, setup="pinion 3", tools=("holder",), stop=stop,
                     is_safe_after=False)  # fmt: skip
    parts = [first_half, job("pinion 3, part 2 of 2", 90, setup="pinion 3", tools=("holder",))]
    first, _ = evenings(parts)
    (said,) = first.remarks
    assert first.next_tools == ()
    assert said.startswith("stop with a gap cut right through, and leave the work in its grip")


def test_a_job_is_called_by_its_title() -> None:
    """The maker never sees the id of a job."""
    held = job("a_b 3", 90, title="arm, set-up 3", is_safe_after=False)
    first, _ = evenings([held, job("c", 90)])
    assert first.remarks == ("arm, set-up 3 must not be left as it is: go on until it is safe",)


@given(works())
def test_it_is_the_same_on_every_run(jobs: list[Job]) -> None:
    assert evenings(jobs) == evenings(list(jobs))


@pytest.mark.parametrize(
    "wrong",
    [
        [job("a", after=("b",)), job("b")],
        [job("a"), job("a")],
        [job("a", -1)],
        [job("a", cure_minutes=float("nan"))],
    ],
)
def test_what_cannot_be_packed(wrong: list[Job]) -> None:
    with pytest.raises(NotDefined):
        evenings(wrong)


def test_an_evening_with_no_time() -> None:
    with pytest.raises(NotDefined):
        evenings([job("a")], Lengths(20))


def test_nothing_to_do_takes_no_evening() -> None:
    assert evenings([]) == ()


def test_a_cure_over_a_day_pushes_what_waits_for_it_and_all_behind() -> None:
    """Three days from the first evening on: it is taken up on the fourth, the next on the fifth."""
    jobs = [
        job("glue", 60, cure_minutes=72 * 60),
        job("a", 60),
        job("plane", 60, after=("glue",)),
        job("b", 60),
    ]
    found = evenings(jobs)
    assert [(one.jobs, one.day) for one in found] == [
        (("glue",), 1), (("a",), 2), (("plane",), 4), (("b",), 5)
    ]  # fmt: skip
    assert [one.held_by for one in found] == ["", "", "glue", ""]


def test_a_night_of_cure_leaves_no_evening_free() -> None:
    found = evenings([job("bond", 60, cure_minutes=24 * 60), job("a", 60, after=("bond",))])
    assert [(one.day, one.held_by) for one in found] == [(1, ""), (2, "")]
