"""What the plugin can report: words, and the hardware and its length."""

from __future__ import annotations

from typing import Final

from binder.api import Code, Severity
from binder_plugins.fasteners.hole_codes import HOLE_CODES
from binder_plugins.fasteners.shaft_codes import SHAFT_CODES

HOLDER_MISSING: Final = Code(
    "holder-missing",
    Severity.WARNING,
    "A joint that needs a screw, bolt, pin, key or rivet, and none is named.",
    "The item is missing on the shopping list, and on the last evening in the shop.",
    "joints:\n  cap on post: {screwed: [cap.face, post.top]}",
    "Ask for it with `fastener: M3 cap screw`, or name a bought one with `held_by:`.",
)
FASTENER_UNREADABLE: Final = Code(
    "fastener-unreadable",
    Severity.ERROR,
    "Words after `fastener:` that name no screw, bolt, pin, rivet or key.",
    "The shop cannot sell it, and no hole can be sized for it.",
    "joints:\n  cap on post: {screwed: [cap.face, post.top], fastener: M3 sokcet screw}",
    "Write thread or size, length where it is settled, and kind: `M3 x 10 socket cap screw`.",
)
FASTENER_UNFIT: Final = Code(
    "fastener-unfit",
    Severity.ERROR,
    "A fastener of another kind than the joint wants.",
    "A rivet cannot be screwed in; the joint or the word is wrong.",
    "joints:\n  cap on post: {screwed: [cap.face, post.top], fastener: 2 mm rivet}",
    "Name the kind that the joint is held by, or call the joint by another word.",
)
PATTERN_UNREADABLE: Final = Code(
    "pattern-unreadable",
    Severity.ERROR,
    "Words after `pattern:` that do not say where the holes are.",
    "Nobody can mark it out, and the two halves will not agree.",
    "joints:\n  cap on post: {screwed: [cap.face, post.top], pattern: 4 round about}",
    "Write it as `4 off on 16 mm PCD`, `14 mm apart` or `at the corners, 6 mm in`.",
)
PATTERN_OFF_FACE: Final = Code(
    "pattern-off-face",
    Severity.ERROR,
    "A pattern whose holes lie outside the face that they are drilled in.",
    "The drill meets air; mostly a size is of another part.",
    "joints:\n  lid on box: {screwed: [lid.top, box.top], fastener: M3 cap screw,"
    " pattern: 2 off 90 mm apart}   # the lid is 60 mm long",
    "Bring the holes in, or make the face larger.",
)
SCREW_BOTTOMS_OUT: Final = Code(
    "screw-bottoms-out",
    Severity.ERROR,
    "A screw that reaches the end of its hole before its head is down.",
    "It feels tight and clamps nothing; a harder pull bulges the part or shears the screw.",
    "fastener: M3 x 16 cap screw   # through 8 mm into 7 mm of thread",
    "Take the next shorter length, or deepen the thread.",
)
ENGAGEMENT_SHORT: Final = Code(
    "engagement-short",
    Severity.ERROR,
    "Less thread in hold than the softer metal needs: 1 d in steel, 1.5 d in brass and cast"
    " iron, 2 d in aluminium (rule of thumb; published rules differ), 3 d in wood.",
    "The thread strips at the first nip, mostly in the part that took longest.",
    "fastener: M3 x 6 cap screw   # through 4 mm into brass",
    "Take a longer screw, sink its head, or use a bolt and nut.",
)
SCREW_TOO_LONG: Final = Code(
    "screw-too-long",
    Severity.ERROR,
    "A fastener that comes out on the other side of what it holds.",
    "It scratches, fouls or catches a finger; in wood it splits the far face.",
    "fastener: M3 x 40 cap screw   # through 3 mm into 8 mm, tapped through",
    "Take the length that ends inside, or cut it down.",
)
SHANK_TOO_LONG: Final = Code(
    "shank-too-long",
    Severity.WARNING,
    "A bolt whose plain shank is longer than the metal that it clamps.",
    "The nut runs up to the shank, feels tight, and nothing is held.",
    "fastener: M5 x 60 hexagon bolt   # through two plates of 5 mm",
    "A shorter one, a screw threaded to the head, or washers to make up.",
)
LENGTH_NOT_SOLD: Final = Code(
    "length-not-sold",
    Severity.ADVICE,
    "No length that is sold suits the joint, or the length that is written is not sold.",
    "The screw has to be cut, or the evening ends at the shop's counter.",
    "fastener: M3 x 13 cap screw",
    "Take a length that is sold, or change a thickness so that one fits.",
)
HARDWARE_NOT_LISTED: Final = Code(
    "hardware-not-listed",
    Severity.ADVICE,
    "A size that no table of this program lists for this kind of hardware.",
    "Its head and lengths are not known here, so nothing about them is checked.",
    "fastener: M2.2 cap screw",
    "Take a listed size, or measure the head and write the seat yourself.",
)
TOO_FEW_BOUGHT: Final = Code(
    "too-few-bought",
    Severity.WARNING,
    "Fewer of a bought fastener in the assemblies than the joints need.",
    "The model stands there with one hole empty.",
    "assemblies:\n  crane: {of: [post, cap, 3 off cap_screw]}   # the cap has 4 holes",
    "Count them by the joints, or ask for them with `fastener:` and leave the count out.",
)
SOFT_THREAD_UNDONE_OFTEN: Final = Code(
    "soft-thread-undone-often",
    Severity.ADVICE,
    "A screw that is often undone, in a thread of aluminium, zinc or plastic.",
    "The thread is worn out in a season.",
    "joints:\n  lid on box: {screwed: [lid.top, box.top], fastener: M3 cap screw, serviced: true}",
    "Use studs and nuts, or a thread insert.",
)
BRASS_SCREW_INTO_HARDWOOD: Final = Code(
    "brass-screw-into-hardwood",
    Severity.CAUTION,
    "A brass screw in hardwood with a pilot hole that is too small for it.",
    "The head twists off and the shank stays in the wood.",
    "features: {pilot: {drilled: 1.5 mm, on: top, depth: 12 mm}}   # for a no. 6 brass screw",
    "Drill the pilot to size and cut the thread with a steel screw first.",
)
PLACES_DO_NOT_MATCH = Code(
    "places-do-not-match",
    Severity.ERROR,
    "A joint tells more or fewer places than it is made times.",
    "A hole without a place cannot be marked out; one too many weakens the part.",
    "joints:\n  feet on bed: {screwed: [bed.top, foot.underside], places: [middle]}   # two feet",
    "Tell one place for each time that the joint is made, on the larger of the two parts.",
)
WOOD_FIXED_ACROSS_GRAIN: Final = Code(
    "wood-fixed-across-grain",
    Severity.WARNING,
    "A wide board screwed tight at both edges, across the grain.",
    "The board swells and shrinks with the weather; it bends what it is screwed to, or splits.",
    "joints:\n  bed: {screwed: [bed.underside, base.top], pattern: 'at the corners, 5 mm in'}",
    "Use `buttoned:` with slotted holes, or keep the screws near one line along the grain.",
)

