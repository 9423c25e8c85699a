"""Joints that are wrong: what must be found, and the characters that it must point at."""

PARTS = """parts:
  lid:
    material: mild steel
    plate: {length: 40 mm, width: 30 mm, thickness: 5 mm}
    features: {h: {drilled: 3.4 mm, depth: through}, t: {tapped: M3, depth: through}}
  box:
    material: mild steel
    block: {length: 40 mm, width: 30 mm, height: 30 mm}
    features: {tap: {tapped: M3, on: top, depth: 8 mm}, plain: {drilled: 3.4 mm, on: top}}
  shaft:
    material: silver steel
    turned: [{name: seat, diameter: 6 mm, length: 30 mm}, {name: end, diameter: 4 mm, length: 9 mm}]
  wheel:
    material: brass
    turned: [{name: boss, diameter: 18 mm, length: 12 mm}]
    features: {bore: {reamed: 6.2 mm, on: boss, depth: through}}
  hub:
    material: brass
    turned: [{name: boss, diameter: 18 mm, length: 12 mm}]
    features: {bore: {reamed: WAIT, on: boss, depth: through}}
  pin:
    material: mild steel
    turned: [{name: rod, diameter: 5 mm, length: 30 mm}]
  nut: {material: brass, block: {length: 20 mm, width: 20 mm, height: 20 mm}}
"""

_SCREW = "a: {screwed: [lid.underside, box.top], fastener: "
_PLACED = f"{_SCREW}M3 cap screw, pattern: "
_RUNS = "a: {runs_in: [shaft.seat, hub.bore], "
_THREAD = "a: {threaded: [pin.rod, nut.top], length: 8 mm, thread: "
_TAIL = "a: {dovetailed: [lid.underside, box.top], "
_SHAFT = "a: {runs_in: [shaft.seat, hub.bore]}\nshafts:\n  "

