"""Drums, tackles, flywheels, scale speeds."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.mechanisms.drum import (
    Tackle,
    drum,
    hoist,
    least_core,
    least_lead,
    rope_kinds,
    tackle_pull,
)
from binder_trade.mechanisms.flywheel import (
    coefficient_of,
    disc_wheel,
    fluctuation,
    governor_inertia,
    reflected,
    rim,
    rim_kinds,
    run_up_s,
    spoked_wheel,
)
from binder_trade.mechanisms.similarity import scale_speed, scaled

M2 = 1e6  # mm² in a m²


# Khurmi & Gupta, Theory of Machines, Ex 16.1: 6.5 t, k 1.8 m, 56 kN m, 120 r/min: 121 and 119.
def test_speed_fluctuation_of_a_textbook() -> None:
    part = coefficient_of(56_000e3, 6500 * 1.8**2 * M2, 120)
    assert 120 * (1 + part / 2) == pytest.approx(121, abs=0.5)
    assert 120 * (1 + part / 2) == pytest.approx(121.01, abs=0.01)
    assert 120 * (1 - part / 2) == pytest.approx(119, abs=0.5)


# Khurmi & Gupta, Theory of Machines, Ex 16.9: four-stroke, 20 kW, 300 r/min, ± 2 %; expansion
# and compression as triangles, expansion work three times compression: 255.4 kg m².
def test_a_four_stroke_torque_diagram() -> None:
    work = 20_000 * 60 / 300 * 2 * 1000  # N mm in two turns
    push, squeeze = 1.5 * work * 2 / math.pi, 0.5 * work * 2 / math.pi
    pi = math.pi
    diagram = (
        (0.0, 0.0),
        (pi, 0.0),
        (1.5 * pi, -squeeze),
        (2 * pi, 0.0),
        (2.5 * pi, push),
        (3 * pi, 0.0),
        (4 * pi, 0.0),
    )
    made = fluctuation(diagram, 300, 0.04)
    assert made.mean_nmm == pytest.approx(20_000 * 1000 / (10 * pi))
    assert made.wheel_kgmm2 / M2 == pytest.approx(255.4, abs=0.5)
    assert coefficient_of(made.energy_nmm, made.wheel_kgmm2, 300) == pytest.approx(0.04)


# Jindal, Machine Design, Ex 19-5: ΔU = 2.25 π 125 / 2 N m, Cs 0.1, 250 r/min, 30 mm: R = 0.364 m.
def test_a_disc_flywheel_of_a_textbook() -> None:
    energy = 2.25 * math.pi * 125 / 2 * 1000
    inertia = disc_wheel(2 * 363.9, 30, 7800).inertia_kgmm2
    assert coefficient_of(energy, inertia, 250) == pytest.approx(0.1, abs=0.001)
    low, high = (disc_wheel(2 * r, 30, 7800).inertia_kgmm2 for r in (363, 365))
    assert coefficient_of(energy, low, 250) > 0.1 > coefficient_of(energy, high, 250)


# Sarkar, Theory of Machines, Ch 6, Illustration 1: 2 t, k 1 m, 1000 N m, 10 s: 25 kN m.
def test_a_flywheel_from_rest() -> None:
    rpm = 0.5 * 10 * 30 / math.pi
    assert run_up_s(2000 * M2, 1000e3, rpm) == pytest.approx(10)
    wheel = disc_wheel(2000, 10, 2000 / (math.pi * 0.01))
    assert wheel.mass_kg == pytest.approx(2000)
    # The disc of that mass has half the inertia of the ring.
    assert wheel.energy_nmm(rpm) == pytest.approx(25.0e6 / 2)


@given(angles=st.integers(20, 200))
def test_a_sine_torque(angles: int) -> None:
    diagram = [
        (2 * math.pi * k / angles, 100 + 50 * math.sin(2 * math.pi * k / angles))
        for k in range(angles + 1)
    ]
    made = fluctuation(diagram, 100, 0.05)
    assert made.mean_nmm == pytest.approx(100)
    assert made.energy_nmm == pytest.approx(100, rel=0.01)


def test_a_spoked_wheel_is_its_parts() -> None:
    made = spoked_wheel(100, 84, 10, (20, 8, 14), (6, 20), 7200)
    ring = disc_wheel(100, 10, 7200, 84)
    hub = disc_wheel(20, 14, 7200, 8)
    spokes = 6 * 7200e-9 * 20 * 32
    assert made.mass_kg == pytest.approx(ring.mass_kg + hub.mass_kg + spokes)
    # Thin rods from 10 to 42 mm: ∫ r² dm = m (42³ − 10³) / (3 × 32).
    rods = spokes * (42**3 - 10**3) / (3 * 32)
    assert made.inertia_kgmm2 == pytest.approx(ring.inertia_kgmm2 + hub.inertia_kgmm2 + rods)
    assert ring.inertia_kgmm2 > 0.8 * made.inertia_kgmm2


# Thin ring: 25 m/s in cast iron of 7200 kg/m³ is 4.5 N/mm²; 25 m/s is near 5000 ft/min.
def test_a_rim() -> None:
    made = rim(1000, 25 * 60 / math.pi, 7200, "cast iron")
    assert made.speed_ms == pytest.approx(25)
    assert made.hoop_mpa == pytest.approx(4.5)
    assert made.use == pytest.approx(1)
    assert made.limit_ms * 60 / 0.3048 == pytest.approx(5000, rel=0.02)
    assert made.most_rpm == pytest.approx(25 * 60 / math.pi)
    assert "common practice" in made.steps[-1].source
    assert "soft-soldered" in rim_kinds()
    with pytest.raises(NotDefined, match="no rim speed"):
        rim(100, 100, 7200, "cheese")


def test_small_inertias() -> None:
    assert governor_inertia(2, 0.05, 30) == pytest.approx(90)
    assert reflected(90, 3) == 810


def test_wheels_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="in one another"):
        spoked_wheel(100, 84, 10, (90, 8, 14), (6, 20), 7200)
    with pytest.raises(NotDefined, match="as large as the disc"):
        disc_wheel(10, 5, 7800, 10)
    with pytest.raises(NotDefined, match="goes back"):
        fluctuation([(0, 1), (2, 1), (1, 1)], 100, 0.1)
    with pytest.raises(NotDefined, match="no length"):
        fluctuation([(1, 1), (1, 2)], 100, 0.1)
    with pytest.raises(NotDefined, match="coefficient"):
        fluctuation([(0, 1), (2, 1)], 100, 0)


# By hand: 20 turns of 1 mm cord on 19 mm, two of them dead, then the rest on the second layer.
def test_rope_on_a_drum() -> None:
    made = drum(19, 20, 1, 1500)
    assert made.layers[0].turns == 20
    assert made.layers[0].diameter_mm == 20
    assert made.layers[1].turns == pytest.approx((1500 - 18 * math.pi * 20) / (math.pi * 22))
    assert made.flange_mm == pytest.approx(22 + 1 + 4)
    assert made.least_core_mm == 7
    assert not made.is_too_thin


@given(core=st.floats(5, 60), width=st.floats(5, 60), length=st.floats(50, 3000))
def test_all_the_rope_lies_on_the_drum(core: float, width: float, length: float) -> None:
    try:
        made = drum(core, width, 1.5, length)
    except NotDefined:
        return
    on = sum(layer.turns * math.pi * layer.diameter_mm for layer in made.layers)
    assert on - 2 * math.pi * (core + 1.5) == pytest.approx(length, rel=1e-6)
    assert made.turns == pytest.approx(sum(layer.turns for layer in made.layers))


# A winch maker's manual: 15 : 1 to lift, 12 : 1 to pull, counted at the rope's middle.
def test_the_least_drum() -> None:
    assert least_core(6, "wire rope, lifting") == 84
    assert (94 + 6) / 6 > 15
    assert not drum(94, 150, 6, 5000, "wire rope, lifting").is_too_thin
    assert drum(50, 150, 6, 5000, "wire rope, pulling").is_too_thin
    assert len(rope_kinds()) == 4
    with pytest.raises(NotDefined, match="no rope"):
        least_core(6, "spaghetti")


# The same manual: 2.09 m off a smooth drum 110 mm wide (1.5°).
def test_the_lead_of_the_rope() -> None:
    assert least_lead(110)[0] == pytest.approx(2090, rel=0.01)
    assert least_lead(110, grooved=True)[0] < least_lead(110)[0]


def test_a_tackle_without_losses() -> None:
    assert tackle_pull(100, Tackle(4, 1.0, 2)) == pytest.approx(25)
    # With losses, sheave by sheave: each strand carries η of the one before it.
    strands = [1.0]
    for _ in range(2):
        strands.append(strands[-1] * 0.9)
    assert tackle_pull(sum(strands), Tackle(3, 0.9, 0)) == pytest.approx(1.0)
    assert tackle_pull(100, Tackle(1, 0.9, 1)) == pytest.approx(100 / 0.9)


# By hand: 10 N on two falls, drum 20, crank 40, 4 : 1, no losses: 10 × 20 / (2 × 2 × 40 × 4) N.
def test_a_hoist_by_hand() -> None:
    made = hoist(10, 20, 40, gear=4, tackle=Tackle(2, 1.0, 1), train=1.0)
    assert made.handle_n == pytest.approx(0.3125)
    assert made.holding_n == pytest.approx(made.handle_n)
    assert made.turns_per_metre == pytest.approx(1000 * 2 * 4 / (math.pi * 20))
    assert made.velocity_ratio == pytest.approx(32)
    assert made.efficiency == pytest.approx(1)


@given(falls=st.integers(1, 6), sheave=st.floats(0.8, 0.99), train=st.floats(0.3, 0.99))
def test_work_in_is_work_out_and_losses(falls: int, sheave: float, train: float) -> None:
    made = hoist(50, 25, 40, gear=3, tackle=Tackle(falls, sheave), train=train)
    per_metre = made.handle_n * made.turns_per_metre * 2 * math.pi * 40
    assert per_metre * made.efficiency == pytest.approx(50 * 1000)
    assert sheave**falls * train - 1e-9 <= made.efficiency < train


def test_hoists_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="ten layers"):
        drum(5, 5, 1, 1e5)
    with pytest.raises(NotDefined, match="thicker than the drum is wide"):
        drum(5, 0.5, 1, 100)
    with pytest.raises(NotDefined, match="number of falls"):
        hoist(10, 20, 40, tackle=Tackle(0))
    with pytest.raises(NotDefined, match="the load"):
        hoist(-10, 20, 40)


# Similarity: a mill at 12 r/min at 1 : 16 runs at 48; powers of a scale of 8 (derived).
def test_scale() -> None:
    made = scale_speed(12, 16)
    assert made.froude_rpm == 48
    assert made.looks_right_rpm == pytest.approx((12, 48))
    # A model pendulum: T ∝ √l, so n ∝ √scale.
    assert made.froude_rpm / 12 == pytest.approx(math.sqrt(1000 / (1000 / 16)))
    found = scaled(8)
    assert (found.area, found.volume, found.inertia) == (64, 512, 32768)
    assert found.stress_same_pressure == 1
    with pytest.raises(NotDefined, match="the scale"):
        scale_speed(12, 0)
