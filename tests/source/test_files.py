"""Files named by a spec: inside its folder, ordinary, of bounded size, or refused."""

from __future__ import annotations

import os
import socket
from pathlib import Path

import pytest

from binder.source import Refusal, files, read_file, read_file_in, read_spec

LIMIT = 1000

# Name rule of the threat list: root, upward, device, stream, address, hidden, look-alike.
HOSTILE_NAMES = [
    "", ".", "..", "/etc/passwd", "//host/share", "../secret.yaml", "sub/../../secret.yaml",
    "../trial-evil/x", "./a.yaml", "sub//a.yaml", "a.yaml/", "~/secret", "~root/x", "C:/secret",
    "C:\\secret", "sub\\a.yaml", "a.yaml:stream", "http://x/a.yaml", "file:///etc/passwd",
    "%2e%2e/secret", "a\x00.yaml", "a\n.yaml", "a\u202e.yaml", "a\u200b.yaml", "\ud800.yaml",
    "CON", "con.yaml", "sub/NUL", "COM1.txt", "lpt9", "a.yaml.", "a.yaml ", " a.yaml",
    ".git/config", "*.yaml", "a?.yaml", "a|b", '"a"', "a" * 300, "é" * 150, "a/b/c/d/e/f.yaml",
]  # fmt: skip


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A spec's folder with good and hostile things in it, and a secret beside it."""
    folder = tmp_path / "trial"
    (folder / "sub").mkdir(parents=True)
    (folder / "a.yaml").write_text("good", encoding="utf-8")
    (folder / "sub" / "Größe 2.yaml").write_text("good below", encoding="utf-8")
    (tmp_path / "secret.yaml").write_text("secret", encoding="utf-8")
    (folder / "link").symlink_to(tmp_path / "secret.yaml")
    (folder / "inner-link").symlink_to("a.yaml")
    (folder / "up").symlink_to(tmp_path)
    os.mkfifo(folder / "pipe")
    (folder / "big").write_bytes(b"x" * (LIMIT + 1))
    (folder / "full").write_bytes(b"x" * LIMIT)
    return folder


@pytest.fixture(params=["by steps", "resolved"])
def way(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> None:
    """Both ways of opening: the one with descriptors, and the one for systems without."""
    monkeypatch.setattr(files, "_CAN_WALK", request.param == "by steps")


@pytest.mark.usefixtures("way")
def test_plain_names_are_read(folder: Path) -> None:
    assert read_file_in(folder, "a.yaml", LIMIT) == b"good"
    assert read_file_in(folder, "sub/Größe 2.yaml", LIMIT) == b"good below"
    assert read_file_in(folder, "full", LIMIT) == b"x" * LIMIT


@pytest.mark.usefixtures("way")
@pytest.mark.parametrize("name", HOSTILE_NAMES)
def test_hostile_names_are_refused(folder: Path, name: str) -> None:
    refusal = read_file_in(folder, name, LIMIT)
    assert isinstance(refusal, Refusal)
    assert refusal.code.name == "file-outside-folder"
    assert refusal.message.isprintable()


@pytest.mark.usefixtures("way")
@pytest.mark.parametrize(
    ("name", "code"),
    [
        ("link", "not-a-file"),
        ("inner-link", "not-a-file"),
        ("up/secret.yaml", "not-a-file"),
        ("up/trial/a.yaml", "not-a-file"),
        ("pipe", "not-a-file"),
        ("sub", "not-a-file"),
        ("a.yaml/x", "not-a-file"),
        ("big", "file-too-large"),
        ("b.yaml", "file-not-found"),
        ("none/b.yaml", "file-not-found"),
    ],
)
def test_what_is_no_ordinary_file_is_refused(folder: Path, name: str, code: str) -> None:
    """At once: a pipe that were opened would wait for ever."""
    refusal = read_file_in(folder, name, LIMIT)
    assert isinstance(refusal, Refusal)
    assert refusal.code.name == code


def test_socket_is_refused(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(folder)  # a socket's path is short
    with socket.socket(socket.AF_UNIX) as listening:
        listening.bind("door")
        refusal = read_file_in(".", "door", LIMIT)
    assert isinstance(refusal, Refusal)
    assert refusal.code.name == "not-a-file"


def _open_descriptors() -> int:
    return sum(1 for _ in Path("/proc/self/fd").iterdir())


def test_no_descriptor_is_left_open(folder: Path) -> None:
    before = _open_descriptors()
    for name in ("a.yaml", "link", "up/secret.yaml", "pipe", "sub", "big", "b.yaml", "../x"):
        read_file_in(folder, name, LIMIT)
    read_file(folder, LIMIT)
    assert _open_descriptors() == before


def test_refusal_by_the_system_is_said(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    def closed(*_: object, **__: object) -> int:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(os, "open", closed)
    document, (finding,) = read_spec(tmp_path / "a.yaml")
    assert document is None
    assert (finding.code.name, finding.span.line) == ("file-not-readable", 0)
    assert "permission denied" in finding.message


def test_spec_itself_may_be_a_link_but_not_a_folder_or_a_pipe(folder: Path) -> None:
    (folder / "spec.yaml").symlink_to("a.yaml")
    assert read_file(folder / "spec.yaml", LIMIT) == b"good"
    codes = []
    for name in ("sub", "pipe", "none", "big", "a\x00b"):
        refusal = read_file(str(folder / name), LIMIT)
        assert isinstance(refusal, Refusal)
        codes.append(refusal.code.name)
    assert codes == [
        "not-a-file",
        "not-a-file",
        "file-not-found",
        "file-too-large",
        "file-not-found",
    ]


def test_device_is_refused() -> None:
    refusal = read_file("/dev/zero", LIMIT)
    assert isinstance(refusal, Refusal)
    assert refusal.code.name == "not-a-file"
