"""What the plugin can report of holes, seats and the room beside them."""

from __future__ import annotations

from typing import Final

from binder.api import Code, Severity

CLEARANCE_TOO_SMALL: Final = Code(
    "clearance-hole-too-small",
    Severity.ERROR,
    "A hole that is smaller than the fastener that passes it.",
    "The screw cuts its way in and draws nothing together.",
    "features: {hole: {drilled: 2.9 mm, depth: through}}   # for an M3 screw",
    "Drill the clearance size, or write `drilled: to suit` and let the joint size it.",
)
HOLE_SIZES_DIFFER: Final = Code(
    "hole-sizes-differ",
    Severity.ERROR,
    "A hole whose thread or size is not that of the fastener.",
    "One of the two was changed and the other forgotten; nothing goes together.",
    "features: {fixing: {tapped: M4, on: top}}   # held by an M3 screw",
    "Write the thread once: `tapped: to suit` takes it from the fastener.",
)
BOTH_TAPPED: Final = Code(
    "both-halves-tapped",
    Severity.ERROR,
    "Both halves of a screwed joint are tapped.",
    "The screw cannot pull them together: the gap that is there when it starts stays.",
    "joints:\n  lid on box: {screwed: [lid.tapped_hole, box.tapped_hole], held_by: screw}",
    "Open the first half out to clearance.",
)
NOTHING_TO_SCREW_INTO: Final = Code(
    "nothing-to-screw-into",
    Severity.ERROR,
    "A screw whose far half has no thread and cannot have one.",
    "The screw falls through, or strips in the wood at once.",
    "joints:\n  lid on box: {screwed: [lid.hole, box.plain_hole], fastener: M3 cap screw}",
    "Tap the far half, use a nut (`bolted:`), or a wood screw in wood.",
)
HOLE_NEAR_EDGE: Final = Code(
    "hole-near-edge",
    Severity.WARNING,
    "A hole nearer to the edge than 1.5 diameters in metal, 3 in wood (common practice).",
    "The metal breaks out or bulges; wood splits.",
    "pattern: at the corners, 3 mm in   # with M3 screws",
    "Move the hole in, or use a smaller screw.",
)
SCREW_SPLITS_WOOD: Final = Code(
    "screw-splits-wood",
    Severity.WARNING,
    "A wood screw that stands nearer than 2.5 diameters to an edge of the timber, or 5 to its end "
    "along the grain, where the parts are put together.",
    "It splits the timber as it goes in, pilot hole or not, and holds nothing after.",
    "joints:\n  hanger on base: {screwed: [hanger.feet, base.right], ...}   # 12 mm apart, up an "
    "edge of 18 mm",
    "Bring the screws in, make the timber larger, or take a thinner screw.",
)
SCREWS_MEET: Final = Code(
    "screws-meet",
    Severity.WARNING,
    "Screws of two joints in one piece of wood, nearer to one another than 3 diameters of the "
    "thicker from middle to middle side by side, or 2 where they cross (common practice).",
    "The drill of the second pilot runs onto the first screw or into its hole; what gets in all "
    "the same splits the wood between them, and neither holds.",
    "joints:\n  bed on base: {screwed: [bed.top, base.top], ...}\n  hanger on base: {screwed: "
    "[hanger.feet, base.right], ...}   # both 20 mm into the same corner",
    "Part the two by `places:` or `pattern:`, or take shorter or thinner screws.",
)
SCREW_IN_END_GRAIN: Final = Code(
    "screw-in-end-grain",
    Severity.ADVICE,
    "Wood screws along the grain, in the end of a board, that hold a bearing up.",
    "Between the fibres a thread holds about half, and a belt that pulls works it loose.",
    "joints:\n  hanger on base: {screwed: [hanger.feet, base.right], ...}   # the end of the board",
    "Screw it to a side of the board; or bore it across the grain where the screws go, and glue "
    "pegs in.",
)
HEAD_OVER_EDGE: Final = Code(
    "head-over-edge",
    Severity.WARNING,
    "The head of a wood screw that stands over the edge of the part that it holds.",
    "It bears on one side, bends the screw, and catches the sleeve.",
    "hanger: feet 3 mm from the end   # under heads of 7 mm",
    "Bring the hole in by as much as the head stands over.",
)
HOLES_TOO_CLOSE: Final = Code(
    "holes-too-close",
    Severity.WARNING,
    "Holes nearer to each other than 3 diameters (common practice).",
    "The web between them bulges when they are tapped, and tears under load.",
    "pattern: 2 off, 6 mm apart   # with M3 screws",
    "Space them out, or use fewer.",
)
HEADS_OVERLAP: Final = Code(
    "heads-overlap",
    Severity.WARNING,
    "Heads, washers or counterbores that meet each other or a step, or stand over the edge.",
    "The second screw does not go down.",
    "pattern: 4 off on 8 mm PCD   # with M3 cap screws, heads 5.5 mm",
    "Space them out, or use a smaller head.",
)
LAND_THIN: Final = Code(
    "land-under-head-thin",
    Severity.WARNING,
    "Less than half a diameter of metal left under a sunk head.",
    "The head pulls through.",
    "joints:\n  lid on box: {screwed: [lid.top, box.top], fastener: M3 cap screw,"
    " head: counterbored}   # the lid is 4 mm thick",
    "Use a lower head, a thicker plate, or leave the head on top.",
)
COUNTERSINK_MISMATCH: Final = Code(
    "countersink-mismatch",
    Severity.WARNING,
    "A countersunk head that its seat does not suit: another angle, too thin a plate, no cone.",
    "The head rocks on an edge, or the plate is left with a knife edge.",
    "fastener: 4-40 UNC x 3/8 countersunk screw   # 82 degrees, the countersink owned has 90",
    "Use a screw of the angle of your countersink, or another head.",
)
SEAT_MISSING: Final = Code(
    "seat-missing",
    Severity.WARNING,
    "A flat head that bears on a round surface.",
    "It bears on one edge, bends the screw and works loose.",
    "joints:\n  bracket on post: {screwed: [post.mast, bracket.face], fastener: M3 cap screw}",
    "Say `head: spotfaced`, or mill a flat there.",
)
WILL_NOT_LINE_UP: Final = Code(
    "holes-will-not-line-up",
    Severity.WARNING,
    "Less clearance than the error of the way in which the two patterns are marked out.",
    "The last screw will not start.",
    "made: to drawing   # four M3 screws in 3.2 mm holes, marked out by hand",
    "Spot one half through the other (`made: spotted through`), or drill the free clearance.",
)
SPANNER_CANNOT_SWING: Final = Code(
    "spanner-cannot-swing",
    Severity.WARNING,
    "A spanner's head does not pass between a hexagon and the next, or a step beside it.",
    "The nut is done up with pliers.",
    "pattern: 2 off, 10 mm apart   # with M4 hexagon bolts",
    "Use cap screws and a key from above, a box spanner, or space them out.",
)
KEY_CANNOT_REACH: Final = Code(
    "key-cannot-reach",
    Severity.WARNING,
    "Less free above a socket head than the short arm of its key (ISO 2936).",
    "The screw stands in its hole and nothing turns it.",
    "turned: [flange, barrel 10 mm long, wider flange]   # M4 cap screws between the flanges",
    "Use a hexagon head and a spanner from the side, or put the screw in from the other side.",
)
SCREW_CANNOT_ENTER: Final = Code(
    "screw-cannot-enter",
    Severity.ERROR,
    "Less free before a hole than the screw with its head is long.",
    "The joint goes together on paper alone: the screw does not get to its hole.",
    "turned: [flange, barrel 6 mm long, wider flange]   # a 12 mm screw between the flanges",
    "Use a stud and nut, a shorter screw, or put the screw in from the other side.",
)
SCREW_LOCATES: Final = Code(
    "screw-used-as-locator",
    Severity.WARNING,
    "A bearing of a shaft is kept in line with another by screws in clearance holes alone.",
    "Screws hold, they do not locate: it shifts as they are tightened, and the shaft binds.",
    "joints:\n  blocks on bed: {screwed: [block.foot, bed.top], fastener: M3 cap screw}\n"
    "  shaft in blocks: {runs_in: [shaft.journal, block.bore]}   # two blocks",
    "Ream in line, or locate it by a spigot, or by dowels once the shaft runs freely.",
)
RIVET_TOO_SHORT: Final = Code(
    "rivet-too-short",
    Severity.ERROR,
    "A rivet that leaves too little beyond the plates to form its head.",
    "The head is a rim; it lets go at the first knock.",
    "fastener: 2 mm x 4 mm snap head rivet   # through 3 mm: 3 + 1.5 d = 6 mm",
    "Take one of the plates and 1.5 diameters (snap), 1 (countersunk).",
)
STANDS_ON_ONE_SCREW: Final = Code(
    "stands-on-one-screw",
    Severity.WARNING,
    "A post or block that carries something that moves stands on a single screw.",
    "One screw is a pivot: the post turns about it at the first knock, and what it carries binds.",
    "joints:\n  post on bed: {screwed: [bed.top, post.foot], fastener: M3 cap screw}\n"
    "  pivot in post: {threaded: [pivot.thread, post.seat]}",
    "Give it two screws, or a dowel beside the one.",
)

HOLE_CODES: Final = (
    CLEARANCE_TOO_SMALL,
    HOLE_SIZES_DIFFER,
    BOTH_TAPPED,
    NOTHING_TO_SCREW_INTO,
    HOLE_NEAR_EDGE,
    SCREW_SPLITS_WOOD,
    SCREWS_MEET,
    SCREW_IN_END_GRAIN,
    HEAD_OVER_EDGE,
    HOLES_TOO_CLOSE,
    HEADS_OVERLAP,
    LAND_THIN,
    COUNTERSINK_MISMATCH,
    SEAT_MISSING,
    WILL_NOT_LINE_UP,
    SPANNER_CANNOT_SWING,
    KEY_CANNOT_REACH,
    SCREW_CANNOT_ENTER,
    SCREW_LOCATES,
    RIVET_TOO_SHORT,
    STANDS_ON_ONE_SCREW,
)
