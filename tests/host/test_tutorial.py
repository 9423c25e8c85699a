"""The tutorial in plugins/README.md is installed and run as a third party's plugin would be."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent.parent
_FILE = re.compile(r"`(binder-engraving/[^`]+)`:\n\n```[a-z]+\n(.*?)```", re.DOTALL)


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the tutorial's distribution installed in it; its source lies beside."""
    home = tmp_path_factory.mktemp("tutorial")
    text = (ROOT / "plugins" / "README.md").read_text(encoding="utf-8")
    files = _FILE.findall(text)
    assert len(files) == 3
    for name, content in files:
        path = home / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(content, encoding="utf-8")
    pip = [sys.executable, "-m", "pip", "install", "--quiet", "--no-deps", "--no-index"]
    target = home / "site"
    subprocess.run(
        [*pip, "--no-build-isolation", "--target", str(target), str(home / "binder-engraving")],
        check=True,
        capture_output=True,
    )
    return target


def _binder(site: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "PYTHONPATH": str(site)}
    return subprocess.run(
        [sys.executable, "-P", "-m", "binder", *arguments],
        capture_output=True,
        text=True,
        encoding="utf-8",
        env=environment,
        check=False,
    )


def test_it_is_listed_with_what_it_adds(site: Path) -> None:
    listed = _binder(site, "plugins")
    assert listed.returncode == 0, listed.stderr
    assert "engraving  (binder-engraving 1.0)" in listed.stdout
    assert "feature  engraved: letters cut into a face" in listed.stdout


def test_its_check_finds_the_small_letters(site: Path) -> None:
    spec = site.parent / "binder-engraving" / "example.yaml"
    done = _binder(site, "check", str(spec))
    assert done.returncode == 1
    assert "letters-too-small" in done.stderr
    assert "example.yaml:10:47" in done.stderr
    assert done.stderr.count("warning[") == 1


def test_its_page_is_in_the_binder(site: Path, tmp_path: Path) -> None:
    spec = site.parent / "binder-engraving" / "example.yaml"
    done = _binder(site, "build", str(spec), "--no-pdf", "--output", str(tmp_path))
    assert "wrote" in done.stdout, done.stderr
    page = (tmp_path / "example.html").read_text(encoding="utf-8")
    assert "Engraving" in page
    assert "Crane No. 1" in page
