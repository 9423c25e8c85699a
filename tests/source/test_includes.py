"""A spec over several files: merged by section, bounded, and never out of its folder."""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.diagnostics import Diagnostic
from binder.source import Document, bounds, read_spec, read_text

Read = tuple[Document | None, tuple[Diagnostic, ...]]


@pytest.fixture(autouse=True)
def _in_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "specs").mkdir()
    monkeypatch.chdir(tmp_path)


def _read(main: str, **included: str) -> Read:
    for name, text in included.items():
        Path(f"specs/{name}.yaml").write_text(text, encoding="utf-8")
    Path("specs/crane.yaml").write_text(main, encoding="utf-8")
    return read_spec("specs/crane.yaml")


def _found(read: Read) -> list[tuple[str, str, int, int, int]]:
    return [(f.code.name, *f.span[:3], f.span.end_column) for f in read[1]]


def test_sections_are_merged_and_keep_their_places() -> None:
    document, findings = _read(
        "format: 1\ninclude: [jib.yaml, post.yaml]\nparts:\n  drum: 1\nnotes: [x]\n",
        jib="parts:\n  jib: 2\nnotes: [y]\n",
        post="sizes:\n  bar: 20 mm\nparts: {post: 3}\nempty:\n",
    )
    assert findings == ()
    assert document is not None
    assert document.root == {
        "format": "1",
        "parts": {"drum": "1", "jib": "2", "post": "3"},
        "notes": ["x", "y"],
        "sizes": {"bar": "20 mm"},
    }
    assert document.span(("parts", "jib")) == ("specs/jib.yaml", 2, 8, 2, 9)
    assert document.span(("parts", "drum"), of_key=True) == ("specs/crane.yaml", 4, 3, 4, 7)
    assert document.span(("notes", 1)) == ("specs/jib.yaml", 3, 9, 3, 10)
    assert list(document.texts) == ["specs/crane.yaml", "specs/jib.yaml", "specs/post.yaml"]
    assert document.texts["specs/jib.yaml"] == "parts:\n  jib: 2\nnotes: [y]\n"


def test_one_name_is_enough_and_may_lie_below() -> None:
    Path("specs/below").mkdir()
    Path("specs/below/jib.yaml").write_text("parts: {jib: 1}", encoding="utf-8")
    document, findings = _read("include: below/jib.yaml")
    assert findings == ()
    assert document is not None
    assert document.span(("parts", "jib")).file == "specs/below/jib.yaml"


