"""What the PDF maker asks for to our own fonts, and to a full stop for anything else."""

from __future__ import annotations

from weasyprint.urls import FatalURLFetchingError, URLFetcher, URLFetcherResponse

from binder.render.fonts import FONT_FILES, SCHEME, font_bytes


class OwnFonts(URLFetcher):  # type: ignore[misc]  # WeasyPrint declares no types
    """Answers `binder:fonts/NAME` from the package; our pages never ask for more.

    Any other request is our bug or a stranger's trick, so it ends the run.
    """

    def __init__(self) -> None:
        super().__init__(allowed_protocols=("binder",), allow_redirects=False)
        self.refused: list[str] = []

    def fetch(self, url: str, *_headers: object) -> URLFetcherResponse:
        """The font of that name."""
        file = url.removeprefix(SCHEME)
        if url == file or file not in FONT_FILES:
            self.refused.append(url)
            self.stop_if_refused()
        return URLFetcherResponse(url, font_bytes(file), {"Content-Type": "font/woff2"})

    def stop_if_refused(self) -> None:
        """FatalURLFetchingError for the first refused request.

        To be asked once more at the end: WeasyPrint lets this exception through everywhere
        but inside an SVG.
        """
        if self.refused:
            raise FatalURLFetchingError(f"the pages asked for {self.refused[0][:200]!r}")