# Each: the code, and the lines under `joints:` with the place marked.
WRONG = {
    "no such feature": ("place-unknown", "a: {runs_in: [shaft.seat, ⟪wheel.boer⟫]}"),
    "no such part": ("item-unknown", "a: {runs_in: [⟪shfat.seat⟫, hub.bore]}"),
    "letters outside ours": ("bad-reference", "a: {runs_in: [shaft.seat, ⟪wheel.böre⟫]}"),
    "thread between two": ("thread-not-made", _THREAD + "⟪M3.7⟫}"),
    "BA past the end": ("thread-not-made", _THREAD + "⟪17 BA⟫}"),
    "pitch of nobody": ("thread-not-made", _THREAD + "⟪1/4 x 41 ME⟫}"),
    "pitch of a hair": ("thread-not-made", _THREAD + "⟪M6 x 0.01⟫}"),
    "negative thread": ("thread-unknown", _THREAD + "⟪M-6⟫}"),
    "thread with exponent": ("thread-unknown", _THREAD + "⟪M1e308⟫}"),
    "pitch not a number": ("thread-unknown", _THREAD + "⟪M6 x nan⟫}"),
    "thread over nothing": ("thread-unknown", _THREAD + "⟪1/0-20 UNC⟫}"),
    "thread of figures": ("thread-unknown", _THREAD + f"⟪{'9' * 200} BA⟫}}"),
    "thread in a list": ("wrong-shape", _THREAD + "⟪[M3]⟫}"),
    "class left out": ("class-undefined", _RUNS + "fit: ⟪H7/q9⟫}"),
    "grade 99": ("class-undefined", _RUNS + "fit: ⟪H99/g6⟫}"),
    "shaft before hole": ("class-undefined", _RUNS + "fit: ⟪g6/H7⟫}"),
    "fit of no words": ("text-empty", _RUNS + "fit: ⟪''⟫}"),
    "fit of wishes": ("fit-unreadable", _RUNS + "fit: ⟪as nice as you like⟫}"),
    "fit that is true": ("fit-unreadable", _RUNS + "fit: ⟪yes⟫}"),
    "fit that is null": ("fit-unreadable", _RUNS + "fit: ⟪~⟫}"),
    "fit with a tag": ("tag-refused", _RUNS + "fit: ⟪!!python/object:os.system⟫ x}"),
    "duty of wishes": ("fit-unreadable", _RUNS + "duty: ⟪flies to the moon⟫}"),
    "duty too long": ("text-too-long", _RUNS + f"duty: ⟪{'slow ' * 1000}slow⟫}}"),
    "size of nothing": ("out-of-range", _RUNS + "size: ⟪0 mm⟫}"),
    "size below nothing": ("out-of-range", _RUNS + "size: ⟪-6 mm⟫}"),
    "size past all": ("number-too-large", _RUNS + "size: ⟪1e308 mm⟫}"),
    "size without end": ("sign-unknown", _RUNS + "size: ⟪.⟫inf}"),
    "size in sixties": ("sign-unknown", _RUNS + "size: 1⟪:⟫30}"),
    "way of making": ("not-one-of", _RUNS + "made: ⟪by magic⟫}"),
    "load below nothing": ("out-of-range", _RUNS + "load: ⟪-5 N⟫}"),
    "master elsewhere": ("master-not-an-end", _RUNS + "master: ⟪lid⟫}"),
    "key misspelt": ("unknown-key", _RUNS + "⟪pattren⟫: 4 off}"),
    "two kinds": ("kind-twice", _RUNS + "⟪pressed⟫: [shaft.seat, hub.bore]}"),
    "no kind": ("kind-unknown", "⟪a⟫: {fit: H7/g6}"),
    "said twice": ("key-written-twice", f"{_RUNS}fit: push}}\n  ⟪a⟫: {{glued: [lid, box]}}"),
    "with itself": ("joint-with-itself", "⟪a⟫: {runs_in: [shaft.seat, shaft.seat]}"),
    "a repeated value": ("anchor-or-alias", "a: ⟪&x⟫ {runs_in: [shaft.seat, hub.bore]}"),
    "name of no letters": (
        "key-not-plain-words",
        "⟪\u043e\u0441\u044c⟫: {runs_in: [shaft.seat, hub.bore]}",
    ),
    "gap below nothing": ("out-of-range", "a: {retained: [shaft.seat, hub.bore], gap: ⟪-1 mm⟫}"),
    "gap to drive through": (
        "solder-gap-wrong",
        "a: {silver_soldered: [shaft.seat, hub.bore], gap: ⟪9 mm⟫}",
    ),
    "longer than the model": ("screw-bottoms-out", _SCREW + "⟪M3 x 500 mm cap screw⟫}"),
    "bolt longer than it": (
        "screw-too-long",
        "a: {bolted: [lid.h, box.plain], fastener: ⟪M3 x 500 mm bolt⟫}",
    ),
    "unread fastener": ("fastener-unreadable", _SCREW + "⟪some screw thing⟫}"),
    "fastener of nothing": ("fastener-unreadable", _SCREW + "⟪M3 x 0 mm cap screw⟫}"),
    "fastener a figure": ("fastener-unreadable", _SCREW + "⟪3⟫}"),
    "fastener in a list": ("wrong-shape", _SCREW + "⟪[M3 cap screw]⟫}"),
    "fastener with exponent": ("fastener-unreadable", _SCREW + "⟪M3 x 1e308 mm cap screw⟫}"),
    "fastener too long a word": ("text-too-long", _SCREW + f"⟪{'x' * 10000}⟫}}"),
    "fastener in other letters": ("fastener-unreadable", _SCREW + "⟪\u041c3 cap screw⟫}"),
    "wide figures": ("fastener-unreadable", _SCREW + "⟪M\uff13 cap screw⟫}"),
    "unseen letters": ("hidden-character", _SCREW + '"M3 ⟪\\u202e⟫ cap screw"}'),
    "pattern of none": ("pattern-unreadable", _PLACED + "⟪0 off on 16 mm PCD⟫}"),
    "pattern below none": ("pattern-unreadable", _PLACED + "⟪-4 off on 16 mm PCD⟫}"),
    "pattern of a million": ("pattern-unreadable", _PLACED + "⟪1000000 off on 16 mm PCD⟫}"),
    "grid of a million": ("pattern-unreadable", _PLACED + "⟪1000 by 1000 grid at 1 mm x 1 mm⟫}"),
    "pattern of words": ("pattern-unreadable", _PLACED + "⟪all over the place⟫}"),
    "corners that cross": ("pattern-off-face", _PLACED + '⟪"at the corners, 90 mm in"⟫}'),
    "both tapped": (
        "both-halves-tapped",
        "a: {screwed: [⟪lid.t⟫, box.tap], fastener: M3 cap screw}",
    ),
    "held by nothing": (
        "item-unknown",
        "a: {screwed: [lid.underside, box.top], held_by: ⟪nothing⟫}",
    ),
    "key of no such shaft": (
        "hardware-not-listed",
        "a: {keyed: [wheel.bore, pin.rod], fastener: ⟪9 mm parallel key⟫}",
    ),
    "rivet of nothing": (
        "fastener-unreadable",
        "a: {riveted: [lid.top, box.top], fastener: ⟪0 mm snap head rivet⟫}",
    ),
    "dovetail of nothing": ("out-of-range", _TAIL + "width: ⟪0 mm⟫}"),
    "dovetail not told": ("dovetail-size-missing", "⟪a⟫: {dovetailed: [lid.top, box.top]}"),
    "dovetail too deep": ("dovetail-too-deep", _TAIL + "width: 10 mm, depth: ⟪50 mm⟫}"),
    "dovetail upright": ("dovetail-cannot-be-cut", _TAIL + "width: 9 mm, angle: ⟪90 deg⟫}"),
    "ring of wishes": ("seal-ring-unknown", "a: {sealed: [pin.rod, hub.bore], ring: ⟪a ring⟫}"),
    "ring not kept": ("seal-ring-unknown", "a: {sealed: [pin.rod, hub.bore], ring: ⟪AS568-999⟫}"),
    "ring of nothing": (
        "seal-ring-unknown",
        "a: {sealed: [pin.rod, hub.bore], ring: ⟪0 mm x 0 mm⟫}",
    ),
    "gasket of cheese": (
        "gasket-unknown",
        "a: {gasketed: [lid.top, box.top], gasket: ⟪moon cheese⟫}",
    ),
    "rings below none": ("bad-count", "a: {packed: [pin.rod, nut.top], rings: ⟪-3⟫}"),
    "float that shrinks": (
        "out-of-range",
        f"{_SHAFT}shaft: {{along: [hub], end_float: ⟪-1 mm to -2 mm⟫}}",
    ),
    "closed by a stranger": (
        "shaft-unknown",
        f"{_SHAFT}shaft: {{along: [hub], apart: 5 mm, to_suit: ⟪lid⟫}}",
    ),
    "thread never told": ("thread-not-said", "⟪a⟫: {threaded: [pin.rod, nut.top], length: 8 mm}"),
    # What must be found, and was not when these were written.
    "size that is not the shaft's": ("fit-halves-differ", _RUNS + "size: ⟪9 mm⟫}"),
    "size below nothing in words": ("fastener-unreadable", _SCREW + "⟪M3 x -10 mm cap screw⟫}"),
    "along what is not there": (
        "shaft-unknown",
        f"{_SHAFT}shaft: {{along: [hub, ⟪shaft.nope⟫], apart: 9 mm}}",
    ),
    "along itself": ("shaft-unknown", f"{_SHAFT}shaft: {{along: [hub, ⟪shaft⟫], apart: 9 mm}}"),
}
