"""A drawing to an SVG file of its own, with its font inside and white paper beneath."""

from __future__ import annotations

from binder.pages import Drawing
from binder.render.fonts import FACES, embedded
from binder.render.svg import svg_of

_NAMESPACE = 'xmlns="http://www.w3.org/2000/svg"'


def svg_file(drawing: Drawing, description: str) -> bytes:
    """The file at true size: 1 unit is 1 mm. Raises ValueError for a size that is no number."""
    face = FACES[0]
    style = (
        f'<style>@font-face{{font-family:"{face.family}";'
        f'src:url("{embedded(face.file)}") format("woff2")}}</style>'
    )
    paper = '<rect width="100%" height="100%" fill="#fff" stroke="none"/>'
    text = svg_of(drawing, description, lambda _target: "")
    text = text.replace("<svg ", f"<svg {_NAMESPACE} ", 1)
    text = text.replace("</title>", f"</title>{style}{paper}", 1)
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{text}\n'.encode()
