"""A rendered page to what a test asks about: its elements, ids, links and words."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser


@dataclass
class Page:
    """Elements in their order with their attributes, and all words."""

    elements: list[tuple[str, dict[str, str]]] = field(default_factory=list)
    words: list[str] = field(default_factory=list)

    @property
    def shape(self) -> list[tuple[str, tuple[str, ...]]]:
        """What no text of a stranger may change: tags and the names of their attributes."""
        return [(tag, tuple(sorted(attributes))) for tag, attributes in self.elements]

    def all(self, attribute: str) -> list[str]:
        return [found[attribute] for _, found in self.elements if attribute in found]

    @property
    def text(self) -> str:
        return "".join(self.words)


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.page = Page()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.page.elements.append((tag, {name: value or "" for name, value in attrs}))

    def handle_data(self, data: str) -> None:
        self.page.words.append(data)

    def handle_comment(self, data: str) -> None:
        self.page.elements.append(("comment", {"text": data}))


def read_page(html: str) -> Page:
    reader = _Reader()
    reader.feed(html)
    reader.close()
    return reader.page
