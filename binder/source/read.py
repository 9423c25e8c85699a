"""A spec, as a file or as text, to its Document: the read phase."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

from binder.diagnostics import Diagnostic
from binder.source import bounds
from binder.source.characters import cleaned
from binder.source.codes.file_codes import FILE_TOO_LARGE
from binder.source.codes.include_codes import (
    INCLUDE_IN_INCLUDE,
    INCLUDE_WITHOUT_FOLDER,
    TOO_MANY_INCLUDES,
)
from binder.source.compose import compose
from binder.source.decode import decode
from binder.source.files import Refusal, read_file, read_file_in
from binder.source.findings import Findings, whole_file
from binder.source.includes import INCLUDE, take_includes
from binder.source.likeness import likened
from binder.source.merge import merged
from binder.source.text import SourceText
from binder.source.tree import Document, Table, Written

Read = tuple[Document | None, tuple[Diagnostic, ...]]


def read_spec(path: str | os.PathLike[str]) -> Read:
    """A spec file with what it includes from its own folder, and what was found on the way.

    The document is None where not all of what was written could be read, so that the next
    phase would be guessing; else it may come with errors (a key written twice).
    """
    file = os.fspath(path)
    reading = _Reading(file)
    data = read_file(file, bounds.FILE_BYTES)
    if isinstance(data, Refusal):
        return None, (data.at(whole_file(file)),)
    root = reading.read_bytes(Path(file).name, file, data)
    return reading.finished(root, may_include=True)


def read_text(text: str, file: str = "<text>") -> Read:
    """A spec that is no file, and so can include none; else as `read_spec`."""
    reading = _Reading(file)
    if len(text) > bounds.FILE_BYTES:
        message = f"the text is longer than {bounds.megabytes(bounds.FILE_BYTES)}"
        return None, (FILE_TOO_LARGE.at(whole_file(file), message),)
    root = reading.read(file, file, text.removeprefix("\ufeff"))
    return reading.finished(root, may_include=False)


class _Reading:
    """One run over a spec and its includes: what was read so far, and what is still allowed."""

    def __init__(self, file: str) -> None:
        self._file = file
        self._found = Findings(file)
        self._texts: dict[str, str] = {}
        self._digest = hashlib.sha256()
        self._values_left = bounds.VALUES
        self._bytes_left = bounds.ALL_BYTES

    def read_bytes(self, name: str, file: str, data: bytes) -> Table | None:
        """One file's tree; `name` is its name from the spec's folder, `file` as in spans."""
        text = decode(data, file)
        if isinstance(text, Diagnostic):
            self._found.take(text)
            return None
        return self.read(name, file, text)

    def read(self, name: str, file: str, text: str) -> Table | None:
        """The tree of a text that was decoded."""
        source = SourceText(file, cleaned(text, file, self._found))
        self._texts[file] = source.text
        for part in (name, source.text):
            # The length before each part keeps `ab` + `c` apart from `a` + `bc`.
            encoded = part.encode("utf-8", "surrogatepass")
            self._digest.update(b"%d:" % len(encoded) + encoded)
        composed = compose(source, self._found, self._values_left)
        if composed is None:
            return None
        self._values_left -= composed.values
        return composed.root

    def finished(self, root: Table | None, *, may_include: bool) -> Read:
        """The main tree with its includes as a document."""
        if root is not None:
            root = self._with_includes(root, may_include=may_include)
        if root is None:
            return None, self._found.all()
        root, found = likened(root)
        for finding in found:
            self._found.take(finding)
        if found:
            return None, self._found.all()
        document = Document(self._file, root, self._texts, self._digest.hexdigest())
        return document, self._found.all()

    def _with_includes(self, root: Table, *, may_include: bool) -> Table | None:
        if not may_include and INCLUDE in root:
            message = "a spec that is no file has no folder to include from"
            self._found.add(INCLUDE_WITHOUT_FOLDER, root.key_spans[INCLUDE], message)
            return None
        names = take_includes(root, Path(self._file).name, self._found)
        if not names:
            return None if names is None else root
        trees = [self._include(name) for name in names]
        whole = [tree for tree in trees if tree is not None]
        return merged(root, whole, self._found) if len(whole) == len(trees) else None

    def _include(self, name: Written) -> Table | None:
        folder = self._file[: -len(Path(self._file).name)]  # as it was given, `./` and all
        data = read_file_in(folder or os.curdir, name, bounds.FILE_BYTES)
        if isinstance(data, Refusal):
            self._found.take(data.at(name.span))
            return None
        self._bytes_left -= len(data)
        if self._bytes_left < 0:
            message = f"the included files have more than {bounds.megabytes(bounds.ALL_BYTES)}"
            self._found.add(TOO_MANY_INCLUDES, name.span, message)
            return None
        tree = self.read_bytes(name, folder + name, data)
        return None if tree is None or self._includes_more(tree) else tree

    def _includes_more(self, tree: Table) -> bool:
        if INCLUDE not in tree:
            return False
        message = "an included file cannot include others"
        help = "name the file under `include:` of the main spec"
        self._found.add(INCLUDE_IN_INCLUDE, tree.key_spans[INCLUDE], message, help=help)
        return True
