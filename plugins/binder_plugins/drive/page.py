"""The drive to its page: the table of speeds, what each drive passes on, what is needed."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    Column,
    Design,
    Joint,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
    Text,
    TrainFact,
    TurningFact,
)
from binder_plugins.drive.duties.shown import figure
from binder_plugins.drive.pages_belts import belt_blocks
from binder_plugins.drive.pages_duties import duty_blocks
from binder_plugins.drive.pages_gears import gear_blocks
from binder_plugins.drive.pages_salvage import salvage_blocks
from binder_plugins.drive.pages_shafts import shaft_blocks
from binder_plugins.drive.pages_turn import turn_blocks
from binder_plugins.drive.pictures.diagram import diagram_of
from binder_plugins.drive.pictures.ladder import ladder_of

_MOST_ACROSS = 4
_KIND_WORDS = {
    "meshes": "gears",
    "bevels": "bevel gears",
    "worms": "worm",
    "skews": "skew gears",
    "orbits": "planetary train",
    "belted": "belt",
    "chained": "chain",
    "rubs": "friction wheels",
    "indexes": "slotted wheel",
}


def drive_pages(design: Design) -> Iterator[Section]:
    """One section for the drive of the model."""
    train = design.facts.about(TrainFact, "")
    blocks = (
        *(_train(train, design) if train is not None else ()),
        *gear_blocks(design),
        *salvage_blocks(design),
        *belt_blocks(design),
        *duty_blocks(design),
        *shaft_blocks(design),
        *turn_blocks(design),
    )
    if blocks:
        yield Section(id="drive", title="Drive", place=Place.DRIVE, blocks=blocks)


def _train(train: TrainFact, design: Design) -> Iterator[Block]:
    yield from _introduction(train, design)
    yield from diagram_of(train, design)
    yield Subheading("Speeds, r/min")
    yield from _speeds(train, design)
    yield from ladder_of(train, design)
    if train.passed:
        yield Subheading("What each drive passes on")
        yield _passed(train, design)


def _introduction(train: TrainFact, design: Design) -> Iterator[Block]:
    movers = [design.joints[name] for name in train.movers]
    if not movers:
        yield Paragraph(("Speeds are told for one turn of the first shaft.",))
        return
    names = "; ".join(_mover(joint) for joint in movers)
    seen = (
        "Every shaft is looked at from the side from which the mover goes clockwise, ↻; where a "
        "wheel can only run one way, First run names that way and its side."
    )
    yield Paragraph((f"Turned by: {names}. {seen}",))


def _mover(joint: Joint) -> str:
    by = str(getattr(joint.entry, "by", ""))
    return joint.name if by in joint.name else f"{joint.name}, by {by}"


def _speeds(train: TrainFact, design: Design) -> Iterator[Block]:
    bodies = [one for name in train.order if (one := design.facts.about(TurningFact, name))]
    settings = train.settings
    for start in range(0, len(settings), _MOST_ACROSS):
        some = settings[start : start + _MOST_ACROSS]
        columns = (
            Column("Shaft", 3),
            *(Column(label or "Speed", 2, is_figure=True) for label in some),
        )
        rows = []
        for body in bodies:
            cells = [(speed_text(body, start + number),) for number in range(len(some))]
            rows.append(((body.title,), *cells))
        yield Table(columns, tuple(rows))
    if any(torque is not None for body in bodies for torque in body.torques):
        yield Subheading("What has to be put in")
        yield _torques(bodies)


def speed_text(body: TurningFact, number: int) -> str:
    """`72 ↻`: the speed in r/min and the way round, where it can be told."""
    speed = body.speeds[number]
    if speed is None:
        return "not settled"
    way = ("↻" if speed > 0 else "↺") if body.has_way and speed else ""
    return f"{figure(abs(speed))} {way}".strip()


def _torques(bodies: list[TurningFact]) -> Table:
    """The worst of all settings at each shaft."""
    columns = (
        Column("Shaft", 3),
        Column("Torque, N·mm", 2, is_figure=True),
        Column("Power, W", 2, is_figure=True),
    )
    rows: list[tuple[Text, ...]] = []
    for body in bodies:
        torque = max((one for one in body.torques if one is not None), default=None)
        power = max((one for one in body.powers if one is not None), default=None)
        rows.append(((body.title,), (_figure(torque),), (_figure(power),)))
    return Table(columns, tuple(rows))


def _figure(value: float | None) -> str:
    return f"{value:.3g}" if value is not None else ""


def _passed(train: TrainFact, design: Design) -> Table:
    columns = (
        Column("Drive", 3),
        Column("From, to", 4),
        Column("Ratio", 2, is_figure=True),
        Column("Lost on the way", 3),
    )
    rows: list[tuple[Text, ...]] = []
    for one in train.passed:
        ends = f"{_title(one.driver, design)} to {_title(one.driven, design)}"
        ratios = ", ".join(_ratio(ratio) for ratio in one.ratios)
        kind = _KIND_WORDS.get(one.kind, one.kind)
        rows.append(((f"{one.joint} ({kind})",), (ends,), (ratios,), (one.loss_words,)))
    return Table(columns, tuple(rows))


def _title(name: str, design: Design) -> str:
    body = design.facts.about(TurningFact, name)
    return body.title if body is not None else name


def _ratio(ratio: float) -> str:
    """`1 : 3` where it goes slower, `3 : 1` where it goes faster."""
    size = abs(ratio)
    if not size:
        return "0"
    return f"{size:.3g} : 1" if size >= 1 else f"1 : {1 / size:.3g}"
