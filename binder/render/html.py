"""A binder to one HTML document: for the screen with everything inside, or for the PDF."""

from __future__ import annotations

from enum import StrEnum

from binder.pages import Binder, Place
from binder.render.anchors import anchors_of
from binder.render.environment import environment


class Medium(StrEnum):
    """What the document is for: a browser, or the PDF maker (no script, nothing folds)."""

    SCREEN = "screen"
    PAPER = "paper"


def render_html(binder: Binder) -> str:
    """One self-contained HTML file: style, fonts, script and drawings inside, no requests."""
    return _rendered(binder, Medium.SCREEN, "")


def render_paper(binder: Binder, made_on: str = "") -> str:
    """The HTML that the PDF is made from; `made_on` is W3C date and time, or '' for none."""
    return _rendered(binder, Medium.PAPER, made_on)


def _rendered(binder: Binder, medium: Medium, made_on: str) -> str:
    on_cover = tuple(part for part in binder.sections if part.place is Place.COVER)
    template = environment().get_template("document.html")
    return template.render(
        binder=binder,
        on_cover=on_cover,
        sections=tuple(part for part in binder.sections if part.place is not Place.COVER),
        anchors=anchors_of(binder),
        is_paper=medium is Medium.PAPER,
        made_on=made_on,
    )
