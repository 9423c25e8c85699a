"""What each look-up answers, one or two sizes each."""

from __future__ import annotations

import pytest

from binder_trade import hardware


def test_lengths_are_those_that_are_sold() -> None:
    # ISO 4762, M3: 5 to 30 mm in the preferred lengths of ISO 888 (range from memory).
    assert hardware.lengths("cap", "M3") == (5, 6, 8, 10, 12, 16, 20, 25, 30)
    assert hardware.length_texts("cap", "M3")[3] == "10 mm"
    assert hardware.length_texts("cheese", "4 BA")[:3] == ("3/16 in", "1/4 in", "5/16 in")
    assert hardware.lengths("cheese", "4 BA")[1] == 6.35


@pytest.mark.parametrize("kind", hardware.HEAD_KINDS)
def test_every_listed_head_has_lengths(kind: str) -> None:
    seen = 0
    for thread in ("M3", "M6", "M10", "2 BA", "6 BA", "4-40 UNC", "10-32 UNF", "1/4-20 UNC"):
        try:
            hardware.head(kind, thread)
        except hardware.NotListed:
            continue
        seen += 1
        sold = hardware.lengths(kind, thread)
        assert len(sold) >= 3, thread
        assert list(sold) == sorted(set(sold))
        assert len(sold) == len(hardware.length_texts(kind, thread))
        assert hardware.lengths_source(kind, thread)
        for length in sold:
            assert 0 < hardware.threaded_length(kind, thread, length) <= length
    assert seen >= 2


@pytest.mark.parametrize(
    ("kind", "thread", "length", "expected"),
    [
        ("cap", "M3", 16, 16),  # ISO 4762: threaded to the head to 20 mm
        ("cap", "M3", 30, 18),  # b = 2 d + 12
        ("cap", "M8", 60, 28),
        ("hexagon bolt", "M8", 50, 22),  # ISO 4014: b = 2 d + 6
        ("hexagon bolt", "M16", 140, 44),  # 6 mm more over 125 mm
        ("hexagon", "M8", 50, 50),
        ("pan", "M4", 50, 38),  # ISO 1580: b = 38
        ("countersunk", "M3", 20, 20),
        ("hexagon bolt", "1/4 BSW", 50.8, 19.05),  # 2 D + 1/4 in
    ],
)
def test_how_far_a_screw_is_threaded(
    kind: str, thread: str, length: float, expected: float
) -> None:
    assert hardware.threaded_length(kind, thread, length) == expected


def test_partly_threaded_metric_screws_follow_their_rule() -> None:
    """b = 2 d + 12 (ISO 4762) and 2 d + 6 (ISO 4014), from M1.6 rounded to whole millimetres."""
    for size in (3, 4, 5, 6, 8, 10, 12, 14, 16, 20):
        assert hardware.threaded_length("cap", f"M{size}", 200) == 2 * size + 12
        assert hardware.threaded_length("hexagon bolt", f"M{size}", 120) == 2 * size + 6


def test_what_turns_a_screw() -> None:
    tools = {
        ("cap", "M3"): "2.5 mm hexagon key",
        ("hexagon", "M6"): "10 mm spanner",
        ("hexagon", "2 BA"): "2 BA spanner",
        ("cheese", "M3"): "0.8 mm slot",
        ("pan cross", "M4"): "no. 2 cross-point driver",
        ("cap", "4-40 UNC"): "3/32 in hexagon key",
        ("hexagon bolt", "1/4-20 UNC"): "7/16 in spanner",
        ("hexagon bolt", "1/4 BSW"): "0.445 in spanner",
    }
    for (kind, thread), tool in tools.items():
        assert hardware.head(kind, thread).tool == tool


def test_what_is_from_memory_says_so() -> None:
    assert hardware.head("cap", "M3").source == "ISO 4762"
    assert hardware.head("button", "M3").source == "ISO 7380-1 (from memory)"
    assert hardware.head("cheese", "M3").status == "memory"
    assert hardware.washer("plain", "2 BA").source == "common practice, no source"


@pytest.mark.parametrize(
    ("thread", "diameter"),
    [("M3", 3), ("2 BA", 4.7), ("4-40 UNC", 2.8448), ("1/4-20 UNC", 6.35), ("1/4 BSF", 6.35)],
)
def test_nominal_diameters(thread: str, diameter: float) -> None:
    assert hardware.nominal_mm(thread) == diameter


def test_countersinks() -> None:
    metric = hardware.countersink("countersunk", "M4")
    assert (metric.diameter_mm, metric.angle_deg, metric.standard) == (9.4, 90, "ISO 15065")
    inch = hardware.countersink("countersunk", "4-40 UNC")
    assert (inch.angle_deg, inch.standard) == (82, "ASME B18.6.3")


def test_counterbores_without_a_table() -> None:
    # 2 BA cheese head 0.287 in: 7.29 + 0.3 rounded up to 8 mm (common practice, no source).
    found = hardware.counterbore("cheese", "2 BA")
    assert found.diameter_mm == 8
    assert found.source == "common practice, no source"
    assert hardware.counterbore("cap", "1/4-20 UNC").diameter_mm == pytest.approx(7 / 16 * 25.4)
    assert hardware.counterbore("pan", "M3").diameter_mm == 7


