"""Small models with parts that are marked out."""

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"

BRACKET = """  bracket:
    material: mild steel
    stock: 1.5 mm sheet
    sheet:
      length: 90 mm
      width: 30 mm
      thickness: 1.5 mm
      bends:
        - {at: 30 mm, angle: 90 deg, inside: 2 mm}
        - {at: 60 mm, angle: 90 deg, inside: 2 mm, way: down}
    features:
      left: {drilled: 4 mm, on: leg1, at: 10 mm from left, depth: through}
      middle: {drilled: 3 mm, on: leg2, depth: through, off: 2, pattern: 15 mm apart}
      foot: {drilled: 5 mm, on: leg3, depth: through}
"""

LEVER = """  lever:
    material: mild steel
    stock: 3 mm sheet
    sheet:
      length: 60 mm
      width: 20 mm
      thickness: 3 mm
      points:
        - {x: 0 mm, y: 0 mm}
        - {x: 50 mm, y: 0 mm}
        - {x: 50 mm, y: 20 mm, arc: 10 mm}
        - {x: 0 mm, y: 20 mm}
    features:
      pivot: {reamed: 6 mm, depth: through, at: "50 mm from left, 10 mm from front"}
"""

FRAME = """  frame:
    title: side frame
    material: mild steel
    stock: 3 mm plate
    plate: {length: 420 mm, width: 260 mm, thickness: 3 mm}
    features:
      main: {bored: 40 mm, depth: through, at: "100 mm from left, 120 mm from front"}
      rim:
        drilled: 4 mm
        depth: through
        off: 6
        pattern: on 80 mm PCD
        at: "100 mm from left, 120 mm from front"
      feet: {drilled: 5 mm, depth: through, off: 4, pattern: "at the corners, 10 mm in"}
"""

COVER = """  cover:
    material: cast iron
    stock: round bar
    turned:
      - {name: spigot, diameter: 30 mm, length: 4 mm}
      - {name: rim, diameter: 60 mm, length: 6 mm}
    features:
      studs: {tapped: M4, on: right, depth: through, off: 6, pattern: on 48 mm PCD}
      rod: {reamed: 8 mm, on: right, depth: through}
"""

BED = """  bed:
    material: mild steel
    stock: 6 mm plate
    plate: {length: 150 mm, width: 50 mm, thickness: 6 mm}
    features:
      way: {slotted: 16 mm, length: 150 mm, depth: 4 mm, on: top}
      holes: {drilled: 4 mm, depth: through, off: 4, pattern: "at the corners, 8 mm in"}
      heads:
        counterbored: 7 mm
        on: underside
        depth: 1.5 mm
        off: 4
        pattern: "at the corners, 8 mm in"
"""
