"""The bundled fonts to the `@font-face` rules of a style sheet."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Callable
from functools import cache
from importlib.resources import files
from typing import NamedTuple

SCHEME = "binder:fonts/"


class Face(NamedTuple):
    """One font file under the family name and weight that our styles ask for."""

    family: str
    weight: int
    file: str


FACES = (
    Face("Binder Sans", 400, "DejaVuSans.woff2"),
    Face("Binder Sans", 700, "DejaVuSans-Bold.woff2"),
    Face("Binder Mono", 400, "DejaVuSansMono.woff2"),
)
FONT_FILES = frozenset(face.file for face in FACES)


@cache
def font_bytes(file: str) -> bytes:
    """The content of one of the bundled fonts."""
    return files("binder.render").joinpath("fonts", file).read_bytes()


def embedded(file: str) -> str:
    """A URL that carries the font itself, for an HTML file that asks for nothing."""
    return f"data:font/woff2;base64,{b64encode(font_bytes(file)).decode('ascii')}"


def by_name(file: str) -> str:
    """A URL that our own fetcher answers from the package."""
    return SCHEME + file


def face_rules(url: Callable[[str], str]) -> str:
    """The rules for all faces, each with the URL that `url` gives its file."""
    return "\n".join(
        f'@font-face{{font-family:"{face.family}";font-weight:{face.weight};'
        f'src:url("{url(face.file)}") format("woff2")}}'
        for face in FACES
    )
