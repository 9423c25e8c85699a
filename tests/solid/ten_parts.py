"""Ten parts of the usual kinds, for tests of what is drawn of them."""

from __future__ import annotations

from binder_solid import bodies, outlines
from binder_solid.forms import Box, Cut, Cylinder, Form, Frame, Joined, Raised, Ring

CROSS = Frame((20.0, 0.0, -20.0))
PARTS: dict[str, Form] = {
    "bar": bodies.round_bar(20, 40),
    "spindle": bodies.turned_steps([(10, 5), (6, 20), (8, 3)]),
    "cross-drilled bar": Cut(bodies.round_bar(20, 40), (Cylinder(3, 40, CROSS),)),
    "cross-drilled tube": Cut(
        bodies.round_bar(20, 40), (Cylinder(3, 40, CROSS), bodies.round_bar(10, 50, -5))
    ),
    "stepped block": Cut(
        Box(60, 30, 20),
        (
            Box(62, 10, 12, Frame((-1, 20, 10))),
            Cylinder(3, 22, Frame((10, 8, -1))),
            Cylinder(2, 12, Frame((45, 8, 9))),
        ),
    ),
    "hexagon": bodies.hexagon_bar(10, 18),
    "bar with a flat": bodies.flat_on(bodies.round_bar(12, 30), 6, 10, 8, 4),
    "pulley": bodies.vee_pulley(40, 12, 5, 90, 0, 6),
    "bracket": Joined(
        (Box(40, 30, 5), Box(4, 30, 25), Raised(outlines.circle(6), 10, Frame((25, 15, 5))))
    ),
    "round pulley": bodies.round_pulley(30, 8, 3, 5),
    "ball handle": bodies.ball_handle(10, 5, 30),
    "ring": Ring(20.0, 6.0, Frame(z=(1.0, 0.0, 0.0), x=(0.0, 1.0, 0.0))),
}
