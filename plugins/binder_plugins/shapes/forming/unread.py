"""Places and patterns in words that could not be laid out, to findings."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import Diagnostic, Fabrication, Part, did_you_mean
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.forming.locating import Made
from binder_plugins.shapes.forming.whereabouts import placed_entry

_AT = ("middle", "start", "end", "6 mm from left", "4 mm from front", "12 mm above bore")


def unread_places(part: Part | Fabrication, made: Iterable[Made]) -> Iterator[Diagnostic]:
    """What the drawing cannot show as it is written; what is there for looks may stay so.

    What a joint asks for stands where its other half does, and is spotted through.
    """
    for one in made:
        if one.feature.is_dummy or one.feature.entry.because or one.feature.implied_by:
            continue
        entry = placed_entry(one.feature)
        if one.place.unread and entry.at is not None:
            word = one.place.unread[0]
            yield form_codes.PLACE_NOT_READ.at(
                entry.at.text.span,
                f"'{word}' places nothing on '{part.name}'",
                help=did_you_mean(word, _AT) or f"as in: {'; '.join(_AT)}",
            )
        # A pattern that was written and cannot be read is said by those who read patterns.
        if not one.around.is_read and entry.pattern is None:
            yield form_codes.PATTERN_NOT_LAID_OUT.at(
                one.feature.at,
                f"the {entry.off or 'several'} of '{one.feature.name}' cannot be laid out",
                help="say how they stand: `4 off on 16 mm PCD`, `14 mm apart`, "
                "`at the corners, 6 mm in`",
            )