def test_spec_in_the_current_folder_names_its_includes_plainly(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    _read("include: jib.yaml", jib="parts: {jib: 1}")
    monkeypatch.chdir("specs")
    document, _ = read_spec("crane.yaml")
    assert document is not None
    assert list(document.texts) == ["crane.yaml", "jib.yaml"]


def test_digest_is_of_names_and_contents_in_order_and_not_of_the_way_there() -> None:
    first, _ = _read("include: [a.yaml, b.yaml]", a="p: {x: 1}", b="p: {y: 1}")
    again, _ = read_spec(Path.cwd() / "specs" / "crane.yaml")
    other, _ = _read("include: [b.yaml, a.yaml]", a="p: {x: 1}", b="p: {y: 1}")
    moved, _ = _read("include: [a.yaml, b.yaml]", a="p: {x: 1} ", b="p: {y: 1}")
    digests = [read.digest if read else "" for read in (first, again, other, moved)]
    assert digests[0] == digests[1]
    assert len({"", *digests}) == 4


def test_name_in_two_files_is_found_with_both_places() -> None:
    read = _read("include: jib.yaml\nparts:\n  drum: 1\n", jib="parts:\n  drum: 2\n")
    assert _found(read) == [("key-written-twice", "specs/jib.yaml", 2, 3, 7)]
    assert read[1][0].related[0].span == ("specs/crane.yaml", 3, 3, 3, 7)
    assert read[0] is not None
    assert read[0].node(("parts", "drum")) == "1"


@pytest.mark.parametrize("section", ["format: 1", "model: {title: x}", "issue: A"])
def test_what_holds_for_the_whole_model_stands_in_the_main_spec(section: str) -> None:
    read = _read("include: jib.yaml", jib=section)
    end = section.index(":") + 1
    assert _found(read) == [("section-in-main-only", "specs/jib.yaml", 1, 1, end)]


def test_sections_of_two_kinds_are_not_guessed_together() -> None:
    read = _read("include: jib.yaml\nparts: [drum]", jib="parts: {jib: 1}")
    assert _found(read) == [("section-kinds-differ", "specs/jib.yaml", 1, 1, 6)]
    assert read[1][0].related[0].span == ("specs/crane.yaml", 2, 1, 2, 6)


def test_includes_do_not_nest() -> None:
    read = _read("include: jib.yaml", jib="include: post.yaml", post="parts: {p: 1}")
    assert read[0] is None
    assert _found(read) == [("include-in-include", "specs/jib.yaml", 1, 1, 8)]


@pytest.mark.parametrize("name", ["../x.yaml", "/etc/passwd", "http://x/y.yaml", "~/x.yaml"])
def test_name_outside_the_folder_is_refused_where_it_stands(name: str) -> None:
    read = _read(f"include: ['{name}']")
    assert read[0] is None
    assert _found(read) == [("file-outside-folder", "specs/crane.yaml", 1, 11, 13 + len(name))]


def test_missing_file_is_found_where_it_is_named() -> None:
    read = _read("include:\n  - jib.yaml\n  - post.yaml\n", jib="parts: {j: 1}")
    assert read[0] is None
    assert _found(read) == [("file-not-found", "specs/crane.yaml", 3, 5, 14)]


def test_fault_within_an_include_has_its_place_there() -> None:
    read = _read("include: jib.yaml", jib="parts: [")
    assert read[0] is None
    assert _found(read) == [("bracket-not-closed", "specs/jib.yaml", 1, 8, 9)]


@pytest.mark.parametrize(
    ("written", "place"),
    [("{jib: x}", (10, 18)), ("[[x]]", (11, 14)), ("", (1, 8)), ("''", (10, 12)), ("[x, ~]", None)],
)
def test_include_takes_names(written: str, place: tuple[int, int] | None) -> None:
    read = _read(f"include: {written}")
    if place is None:  # `~` is a name here, and names no file in the folder
        assert {f.code.name for f in read[1]} == {"file-not-found", "file-outside-folder"}
        return
    assert _found(read) == [("include-not-a-name", "specs/crane.yaml", 1, *place)]


def test_file_is_read_once() -> None:
    read = _read("include: [jib.yaml, jib.yaml, crane.yaml]", jib="parts: {j: 1}")
    assert _found(read) == [
        ("include-twice", "specs/crane.yaml", 1, 21, 29),
        ("include-twice", "specs/crane.yaml", 1, 31, 41),
    ]


def test_number_of_files_is_bounded() -> None:
    names = ", ".join(f"f{number:02}.yaml" for number in range(bounds.INCLUDES + 1))
    read = _read(f"include: [{names}]")
    place = 11 + bounds.INCLUDES * len("f00.yaml, ")
    assert _found(read) == [("too-many-includes", "specs/crane.yaml", 1, place, place + 8)]


def test_text_of_all_files_is_bounded() -> None:
    filling = "#" + "x" * (bounds.FILE_BYTES - 20) + "\n"
    included = {f"f{number}": f"{filling}p: {{k{number}: 1}}" for number in range(5)}
    read = _read("include: [f0.yaml, f1.yaml, f2.yaml, f3.yaml, f4.yaml]", **included)
    assert read[0] is None
    assert _found(read) == [("too-many-includes", "specs/crane.yaml", 1, 47, 54)]


def test_text_without_a_folder_includes_nothing() -> None:
    document, (finding,) = read_text("parts: {}\ninclude: jib.yaml")
    assert document is None
    assert finding.code.name == "include-without-folder"
    assert finding.span == ("<text>", 2, 1, 2, 8)
