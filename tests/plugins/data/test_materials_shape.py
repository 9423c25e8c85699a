"""Every record of a material is whole, and every figure says where it comes from."""

from __future__ import annotations

import re
from collections import Counter
from typing import Any

FORMS = {
    "round bar", "drawn rod", "hexagon bar", "square bar", "flat bar", "strip", "plate", "sheet",
    "tube", "wire", "board", "casting",
}  # fmt: skip
CAUTIONS = {
    "lead", "beryllium", "magnesium-fire", "titanium-swarf-fire", "zinc-fume", "fine-dust",
    "silica", "hardwood-dust", "acid-fume", "ptfe-fume", "sharp-spring",
}  # fmt: skip
PHYSICAL = ("density", "modulus", "expansion")
STRENGTH = ("tensile", "yield", "proof")
NUMBERS = (*PHYSICAL, "shear_modulus", "hardened_hrc", "pv_limit")
KEYS = {
    "id", "names", "designation", "standard", "group", "condition", *NUMBERS, *STRENGTH,
    "hardness", "ranges", "not_given", "other_conditions", "source", "status", "forms",
    "caution", "notes",
}  # fmt: skip
STATUS = {"verified", "memory"}
LONGEST_NOTE = 12  # words; more is not read at the bench

Record = dict[str, Any]


def groups_of(record: Record) -> set[str]:
    given = {key for key in (*NUMBERS, "hardness") if key in record}
    return given | {"strength" for key in STRENGTH if key in record}


def test_about_forty_five_materials_or_more(materials: dict[str, Record]) -> None:
    assert len(materials) >= 45


def test_ids_are_kebab_and_used_once(catalogue: Record, materials: dict[str, Record]) -> None:
    assert len(catalogue["materials"]) == len(materials)
    assert all(re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", key) for key in materials)


def test_a_record_has_no_unknown_key(materials: dict[str, Record]) -> None:
    for record in materials.values():
        assert set(record) <= KEYS, record["id"]


def test_the_words_are_there_and_are_text(materials: dict[str, Record]) -> None:
    for record in materials.values():
        words = [record[key] for key in ("designation", "standard", "group", "condition", "notes")]
        assert all(isinstance(word, str) and word.strip() for word in words), record["id"]
        assert record["names"]
        assert all(isinstance(name, str) and name.strip() == name for name in record["names"])


def test_a_name_means_one_material(materials: dict[str, Record]) -> None:
    names = Counter(name.casefold() for record in materials.values() for name in record["names"])
    assert [name for name, count in names.items() if count > 1] == []


def test_a_name_that_looks_like_another_id_means_that_record(materials: dict[str, Record]) -> None:
    for record in materials.values():
        for name in record["names"]:
            other = name.casefold().replace(" ", "-")
            assert other not in materials or other == record["id"], (record["id"], name)


def test_each_physical_figure_is_given_or_said_to_be_missing(
    materials: dict[str, Record],
) -> None:
    for record in materials.values():
        missing = {key for key in PHYSICAL if key not in record}
        assert missing == set(record.get("not_given", ())), record["id"]
        assert "density" in record, record["id"]


def test_every_figure_has_a_source_and_a_status(
    catalogue: Record, materials: dict[str, Record]
) -> None:
    for record in materials.values():
        groups = groups_of(record)
        assert set(record["source"]) == groups, record["id"]
        assert set(record["status"]) == groups, record["id"]
        assert set(record["source"].values()) <= set(catalogue["sources"]), record["id"]
        assert set(record["status"].values()) <= STATUS, record["id"]


def test_other_conditions_have_a_source_and_a_status(
    catalogue: Record, materials: dict[str, Record]
) -> None:
    for record in materials.values():
        for condition in record.get("other_conditions", {}).values():
            assert condition["source"] in catalogue["sources"]
            assert condition["status"] in STATUS
            assert set(condition) & set(STRENGTH)


def test_verified_means_that_the_source_was_read(
    catalogue: Record, materials: dict[str, Record]
) -> None:
    for record in materials.values():
        for group, status in record["status"].items():
            read = catalogue["sources"][record["source"][group]]["read"]
            assert (status == "verified") == read, (record["id"], group)


def test_every_source_is_described_and_used(
    catalogue: Record, materials: dict[str, Record]
) -> None:
    used = {key for record in materials.values() for key in record["source"].values()}
    used |= {
        condition["source"]
        for record in materials.values()
        for condition in record.get("other_conditions", {}).values()
    }
    assert used == set(catalogue["sources"])
    for source in catalogue["sources"].values():
        assert source["text"].strip()
        assert source["kind"] in {"standard", "handbook", "data sheet", "published table"}


def test_forms_and_cautions_are_of_the_known_lists(materials: dict[str, Record]) -> None:
    for record in materials.values():
        assert record["forms"]
        assert set(record["forms"]) <= FORMS, record["id"]
        assert set(record.get("caution", ())) <= CAUTIONS, record["id"]
        assert len(set(record["forms"])) == len(record["forms"]), record["id"]


def test_notes_are_short_enough_for_the_bench(materials: dict[str, Record]) -> None:
    for record in materials.values():
        assert len(record["notes"].split()) <= LONGEST_NOTE, record["id"]


def test_family_words_lead_to_a_record_that_bears_the_name(
    catalogue: Record, materials: dict[str, Record]
) -> None:
    wanted = {
        "mild steel", "brass", "bronze", "aluminium", "silver steel", "stainless", "cast iron",
        "copper", "oak",
    }  # fmt: skip
    assert wanted <= set(catalogue["defaults"])
    for word, key in catalogue["defaults"].items():
        assert word in materials[key]["names"]


def test_a_family_word_leads_to_a_record_that_is_sold_in_the_form(
    catalogue: Record, materials: dict[str, Record]
) -> None:
    for word, forms in catalogue["by_form"].items():
        assert word in catalogue["defaults"]
        for form, key in forms.items():
            assert form in materials[key]["forms"], (word, form)
