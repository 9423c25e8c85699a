"""A stranger's text in every place of a binder that takes text."""

from __future__ import annotations

from binder.pages import (
    Binder,
    Blank,
    Check,
    Checklist,
    Code,
    Column,
    Drawing,
    Facts,
    Label,
    Line,
    Link,
    Listing,
    Notice,
    NoticeKind,
    Paragraph,
    Picture,
    Place,
    Reckoned,
    Section,
    Strong,
    Subheading,
    Table,
)

# Each tries to end its context: element text, a quoted attribute, style, script or comment.
# A script that ran would change the title of the document to "taken".
INJECTIONS = (
    "<script>document.title='taken'</script>",
    "</script><script>document.title='taken'</script>",
    "</title><script>document.title='taken'</script>",
    "</style><script>document.title='taken'</script>",
    "</textarea><img src=x onerror=\"document.title='taken'\">",
    "<img src=x onerror=document.title='taken'>",
    "<svg onload=\"document.title='taken'\"></svg>",
    "</svg><iframe srcdoc=\"<script>parent.document.title='taken'</script>\"></iframe>",
    "</text><a href=\"javascript:document.title='taken'\">x</a>",
    '" onmouseover="document.title=\'taken\'" x="',
    "' onfocus='document.title=1' autofocus='",
    '" autofocus onfocus="document.title=\'taken\'" x="',
    "javascript:document.title='taken'",
    "<meta http-equiv=refresh content='0;url=http://127.0.0.1:9/'>",
    "<base href=http://127.0.0.1:9/>",
    "<link rel=attachment href=file:///etc/hostname>",
    "<link rel=stylesheet href=http://127.0.0.1:9/a.css>",
    "<style>@import 'http://127.0.0.1:9/a.css'</style>",
    "<object data=file:///etc/hostname></object>",
    "<form action=http://127.0.0.1:9/><button>go</button></form>",
    "<!-- --><b>bold</b><!--",
    "<![CDATA[<script>document.title='taken'</script>]]>",
    "{{ 7 * 7 }}{% raw %}{{ config }}",
    "&lt;script&gt;document.title=&#39;taken&#39;&lt;/script&gt;",
)


def binder_of(words: str) -> Binder:
    """The words as title, cell, label, key, id, link and all the rest."""
    table = Table(
        (Column(words), Column(words, is_figure=True)),
        (((words,), (Strong(words),)), ((Code(words),), (Blank(words, words),))),
        caption=words,
        ids=(f"row {words}", f"other {words}"),
    )
    drawing = Drawing(
        60, 20, (Line(0, 0, 9, 9), Label(1, 9, words), Label(1, 18, words, target=words))
    )
    blocks = (
        Paragraph((words, Link(words, words), Reckoned(words, words, (words,)))),
        Subheading(words, f"sub {words}"),
        table,
        Facts(((words, (words,)),)),
        Checklist((Check(words, (words,), ((words,),)),)),
        Notice(NoticeKind.CAUTION, words, (words,), words),
        Listing(words),
        Picture(drawing, words, words),
    )
    return Binder(
        title=words,
        issue=words,
        date="2026-03-14",
        digest=words,
        about=words,
        summary=((words, words),),
        sections=(Section(words, words, Place.PARTS, blocks),),
        language=words,
    )
