"""A browser runs our script alone, asks for nothing, and keeps to the policy."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from http.server import BaseHTTPRequestHandler, HTTPServer
from pathlib import Path
from threading import Thread

import pytest

from binder.render import render_html
from tests.render.hostile import INJECTIONS, binder_of
from tests.render.reading import Page, read_page
from tests.render.sample import sample

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")
pytestmark = pytest.mark.skipif(CHROMIUM is None, reason="no Chromium on this machine")


def opened(html: str, folder: Path) -> tuple[Page, str]:
    """The page as it stands after its scripts have run, and the browser's log."""
    path = folder / "page.html"
    path.write_text(html, encoding="utf-8")
    done = subprocess.run(
        [
            str(CHROMIUM),
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--enable-logging=stderr",
            f"--user-data-dir={folder / 'profile'}",
            "--dump-dom",
            path.as_uri(),
        ],
        capture_output=True,
        timeout=90,
        check=False,
    )
    return read_page(done.stdout.decode("utf-8")), done.stderr.decode("utf-8", "replace")


def test_our_script_runs_under_the_policy(tmp_path: Path) -> None:
    page, log = opened(render_html(sample()), tmp_path)
    bench = next(found for _, found in page.elements if found.get("id") == "b:bench")
    assert "hidden" not in bench
    assert "0 of 8 ticked, 0 sizes written. They stay in this browser." in page.text
    assert "Content Security Policy" not in log
    assert "CONSOLE" not in log


def test_a_script_that_is_not_ours_is_stopped_by_the_policy(tmp_path: Path) -> None:
    foreign = "<main><script>document.title='taken'</script>"
    page, log = opened(render_html(sample()).replace("<main>", foreign), tmp_path)
    assert "taken" not in _title(page)
    assert "Content Security Policy" in log


def test_a_strangers_words_run_nothing_and_ask_for_nothing(tmp_path: Path) -> None:
    with listening() as (port, asked):
        binders = [binder_of(words.replace(":9/", f":{port}/")) for words in INJECTIONS]
        sections = tuple(section for binder in binders for section in binder.sections)
        html = render_html(replace(sample(), sections=sections))
        page, log = opened(html, tmp_path)
    assert "Screw jack" in _title(page)
    assert asked == []
    assert "Content Security Policy" not in log
    foreign = {"iframe", "object", "embed", "form", "base", "img", "b"}
    assert not {tag for tag, _ in page.elements} & foreign
    assert [tag for tag, _ in page.elements].count("script") == 1


def _title(page: Page) -> str:
    at = page.text.strip()
    return at.splitlines()[0]


@contextmanager
def listening() -> Iterator[tuple[int, list[str]]]:
    """A server that writes down who asked it for what."""
    asked: list[str] = []

    class Ear(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            asked.append(self.path)
            self.send_response(404)
            self.end_headers()

    with HTTPServer(("127.0.0.1", 0), Ear) as server:
        Thread(target=server.serve_forever, daemon=True).start()
        yield server.server_port, asked
        server.shutdown()
