"""Every code of the plugin on the smallest spec that earns it, and on one that does not.

The marks show the characters that the finding points at. The rules are common practice, no
source, unless the trade package's own tests name one.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder.host import Host

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
PARTS = """parts:
  lid: {material: mild steel, plate: {length: 40 mm, width: 30 mm, thickness: 5 mm}}
  box:
    material: mild steel
    block: {length: 40 mm, width: 30 mm, height: 30 mm}
    features: {tap: {tapped: M3, on: top, depth: 8 mm}, plain: {drilled: 3.4 mm, on: top}}
  board: {material: oak, board: {length: 200 mm, width: 120 mm, thickness: 18 mm}}
  post: {material: mild steel, turned: [{name: mast, diameter: 12 mm, length: 60 mm}]}
  shaft:
    material: silver steel
    turned: [{name: seat, diameter: 6 mm, length: 20 mm}, {name: end, diameter: 5 mm, length: 9 mm}]
  wheel:
    material: brass
    turned: [{name: boss, diameter: 18 mm, length: 12 mm}]
    features: {bore: {reamed: 6 mm, on: boss, depth: through}}
"""


def spec(joint: str, parts: str = PARTS, more: str = "") -> str:
    """A spec of these parts with one joint."""
    return f"{HEAD}{parts}{more}joints:\n  {joint}\n"


def lid(rest: str, parts: str = PARTS, ends: str = "lid.underside, box.top") -> str:
    """The lid screwed on the box."""
    return spec(f"a: {{screwed: [{ends}], {rest}}}", parts)


def _on_edge(thick: int, screw: str) -> str:
    """A batten up the edge of a board by two screws, 12 mm apart."""
    more = (
        "  plank: {material: oak,"
        f" board: {{length: 200 mm, width: 120 mm, thickness: {thick} mm}}}}\n"
        "  batten: {material: brass, block: {length: 60 mm, width: 12 mm, height: 12 mm}, features:"
        " {feet: {drilled: to suit, on: underside, depth: through, off: 2, pattern: 12 mm apart,"
        f" at: {thick // 2} mm from left}}}}}}\n"
    )
    joint = (
        f"a: {{screwed: [batten.feet, plank.right], fastener: {screw}, places: [60 mm from front]}}"
    )
    stood = "stands: plank\npositions: {batten: {turned: 180 deg}}\n"
    return f"{spec(joint, PARTS + more)}{stood}"


STRIP = (
    f"{PARTS}  strip:"
    " {material: brass, plate: {length: 40 mm, width: 30 mm, thickness: 6 mm}}\n"
)
BIG = (
    f"{PARTS}  big: {{material: brass, block: {{length: 200 mm, width: 120 mm, height: 20 mm}}}}\n"
)
CLEAN_GROOVE = "grooved: 0.8 mm, on: seat, depth: 0.15"
THIN = PARTS.replace("thickness: 5 mm", "thickness: 3 mm")
BRASS_BOX = PARTS.replace("box:\n    material: mild steel", "box:\n    material: brass")
SOFT_BOX = PARTS.replace("box:\n    material: mild steel", "box:\n    material: aluminium")
HARD = PARTS.replace(
    "shaft:\n    material: silver steel",
    "shaft:\n    material: silver steel\n    finish: hardened and tempered",
)
PILOT = PARTS.replace(
    "thickness: 18 mm}}",
    "thickness: 18 mm}, features: {pilot: {drilled: 1.5 mm, on: top, depth: 14 mm}}}",
)
SHAFT_12 = PARTS.replace("diameter: 6 mm", "diameter: 12 mm").replace(
    "reamed: 6 mm", "reamed: 12 mm"
)
GROOVE = PARTS.replace(
    "{name: end, diameter: 5 mm, length: 9 mm}]",
    "{name: end, diameter: 5 mm, length: 9 mm}]\n"
    "    features: {groove: {grooved: 0.5 mm, on: seat, depth: 0.3 mm}}",
)
BOUGHT = "bought:\n  screw: {what: M3 x 10 cap screw, quantity: 2}\n"
OLD = PARTS.replace(
    "thickness: 5 mm}}",
    "thickness: 5 mm}, features: {h: {drilled: 3.4 mm, on: top, depth: through}}}",
)
SOFT_WHEEL = PARTS.replace(
    "material: brass\n    turned: [{name: boss, diameter: 18 mm",
    "material: aluminium\n    turned: [{name: boss, diameter: 15 mm",
)
JIB = (
    "  side: {material: mild steel, quantity: 2,"
    " plate: {length: 60 mm, width: 9 mm, thickness: 1.2 mm}}\n"
    "fabrications:\n  jib: {pieces: [2 off side], joined: riveted,"
    " features: {foot: {drilled: to suit, depth: through, at: 5 mm from left}}}\n"
)
COLLAR = (
    f"{PARTS}  collar: {{material: brass, turned: [{{name: rim, diameter: 10 mm, length: 8 mm}}],"
    " features: {bore: {reamed: 5 mm, on: rim, depth: through}}}\n"
)
MOTOR = "bought:\n  motor: {what: small motor, sizes: {shaft: 6 mm}}\n"

# Between its flanges 10 are free; behind the second one, nothing stands.
SPOOL = (
    "  spool: {material: mild steel, stock: round bar, turned: ["
    "{name: near, diameter: 40 mm, length: 4 mm}, {name: core, diameter: 16 mm, length: 10 mm},"
    " {name: far, diameter: 40 mm, length: 4 mm}]}\n"
    "  wall: {material: mild steel, block: {length: 60 mm, width: 60 mm, height: 20 mm}}\n"
)
ON_WALL = "a: {screwed: [%s, wall.top], fastener: M3 %s screw, pattern: 3 off on 30 mm PCD}"
BLOCKS = (
    "  rod: {material: silver steel, stock: round bar,"
    " turned: [{name: journal, diameter: 6 mm, length: 90 mm}]}\n"
    "  bearing: {material: brass, quantity: 2, block: {length: 24 mm, width: 14 mm, height: 20 mm},"
    " features: {bore: {reamed: 6 mm, on: front, depth: through}}}\n"
    "  bed: {material: mild steel, block: {length: 120 mm, width: 40 mm, height: 20 mm}}\n"
)
ON_BED = (
    "%s: {screwed: [bed.underside, bearing.underside], fastener: M3 cap screw,"
    ' pattern: "2 off, 14 mm apart"}\n'
    "  turns: {runs_in: [rod.journal, bearing.bore]%s}%s"
)

# code: the spec that earns it, the same mended
SADDLE = f"""{PARTS}  saddle:
    material: brass
    turned: [{{name: rim, diameter: 16 mm, length: 6 mm}}]
    features: {{socket: {{reamed: 6 mm, on: rim, depth: through}}}}
  keeper: {{material: brass, turned: [{{name: plate, diameter: 9 mm, length: 1.5 mm}}]}}
  stem:
    material: mild steel
    turned:
      - {{name: pin, diameter: 6 mm, length: 6.1 mm}}
      - {{name: body, diameter: 10 mm, length: 20 mm}}
