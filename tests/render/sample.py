"""A small screw jack as pages: every block and run once or more, for tests and for the eye."""

from __future__ import annotations

from hashlib import sha256

from binder.pages import (
    Anchor,
    Attachment,
    Beside,
    Binder,
    Blank,
    Box,
    Check,
    Checklist,
    Code,
    Column,
    Disc,
    Drawing,
    Facts,
    Follows,
    Group,
    Label,
    Line,
    Link,
    Listing,
    Notice,
    NoticeKind,
    Paragraph,
    Picture,
    Place,
    Polyline,
    Reckoned,
    Section,
    Shape,
    Stroke,
    Strong,
    Subheading,
    Table,
    Text,
    TickBox,
)

SPEC = """\
format: 1
model:
  title: Screw jack, half size
  issue: B
  units: mm

sizes:
  bar: 20 mm
  screw: 0.6 * bar
parts:
  body: {material: gunmetal, stock: round bar 1.5 * bar}
  screw:
    material: mild steel
    stock: round bar
    # the collar stands on the body
    turned:
      - {diameter: screw, length: 48 mm, name: thread}
      - {diameter: bar, length: 6 mm, name: collar}
joints:
  screw in body: {threads: [screw.thread, body.bore], fit: free running, master: body.bore}
"""


def text(*runs: str) -> Text:
    return tuple(runs)


def dimension(x1: float, x2: float, y: float, words: str) -> tuple[Shape, ...]:
    middle = (x1 + x2) / 2
    return (
        Line(x1, y - 8, x1, y + 1.5, Stroke.THIN),
        Line(x2, y - 8, x2, y + 1.5, Stroke.THIN),
        Line(middle, y, x1, y, Stroke.ARROW),
        Line(middle, y, x2, y, Stroke.ARROW),
        Label(middle, y - 1, words, anchor=Anchor.MIDDLE),
    )


def gap_drawing() -> Drawing:
    return Drawing(40, 10, (Box(2, 2, 12, 6, tint=0.1), Box(20, 4, 12, 4, tint=0.3)))


def screw_drawing() -> Drawing:
    return Drawing(
        150,
        62,
        (
            Box(20, 14, 90, 18),
            Line(20, 15.4, 110, 15.4, Stroke.THIN),
            Line(20, 30.6, 110, 30.6, Stroke.THIN),
            Box(110, 8, 12, 30, tint=0.15),
            Line(12, 23, 130, 23, Stroke.CENTRE),
            Line(110, 20, 122, 20, Stroke.HIDDEN),
            Line(110, 26, 122, 26, Stroke.HIDDEN),
            *dimension(20, 110, 48, "48"),
            *dimension(110, 122, 48, "6"),
            Polyline(((134, 52), (128, 46), (122, 38)), Stroke.ARROW),
            Label(135, 56, "0.5 × 45°", 3.0, Anchor.MIDDLE),
            Label(65, 21.5, "M12 × 1.75", anchor=Anchor.MIDDLE),
            Label(116, 6, "⌀20 h11", anchor=Anchor.MIDDLE),
        ),
    )


def arrangement_drawing() -> Drawing:
    return Drawing(
        120,
        90,
        (
            Polyline(((30, 80), (38, 40), (66, 40), (74, 80), (30, 80))),
            Box(46, 14, 12, 54, tint=0.1),
            Box(40, 8, 24, 6),
            Disc(52, 11, 1.5, tint=1),
            Line(52, 4, 52, 86, Stroke.CENTRE),
            Line(46, 40, 46, 68, Stroke.HIDDEN),
            Polyline(((94, 30), (70, 30), (56, 30)), Stroke.ARROW),
            Label(96, 31.5, "2 screw", target="part.screw"),
            Polyline(((94, 60), (70, 60)), Stroke.ARROW),
            Label(96, 61.5, "1 body", target="part body"),
            Label(2, 88, "A", 5.0),
        ),
    )


PARTS = Table(
    (
        Column("Item", 0.6, is_figure=True),
        Column("Part", 2.2),
        Column("No off", 0.7, is_figure=True),
        Column("Material", 2),
        Column("Stock, with holding", 2.4),
        Column("Mass, g", 1.3, is_figure=True),
    ),
    (
        (
            text("1"),
            (Link("body", "part body"),),
            text("1"),
            text("gunmetal"),
            (Reckoned("⌀30 × 62", "4 mm to part off, 8 in the chuck", ("50 + 4 + 8 = 62 mm",)),),
            (Reckoned("187", "volume × 8.7 g/cm³", ("21.5 cm³ × 8.7 g/cm³ = 187 g",)),),
        ),
        (
            text("2"),
            (Link("screw", "part.screw"),),
            text("1"),
            text("mild steel"),
            text("⌀20 × 70"),
            text("61"),
        ),
        (text("3"), text("tommy bar"), text("2"), text("silver steel"), text("⌀4 × 45"), text("9")),
        (
            text("12"),
            text("swivel cap with a long name that has to break"),
            text("1"),
            text("mild steel"),
            text("⌀20 × 14"),
            text("1 024"),
        ),
    ),
    caption="Parts list",
    ids=("item 1", "item 2", "", "item 12"),
)


