"""A case for every code of the sizes: ⟪ ⟫ marks the characters that the finding points at."""

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
PART = "parts:\n  pin: {material: brass, stock: 6 mm drawn rod, cut: a}\n"


def size(line: str, more: str = "") -> str:
    """A whole spec with one more line under sizes."""
    return f"{HEAD}sizes:\n  a: 6 mm\n  {line}\n{more}{PART}"


CASES = {
    "expression-too-long": size("b: " + "((((((((((((((((((((⟪(⟫a" + ")" * 21),
    "expression-broken": size("b: 2 * ⟪*⟫ a"),
    "sign-unknown": size("b: 2 ⟪^⟫ a"),
    "number-too-long": size("b: ⟪1e999⟫ mm"),
    "decimal-comma": size("b: ⟪1,5⟫ mm"),
    "unit-unknown": size("b: 20 ⟪furlong⟫"),
    "division-by-zero": size("b: a ⟪/⟫ 0"),
    "dimensions-differ": size("b: a ⟪+⟫ 2"),
    "dimension-too-high": size("b: a * a * a ⟪*⟫ a"),
    "size-unknown": size("b: 2 * ⟪aa⟫"),
    "gauge-unknown": size("b: ⟪99 swg⟫"),
    "function-unknown": size("b: ⟪sqrt⟫(4) * a"),
    "function-terms": size("b: ⟪nearest(a)⟫"),
    "series-unknown": size("b: ⟪nearest(a, drawn_rods)⟫"),
    "series-ends": size("b: ⟪next_up(900 mm, drawn_rod)⟫"),
    "out-of-bounds": size("b: ⟪round(a, 0 mm)⟫"),
    "picture-missing": size("b: ⟪picture(412 px)⟫"),
    "picture-known": size("b: picture(412 px)", "⟪picture⟫: {known: {pixels: 260}}\n"),
    "picture-key": size(
        "b: picture(412 px)", "picture: {known: {pixels: 260, is: 60 mm}, ⟪tlit⟫: 4 deg}\n"
    ),
    "picture-known-too-short": size(
        "b: ⟪picture(1412 px)⟫", "picture: {known: {pixels: 260, is: 60 mm}}\n"
    ),
    "choice-open": size(
        "b: ⟪nearest(picture(28 px), drawn_rod)⟫",
        "picture: {known: {pixels: 260, is: 60 mm}, pixel_error: 3 px}\n",
    ),
    "name-taken": size("⟪mm⟫: 3 mm"),
    "sizes-no-table": size("b: ⟪[3 mm, 4 mm]⟫").replace("  b: ⟪[", "  ⟪b⟫: [").replace("]⟫", "]"),
    "sizes-in-a-ring": size("b: ⟪2 * c⟫\n  c: b / 2"),
}
