"""Files that plugins offer: which are wanted, their names, and what is left when one fails."""

from __future__ import annotations

import os
import xml.etree.ElementTree as ET
from functools import partial
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from binder.api.contributions import ExportFile
from binder.diagnostics import NOWHERE
from binder.host.codes import PLUGIN_BROKEN
from binder.pages import Drawing, Label, Line
from binder.render.file_names import safe_name, unique_names
from binder.render.files import named_files, wanted_files, write_files
from binder.render.lock import NAME


def file(kind: str, item: str, ending: str = "txt") -> ExportFile:
    return ExportFile(kind, item, ending, partial(bytes, f"{kind} {item}".encode()))


FILES = (file("solid", "post"), file("solid", "cap"), file("flat", "cap"), file("template", ""))


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ([], ["solid post", "solid cap", "flat cap", "template "]),
        (["solid"], ["solid post", "solid cap"]),
        (["cap"], ["solid cap", "flat cap"]),
        (["cap", "solid"], ["solid cap"]),
        (["cap", "post"], ["solid post", "solid cap", "flat cap"]),
        (["template"], ["template "]),
    ],
)
def test_kinds_and_items_leave_out_the_others(words: list[str], found: list[str]) -> None:
    wanted, findings = wanted_files(FILES, words)
    assert [f"{one.kind} {one.item}" for one in wanted] == found
    assert findings == ()


@pytest.mark.parametrize(
    ("words", "help"),
    [
        (["solit"], "did you mean 'solid'?"),
        (["rubbish"], "look at `binder export SPEC --list`"),
        (["post", "flat"], "look at `binder export SPEC --list`"),
    ],
)
def test_what_leaves_no_file_is_a_finding(words: list[str], help: str) -> None:
    wanted, findings = wanted_files(FILES, words)
    assert wanted == ()
    assert [one.code.name for one in findings] == ["nothing-to-export"]
    assert findings[0].span.file == "<command line>"
    assert findings[0].help == help


def test_names_are_of_the_item_or_the_model() -> None:
    names = [name for name, _ in named_files(FILES, "jack")]
    assert names == ["post-solid.txt", "cap-solid.txt", "cap-flat.txt", "jack-template.txt"]


def test_names_that_differ_in_case_alone_are_told_apart() -> None:
    wanted = [("Post", "svg"), ("post", "svg"), ("post", "dxf"), ("post", "svg")]
    assert list(unique_names(wanted)) == ["Post.svg", "post-2.svg", "post.dxf", "post-3.svg"]


@pytest.mark.parametrize("text", ["", "..", "../../etc/passwd", "CON", "a\0b", "/", "ü" * 300])
def test_a_name_never_leaves_the_folder(text: str) -> None:
    name = safe_name(text)
    assert name.strip("-")
    assert not set(name) & set("/\\.\0:")
    assert name.upper() != "CON"


@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(st.tuples(st.text(max_size=12), st.text(max_size=3)), max_size=4))
def test_any_names_are_safe_and_unlike(wanted: list[tuple[str, str]]) -> None:
    names = list(unique_names(wanted))
    assert len({name.casefold() for name in names}) == len(wanted)
    assert all(name.isascii() and Path(name).name == name and name[0] != "." for name in names)


def test_a_file_that_cannot_be_made_stops_no_other(tmp_path: Path) -> None:
    fault = PLUGIN_BROKEN.at(NOWHERE, "no letters")
    broken = ExportFile("letters", "post", "txt", lambda: fault)
    files = [("a.txt", FILES[0]), ("b.txt", broken), ("c.txt", FILES[1])]
    written, findings = write_files(files, tmp_path / "new" / "folder")
    assert [path.name for path in written] == ["a.txt", "c.txt"]
    assert findings == (fault,)
    assert written[0].read_bytes() == b"solid post"
    assert {path.name for path in written[0].parent.iterdir()} == {"a.txt", "c.txt"}


def test_a_drawing_is_written_at_true_size_with_its_font(tmp_path: Path) -> None:
    drawing = Drawing(120, 40, (Line(10, 20, 110, 20), Label(10, 10, "100 mm <check>")))
    offer = ExportFile("drawing", "post", "svg", lambda: drawing)
    (path,), _ = write_files([("post.svg", offer)], tmp_path)
    root = ET.fromstring(path.read_text(encoding="utf-8"))  # noqa: S314 - our own file
    assert root.tag == "{http://www.w3.org/2000/svg}svg"
    assert (root.get("width"), root.get("viewBox")) == ("120mm", "0 0 120 40")
    assert "data:font/woff2;base64," in (root.findtext("{*}style") or "")
    assert root.findtext("{*}text") == "100 mm <check>"


def test_a_link_is_not_written_through(tmp_path: Path) -> None:
    other = tmp_path / "other"
    other.write_text("mine", encoding="utf-8")
    (tmp_path / "a.txt").symlink_to(other)
    written, findings = write_files([("a.txt", FILES[0])], tmp_path)
    assert written == ()
    assert [one.code.name for one in findings] == ["cannot-write"]
    assert other.read_text(encoding="utf-8") == "mine"


def test_a_folder_in_use_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / NAME).write_text(f"{os.getppid()}\n", encoding="utf-8")
    written, findings = write_files([("a.txt", FILES[0])], tmp_path)
    assert written == ()
    assert [one.code.name for one in findings] == ["build-running"]
