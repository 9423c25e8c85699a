"""Answers kept in a folder under the name of what was asked, so that none is worked out twice."""

from __future__ import annotations

import hashlib
import os
import tempfile
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from .jobs import Answer
from .packing import packed, unpacked

_ENDING = ".answer"


@dataclass(frozen=True, slots=True)
class Store:
    """A folder of kept answers and the most bytes that it may hold.

    A folder that cannot be written is no fault: what is not kept is worked out again.
    """

    folder: Path
    limit: int = 64_000_000

    def get(self, key: str) -> Answer | None:
        """Gives a kept answer; nothing where there is none, or none that is whole."""
        path = self._path(key)
        try:
            mark, text = path.read_text(encoding="utf-8").split("\n", 1)
            if mark != _mark(text):
                return None
            outcome = unpacked(text)
        except (OSError, ValueError):
            return None
        with suppress(OSError):
            os.utime(path)
        return outcome

    def put(self, key: str, outcome: Answer) -> None:
        """Keeps an answer; it is there whole or not at all."""
        text = packed(outcome)
        with suppress(OSError):
            self.folder.mkdir(parents=True, exist_ok=True)
            handle, name = tempfile.mkstemp(dir=self.folder, suffix=".part")
            try:
                with os.fdopen(handle, "w", encoding="utf-8", newline="\n") as file:
                    file.write(f"{_mark(text)}\n{text}")
                Path(name).replace(self._path(key))
            finally:
                Path(name).unlink(missing_ok=True)

    def trim(self) -> None:
        """Throws away the answers not asked for longest until the rest are within the limit."""
        with suppress(OSError):
            kept = [(path.stat(), path) for path in self.folder.glob(f"*{_ENDING}")]
            total = sum(stat.st_size for stat, _ in kept)
            for stat, path in sorted(kept, key=lambda entry: entry[0].st_mtime_ns):
                if total <= self.limit:
                    break
                path.unlink(missing_ok=True)
                total -= stat.st_size

    def _path(self, key: str) -> Path:
        return self.folder / f"{key}{_ENDING}"


def _mark(text: str) -> str:
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


def own_store() -> Store:
    """Where answers are kept between runs: `BINDER_CACHE`, or the user's own cache."""
    home = os.environ.get("XDG_CACHE_HOME") or str(Path.home() / ".cache")
    return Store(Path(os.environ.get("BINDER_CACHE") or home) / "binder" / "solids")