def test_spotfaces_seat_the_corners_and_the_socket() -> None:
    for size in (3, 4, 5, 6, 8, 10, 12, 14, 16, 20):
        thread = f"M{size}"
        flats = hardware.head("hexagon", thread).dk_mm
        seat, socket = hardware.spotface(thread), hardware.spotface(thread, "socket")
        assert seat.diameter_mm > hardware.head("hexagon", thread).envelope_mm
        assert socket.diameter_mm > hardware.spanner(flats).socket_outside_mm


def test_tapers_of_pins() -> None:
    """1:50 from the small end (ISO 2339); 1/4 in to the foot from the large end (B18.8.2)."""
    metric = hardware.taper_pin(3)
    assert metric.large_end_mm(30) == pytest.approx(3.6)
    inch = hardware.inch_taper_pin("0")
    assert inch.large_end_mm == pytest.approx(0.156 * 25.4)
    assert inch.small_end_mm(25.4) == pytest.approx((0.156 - 1 / 48) * 25.4)


def test_split_pins_for_bolts() -> None:
    """ISO 1234: a hole of 1.6 mm for bolts over 5.5 up to 7 mm."""
    assert hardware.split_pin_for(6).d_mm == 1.6
    assert hardware.split_pin_for(5.5).d_mm == 1.2
    assert hardware.split_pin(3.2).lengths_mm[0] == 14


def test_e_clips_take_the_largest_groove() -> None:
    """DIN 6799: grooves of 3.2 and 4 mm overlap at 5 mm of shaft."""
    assert hardware.e_clip(5).groove_mm == 4
    assert hardware.e_clip(4.5).groove_mm == 3.2
    assert hardware.e_clip(1.4).groove_mm == 1.2


def test_inch_grub_screws() -> None:
    """ASME B18.3, hexagon socket set screws: key and greatest cup point, as read in a public
    table. BA sizes are from memory; of the odd ones slotted screws alone are kept."""
    for thread, key, point in (
        ("4-40 UNC", 0.050, 0.061),
        ("6-32 UNC", 1 / 16, 0.074),
        ("8-32 UNC", 5 / 64, 0.087),
        ("10-32 UNF", 3 / 32, 0.102),
        ("1/4-20 UNC", 1 / 8, 0.132),
    ):
        one = hardware.grub("cup", thread)
        assert one.drive_mm == pytest.approx(key * 25.4)
        assert one.point_mm == pytest.approx(point * 25.4)
        assert one.standard == "ASME B18.3"
    assert hardware.grub("cup", "6-32 UNC").tool == "1/16 in hexagon key"
    assert hardware.grub("cup", "4-40 UNC").tool == "0.050 in hexagon key"
    assert hardware.grub("cup", "4-40 UNC").lengths_mm[0] == pytest.approx(25.4 / 8)
    assert hardware.grub("cup", "6 BA").status == "memory"
    assert hardware.grub("cup", "5 BA", "slot").tool == "0.022 in slot"
    with pytest.raises(hardware.NotListed):
        hardware.grub("cup", "5 BA")
    with pytest.raises(hardware.NotListed):
        hardware.grub("dog", "4-40 UNC")


def test_grubs_studs_and_keys() -> None:
    assert hardware.grub("dog", "M4").dog_mm == 2  # ISO 4028, long dog
    assert hardware.grub("flat", "M3", "slot").standard == "ISO 4766"
    assert hardware.stud("M6", "1.25 d").engaged_mm == 7.5  # DIN 939
    assert hardware.hexagon_key(2.5).long_mm == 58.5  # ISO 2936
    assert hardware.keyway_width(6, "normal hub").tolerance == "JS9"
    assert hardware.parallel_key(10).lengths_mm[:3] == (6, 8, 10)
    assert hardware.spanner(10).swing_mm == 11.5  # common practice, no source


def test_rivets() -> None:
    found = hardware.rivet("1/16 in", "snap")
    assert found.d_mm == 1.5875
    assert found.dk_mm == pytest.approx(1.75 * found.d_mm, abs=0.02)  # BS 641, from memory
    assert found.length_texts[0] == "1/8 in"
    assert hardware.rivet("2 mm", "countersunk").angle_deg == 75  # DIN 661


def test_wood_screws() -> None:
    """Gauge 8: shank 0.060 + 0.013 × 8 = 0.164 in, head 0.332 in (ASME B18.6.1)."""
    found = hardware.wood_screw(8)
    assert found.shank_mm == pytest.approx(0.164 * 25.4, abs=1e-4)
    assert found.head_mm == pytest.approx(0.332 * 25.4)
    for number in range(13):
        one = hardware.wood_screw(number)
        assert one.pilot_soft_mm <= one.pilot_hard_mm < one.shank_mm < one.clearance_mm
