"""What a maker owns, as answers to the questions that plugins ask."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from binder.source import Document
from binder.spec.forms import FORMS
from binder.workshop.fields import Holes, same_thread
from binder.workshop.machines import DrillingMachine, Lathe, Mill
from binder.workshop.models import WorkshopEntry
from binder.workshop.ranges import PER_TURN, Range
from binder.workshop.tools import (
    Die,
    Divider,
    Drill,
    EndCutter,
    Holder,
    Instrument,
    Owned,
    Reamer,
    StockPiece,
    Tap,
)

NOTHING = Fraction(0)
_CLASS_OF_FORM = {"sheet": "sheet", "plate": "sheet", "board": "wood"}


@dataclass(frozen=True, slots=True)
class Workshop:
    """A workshop. Lengths go in and come out in mm, exact; speeds in r/min.

    `entry` is the file as written, for what no method answers; `document` has its text and
    places.
    """

    entry: WorkshopEntry
    document: Document = field(repr=False)
    owned: Owned = field(repr=False)
    # What `holders` was asked already: each diameter is asked for at many acts.
    _gripping: dict[Fraction, tuple[Holder, ...]] = field(
        default_factory=dict, init=False, compare=False, repr=False
    )

    @property
    def name(self) -> str:
        """Its name on one line, for the cover."""
        return " ".join(self.entry.name.split())

    @property
    def units(self) -> str:
        """`mm` or `inch`: the system of most of its tools."""
        return str(self.entry.units)

    def drills(self) -> tuple[Drill, ...]:
        """All drills by size, each with its name and exact diameter in mm."""
        return self.owned.drills

    def reamers(self) -> tuple[Reamer, ...]:
        """All reamers by size, each with its name and exact nominal diameter in mm."""
        return self.owned.reamers

    def taps(self) -> tuple[Tap, ...]:
        """The taps, in the order written."""
        return self.owned.taps

    def dies(self) -> tuple[Die, ...]:
        """The dies, in the order written."""
        return self.owned.dies

    def instruments(self) -> tuple[Instrument, ...]:
        """The measuring tools, in the order written; sizes in mm."""
        return self.owned.instruments

    def shelf(self) -> tuple[StockPiece, ...]:
        """The stock that is there, in the order written; sizes in mm."""
        return self.owned.shelf

    def sold(self) -> tuple[StockPiece, ...]:
        """What can be bought and at which price, in the order written; sizes in mm."""
        return self.owned.sold

    def bar_lengths(self) -> tuple[Fraction, ...]:
        """The lengths in mm in which bars are sold here, short to long; empty where not told."""
        lengths = self.entry.buying.bar_lengths or ()
        return tuple(sorted(length.exact for length in lengths))

    def owns_drill(self, mm: Fraction) -> Drill | None:
        """The drill of exactly this diameter in mm."""
        place = bisect_left(self.drills(), mm, key=_size)
        return next((drill for drill in self.drills()[place : place + 1] if drill.mm == mm), None)

    def nearest_drill(
        self, mm: Fraction, below: Fraction = NOTHING, above: Fraction = NOTHING
    ) -> Drill | None:
        """The owned drill nearest to a diameter, and within so much below and above; all in mm.

        Of two equally near the smaller is taken: a hole can be opened out.
        """
        drills = self.drills()
        first = bisect_left(drills, mm - below, key=_size)
        inside = drills[first : bisect_right(drills, mm + above, lo=first, key=_size)]
        return min(inside, key=lambda drill: (abs(drill.mm - mm), drill.mm), default=None)

    def owns_reamer(self, mm: Fraction) -> Reamer | None:
        """The reamer of exactly this nominal diameter in mm, a machine reamer first."""
        found = (reamer for reamer in self.reamers() if reamer.mm == mm)
        return min(found, key=lambda reamer: reamer.is_hand, default=None)

    def widest_end_cutter(self, width: Fraction, *, plunging: bool = False) -> EndCutter | None:
        """The widest end mill or slot drill not over a width in mm.

        Only slot drills are taken where it must plunge.
        """
        able = [
            cutter
            for cutter in self.owned.end_cutters
            if cutter.mm <= width and (cutter.plunges or not plunging)
        ]
        return max(able, key=lambda cutter: (cutter.mm, cutter.plunges), default=None)

    def owns_tap(self, designation: str) -> Tap | None:
        """The taps of a thread, by its designation; case, blanks and x or × do not matter.

        Two designations of one thread (`M3` and `M3 x 0.5`) are not known to be one here:
        a caller who knows threads compares those of `taps()`.
        """
        wanted = same_thread(designation)
        return next((tap for tap in self.taps() if same_thread(tap.designation) == wanted), None)

    def owns_die(self, designation: str) -> Die | None:
        """The die of a thread, by its designation, compared as by `owns_tap`."""
        wanted = same_thread(designation)
        return next((die for die in self.dies() if same_thread(die.designation) == wanted), None)

    def machine(self, name: str) -> Lathe | Mill | DrillingMachine | None:
        """The lathe, mill or drilling machine of a name."""
        machines = self.entry.machines
        found = machines.lathes.get(name) or machines.mills.get(name)
        return found or machines.drilling_machines.get(name)

    def speeds(self, machine: str) -> tuple[tuple[Fraction, Fraction], ...]:
        """The speeds of a machine in r/min, slow to fast, as (least, most) of each step or range.

        A single step has both alike. Empty for a machine that is not there.
        """
        found = self.machine(machine)
        ranges = sorted(found.speeds, key=_slowest) if found is not None else []
        return tuple((_turns(one.least.exact), _turns(one.most.exact)) for one in ranges)

    def speed_at_most(self, machine: str, speed: Fraction) -> Fraction | None:
        """The fastest speed of a machine that is not over the given one, both in r/min.

        None where even its slowest is too fast, or the machine is not there.
        """
        steps = self.speeds(machine)
        return max((min(most, speed) for least, most in steps if least <= speed), default=None)

    def largest_swing(self, *, over_cross_slide: bool = False) -> Fraction | None:
        """The largest diameter in mm that any lathe swings; None where there is no lathe.

        Over the cross-slide only lathes for which that is written are counted.
        """
        lathes = self.entry.machines.lathes.values()
        if over_cross_slide:
            swings = [lathe.swing_over_cross_slide for lathe in lathes]
        else:
            swings = [lathe.swing for lathe in lathes]
        return max((swing.exact for swing in swings if swing is not None), default=None)

    def passes_spindle(self, diameter: Fraction) -> bool:
        """Whether a bar of this diameter in mm passes through the spindle of any lathe."""
        lathes = self.entry.machines.lathes.values()
        return any(diameter <= lathe.spindle_bore.exact for lathe in lathes)

    def holders(self, diameter: Fraction) -> tuple[Holder, ...]:
        """Chucks and collets that grip round work of this diameter in mm, the truest first.

        One whose run-out is not known comes after those whose is.
        """
        if diameter not in self._gripping:
            found = (*self._chucks(diameter), *self._collets(diameter))
            truest = sorted(found, key=lambda one: (one.run_out is None, one.run_out or NOTHING))
            self._gripping[diameter] = tuple(truest)
        return self._gripping[diameter]

    def _chucks(self, diameter: Fraction) -> Iterator[Holder]:
        for name, chuck in self.entry.holding.chucks.items():
            if chuck.grips.holds(diameter):
                run_out = chuck.run_out.exact if chuck.run_out else None
                yield Holder(name, "chuck", run_out, chuck.grips.span)

    def _collets(self, diameter: Fraction) -> Iterator[Holder]:
        for name, collets in self.entry.holding.collets.items():
            most = diameter + (collets.closes.exact if collets.closes else NOTHING)
            sizes = (one.mm for run in collets.sizes for one in run.members)
            if any(diameter <= size <= most for size in sizes):
                run_out = collets.run_out.exact if collets.run_out else None
                yield Holder(name, "collets", run_out, collets.sizes[0].span)

    def dividers(self) -> tuple[Divider, ...]:
        """What divides a turn: heads first, then rotary tables."""
        holding = self.entry.holding
        heads = (
            Divider(
                name,
                int(head.ratio),
                _circles(head.plates),
                tuple(int(holes) for holes in head.direct or ()),
            )
            for name, head in holding.dividing_heads.items()
        )
        tables = (
            Divider(
                name,
                int(table.ratio),
                _circles(table.plates),
                mark=table.division.exact if table.division is not None else None,
            )
            for name, table in holding.rotary_tables.items()
        )
        return (*heads, *tables)

    def kerf_for(self, form: str) -> Fraction | None:
        """The kerf in mm of the first saw that is used for a form of stock, as `round bar`.

        None where no saw cuts it, as for a casting.
        """
        wanted = _CLASS_OF_FORM.get(form, "bars" if form in FORMS and FORMS[form].is_bar else "")
        saws = self.entry.machines.saws.values()
        return next((saw.kerf.exact for saw in saws if wanted in saw.cuts), None)

    @property
    def parting_width(self) -> Fraction | None:
        """The width of the parting tool in mm."""
        tool = self.entry.cutters.parting_tool
        return tool.width.exact if tool is not None else None

    @property
    def facing(self) -> Fraction | None:
        """What is allowed for facing each end of a piece, in mm."""
        allowance = self.entry.allowances.facing
        return allowance.exact if allowance is not None else None

    @property
    def holding_length(self) -> Fraction | None:
        """What is held and lost once for each bar, in mm."""
        allowance = self.entry.allowances.holding
        return allowance.exact if allowance is not None else None

    def finest(self, least: Fraction, most: Fraction, measures: str) -> Instrument | None:
        """The finest tool that measures `outside` or another way from least to most, in mm."""
        able = (
            tool
            for tool in self.instruments()
            if measures in tool.measures and tool.least <= least and most <= tool.most
        )
        return min(able, key=lambda tool: (tool.resolution, tool.most), default=None)

    def resolution_for(
        self, least: Fraction, most: Fraction, measures: str = "outside"
    ) -> Fraction | None:
        """The smallest step in mm that can be read over a range of sizes in mm."""
        tool = self.finest(least, most, measures)
        return tool.resolution if tool is not None else None

    def pace_at(self, machine: str) -> float:
        """The maker's factor for times at a machine, '' for the bench; 1 where he tells none."""
        told = self.entry.pace.get(machine or "bench")
        return float(told.exact) if told is not None else 1.0

    @property
    def evening_hours(self) -> Fraction | None:
        """How long an evening lasts, door to door, in hours."""
        evening = self.entry.evening
        return evening.exact / 3600 if evening is not None else None


def _circles(plates: Mapping[str, Holes]) -> dict[str, tuple[int, ...]]:
    return {name: tuple(int(one) for one in row) for name, row in plates.items()}


def _size(one: Drill) -> Fraction:
    return one.mm


def _slowest(one: Range) -> Fraction:
    return one.least.exact


def _turns(speed: Fraction) -> Fraction:
    return speed / PER_TURN
