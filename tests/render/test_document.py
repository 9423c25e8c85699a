"""The HTML file stands alone, asks for nothing and links only to itself."""

from __future__ import annotations

import re
from base64 import b64encode
from collections import Counter
from dataclasses import replace
from hashlib import sha256
from importlib.resources import files
from pathlib import Path
from typing import get_args

import pytest
from jinja2 import StrictUndefined, UndefinedError

from binder.pages import Block, Label, Picture, Run, text_of
from binder.render.anchors import anchors_of, dangling_links, nouns, slugify
from binder.render.environment import environment, kind
from binder.render.html import render_html, render_paper
from binder.render.trusted import breakable, drawn
from tests.render.reading import Page, read_page
from tests.render.sample import sample

# As shared/trust.md 1.4 has it, tried there against 24 injections in Chromium.
POLICY = (
    "default-src 'none'; script-src 'sha256-{}'; style-src 'unsafe-inline'; "
    "img-src data:; font-src data:; base-uri 'none'; form-action 'none'"
)


@pytest.fixture(scope="module")
def html() -> str:
    return render_html(sample())


@pytest.fixture(scope="module")
def page(html: str) -> Page:
    return read_page(html)


def test_policy_is_the_first_thing_in_the_head(html: str) -> None:
    script = re.findall(r"<script>(.*?)</script>", html, re.DOTALL)
    assert len(script) == 1
    digest = b64encode(sha256(script[0].encode()).digest()).decode()
    head = html.split("<head>", 1)[1].lstrip()
    policy = POLICY.format(digest)
    assert head.startswith(f'<meta http-equiv="Content-Security-Policy" content="{policy}">')


def test_nothing_outside_is_named(html: str, page: Page) -> None:
    without_fonts = re.sub(r"data:font/woff2;base64,[A-Za-z0-9+/=]+", "", html)
    assert re.findall(r"https?:|//[a-z]", without_fonts, re.IGNORECASE) == []
    assert "src" not in {name for _, attributes in page.elements for name in attributes}
    assert set(re.findall(r'url\("([^"]{0,16})', html)) == {"data:font/woff2;"}
    assert "@import" not in html


def test_ids_are_given_once_and_links_land(page: Page) -> None:
    ids = Counter(page.all("id"))
    assert [name for name, times in ids.items() if times > 1] == []
    inside = {href[1:] for href in page.all("href") if href.startswith("#")}
    assert inside <= set(ids)
    assert "part.screw" in inside


def test_only_a_label_with_a_target_links() -> None:
    binder = sample()
    pictures = [noun for noun in nouns(binder) if isinstance(noun, Picture)]
    for picture in pictures:
        labels = [shape for shape in picture.drawing.shapes if isinstance(shape, Label)]
        linked = [label for label in labels if label.target]
        assert drawn(picture, anchors_of(binder)).count("<a ") == len(linked)
        assert drawn(picture, None).count("<a ") == 0


def test_a_second_bearer_of_an_id_gets_none() -> None:
    binder = sample()
    twice = replace(binder, sections=(*binder.sections, *binder.sections))
    ids = Counter(read_page(render_html(twice)).all("id"))
    assert set(ids.values()) == {1}


def test_sample_has_no_dangling_link_and_a_lost_target_is_told() -> None:
    binder = sample()
    assert dangling_links(binder) == ()
    kept = tuple(part for part in binder.sections if part.id != "joint.screw")
    assert dangling_links(replace(binder, sections=kept)) == ("joint.screw",)


def test_a_link_to_nowhere_is_printed_as_words() -> None:
    binder = sample()
    kept = tuple(part for part in binder.sections if part.id != "joint.screw")
    page = read_page(render_html(replace(binder, sections=kept)))
    assert "the joint" in page.text
    assert "#joint.screw" not in page.all("href")


@pytest.mark.parametrize(("one", "other"), [("a b", "a-b"), ("a b", "a  b"), ("é", "è"), ("", "x")])
def test_two_ids_never_share_a_name(one: str, other: str) -> None:
    assert slugify(one) != slugify(other)


