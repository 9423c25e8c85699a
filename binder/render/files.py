"""Files that plugins offer to a folder: those that are wanted, each whole or not at all."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path

from binder.api import did_you_mean
from binder.api.contributions import ExportFile
from binder.diagnostics import Diagnostic, Span
from binder.pages import Drawing
from binder.pages.codes import BUILD_RUNNING, CANNOT_WRITE, NOTHING_TO_EXPORT
from binder.render.file_names import unique_names
from binder.render.lock import FolderBusyError, folder_lock
from binder.render.svg_file import svg_file
from binder.render.write import write_whole

_COMMAND_LINE = Span("<command line>", 0, 0, 0, 0)


def wanted_files(
    files: Sequence[ExportFile], words: Iterable[str]
) -> tuple[tuple[ExportFile, ...], tuple[Diagnostic, ...]]:
    """The files of the kinds and items that are asked for, all where nothing is.

    A word that is neither, or words that leave no file, are a finding.
    """
    kinds, items = {one.kind for one in files}, {one.item for one in files if one.item}
    asked = list(words)
    unknown = [word for word in asked if word not in kinds | items]
    if unknown:
        return (), tuple(_unknown(word, kinds | items) for word in unknown)
    of_kinds = {word for word in asked if word in kinds}
    of_items = {word for word in asked if word not in kinds}
    found = tuple(
        one
        for one in files
        if (not of_kinds or one.kind in of_kinds) and (not of_items or one.item in of_items)
    )
    if not found:
        words_asked = " and ".join(f"'{word}'" for word in asked)
        message = f"nothing is both {words_asked}" if asked else "there is nothing to export"
        return (), (NOTHING_TO_EXPORT.at(_COMMAND_LINE, message, help=_LOOK),)
    return found, ()


_LOOK = "look at `binder export SPEC --list`"


def _unknown(word: str, known: set[str]) -> Diagnostic:
    help = did_you_mean(word, sorted(known)) or _LOOK
    said = " ".join(word.split())[:40]
    return NOTHING_TO_EXPORT.at(_COMMAND_LINE, f"no file is '{said}'", help=help)


def named_files(files: Sequence[ExportFile], model: str) -> tuple[tuple[str, ExportFile], ...]:
    """Each file with its name: item or model, kind and ending."""
    stems = ((f"{one.item or model}-{one.kind}", one.ending) for one in files)
    return tuple(zip(unique_names(stems), files, strict=True))


def write_files(
    files: Sequence[tuple[str, ExportFile]], folder: Path
) -> tuple[tuple[Path, ...], tuple[Diagnostic, ...]]:
    """What was written, and findings about what was not; a file that fails stops no other."""
    written: list[Path] = []
    findings: list[Diagnostic] = []
    try:
        folder.mkdir(parents=True, exist_ok=True)
        with folder_lock(folder):
            for name, file in files:
                made = _bytes_of(file)
                if isinstance(made, Diagnostic):
                    findings.append(made)
                    continue
                write_whole(folder / name, made)
                written.append(folder / name)
    except FolderBusyError as fault:
        help = "wait until it has ended, or choose another folder with --output"
        findings.append(BUILD_RUNNING.at(_place(folder), str(fault), help=help))
    except OSError as fault:
        words = fault.strerror or str(fault)
        help = "make room or choose another folder with --output"
        findings.append(CANNOT_WRITE.at(_place(folder), f"cannot write: {words}", help=help))
    return tuple(written), tuple(findings)


def _bytes_of(file: ExportFile) -> bytes | Diagnostic:
    made = file.make()
    if isinstance(made, Drawing):
        return svg_file(made, f"{file.kind} of {file.item}" if file.item else file.kind)
    return made


def _place(path: Path) -> Span:
    return Span(str(path), 0, 0, 0, 0)