def screw_leaf() -> Section:
    return Section(
        "part.screw",
        "2 Screw",
        Place.PARTS,
        (
            Facts(
                (
                    ("Material", text("mild steel, bright drawn")),
                    ("Stock", (Reckoned("⌀20 × 70", "bar in hand", ("bar = 20 mm (line 8)",)),)),
                    ("Runs in", (Link("body, threaded bore", "joint.screw"),)),
                )
            ),
            Picture(screw_drawing(), "The screw from the side, with its sizes.", "Scale 2:1"),
            Subheading("Set-up 1: three-jaw chuck, 12 mm gripped"),
            Checklist(
                (
                    Check("screw.1.face", text("Face the end, centre drill."), (text("A1.6"),)),
                    Check(
                        "screw.1.turn",
                        (
                            "Turn to ",
                            Reckoned("⌀12.00", "0.6 × bar", ("0.6 × 20 mm = 12 mm", "line 9")),
                            " for 48 mm.",
                        ),
                        (
                            ("530 rev/min, 0.1 mm/rev; ", Code("screw.thread"), " follows."),
                            ("Measured: ", Blank("screw.thread")),
                        ),
                    ),
                    Check("screw.1.cut", text("Screwcut M12 × 1.75; try the body on it.")),
                )
            ),
            Notice(
                NoticeKind.CAUTION,
                "Swarf and chuck",
                text("No gloves; chuck key out before the start; clear swarf with a hook."),
                "common practice, no source",
            ),
        ),
    )


def body_leaf() -> Section:
    return Section(
        "part body",
        "1 Body",
        Place.PARTS,
        (
            Paragraph(
                (
                    "Bore before the screw is cut: the ",
                    Strong("bore is the master"),
                    ", see ",
                    Link("the joint", "joint.screw"),
                    ".",
                )
            ),
            Notice(NoticeKind.WARNING, "Thin wall", text("3 mm is left beside the tommy hole.")),
            Notice(NoticeKind.ADVICE, "Shorter", text("A 60 mm bar would serve.")),
            Notice(NoticeKind.NOTE, "Casting", text("A rescued casting will do as well.")),
        ),
    )


def inspection() -> Section:
    sizes = Table(
        (
            Column("Size", 2.4),
            Column("Least", 1.2, is_figure=True),
            Column("Most", 1.2, is_figure=True),
            Column("Measured", 2),
            Column("How", 2.4),
        ),
        (
            (text("bore, ⌀"), text("10.11"), text("10.44"), (Blank("body.bore"),), text("plugs")),
            (
                text("thread, outside ⌀"),
                text("11.70"),
                text("11.97"),
                (Blank("screw.thread"),),
                text("micrometer"),
            ),
            (text("run-out of the collar"), text("0"), text("0.05"), (Blank("run", "mm"),), ()),
        ),
    )
    return Section("inspection", "Inspection", Place.INSPECTION, (sizes,))


def sections() -> tuple[Section, ...]:
    cover = Picture(arrangement_drawing(), "Section of the jack: the screw stands in the body.")
    build = Checklist(
        (
            Check("build.1", text("Body: bore and thread"), (text("before: the screw"),)),
            Check("build.2", text("Screw: turn, screwcut to suit the body")),
            Check("build.3", text("Wind the screw down by hand: no tight place")),
        )
    )
    return (
        Section("cover", "Cover", Place.COVER, (cover,)),
        Section(
            "read this",
            "How to read this binder",
            Place.READ_THIS,
            (Paragraph(text("Sizes are millimetres. A boxed blank waits for your own measure.")),),
        ),
        Section(
            "arrangement",
            "General arrangement",
            Place.ARRANGEMENT,
            (Picture(arrangement_drawing(), "The jack with item numbers.", "Half size"),),
        ),
        Section("list", "Parts list", Place.PARTS_LIST, (PARTS,), starts_page=False),
        Section("order", "Build order", Place.BUILD_ORDER, (build,), starts_page=False),
        Section(
            "parts",
            "Parts",
            Place.PARTS,
            (),
            sections=(body_leaf(), screw_leaf()),
        ),
        Section(
            "joint.screw",
            "Screw in body",
            Place.JOINTS,
            (
                Paragraph((Blank("body.bore"), " − 0.02 = turn to ", Follows("body.bore", -0.02))),
                Beside(
                    Facts((("Fit", text("H8/f7, runs")),)),
                    Picture(gap_drawing(), "The gap between hole and shaft."),
                ),
                Table(
                    (Column("", 1), Column("", 9)),
                    (
                        ((TickBox("body 1"),), ("Face the end",)),
                        ((TickBox("body 2"),), ("Bore it",)),
                    ),
                    groups=(
                        Group(text("Set-up 7: in the chuck"), 1),
                        Group(
                            text("Set-up 8: on a mandrel"),
                            1,
                            Picture(gap_drawing(), "How it is gripped."),
                        ),
                    ),
                    is_whole=True,
                ),
            ),
        ),
        inspection(),
        Section("spec", "The spec", Place.SPEC, (Listing(SPEC),)),
    )


def sample() -> Binder:
    return Binder(
        title="Screw jack, half size",
        issue="B",
        date="2026-03-14",
        digest=sha256(SPEC.encode()).hexdigest(),
        about="A bottle jack for the model railway yard: gunmetal body, steel screw, swivel cap.",
        summary=(
            ("Height", "62 mm closed, 96 mm raised"),
            ("Driven by", "a tommy bar"),
            ("Machines", "lathe of 60 mm centre height, pillar drill"),
            ("Hours", "9 to 12"),
        ),
        sections=sections(),
        attachments=(
            Attachment("screw-jack.yaml", SPEC.encode(), "The spec of this binder"),
            Attachment("binder.json", b"{}", "Pages as data"),
        ),
    )
