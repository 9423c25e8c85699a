"""A case for every code of the language, of names and of the built-in plugins."""

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
PIN = "  pin: {material: brass, stock: 6 mm drawn rod, cut: 40 mm}\n"
ARM = (
    "  arm: {material: brass, stock: 10 mm x 6 mm flat bar, cut: 40 mm,"
    " features: {bore: {reamed: 6 mm}, eye: {reamed: 3 mm}}}\n"
)


def parts(text: str) -> str:
    """A spec with these parts and what follows them."""
    return f"{HEAD}parts:\n{text}"


def pin(entry: str, more: str = "") -> str:
    """A spec of one part."""
    return parts(f"  pin: {{material: brass, {entry}}}\n{more}")


def joined(line: str, more: str = "") -> str:
    """A spec of a pin and an arm with one joint."""
    return parts(f"{PIN}{ARM}joints:\n  {line}\n{more}")


def joined_up(stack: str) -> str:
    """A spec of three pins soldered together."""
    line = f"{{pieces: [3 off pin], joined: soldered, stack: [{stack}]}}"
    return parts(f"{PIN}{ARM}fabrications:\n  pile: {line}\n")


CASES = {
    "unknown-key": pin("⟪stok⟫: 6 mm drawn rod, cut: 40 mm"),
    "key-missing": parts("  ⟪pin⟫: {stock: 6 mm drawn rod, cut: 40 mm}\n"),
    "wrong-shape": parts("  pin: ⟪brass⟫\n"),
    "kind-unknown": pin("cut: 40 mm, features: {hole: {⟪driled⟫: 3 mm}}"),
    "kind-twice": pin("cut: 40 mm, features: {hole: {drilled: 3 mm, ⟪tapped⟫: M4}}"),
    "unit-missing": pin("cut: ⟪40⟫"),
    "wrong-dimension": pin("cut: ⟪40 deg⟫"),
    "out-of-range": pin("cut: ⟪-40 mm⟫"),
    "not-true-or-false": pin("cut: 40 mm, dummy: ⟪yes⟫"),
    "not-one-of": parts(PIN).replace("units: mm", "units: ⟪metric⟫"),
    "bad-count": pin("cut: 40 mm, quantity: ⟪2.5⟫"),
    "bad-name": parts(f"{PIN}fabrications:\n  rod: {{pieces: [2 off pin], joined: ⟪silver!⟫}}\n"),
    "bad-reference": joined("a: {slides: [⟪pin rod⟫, arm.bore]}"),
    "bad-member": parts(f"{PIN}assemblies:\n  all: {{of: [⟪2 pins⟫]}}\n"),
    "bad-taper": pin("turned: [{taper: ⟪6 mm⟫, length: 4 mm}]"),
    "bad-range": parts(f"{PIN}shafts:\n  pin: {{along: [pin], end_float: ⟪0.2 mm⟫}}\n"),
    "thread-unknown": pin("cut: 40 mm, features: {hole: {tapped: ⟪M3 x⟫}}"),
    "stock-unknown": pin("stock: ⟪6 mm rodd⟫, cut: 40 mm"),
    "stock-sizes": pin("stock: ⟪6 mm flat bar⟫, cut: 40 mm"),
    "text-too-long": pin(f"cut: 40 mm, note: ⟪{'word ' * 900}end⟫"),
    "text-empty": pin('cut: 40 mm, note: ⟪""⟫'),
    "list-length": joined("a: {slides: ⟪[pin]⟫}"),
    "like-unknown": parts(f"{PIN}  long_pin: {{like: ⟪pni⟫}}\n"),
    "like-ring": parts(f"{PIN}  one: {{like: two}}\n  two: {{like: ⟪one⟫}}\n"),
    "like-nothing-there": parts(f"{ARM}  bare: {{like: arm, features: {{⟪oyl⟫: left out}}}}\n"),
    "mirrored-alone": pin("cut: 40 mm, ⟪mirrored⟫: true"),
    "stack-of-others": joined_up("{piece: pin}, {piece: ⟪arm⟫}"),
    "stack-not-laid-out": joined_up("{piece: pin}, {piece: ⟪pin⟫, off: 2}"),
    "hand-of-round-work": parts(
        "  pin: {material: brass, turned: [{name: rod, diameter: 6 mm, length: 9 mm}]}\n"
        "  ⟪nip⟫: {like: pin, mirrored: true}\n"
    ),
    "hands-alike": parts(
        "  ⟪post⟫: {material: brass, quantity: 2, handed: true, block: {length: 40 mm,"
        " width: 12 mm, height: 8 mm}, features: {seat: {tapped: M4, on: front, depth: through,"
        " at: 30 mm from left}}}\n"
    ),
    "filed-to-nothing": pin("cut: 40 mm, features: {nose: {filed: ⟪to the rachet⟫}}"),
    "filed-to-no-size": parts(
        f"{PIN}  head: {{material: brass, cut: 20 mm, stock: 6 mm drawn rod, features:"
        " {nose: {filed: ⟪to the pin's point⟫}}}\n"
    ).replace("cut: 40 mm}", "cut: 40 mm, features: {point: {filed: to a neat point}}}"),
    "filed-to-each-other": parts(
        f"{PIN}  head: {{material: brass, cut: 20 mm, stock: 6 mm drawn rod, features:"
        " {eye: {filed: ⟪to the pin⟫}}}\n"
    ).replace("cut: 40 mm}", "cut: 40 mm, features: {point: {filed: to enter the head}}}"),
    "opening-without-start": pin("cut: 40 mm, features: {window: {filed: ⟪square hole of 3 mm⟫}}"),
    "name-twice": parts(f"{PIN}bought:\n  ⟪pin⟫: {{what: a pin}}\n"),
    "item-unknown": joined("a: {slides: [pin, ⟪amr.bore⟫]}"),
    "place-unknown": joined("a: {slides: [pin, ⟪arm.boer⟫]}"),
    "master-not-an-end": joined("a: {slides: [pin, arm.bore], master: ⟪arm.eye⟫}"),
    "joint-with-itself": joined("⟪a⟫: {slides: [arm.bore, arm.bore]}"),
    "assembly-ring": parts(
        f"{PIN}assemblies:\n  ⟪one⟫: {{of: [two, pin]}}\n  two: {{of: [one]}}\n"
    ),
    "in-no-assembly": parts(f"{PIN}{ARM}assemblies:\n  all: {{of: [pin]}}\n").replace(
        "  arm:", "  ⟪arm⟫:"
    ),
    "size-unused": f"{HEAD}sizes: {{⟪bar⟫: 20 mm}}\nparts:\n{PIN}",
    "bore-of-two-sizes": parts(
        "  pin: {material: brass, turned: [{name: rod, diameter: 6 mm, length: 9 mm},"
        " {name: thin, diameter: 4 mm, length: 9 mm}]}\n"
        "  arm: {material: bronze, block: {length: 30 mm, width: 20 mm, height: 9 mm},"
        " features: {bore: {reamed: to suit, on: top}}}\n"
        "joints:\n  a: {runs_in: [pin.rod, arm.bore]}\n"
        "  b: {runs_in: [pin.thin, ⟪arm.bore⟫]}\n"
    ),
    "joint-said-twice": joined("a: {tied: [pin, arm]}", "  ⟪b⟫: {tied: [arm, pin]}\n"),
    "part-with-itself": joined("⟪a⟫: {tied: [arm.bore, arm.eye]}"),
    "fit-of-two": joined("a: {slides: [pin, arm.bore, ⟪arm.eye⟫]}"),
    "still-to-suit": parts(
        "  arm: {material: brass, stock: 10 mm x 6 mm flat bar, cut: 40 mm,"
        " features: {bore: {reamed: ⟪to suit⟫}}}\n"
    ),
    "holder-missing": joined("⟪a⟫: {pinned: [pin, arm.bore]}"),
    "surface-claimed": joined("a: {slides: [pin, arm.bore]}\n  b: {runs_in: [pin, ⟪arm.bore⟫]}"),
    "threaded-backwards": joined("a: {threaded: [⟪arm.tap⟫, pin]}").replace(
        "eye: {reamed: 3 mm}", "tap: {tapped: M3}"
    ),
    "count-disagrees": parts(
        "  ⟪pin⟫: {material: brass, stock: 6 mm drawn rod, cut: 40 mm, quantity: 3}\n"
        "assemblies:\n  all: {of: [2 off pin]}\n"
    ),
    "order-loops": parts(
        "  pin: {material: brass, turned: [{name: rod, diameter: 6 mm, length: 9 mm},"
        " {name: tip, diameter: 3 mm, length: 9 mm}]}\n"
        f"{ARM.replace('reamed', 'bored')}joints:\n"
        "  ⟪a⟫: {slides: [pin.rod, arm.bore], master: pin.rod}\n"
        "  b: {slides: [pin.tip, arm.eye], master: arm.eye}\n"
    ),
    "tested-too-soon": parts(
        "  rod: {material: brass, turned: [{name: journal, diameter: 6 mm, length: 40 mm}]}\n"
        "  bed: {material: brass, plate: {length: 60 mm, width: 20 mm, thickness: 6 mm}}\n"
        "  stand: {material: brass, quantity: 2, block: {length: 20 mm, width: 6 mm,"
        " height: 20 mm}, features: {bore: {reamed: 6 mm, on: front, depth: through}}}\n"
        "joints:\n"
        "  a: {runs_in: [rod.journal, stand.bore], duty: runs}\n"
        "  b: {screwed: [bed.underside, stand.underside], fastener: M3 socket cap screw}\n"
        "assemblies:\n"
        "  ⟪shaft⟫: {of: [rod, 2 off stand], test: it spins}\n"
        "  all: {of: [shaft, bed]}\n"
    ),
    "head-out-of-reach": parts(
        "  base: {material: oak, board: {length: 90 mm, width: 60 mm, thickness: 20 mm}}\n"
        "  foot: {material: brass, plate: {length: 50 mm, width: 40 mm, thickness: 3 mm},"
        " features: {seat: {bored: 8 mm, on: top, depth: through}}}\n"
        "  post: {material: brass, turned: [{name: spigot, diameter: 8 mm, length: 3 mm},"
        " {name: mast, diameter: 12 mm, length: 20 mm},"
        " {name: deck, diameter: 46 mm, length: 3 mm}]}\n"
        "joints:\n"
        "  a: {pressed: [post.spigot, foot.seat]}\n"
        "  ⟪b⟫: {screwed: [foot.underside, base.top], pattern: 4 off at the corners 6 mm in,"
        " fastener: no. 4 x 1/2 in brass wood screw}\n"
        "stands: base\n"
        "positions: {foot: {at: middle of base}}\n"
        "assemblies:\n"
        "  mast: {of: [post, foot]}\n"
        "  all: {of: [mast, base]}\n"
    ),
    "put-on-by-no-step": joined(
        "a: {slides: [pin, arm.bore]}",
        'bought:\n  ring: {what: "6 mm washer"}\nassemblies:\n  ⟪all⟫: {of: [pin, arm, ring]}\n',
    ),
    "waits-on-unmeasured": joined(
        "⟪a⟫: {pressed: [gear, arm.bore]}", "scrap_box:\n  gear: {what: a gear}\n"
    ),
    "bar-too-short": pin("stock: ⟪6 mm drawn rod⟫, cut: 1200 mm"),
    "material-unknown": parts("  pin: {material: ⟪unobtainium⟫, stock: 6 mm wire, cut: 9 mm}\n"),
    "form-not-sold": parts(
        "  pin: {material: silver steel, stock: ⟪2 mm sheet⟫,"
        " plate: {length: 9 mm, width: 9 mm, thickness: 2 mm}}\n"
    ),
    "size-missing": parts("  ⟪pin⟫: {material: brass, stock: 6 mm drawn rod}\n"),
    "sizes-do-not-add": pin("turned: [{diameter: 6 mm, length: 9 mm}], overall: ⟪12 mm⟫"),
    "rest-twice": pin(
        "turned: [{diameter: 6 mm, length: rest}, {diameter: 4 mm, length: ⟪rest⟫}], overall: 9 mm"
    ),
    "section-unclear": pin("turned: [{length: ⟪9 mm⟫}]"),
    "stock-too-small": pin("stock: ⟪5 mm round bar⟫, turned: [{diameter: 6 mm, length: 9 mm}]"),
    "stock-wrong-form": pin("stock: ⟪2 mm sheet⟫, turned: [{diameter: 6 mm, length: 9 mm}]"),
    "place-on-nothing": pin(
        "turned: [{name: shank, diameter: 6 mm, length: 9 mm}],"
        " features: {hole: {drilled: 2 mm, on: ⟪shnak⟫}}"
    ),
    "deeper-than-part": pin(
        "turned: [{name: shank, diameter: 6 mm, length: 9 mm}],"
        " features: {hole: {drilled: 2 mm, on: shank, depth: ⟪12 mm⟫}}"
    ),
    "hole-out-of-step": pin(
        "turned: [{name: shank, diameter: 6 mm, length: 9 mm}],"
        " features: {hole: {drilled: ⟪6 mm⟫, on: shank, depth: through}}"
    ),
    "section-not-sold": pin("stock: ⟪13.37 mm round bar⟫, cut: 40 mm"),
}