"""
M3 = "fastener: M3 cap screw"
TURNS = "\n  b: {swivels: [saddle.socket, stem.pin], duty: turns by hand}"


# In the middle of the board's width, where the hanger stands.
PEG = (
    "features: {peg: {drilled: 14 mm, on: underside, depth: 50 mm, "
    'at: "185 mm from left, 60 mm from front"}}'
)


def _beside(board: str, mark: str = '"no. 6 x 1 in brass wood screw, round head"') -> str:
    """A foot on top of a board and a clip on its end, 30 mm off the front both."""
    plate = """material: brass, block: {length: 30 mm, width: 30 mm, height: 6 mm},
    features: {h: {drilled: to suit, on: top, depth: through}}"""
    return f"""{HEAD}parts:
  base: {{material: oak, board: {{{board}, width: 60 mm, thickness: 40 mm}}}}
  foot: {{{plate}}}
  clip: {{{plate}}}
joints:
  foot on base:
    screwed: [foot.h, base.top]
    fastener: "no. 6 x 1 in brass wood screw, round head"
    places: ["180 mm from left, 30 mm from front"]
  clip on base: {{screwed: [clip.h, base.right], fastener: {mark},
    places: ["30 mm from front, 22 mm from underside"]}}
"""


def _hung(face: str, end: int, mark: str = "hanger.feet") -> str:
    """A shaft in a bearing that is screwed to a face of a board, its foot so far from its end."""
    return f"""{HEAD}parts:
  base: {{material: oak, board: {{length: 200 mm, width: 120 mm, thickness: 60 mm}}}}
  hanger:
    material: brass
    block: {{length: 60 mm, width: 14 mm, height: 14 mm}}
    features:
      bore: {{reamed: 6 mm, on: front, depth: through, at: 8 mm from right}}
      feet: {{drilled: to suit, on: underside, depth: through, at: {end} mm from left}}
  axle: {{material: silver steel, turned: [{{name: journal, diameter: 6 mm, length: 40 mm}}]}}