HARDWARE_WORDS_UNREADABLE: Final = Code(
    "hardware-words-unreadable",
    Severity.ERROR,
    "A question about a screw, key, circlip or pattern that has no answer.",
    "A figure that is guessed at the bench is drilled into metal.",
    "binder reckon screw M3 sokcet screw",
    "Ask in the form that the usage shows.",
)

SCREW_NIPS_SWIVEL: Final = Code(
    "screw-nips-swivel",
    Severity.WARNING,
    "A screw clamps together two parts that turn on each other.",
    "Tight, it nips what should turn; slack, it works loose and comes out.",
    "joints:\n  turns: {swivels: [saddle.socket, screw.pin]}\n"
    "  held: {screwed: [saddle.underside, screw.pin], fastener: M3 cap screw}",
    "Let the screw hold a washer or a plate on the end of the pin, and the pin stand a hair proud.",
)

CODES: Final = (
    SCREW_NIPS_SWIVEL,
    HOLDER_MISSING,
    FASTENER_UNREADABLE,
    FASTENER_UNFIT,
    PATTERN_UNREADABLE,
    PLACES_DO_NOT_MATCH,
    PATTERN_OFF_FACE,
    SCREW_BOTTOMS_OUT,
    ENGAGEMENT_SHORT,
    SHANK_TOO_LONG,
    SCREW_TOO_LONG,
    LENGTH_NOT_SOLD,
    HARDWARE_NOT_LISTED,
    TOO_FEW_BOUGHT,
    SOFT_THREAD_UNDONE_OFTEN,
    BRASS_SCREW_INTO_HARDWOOD,
    WOOD_FIXED_ACROSS_GRAIN,
    HARDWARE_WORDS_UNREADABLE,
    *HOLE_CODES,
    *SHAFT_CODES,
)
