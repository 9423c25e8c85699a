"""The PDF is whole, tagged, dated as told, and carries its spec."""

from __future__ import annotations

import subprocess
from dataclasses import replace
from pathlib import Path

import pytest

from binder.pages import Binder
from binder.render.pdf import PdfOutcome, moment_of, write_pdf
from tests.render.sample import SPEC, sample

pikepdf = pytest.importorskip("pikepdf")


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("pdf") / "sample.pdf"
    outcome = write_pdf(sample(), path)
    assert outcome == PdfOutcome(ok=True)
    return path


def test_it_is_tagged_and_says_its_language_and_title(made: Path) -> None:
    with pikepdf.open(made) as pdf:
        assert pdf.Root.MarkInfo.Marked
        assert str(pdf.Root.Lang) == "en"
        assert "Screw jack, half size" in str(pdf.docinfo["/Title"])
        assert b'pdfuaid:part="1"' in pdf.Root.Metadata.read_bytes()  # PDF/UA-1, ISO 14289-1
        tags = {str(item.get("/S")) for item in pdf.objects if _is_element(item)}
        figures = [item for item in pdf.objects if _is_element(item) and item.S == "/Figure"]
    assert {"/H1", "/H2", "/H3", "/Table", "/TH", "/TD", "/L", "/LI", "/Figure", "/Link"} <= tags
    assert figures


def _is_element(item: object) -> bool:
    return isinstance(item, pikepdf.Dictionary) and item.get("/Type") == "/StructElem"


def test_a_drawing_is_described_in_words(made: Path) -> None:
    with pikepdf.open(made) as pdf:
        words = {str(item.Alt) for item in pdf.objects if _is_element(item) and "/Alt" in item}
    assert "The screw from the side, with its sizes." in words


def test_bookmarks_follow_the_sections(made: Path) -> None:
    with pikepdf.open(made) as pdf, pdf.open_outline() as outline:
        top = [item.title for item in outline.root]
        parts = next(item for item in outline.root if item.title == "Parts")
        inner = [item.title for item in parts.children]
    assert top[:3] == ["Screw jack, half size", "Contents", "How to read this binder"]
    assert inner == ["1 Body", "2 Screw"]


def test_all_fonts_are_our_own_and_embedded(made: Path) -> None:
    with pikepdf.open(made) as pdf:
        fonts = [
            item
            for item in pdf.objects
            if isinstance(item, pikepdf.Dictionary) and item.get("/Type") == "/FontDescriptor"
        ]
        assert fonts
        for font in fonts:
            assert "Binder" in str(font.FontName)
            assert "/FontFile2" in font or "/FontFile3" in font


def test_the_spec_travels_inside_in_order_of_names(made: Path) -> None:
    with pikepdf.open(made) as pdf:
        assert list(pdf.attachments) == ["binder.json", "screw-jack.yaml"]
        attached = pdf.attachments["screw-jack.yaml"]
        assert attached.get_file().read_bytes() == SPEC.encode()
        assert attached.description == "The spec of this binder"


def test_every_page_says_which_of_how_many_and_of_what(made: Path) -> None:
    pages = pages_of(made)
    count = len(pages)
    assert count > 4
    for number, words in enumerate(pages, 1):
        assert f"page {number} of {count}" in words
        assert f"Spec {sample().digest[:10]}" in words
    assert all("Screw jack, half size · Issue B" in words for words in pages[1:])
    assert "2 Screw" in next(words for words in pages if "Set-up 1" in words)


def test_contents_give_the_page_on_which_a_section_starts(made: Path) -> None:
    pages = pages_of(made)
    contents = next(words for words in pages if words.count("....") > 5)
    for title, mark in (
        ("2 Screw", "Set-up 1"),
        ("Inspection", "run-out"),
        ("The spec", "gunmetal, st"),
    ):
        line = next(line for line in contents.splitlines() if line.strip().startswith(title))
        found = next(number for number, words in enumerate(pages, 1) if mark in words)
        assert int(line.split()[-1]) == found


def test_an_empty_line_of_the_spec_has_its_own_number(made: Path) -> None:
    words = next(words for words in pages_of(made) if "gunmetal, st" in words)
    numbers = [line.split()[0] for line in words.splitlines() if line.strip()]
    lines = SPEC.splitlines()
    empty = lines.index("") + 1
    for number in (empty - 1, empty, empty + 1, len(lines)):
        assert str(number) in numbers


def pages_of(path: Path) -> list[str]:
    pdftotext = ["pdftotext", "-layout", str(path), "-"]
    try:
        done = subprocess.run(pdftotext, capture_output=True, check=True)
    except FileNotFoundError:
        pytest.skip("pdftotext is not installed")
    return done.stdout.decode("utf-8").split("\f")[:-1]


def test_a_binder_without_a_date_carries_none(tmp_path: Path) -> None:
    path = tmp_path / "a.pdf"
    assert write_pdf(replace(sample(), date=""), path).ok
    with pikepdf.open(path) as pdf:
        assert "/CreationDate" not in pdf.docinfo
        parameters = pdf.attachments["screw-jack.yaml"].obj.EF.F.Params
        assert "/CreationDate" not in parameters
        assert "/ModDate" not in parameters


def test_dates_come_from_the_epoch_variable_then_from_the_binder() -> None:
    # https://reproducible-builds.org/specs/source-date-epoch: seconds since 1970-01-01 UTC.
    epoch = {"SOURCE_DATE_EPOCH": "86400"}
    assert moment_of(sample(), epoch) == "1970-01-02T00:00:00Z"
    assert moment_of(sample(), {}) == "2026-03-14T00:00:00Z"
    assert moment_of(replace(sample(), date=""), {}) == ""


def test_a_long_title_does_not_run_into_the_section(tmp_path: Path) -> None:
    binder: Binder = replace(sample(), title="Screw jack " * 20)
    path = tmp_path / "a.pdf"
    assert write_pdf(binder, path).ok
    heads = [page.strip("\n").splitlines()[0] for page in pages_of(path)[1:]]
    assert all("…" in head for head in heads)
    assert any(head.endswith("Contents") for head in heads)
