"""The PDF maker gets our fonts and nothing else, whatever its pages or a stranger ask for."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from weasyprint.urls import FatalURLFetchingError

import binder.render.pdf as pdf_module
from binder.render.fetcher import OwnFonts
from binder.render.pdf import write_pdf
from binder.render.pdf_child import make_pdf, refuse_network
from binder.render.pdf_job import PdfJob
from tests.render.hostile import INJECTIONS, binder_of
from tests.render.sample import sample

pikepdf = pytest.importorskip("pikepdf")


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


@pytest.mark.parametrize("event", ["socket.connect", "socket.getaddrinfo", "socket.sendto"])
def test_network_events_are_refused_and_others_pass(event: str) -> None:
    with pytest.raises(PermissionError):
        refuse_network(event, ())
    refuse_network("open", ())
