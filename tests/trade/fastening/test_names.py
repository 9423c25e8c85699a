"""Names of fasteners as makers write them. Designations: ISO 4762, ISO 1207, BS 57 (BA), ASME
B18.3 and B18.6.3 write thread x length; the rest is common practice, no source."""

from __future__ import annotations

import pytest

from binder_trade.fastening import (
    KIND_NAMES,
    NotAFastener,
    NotDefined,
    Unreadable,
    read_fastener,
)

# text: kind, head, thread, diameter mm, length mm
READ = {
    "M3 x 16 socket cap screw": ("screw", "cap", "M3", None, 16.0),
    "M4 x 10 cheese head screw": ("screw", "cheese", "M4", None, 10.0),
    "M3 cap screw": ("screw", "cap", "M3", None, None),
    "4 BA x 1/4 in grub screw": ("grub screw", "", "4 BA", None, 6.35),
    "6 BA hexagon bolt": ("bolt", "hexagon bolt", "6 BA", None, None),
    "no. 6 x 3/4 in brass wood screw, round head": ("wood screw", "round", "no. 6", None, 19.05),
    "no. 6 x 3/4 in brass wood screw, countersunk": (
        "wood screw",
        "countersunk",
        "no. 6",
        None,
        19.05,
    ),
    "1 mm round head copper rivet, 6 mm long": ("rivet", "snap", "", 1.0, 6.0),
    "3 mm x 16 mm steel dowel pin": ("dowel pin", "", "", 3.0, 16.0),
    "3 x 16 mm dowel": ("dowel pin", "", "", 3.0, 16.0),
    "2 mm roll pin": ("roll pin", "", "", 2.0, None),
    "taper pin 1/16 in": ("taper pin", "", "", 1.5875, None),
    "M4 stud": ("stud", "", "M4", None, None),
    "8 mm external circlip": ("external circlip", "", "", 8.0, None),
    "external circlip for the axle": ("external circlip", "", "", None, None),
    "4-40 UNC x 3/8 fillister head screw": ("screw", "fillister", "4-40 UNC", None, 9.525),
    "4-40 x 3/8 fillister head screw": ("screw", "fillister", "4-40 UNC", None, 9.525),
    "10-32 x 1/2 in cap screw": ("screw", "cap", "10-32 UNF", None, 12.7),
    "#6-32 x 1/2 round head screw": ("screw", "round", "6-32 UNC", None, 12.7),
    "1/4-20 UNC x 1 hexagon bolt": ("bolt", "hexagon bolt", "1/4-20 UNC", None, 25.4),
    "1/4 x 40 ME x 1/2 in hexagon bolt": ("bolt", "hexagon bolt", "1/4 x 40 ME", None, 12.7),
    "1/4 BSF x 1½ in hexagon bolt": ("bolt", "hexagon bolt", "1/4 BSF", None, 38.1),
    "M3x0.5x16 cap screw": ("screw", "cap", "M3 x 0.5", None, 16.0),
    "M10 x 1 x 30 hexagon screw": ("screw", "hexagon", "M10 x 1", None, 30.0),
    "M1.6 × 2 countersunk screw": ("screw", "countersunk", "M1.6", None, 2.0),
    "M3 x 8 socket countersunk screw": ("screw", "countersunk socket", "M3", None, 8.0),
    "M3 x 8 pan head cross recess screw": ("screw", "pan cross", "M3", None, 8.0),
    "M6 × ½ in csk screw": ("screw", "countersunk", "M6", None, 12.7),
    "M3 lock nut": ("nut", "thin", "M3", None, None),
    "M5 spring washer": ("washer", "spring", "M5", None, None),
    "1/16 in x 1/2 in split pin": ("split pin", "", "", 1.5875, 12.7),
    "no. 404 woodruff key": ("woodruff key", "", "no. 404", None, None),
}


@pytest.mark.parametrize(("text", "wanted"), READ.items())
def test_reads_what_a_maker_writes(
    text: str, wanted: tuple[str, str, str, float | None, float | None]
) -> None:
    name = read_fastener(text)
    found = (name.kind, name.head, name.thread_text, name.diameter_mm, name.length_mm)
    assert found == wanted
    assert name.kind in KIND_NAMES


