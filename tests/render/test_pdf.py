"""The PDF is whole, tagged and closed in itself; a failed one is an outcome, not an exception."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from weasyprint.urls import FatalURLFetchingError

import binder.render.pdf as pdf_module
from binder.pages import Binder
from binder.render.fetcher import OwnFonts
from binder.render.html import render_html
from binder.render.pdf import PdfOutcome, moment_of, write_pdf
from binder.render.pdf_child import make_pdf, refuse_network
from binder.render.pdf_job import PdfJob
from tests.render.hostile import INJECTIONS, binder_of
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
    assert count > 5
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


@pytest.mark.parametrize("epoch", ["soon", "-5", "1.5", "٣", "9" * 30])
def test_a_wrong_epoch_variable_is_an_outcome(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, epoch: str
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    outcome = write_pdf(sample(), tmp_path / "a.pdf")
    assert not outcome.ok
    assert "SOURCE_DATE_EPOCH" in outcome.reason


@pytest.fixture
def canary(tmp_path: Path) -> Path:
    path = tmp_path / "canary.txt"
    path.write_text("the canary sings", encoding="utf-8")
    return path


ASKING = (
    '<img src="{url}">',
    '<link rel="stylesheet" href="{url}">',
    '<link rel="attachment" href="{url}">',
    '<a rel="attachment" href="{url}">x</a>',
    '<style>@import "{url}";</style>',
    "<style>@font-face {{ font-family: x; src: url({url}) }} p {{ font-family: x }}</style><p>x",
    "<style>p {{ background: url({url}) }}</style><p>x",
    "<style>p::before {{ content: url({url}) }}</style><p>x",
    "<style>li {{ list-style-image: url({url}) }}</style><ul><li>x</ul>",
    '<object data="{url}"></object>',
    '<embed src="{url}">',
    '<svg width="9" height="9"><image href="{url}" width="9" height="9"/></svg>',
)


@pytest.mark.parametrize("markup", ASKING)
@pytest.mark.parametrize("scheme", ["file", "http", "data"])
def test_the_fetcher_stops_at_any_request_but_for_our_fonts(
    canary: Path, markup: str, scheme: str
) -> None:
    urls = {
        "file": canary.as_uri(),
        "http": "http://127.0.0.1:9/x.png",
        "data": "data:text/plain,canary",
    }
    job = PdfJob(markup.format(url=urls[scheme]))
    with pytest.raises(FatalURLFetchingError, match="the pages asked for"):
        make_pdf(job)


@pytest.mark.parametrize(
    "name", ["../html.py", "LICENSE.txt", "", "DejaVuSans.woff2/../../html.py"]
)
def test_the_fetcher_gives_fonts_and_no_other_file(name: str) -> None:
    with pytest.raises(FatalURLFetchingError):
        OwnFonts().fetch(f"binder:fonts/{name}")
    assert OwnFonts().fetch("binder:fonts/DejaVuSans.woff2").read()[:4] == b"wOF2"


def test_a_request_in_the_pages_is_an_outcome_and_no_file(
    tmp_path: Path, canary: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asking = f'<link rel="attachment" href="{canary.as_uri()}"><p>x'
    monkeypatch.setattr(pdf_module, "render_paper", lambda *_: asking)
    outcome = write_pdf(sample(), tmp_path / "a.pdf")
    assert not outcome.ok
    assert "asked for something outside" in outcome.reason
    assert not (tmp_path / "a.pdf").exists()


def test_a_strangers_words_make_no_link_script_or_attachment(tmp_path: Path) -> None:
    first = binder_of(INJECTIONS[0])
    more = (binder_of(words).sections[0] for words in INJECTIONS[1:])
    binder = replace(first, digest="d" * 64, language="en", sections=(*first.sections, *more))
    path = tmp_path / "a.pdf"
    assert write_pdf(binder, path).ok
    with pikepdf.open(path) as pdf:
        assert len(pdf.attachments) == 0
        for item in pdf.objects:
            if isinstance(item, pikepdf.Dictionary):
                keys = {"/JS", "/JavaScript", "/URI", "/Launch", "/OpenAction", "/AA"}
                assert not keys & set(item.keys())
                assert item.get("/S") not in ("/URI", "/JavaScript", "/Launch", "/GoToR")


def test_too_little_memory_is_an_outcome_and_the_html_stands(tmp_path: Path) -> None:
    path = tmp_path / "a.pdf"
    path.write_bytes(b"old binder")
    outcome = write_pdf(sample(), path, memory=60_000_000)
    assert not outcome.ok
    assert "memory" in outcome.reason
    assert outcome.help
    assert path.read_bytes() == b"old binder"
    assert "Screw jack" in render_html(sample())


def test_too_little_time_is_an_outcome(tmp_path: Path) -> None:
    outcome = write_pdf(sample(), tmp_path / "a.pdf", timeout=0.05)
    assert outcome.reason == "the PDF was not ready after 0.05 s"
    assert list(tmp_path.iterdir()) == []


# What stands in for WeasyPrint here is a module of that name on the child's own path.
STANDING_IN = {
    "raise OSError(\"cannot load library 'libpango-1.0-0': not found\")": "Pango is not installed",
    "raise ModuleNotFoundError('x', name='weasyprint')": "WeasyPrint is not installed",
    "raise MemoryError": "more memory",
    "import os; os.kill(os.getpid(), 9)": "ended by signal 9",
    "raise ZeroDivisionError('its own fault')": "ZeroDivisionError: its own fault",
    "import os; os._exit(0)": "it said nothing",
    "import socket; socket.create_connection(('127.0.0.1', {port}))": "without a network",
}


@pytest.mark.parametrize("body", STANDING_IN)
def test_the_childs_death_is_an_outcome_with_its_reason(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, body: str
) -> None:
    path = tmp_path / "a.pdf"
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.settimeout(0.2)
        stand_in(tmp_path, monkeypatch, body.format(port=server.getsockname()[1]))
        outcome = write_pdf(sample(), path)
        with pytest.raises(TimeoutError):
            server.accept()
    assert not outcome.ok
    assert STANDING_IN[body] in outcome.reason
    assert outcome.help
    assert not path.exists()


def stand_in(folder: Path, monkeypatch: pytest.MonkeyPatch, body: str) -> None:
    (folder / "weasyprint.py").write_text(body, encoding="utf-8")
    real = pdf_module._environment()
    paths = os.pathsep.join((str(folder), real["PYTHONPATH"]))
    monkeypatch.setattr(pdf_module, "_environment", lambda: {**real, "PYTHONPATH": paths})


def test_what_a_library_prints_does_not_get_into_the_pdf(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    body = "print('chatter', flush=True)\nraise MemoryError"
    stand_in(tmp_path, monkeypatch, body)
    assert "chatter" in write_pdf(sample(), tmp_path / "a.pdf").log


def test_a_module_in_the_callers_folder_is_not_run(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "weasyprint.py").write_text("raise MemoryError", encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert write_pdf(sample(), tmp_path / "a.pdf").ok


def test_a_folder_that_is_not_there_is_an_outcome(tmp_path: Path) -> None:
    outcome = write_pdf(sample(), tmp_path / "nowhere" / "a.pdf")
    assert not outcome.ok
    assert "cannot be written" in outcome.reason


@pytest.mark.parametrize("event", ["socket.connect", "socket.getaddrinfo", "socket.sendto"])
def test_network_events_are_refused_and_others_pass(event: str) -> None:
    with pytest.raises(PermissionError):
        refuse_network(event, ())
    refuse_network("open", ())


def test_a_job_comes_back_from_its_bytes() -> None:
    binder = sample()
    job = PdfJob("<p>⌀ ½</p>", binder.attachments, "2026-03-14T00:00:00Z")
    assert PdfJob.from_bytes(job.to_bytes()) == job
    assert job.to_bytes().isascii()


def test_a_long_title_does_not_run_into_the_section(tmp_path: Path) -> None:
    binder: Binder = replace(sample(), title="Screw jack " * 20)
    path = tmp_path / "a.pdf"
    assert write_pdf(binder, path).ok
    heads = [page.strip("\n").splitlines()[0] for page in pages_of(path)[1:]]
    assert all("…" in head for head in heads)
    assert any(head.endswith("Inspection") for head in heads)


def test_importing_render_loads_no_pdf_maker() -> None:
    code = "import sys, binder.render; print('weasyprint' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"