def test_each_kind_of_block_and_run_has_its_macro_and_stands_in_the_sample() -> None:
    used = {type(noun) for noun in nouns(sample())}
    modules = {"blocks.html": get_args(Block), "runs.html": get_args(Run)}
    for file, kinds in modules.items():
        source = (Path(str(files("binder.render"))) / "templates" / file).read_text("utf-8")
        for noun in kinds:
            if noun is not str:
                assert noun in used
                assert f"macro {noun.__name__.lower()}(" in source


def test_every_word_of_the_sample_is_on_the_page(page: Page) -> None:
    wanted = {cell for noun in nouns(sample()) for cell in _texts(noun)}
    missing = [words for words in wanted if " ".join(words.split()) not in _flat(page.text)]
    # The cover's blocks stand on the title page; its section has no heading of its own.
    assert missing == ["Cover"]
    assert len(wanted) > 50


def _texts(noun: object) -> list[str]:
    names = ("text", "caption", "title", "why", "source", "about")
    found = [getattr(noun, name, "") for name in names]
    return [text for text in found if isinstance(text, str) and "\n" not in text]


def _flat(text: str) -> str:
    return " ".join(text.split())


def test_steps_fold_out_on_screen_and_are_left_off_paper() -> None:
    assert "21.5 cm³ × 8.7 g/cm³ = 187 g" in render_html(sample())
    assert "21.5 cm³ × 8.7 g/cm³ = 187 g" not in render_paper(sample())
    assert "volume × 8.7 g/cm³" in render_paper(sample())


def test_paper_has_no_script_and_no_input() -> None:
    tags = {tag for tag, _ in read_page(render_paper(sample())).elements}
    assert not tags & {"script", "input", "details", "button", "textarea"}


def test_cover_says_what_the_binder_does_not_replace(page: Page) -> None:
    text = _flat(page.text)
    for words in ("Nothing here replaces", "Local law comes first", "competent person"):
        assert words in text
    for hazard in ("Pressure", "gas", "electricity", "lifting"):
        assert hazard in text


def test_environment_escapes_every_name_and_an_unknown_variable_is_an_error() -> None:
    made = environment()
    assert made.autoescape is True
    assert made.undefined is StrictUndefined
    with pytest.raises(UndefinedError):
        made.get_template("cover.html").render()


def test_only_the_reviewed_module_makes_markup() -> None:
    package = Path(str(files("binder.render")))
    sources = [*package.glob("*.py"), *package.glob("templates/*.html")]
    pattern = re.compile(r"Markup|\|\s*safe\b|autoescape\s+false|from_string")
    guilty = {source.name for source in sources if pattern.search(source.read_text("utf-8"))}
    assert guilty == {"trusted.py"}


def test_styles_take_no_text_from_the_binder() -> None:
    templates = Path(str(files("binder.render"))) / "templates"
    inline = [
        value
        for file in sorted(templates.glob("*.html"))
        for value in re.findall(r'style="([^"]*)"', file.read_text("utf-8"))
    ]
    assert inline == ["width:{{ share }}", "counter-reset:line {{ block.first - 1 }}"]


def test_headings_and_cells_of_figures_are_marked_as_such(page: Page) -> None:
    marked = [
        tag for tag, found in page.elements if found.get("class") == "figure" and tag != "span"
    ]
    # Parts list: 3 of 6 columns, 4 rows; inspection: 2 of 5 columns, 3 rows.
    assert marked.count("th") == 3 + 2
    assert marked.count("td") == 3 * 4 + 2 * 3


def test_kind_names_the_macro() -> None:
    picture = next(noun for noun in nouns(sample()) if isinstance(noun, Picture))
    assert kind(picture) == "picture"
    assert text_of(("a ", "b")) == "a b"


@pytest.mark.parametrize(
    ("words", "printed"),
    [
        ("m3_5_mm_cap_screw", "m3_<wbr>5_<wbr>mm_<wbr>cap_<wbr>screw"),
        ("tommy_bar", "tommy_bar"),
        ("________________", "________________"),
        ("<b>left_hand_side_cheek</b>", "&lt;b&gt;left_<wbr>hand_<wbr>side_<wbr>cheek&lt;/b&gt;"),
        ("left_hand_side_&", "left_hand_side_&amp;"),
    ],
)
def test_a_long_name_breaks_behind_its_underscores(words: str, printed: str) -> None:
    assert breakable(words) == printed