@pytest.mark.parametrize("text", [text for text in READ if "for" not in text])
def test_what_it_says_reads_back_the_same(text: str) -> None:
    name = read_fastener(text)
    again = read_fastener(name.says)
    assert (again.kind, again.head, again.thread_text) == (name.kind, name.head, name.thread_text)
    assert (again.length_mm, again.diameter_mm) == (name.length_mm, name.diameter_mm)
    assert again.says == name.says


def test_keeps_the_length_as_bought() -> None:
    assert read_fastener("4 BA x 1/4 in grub screw").length_text == "1/4 in"
    assert read_fastener("M3 x 16 cap screw").length_text == "16 mm"


def test_point_material_and_what_comes_with_it() -> None:
    assert read_fastener("M4 x 6 grub screw, cup point").point == "cup"
    assert read_fastener("M4 x 6 half dog grub screw").point == "dog"
    assert read_fastener("no. 6 x 3/4 in brass wood screw").material == "brass"
    bolt = read_fastener("M3 hexagon bolt, nut and washer")
    assert bolt.also == ("nut", "washer")
    assert read_fastener("4 off M3 x 8 cap screws").count == 4
    assert read_fastener("M3 x 8 cap screw, 12 off").count == 12


def test_a_key_has_width_height_and_length() -> None:
    key = read_fastener("3 x 3 x 12 mm parallel key")
    assert (key.diameter_mm, key.height_mm, key.length_mm) == (3.0, 3.0, 12.0)
    key = read_fastener("2 mm x 12 mm key")
    assert (key.diameter_mm, key.height_mm, key.length_mm) == (2.0, None, 12.0)


# text: a word of the reason, a word of the way out
REFUSED = {
    "M3 sokcet cap screw": ("sokcet", "socket"),
    "M3 set screw": ("Britain", "grub screw"),
    "4 BA x 6 cheese head screw": ("without a unit", "6 mm or 6 in"),
    "M3 x 1,5 cap screw": ("comma", "1.5 mm"),
    "8 mm circlip": ("shaft or in a bore", "external circlip"),
    "cap screw": ("names no thread", "M3"),
    "M3 x 0 cap screw": ("size of nothing", "true size"),
    "1/0 in rivet": ("no fraction", "3/8 in"),
    "3 mm x 1 mm dowel pin": ("thicker than it is long", "1 mm x 3 mm"),
    "M3 x 8 x 10 cap screw": ("more sizes", "M3 x 10"),
    "M3 rivet": ("has no thread", "rivet"),
    "M3 x 8 nut": ("has no length", "nut"),
    "M3 x 8 cheese pan head screw": ("two heads", "one of them"),
    "M3 cheese head nut": ("no nut is called cheese", "full"),
    "1/4 ME hexagon bolt": ("threads to the inch", "1/4 x 40 ME"),
    "no. x brass wood screw": ("without a number", "no. 6"),
    "M3 screw and rivet": ("two fasteners", "by itself"),
    "M3 cap screw \x00": ("sign", "letters"),
    "M123456789 cap screw": ("too many figures", "eight"),
    "M3 cap screw " * 20: ("longer than 120", "note"),
}


@pytest.mark.parametrize(("text", "words"), REFUSED.items())
def test_refuses_with_a_reason_and_a_way_out(text: str, words: tuple[str, str]) -> None:
    with pytest.raises(Unreadable) as refused:
        read_fastener(text)
    reason, way_out = words
    assert reason in refused.value.reason
    assert way_out in refused.value.way_out


@pytest.mark.parametrize(
    "text",
    ["", "braided cord", "round belt of 3 mm polyurethane cord", "brass clock wheel", "½", "1,5 m"],
)
def test_what_is_no_fastener_says_so(text: str) -> None:
    with pytest.raises(NotAFastener):
        read_fastener(text)


@pytest.mark.parametrize("piece", ["M3 ", "x ", "1/4 ", "cap ", "screw ", "\u202e", "no. ", "٣ "])
def test_a_hostile_text_is_refused_and_not_printed_raw(piece: str) -> None:
    with pytest.raises(NotDefined) as refused:
        read_fastener(piece * 5000 + "screw")
    said = f"{refused.value.reason} {refused.value.way_out}"
    assert len(said) < 400
    assert said.isprintable()
