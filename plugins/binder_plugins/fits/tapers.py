"""Joints by a taper: the bore from the taper of the shaft, how far it goes on, how it is made."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    End,
    Fact,
    Feature,
    Given,
    HalfFact,
    Joint,
    Labelled,
    PlaceFact,
    Size,
    Working,
    exact,
    implied_feature,
    made_size,
    shown_length,
)
from binder_plugins.fits import joining_codes as codes
from binder_plugins.fits.ends import feature_at
from binder_plugins.fits.figures import size
from binder_plugins.fits.suiting import first_end
from binder_trade.tapers import Taper, from_diameters, holding, press_on

# How far a hub stands off its shoulder when it is pushed on by hand, as interference that the
# push home then takes up: common practice, no source.
_NIP_SHARE = 0.001
_SAME_SHARE = 0.005
_USUAL_RATE = 10
_DRAWS = ("screwed", "bolted", "threaded", "studded", "keyed", "pinned", "clipped")
_BORES = ("bored", "reamed", "drilled")
# Where one lathe cuts both halves the leaf says that the slide stays; it may be moved all the same.
# Common practice, no source.
_FIRST = "how the slide reads written down for the other half"
_AGAIN = "as it was left, or set again by what was written down for the other half, then by blue"
_BY_BLUE = "then set by blue"
_MARKS = "it marks all round, over three quarters"


@dataclass(frozen=True, slots=True)
class TaperFit:
    """A taper and its bore in mm: the cone of the shaft, the mouth, and the draw on it.

    `written` is the cone of a bore that the maker wrote, None where it follows.
    """

    joint: Joint
    shaft: End
    bore: End
    cone: Taper
    mouth_mm: float
    small_mm: float
    draw_mm: float
    feature: Feature | None
    place: PlaceFact | None
    written: Taper | None


def taper_fits(design: Design) -> dict[str, TaperFit | Diagnostic]:
    """The tapers of a design by their joints, each settled or refused."""
    cones = (one for one in design.joints.values() if one.kind == "tapered")
    found = ((one.name, taper_fit(one, design)) for one in cones)
    return {name: one for name, one in found if one is not None}


def tapered(cones: dict[str, TaperFit | Diagnostic], design: Design) -> Contribution:
    """All that follows from tapers: both halves, the bore that was left to suit, the sums."""
    fits = [one for one in cones.values() if isinstance(one, TaperFit)]
    refused = [one for one in cones.values() if isinstance(one, Diagnostic)]
    return Contribution(
        facts=[fact for one in fits for fact in taper_facts(one, design)],
        features=[feature for one in fits for feature in taper_features(one, design)],
        workings=[taper_working(one, design.units) for one in fits],
        findings=[*refused, *(found for one in fits for found in taper_findings(one, design))],
    )


def taper_fit(joint: Joint, design: Design) -> TaperFit | Diagnostic | None:
    """The two halves of a joint by a taper, or what is wrong; None where one is bought."""
    ends = [(end, design.facts.about(PlaceFact, str(end))) for end in joint.ends]
    holes = [end for end, place in ends if place is not None and place.form in ("hole", "face")]
    shafts = [end for end, place in ends if place is not None and place.form == "step"]
    if not shafts or not holes:
        return None
    shaft, bore = shafts[0], holes[0]
    cone = _cone(shaft, design)
    if cone is None:
        return _plain_shaft(joint, shaft, design)
    return _halves(joint, shaft, bore, cone, design)


def _cone(shaft: End, design: Design) -> Taper | None:
    """The taper of the step that is named."""
    place = design.facts.about(PlaceFact, str(shaft))
    part = design.parts.get(shaft.item)
    steps = part.shape if part is not None and isinstance(part.shape, list) else []
    step = next((one for one in steps if str(one.name or "") == shaft.place), None)
    if step is None or step.taper is None or place is None or place.length is None:
        return None
    ends = sorted((step.taper.start.mm, step.taper.end.mm))
    if ends[0] == ends[1] or place.length <= 0:
        return None
    return from_diameters(ends[1], ends[0], float(place.length))


def _plain_shaft(joint: Joint, shaft: End, design: Design) -> Diagnostic:
    place = design.facts.about(PlaceFact, str(shaft))
    words = "1 in 10"
    if place is not None and place.diameter is not None and place.length is not None:
        large = place.diameter
        small = exact(round(float(large - place.length / _USUAL_RATE), 2))
        if small > 0:
            words = f"`taper: {shown_length(large)} to {shown_length(small)}`, 1 in {_USUAL_RATE}"
    return codes.TAPER_MISSING.at(
        shaft.at,
        f"'{joint.name}' is a taper joint, and '{shaft}' is a plain cylinder",
        help=f"give the step {words}; or fit the two by `pressed:` or `retained:`",
    )


def _halves(
    joint: Joint, shaft: End, bore: End, cone: Taper, design: Design
) -> TaperFit | Diagnostic | None:
    place = design.facts.about(PlaceFact, str(bore))
    feature = feature_at(bore, design)
    deep = _depth(place)
    if place is None or deep is None:
        return None
    nip = _NIP_SHARE * cone.large_mm
    draw, mouth = press_on(cone, nip), cone.large_mm - nip
    # A hub longer than the cone goes on narrowing: cut with one setting, it has one rate.
    found = TaperFit(joint, shaft, bore, cone, mouth, mouth - deep / cone.one_in, draw, feature,
                     place, None)  # fmt: skip
    if place.form == "face" or place.is_to_suit:
        return found if found.small_mm > 0 else None
    return _as_written(found, deep)


def _depth(place: PlaceFact | None) -> float | None:
    if place is None:
        return None
    deep = place.depth if place.depth is not None else place.thickness
    return float(deep) if deep is not None and deep > 0 else None


def _as_written(found: TaperFit, deep: float) -> TaperFit | Diagnostic:
    """A bore that is written: of the same rate, and so large that it stops on the taper."""
    bore, cone, place = found.bore, found.cone, found.place
    small = getattr(found.feature.entry, "narrows_to", None) if found.feature else None
    mouth = float(place.diameter) if place is not None and place.diameter is not None else 0.0
    if not isinstance(small, Size) or not 0 < small.mm < mouth:
        return codes.TAPER_MISSING.at(
            bore.at,
            f"'{found.joint.name}' is a taper joint, and '{bore}' is a plain hole",
            related=[Labelled(found.shaft.at, f"this is 1 in {cone.one_in:.4g}")],
            help="write it as `bored: to suit`, and it follows from the shaft",
        )
    written = from_diameters(mouth, small.mm, deep)
    stands_off = (cone.large_mm - mouth) * cone.one_in
    is_alike = abs(written.one_in / cone.one_in - 1) <= _SAME_SHARE
    if is_alike and 0 <= stands_off < cone.length_mm:
        return replace(found, mouth_mm=mouth, small_mm=small.mm, draw_mm=stands_off,
                       written=written)  # fmt: skip
    rates = f"the bore is 1 in {written.one_in:.4g}, the taper 1 in {cone.one_in:.4g}"
    never = f"a mouth of {mouth:g} mm never touches a taper of {cone.large_mm:g} mm"
    return codes.TAPER_HALVES_DIFFER.at(
        bore.at,
        never if is_alike else rates,
        related=[Labelled(found.shaft.at, "this is the other half")],
        help=f"write `bored: to suit`, or {found.mouth_mm:.3f} mm narrowing to "
        f"{found.mouth_mm - deep / cone.one_in:.3f} mm",
    )


def taper_findings(found: TaperFit, design: Design) -> Iterator[Diagnostic]:
    """A blunt taper that nothing draws in."""
    items = {found.shaft.item, found.bore.item}
    held = any(
        one.kind in _DRAWS and items & set(one.items) and one.name != found.joint.name
        for one in design.joints.values()
    )
    if holding(found.cone.half_angle_deg) == "lets go" and not held and not found.joint.held_by:
        yield codes.TAPER_DOES_NOT_HOLD.at(
            found.shaft.at,
            f"a taper of 1 in {found.cone.one_in:.3g} lets go by itself",
            help="make it 1 in 10 or finer, or draw it in by a nut or a screw",
        )


def taper_features(found: TaperFit, design: Design) -> Iterator[Feature]:
    """The taper bore that was left to suit, or that a face gets."""
    joint, place = found.joint, found.place
    if place is None or found.written is not None or found.bore.item in design.bought:
        return
    sizes: dict[str, object] = {"narrows_to": made_size(found.small_mm, joint)}
    mouth = made_size(found.mouth_mm, joint)
    if found.feature is None:
        name = joint.name.replace(" ", "_")
        values = {"bored": mouth, "on": found.bore.place, "depth": "through", **sizes}
        yield implied_feature(design, joint, found.bore.item, name, "bored", **values)
    elif found.feature.kind in _BORES:
        old = found.feature
        kept = {name: getattr(old.entry, name) for name in type(old.entry).model_fields}
        kept |= {old.kind: mouth, **sizes}
        yield implied_feature(design, joint, old.owner, old.name, old.kind, **kept)


def taper_facts(found: TaperFit, design: Design) -> Iterator[Fact]:
    """Both halves for their leaves: the cone, its gauge diameter, and how far it goes on."""
    cone, units = found.cone, design.units
    rate = f"taper 1 in {cone.one_in:.4g} ({cone.included_deg:.3f}° included)"
    off = shown_length(exact(round(found.draw_mm, 2)), units)
    set_to = f"topslide {cone.half_angle_deg:.3f}°"
    bore = f"{rate}, ⌀{size(found.mouth_mm, units)} at its mouth to ⌀{size(found.small_mm, units)}"
    shaft = f"{rate}, ⌀{size(cone.large_mm, units)} to ⌀{size(cone.small_mm, units)}"
    first = str(first_end(found.joint))
    goes = f"pushed on by hand the mouth stands {off} from the large end"
    for end, other, words in ((found.bore, found.shaft, bore), (found.shaft, found.bore, shaft)):
        is_master = str(end) == first
        how = f"{set_to}, {_set(is_first=is_master, by_bought=other.item in design.bought)}; {goes}"
        yield HalfFact(
            f"{found.joint.name}: {end}", found.joint.name, end.item, end.place, words,
            str(other), how, is_master=is_master,
        )  # fmt: skip


def _set(*, is_first: bool, by_bought: bool) -> str:
    """How the slide is set for a half: by the other, where that is there."""
    if by_bought:
        return f"{_BY_BLUE}: {_MARKS}"
    return _FIRST if is_first else f"{_AGAIN}: {_MARKS}"


def taper_working(found: TaperFit, units: str) -> Working:
    """The sum behind a taper: its rate, the setting, and the draw."""
    cone = found.cone
    given = (
        Given("large end", f"{size(cone.large_mm, units)}", found.shaft.at),
        Given("small end", f"{size(cone.small_mm, units)}", found.shaft.at),
        Given("length", shown_length(exact(cone.length_mm), units), found.shaft.at),
        Given("mouth", f"{size(found.mouth_mm, units)}", found.bore.at),
    )
    sums = "; ".join(f"{step.name}: {step.formula} = {step.value}" for step in cone.steps[2:])
    off = shown_length(exact(round(found.draw_mm, 2)), units)
    return Working(
        id=f"{found.joint.name.replace(' ', '_')}.taper",
        title=f"taper of '{found.joint.name}'",
        given=given,
        formula=f"{sums}; draw: n × (large end − mouth)",
        result=f"1 in {cone.one_in:.4g}, draw {off}",
        because="both halves follow from the taper of the shaft",
        source="plane geometry of the cone; a thousandth of nip, common practice",
        span=found.joint.at,
    )
