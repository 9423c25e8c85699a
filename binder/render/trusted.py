"""Our own style, script and drawings to markup that the templates leave unescaped.

The only module that may say `Markup`: whatever passes here is read by a person first. A
test searches the package for the word.
"""

from __future__ import annotations

import re
from base64 import b64encode
from functools import cache
from hashlib import sha256
from importlib.resources import files

from markupsafe import Markup, escape

from binder.pages import Picture
from binder.render.anchors import Anchors
from binder.render.fonts import by_name, embedded, face_rules
from binder.render.svg import svg_of

# A name of a spec that a narrow column may have to break: letters, digits and `_` alone.
_LONG_NAME = re.compile(r"(?<!\w)(?=\w{13})[A-Za-z0-9]+(?:_[A-Za-z0-9]+)+(?!\w)")


@cache
def screen_style() -> Markup:
    """The style of the HTML file with its fonts inside."""
    return Markup("\n".join((face_rules(embedded), _style("pages"), _style("screen"))))


@cache
def paper_style() -> Markup:
    """The style of the PDF; its fonts are asked for by name."""
    return Markup("\n".join((face_rules(by_name), _style("pages"), _style("paper"))))


@cache
def script() -> Markup:
    """The script that keeps ticks and sizes; it works on what is in the file alone."""
    return Markup(_read("script", "bench.js"))


@cache
def content_policy() -> Markup:
    """The content security policy: our one script by its hash, and no request to anything."""
    digest = b64encode(sha256(script().encode("utf-8")).digest()).decode("ascii")
    return Markup(
        f"default-src 'none'; script-src 'sha256-{digest}'; style-src 'unsafe-inline'; "
        "img-src data:; font-src data:; base-uri 'none'; form-action 'none'"
    )


def drawn(picture: Picture, anchors: Anchors | None) -> Markup:
    """A picture as SVG; with `anchors` its labels link, without them they are words."""
    href = anchors.href if anchors else _nowhere
    return Markup(svg_of(picture.drawing, picture.description, href))


def breakable(text: str) -> Markup:
    """Words, escaped; a long name with `_` in it may break behind each, and nowhere else first.

    What is let through is the name of one empty element, between letters and digits.
    """
    return Markup(_LONG_NAME.sub(lambda one: one[0].replace("_", "_<wbr>"), str(escape(text))))


def _nowhere(_target: str) -> str:
    return ""


def _style(name: str) -> str:
    return _read("style", f"{name}.css")


def _read(folder: str, name: str) -> str:
    return files("binder.render").joinpath(folder, name).read_text("utf-8")