joints:
  hung: {{screwed: [{mark}, base.{face}], fastener: "no. 6 brass wood screw, round head"}}
  axle in hanger: {{runs_in: [axle.journal, hanger.bore], duty: runs}}
stands: base
"""


POST = """parts:
  bed: {material: mild steel, plate: {length: 80 mm, width: 40 mm, thickness: 6 mm}}
  post:
    material: mild steel
    block: {length: 40 mm, width: 16 mm, height: 8 mm}
    features: {seat: {tapped: M4, on: front, depth: through}}
  pivot:
    material: silver steel
    turned: [{name: shank, diameter: 4 mm, length: 15 mm}]
    features: {thread: {screwed: M4, on: shank, length: 15 mm}}
joints:
  pivot in post: {threaded: [pivot.thread, post.seat]}
"""


M3 = "fastener: M3 socket cap screw"
TWO = 'pattern: "2 off, 8 mm apart"'

CASES = {
    # One screw is a pivot: common practice, no source.
    "stands-on-one-screw": (
        f"{HEAD}{POST}  post on bed: {{screwed: [⟪bed.top⟫, post.left], {M3}}}\n",
        f"{HEAD}{POST}  post on bed: {{screwed: [bed.top, post.left], {M3}, {TWO}}}\n",
    ),
    "screw-nips-swivel": (
        spec(f"⟪a⟫: {{screwed: [saddle.underside, stem.pin], {M3}}}{TURNS}", SADDLE),
        spec(f"a: {{screwed: [keeper.underside, stem.pin], {M3}}}{TURNS}", SADDLE),
    ),
    # M3 x 8 with its head of 3 (ISO 4762) is 11 long; the flanges are 10 apart.
    "screw-cannot-enter": (
        spec(ON_WALL % ("⟪spool.left⟫", "cap"), PARTS + SPOOL),
        spec(ON_WALL % ("spool.left", "cap"), PARTS + SPOOL.replace("length: 10", "length: 11")),
    ),
    # 24 - 3 = 21 are free over the heads, the short arm of a 2.5 key is 20.5 (ISO 2936).
    "key-cannot-reach": (
        spec(ON_WALL % ("⟪spool.left⟫", "cap"), PARTS + SPOOL.replace("length: 10", "length: 23")),
        spec(ON_WALL % ("spool.left", "cap"), PARTS + SPOOL.replace("length: 10", "length: 24")),
    ),
    "screw-used-as-locator": (
        spec(ON_BED % ("⟪feet⟫", "", ""), PARTS + BLOCKS),
        spec(ON_BED % ("feet", ", made: reamed in line", ""), PARTS + BLOCKS),
    ),
    "holder-missing": (
        spec("⟪a⟫: {screwed: [lid.underside, box.top]}"),
        lid("fastener: M3 cap screw"),
    ),
    "fastener-unreadable": (
        lid("fastener: ⟪M3 sokcet cap screw⟫"),
        lid("fastener: M3 socket cap screw"),
    ),
    "fastener-unfit": (lid("fastener: ⟪2 mm snap head rivet⟫"), lid("fastener: M3 cap screw")),
    "pattern-unreadable": (
        lid("fastener: M3 cap screw, pattern: ⟪4 round about⟫"),
        lid('fastener: M3 cap screw, pattern: "2 off, 20 mm apart"'),
    ),
    "places-do-not-match": (
        spec(
            "a: {screwed: [board.top, box.underside], fastener: M3 cap screw,"
            " places: [⟪20 mm from left⟫, 90 mm from left]}"
        ),
        spec(
            "a: {screwed: [box.underside, board.top], fastener: no. 6 wood screw,"
            " places: [90 mm from left]}"
        ),
    ),
    "pattern-off-face": (
        lid("fastener: M3 cap screw, pattern: ⟪2 off 90 mm apart⟫"),
        lid("fastener: M3 cap screw, pattern: 2 off 20 mm apart"),
    ),
    "screw-bottoms-out": (
        lid("fastener: ⟪M3 x 16 cap screw⟫", ends="lid.underside, box.tap"),
        lid("fastener: M3 x 10 cap screw", ends="lid.underside, box.tap"),
    ),
    "engagement-short": (
        lid("fastener: ⟪M3 x 8 cap screw⟫", BRASS_BOX),
        lid("fastener: M3 x 10 cap screw", BRASS_BOX),
    ),
    "screw-too-long": (
        lid("fastener: ⟪M3 x 20 cap screw⟫", STRIP, "lid.underside, strip.top"),
        lid("fastener: M3 x 10 cap screw", STRIP, "lid.underside, strip.top"),
    ),
    "shank-too-long": (
        spec("a: {bolted: [lid.underside, strip.top], fastener: ⟪M3 x 40 hexagon bolt⟫}", STRIP),
        spec("a: {bolted: [lid.underside, strip.top], fastener: M3 x 16 hexagon bolt}", STRIP),
    ),
    "length-not-sold": (
        lid("fastener: ⟪M3 x 11 cap screw⟫"),
        lid("fastener: M3 x 10 cap screw"),
    ),
    "hardware-not-listed": (
        lid("fastener: ⟪M2.2 cap screw⟫"),
        lid("fastener: M5 cap screw"),
    ),
    "too-few-bought": (
        spec(
            "a: {screwed: [lid.underside, box.top], held_by: screw, "
            'pattern: "4 off on 20 mm PCD"}',
            more=BOUGHT.replace("screw:", "⟪screw⟫:"),
        ),
        spec(
            'a: {screwed: [lid.underside, box.top], held_by: screw, pattern: "2 off, 20 mm apart"}',
            more=BOUGHT,
        ),
    ),
    "soft-thread-undone-often": (
        lid("fastener: M3 cap screw, serviced: true", SOFT_BOX, "lid.underside, ⟪box.top⟫"),
        lid("fastener: M3 cap screw, serviced: true"),
    ),
    "brass-screw-into-hardwood": (
        lid("fastener: no. 6 brass wood screw", PILOT, "lid.underside, ⟪board.pilot⟫"),
        lid("fastener: no. 6 brass wood screw", PILOT.replace("1.5 mm", "2.5 mm"),
            "lid.underside, board.pilot"),
    ),
    "wood-fixed-across-grain": (
        spec("⟪a⟫: {screwed: [board.top, big.top], fastener: M4 cap screw, "
             'pattern: "at the corners, 10 mm in"}',
             BIG),
        spec("a: {screwed: [board.top, big.top], fastener: M4 cap screw, "
             'pattern: "2 off, 150 mm apart"}',
             BIG),
    ),
    "clearance-hole-too-small": (
        lid("fastener: M3 x 10 cap screw", OLD.replace("h: {drilled: 3.4", "h: {drilled: 2.9"),
            "⟪lid.h⟫, box.tap"),
        lid("fastener: M3 x 10 cap screw", OLD, "lid.h, box.tap"),
    ),
    "hole-sizes-differ": (
        lid("fastener: M4 cap screw", ends="lid.underside, ⟪box.tap⟫"),
        lid("fastener: M3 cap screw", ends="lid.underside, box.tap"),
    ),
    "both-halves-tapped": (
        lid("fastener: M3 cap screw", OLD.replace("h: {drilled: 3.4 mm", "h: {tapped: M3"),
            "⟪lid.h⟫, box.tap"),
        lid("fastener: M3 cap screw", OLD, "lid.h, box.tap"),
    ),
    "nothing-to-screw-into": (
        lid("fastener: M3 cap screw", OLD, "lid.h, ⟪box.plain⟫"),
        lid("fastener: M3 cap screw", OLD, "lid.h, box.tap"),
    ),
    "hole-near-edge": (
        lid('fastener: M3 cap screw, pattern: "at the corners, 4 mm in"',
            ends="⟪lid.underside⟫, box.top"),
        lid('fastener: M3 cap screw, pattern: "at the corners, 5 mm in"'),
    ),
    # No. 6 is 3.5 mm, 2.5 of it 8.76. In the middle of 18 mm two screws 12 mm apart are 3 mm from
    # the edges, of 30 mm 9 mm. 2.5 diameters from an edge: the American NDS, from memory.
    "screw-splits-wood": (
        _on_edge(18, '⟪"no. 6 brass wood screw, round head"⟫'),
        _on_edge(30, '"no. 6 brass wood screw, round head"'),
    ),
    # 1 in less the plate of 6 mm: 19.4 mm of each are in the oak. The one on top stands 180 mm from
    # the left and ends 40 - 19.4 = 20.6 mm up; the one in the end runs 22 mm up, to 180.6 mm of
    # 200 mm: 0.6 mm from its middle to the other's. Of 210 mm it ends 190.6 mm from the left, 10.6
    # mm clear, where 2 diameters of 3.5 mm are enough: common practice, no source.
    "screws-meet": (
        _beside("length: 200 mm", '⟪"no. 6 x 1 in brass wood screw, round head"⟫'),
        _beside("length: 210 mm"),
    ),
    # Between the fibres a thread holds about half: common practice, no source. A board's grain
    # runs along it: `right` is its end, `front` a side.
    "screw-in-end-grain": (
        _hung("right", 10, "⟪hanger.feet⟫"),
        _hung("right", 10).replace("thickness: 60 mm}", f"thickness: 60 mm}}, {PEG}"),
    ),
    # The head of a no. 6 is 7 mm and more wide (BS 1210, from memory): 3 mm in it stands over.
    "head-over-edge": (_hung("front", 3, "⟪hanger.feet⟫"), _hung("front", 10)),
    "holes-too-close": (
        lid('fastener: M3 cap screw, pattern: "2 off, 8 mm apart"',
            ends="⟪lid.underside⟫, box.top"),
        lid('fastener: M3 cap screw, pattern: "2 off, 9 mm apart"'),
    ),
    "heads-overlap": (
        lid('fastener: M3 hexagon screw, pattern: "2 off, 6 mm apart"',
            ends="⟪lid.underside⟫, box.top"),
        lid('fastener: M3 cap screw, pattern: "2 off, 9 mm apart"'),
    ),
    "land-under-head-thin": (
        lid("fastener: M3 cap screw, head: counterbored", THIN, "⟪lid.underside⟫, box.top"),
        lid("fastener: M3 cap screw, head: counterbored"),
    ),
    "countersink-mismatch": (
        lid("fastener: 4-40 UNC countersunk screw", ends="⟪lid.underside⟫, box.top"),
        lid("fastener: M3 countersunk screw"),
    ),
    "seat-missing": (
        spec("a: {screwed: [⟪post.mast⟫, box.top], fastener: M3 cap screw}"),
        spec("a: {screwed: [post.mast, box.top], fastener: M3 cap screw, head: spotfaced}"),
    ),
    "holes-will-not-line-up": (
        lid("fastener: M3 cap screw", OLD.replace("h: {drilled: 3.4 mm, on: top,",
            "h: {drilled: 3.05 mm, on: top, off: 2, pattern: 20 mm apart,"), "⟪lid.h⟫, box.top"),
        lid("fastener: M3 cap screw, made: spotted through",
            OLD.replace("h: {drilled: 3.4 mm, on: top,",
            "h: {drilled: 3.05 mm, on: top, off: 2, pattern: 20 mm apart,"), "lid.h, box.top"),
    ),
    "spanner-cannot-swing": (
        lid('fastener: M4 hexagon screw, pattern: "2 off, 12 mm apart"',
            ends="⟪lid.underside⟫, box.top"),
        lid('fastener: M4 hexagon screw, pattern: "2 off, 26 mm apart"'),
    ),
    "rivet-too-short": (
        spec("a: {riveted: [lid.underside, post.mast], fastener: ⟪2 mm x 10 mm snap head rivet⟫, "
             "grip: 9 mm}"),
        spec("a: {riveted: [lid.underside, post.mast], fastener: 2 mm x 12 mm snap head rivet, "
             "grip: 9 mm}"),
    ),
    "grub-on-bare-shaft": (
        spec("a: {clamped: [wheel.bore, ⟪motor.shaft⟫], fastener: M3 grub screw}", more=MOTOR),
        spec("a: {clamped: [wheel.bore, shaft.seat], fastener: M3 grub screw}"),
    ),
    "grub-out-of-proportion": (
        spec("a: {clamped: [wheel.bore, shaft.seat], fastener: ⟪M6 grub screw⟫}"),
        spec("a: {clamped: [wheel.bore, shaft.seat], fastener: M3 grub screw}"),
    ),
    "pin-wider-than-shaft": (
        spec("a: {pinned: [wheel.bore, ⟪shaft.seat⟫], fastener: 8 mm dowel pin}"),
        spec("a: {pinned: [wheel.bore, shaft.seat], fastener: 2 mm dowel pin}"),
    ),
    "grub-in-soft-hub": (
        spec("a: {clamped: [⟪wheel.bore⟫, shaft.seat], fastener: M4 grub screw}", SOFT_WHEEL),
        spec("a: {clamped: [wheel.bore, shaft.seat], fastener: M3 grub screw}", SOFT_WHEEL),
    ),
    "pin-too-short": (
        spec("a: {pinned: [jib.foot, post.mast], fastener: ⟪2 mm x 12 mm dowel pin⟫}", more=JIB),
        spec("a: {pinned: [jib.foot, post.mast], fastener: 2 mm x 16 mm dowel pin}", more=JIB),
    ),
    "single-pin-is-hinge": (
        spec("⟪a⟫: {pinned: [jib.foot, post.mast], fastener: 2 mm x 16 mm dowel pin}", more=JIB),
        spec("a: {pinned: [jib.foot, post.mast], fastener: 2 mm x 16 mm dowel pin}\n"
             "  b: {screwed: [jib.top, post.mast], fastener: M3 cap screw}", more=JIB),
    ),
    "pin-too-big": (
        spec("a: {pinned: [wheel.bore, ⟪shaft.seat⟫], fastener: 3 mm dowel pin}"),
        spec("a: {pinned: [wheel.bore, shaft.seat], fastener: 2 mm dowel pin}"),
    ),
    "pin-in-hard-shaft": (
        spec("a: {pinned: [wheel.bore, ⟪shaft.seat⟫], fastener: 2 mm dowel pin}", HARD),
        spec("a: {pinned: [wheel.bore, shaft.seat], fastener: 2 mm dowel pin}"),
    ),
    "pin-taper-mixed": (
        spec("a: {pinned: [wheel.bore, shaft.seat], fastener: 2 mm taper pin}\n"
             "  b: {pinned: [lid.underside, shaft.end], fastener: ⟪1/16 in taper pin⟫}"),
        spec("a: {pinned: [wheel.bore, shaft.seat], fastener: 2 mm taper pin}\n"
             "  b: {pinned: [lid.underside, shaft.end], fastener: 1.5 mm taper pin}"),
    ),
    "key-not-standard": (
        spec("a: {keyed: [wheel.bore, shaft.seat], fastener: ⟪5 mm x 5 mm x 10 mm key⟫}", SHAFT_12),
        spec("a: {keyed: [wheel.bore, shaft.seat], fastener: 4 mm x 4 mm x 10 mm key}", SHAFT_12),
    ),
    "keyway-thins-hub": (
        spec("a: {keyed: [⟪wheel.bore⟫, shaft.seat], fastener: parallel key}", SHAFT_12),
        spec("a: {keyed: [wheel.bore, shaft.seat], fastener: parallel key}",
             SHAFT_12.replace("diameter: 18 mm", "diameter: 26 mm")),
    ),
    "circlip-groove-wrong": (
        spec("a: {clipped: [wheel, ⟪shaft.groove⟫], fastener: external circlip}", GROOVE),
        spec("a: {clipped: [wheel, shaft.groove], fastener: external circlip}",
             GROOVE.replace("grooved: 0.5 mm, on: seat, depth: 0.3", CLEAN_GROOVE)),
    ),
    "split-hub-has-no-room": (
        spec("a: {clamped: [⟪wheel.bore⟫, shaft.seat], fastener: M4 cap screw}"),
        spec("a: {clamped: [wheel.bore, shaft.seat], fastener: M2 cap screw}",
             PARTS.replace("diameter: 18 mm", "diameter: 24 mm")),
    ),
    "split-pin-off-size": (
        spec("a: {pinned: [wheel, shaft.seat], fastener: ⟪1 mm split pin⟫}"),
        spec("a: {pinned: [wheel, shaft.seat], fastener: 1.6 mm split pin}"),
    ),
    "key-longer-than-seat": (
        spec("a: {keyed: [⟪wheel.bore⟫, shaft.seat], fastener: woodruff key}",
             SHAFT_12.replace("length: 20 mm", "length: 14 mm")),
        spec("a: {keyed: [wheel.bore, shaft.seat], fastener: 3 mm x 3.7 mm woodruff key}",
             SHAFT_12.replace("length: 20 mm", "length: 14 mm")),
    ),
    "woodruff-cutter-not-owned": (
        spec("a: {keyed: [wheel.bore, shaft.seat], fastener: ⟪woodruff key⟫}", SHAFT_12),
        spec("a: {keyed: [wheel.bore, shaft.seat], fastener: parallel key}", SHAFT_12),
    ),
    "clip-of-other-size": (
        spec("a: {clipped: [wheel, shaft.seat], fastener: ⟪95 mm external circlip⟫}"),
        spec("a: {clipped: [wheel, shaft.seat], fastener: 6 mm external circlip}"),
    ),
    "clip-has-no-room": (
        spec("a: {clipped: [collar.bore, ⟪shaft.end⟫], fastener: e-clip}", COLLAR),
        spec("a: {clipped: [collar.bore, shaft.end], fastener: e-clip}",
             COLLAR.replace("length: 8 mm", "length: 6 mm")),
    ),
}  # fmt: skip


def marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    plain = plain.replace("⟫", "")
    return plain, (*place(plain, start), *place(plain, end))


def place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Callable[..., Outcome]) -> None:
    text, at = marked(CASES[code][0])
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == at
    assert found[0].message
    assert found[0].help


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_mended_spec_has_no_such_finding(
    code: str, compile_text: Callable[..., Outcome]
) -> None:
    outcome = compile_text(CASES[code][1])
    found = [(one.code.name, one.message) for one in outcome.findings if one.code.name == code]
    assert not found
    broken = ("unknown-key", "item-unknown", "place-unknown", "wrong-shape", "kind-unknown")
    assert not [one for one in outcome.findings if one.code.name in broken]


def test_every_code_of_the_plugin_has_a_case(host: Host) -> None:
    from binder_plugins.fasteners.codes import CODES

    elsewhere = {"hardware-words-unreadable"}  # of a question, in test_reckon.py
    assert {code.name for code in CODES} - elsewhere == set(CASES)


@pytest.mark.parametrize(("core", "is_tight"), [(24, False), (25, True)])
def test_a_barrel_leaves_room_for_the_heads_or_not(
    core: int, is_tight: bool, compile_text: Callable[..., Outcome]
) -> None:
    """Heads of 5.5 (ISO 4762) want 2.75: 15 - 12 = 3 will do, 15 - 12.5 = 2.5 is too little."""
    parts = PARTS + SPOOL.replace("core, diameter: 16 mm", f"core, diameter: {core} mm").replace(
        "{name: far, diameter: 40 mm", "{name: far, diameter: 8 mm"
    )
    outcome = compile_text(spec(ON_WALL % ("spool.left", "cap"), parts))
    found = {one.code.name for one in outcome.findings}
    assert ("heads-overlap" in found) == is_tight


@pytest.mark.parametrize(("core", "is_tight"), [(16, True), (14, False)])
def test_a_spanner_swings_beside_the_barrel_or_not(
    core: int, is_tight: bool, compile_text: Callable[..., Outcome]
) -> None:
    """Flats 5.5 (ISO 4017), a head of 2 x 5.5 + 3 = 14 (common practice, no source): half of it
    and 0.5 is 7.5. 15 - 8 = 7 is too little, 15 - 7 = 8 will do."""
    parts = PARTS + SPOOL.replace("core, diameter: 16 mm", f"core, diameter: {core} mm").replace(
        "{name: far, diameter: 40 mm", "{name: far, diameter: 8 mm"
    )
    outcome = compile_text(spec(ON_WALL % ("spool.left", "hexagon head"), parts))
    found = {one.code.name for one in outcome.findings}
    assert ("spanner-cannot-swing" in found) == is_tight


@pytest.mark.parametrize(
    "located",
    [
        "\n  pegs: {dowelled: [bed.underside, bearing.underside], fastener: 3 mm dowel pin}",
        "\n  in_bed: {seated: [bearing.bore, bed.top]}",
    ],
)
def test_dowels_or_a_spigot_locate(located: str, compile_text: Callable[..., Outcome]) -> None:
    text = spec(ON_BED % ("feet", "", located), PARTS + BLOCKS)
    found = {one.code.name for one in compile_text(text).findings}
    assert "screw-used-as-locator" not in found
    assert "bearings-not-in-line" in found


def test_one_bearing_has_nothing_to_be_in_line_with(compile_text: Callable[..., Outcome]) -> None:
    text = spec(ON_BED % ("feet", "", ""), PARTS + BLOCKS.replace("quantity: 2", "quantity: 1"))
    found = {one.code.name for one in compile_text(text).findings}
    assert "screw-used-as-locator" not in found
