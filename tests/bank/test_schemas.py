"""Schemas: current, sound, wide enough for the real bank and narrow enough to refuse a broken one.

The bank is read here as an editor reads it, with the guesses of YAML 1.1.
"""

import json
from pathlib import Path
from typing import Any

import pytest
import yaml
from jsonschema import Draft202012Validator

from generator.bank.schemas import record_schemas
from tests.bank.small_bank import REPOSITORY, SMALL_PROJECT

BANK = REPOSITORY / "question_bank"
FILES = {
    "bank": "bank.yml",
    "outline": "outline.yml",
    "sources": "sources.yml",
    "glossary": "glossary.yml",
    "procedure": "procedures/*.yml",
    "fault": "faults/*.yml",
    "table": "tables/*.yml",
    "blueprint": "blueprints/*.yml",
    "items": "items/*/*.yml",
    "hazards": "hazards.yml",
    "places": "places.yml",
    "giveaways": "giveaways.yml",
    "data_sheet": "data_sheets/*.yml",
    "beliefs": "beliefs/*.yml",
}


def validator(name: str) -> Draft202012Validator:
    return Draft202012Validator(json.loads(record_schemas()[f"{name}.schema.json"]))


def guessed(path: Path) -> Any:
    """Read a file as editors do."""
    return yaml.load(path.read_text("utf-8"), Loader=getattr(yaml, "CSafeLoader", yaml.SafeLoader))


def test_the_schemas_in_the_bank_are_current() -> None:
    written = {path.name: path.read_text("utf-8") for path in (BANK / "schemas").iterdir()}
    assert written == record_schemas()


def test_there_is_a_schema_for_every_kind_of_file() -> None:
    assert {f"{name}.schema.json" for name in FILES} == set(record_schemas())


@pytest.mark.parametrize("name", FILES)
def test_a_schema_is_itself_a_sound_schema(name: str) -> None:
    Draft202012Validator.check_schema(json.loads(record_schemas()[f"{name}.schema.json"]))


@pytest.mark.parametrize("name", FILES)
@pytest.mark.parametrize("bank", [BANK, SMALL_PROJECT / "question_bank"], ids=["real", "small"])
def test_a_schema_accepts_every_file_of_a_sound_bank(name: str, bank: Path) -> None:
    paths = sorted(bank.glob(FILES[name]))
    assert paths
    rules = validator(name)
    found = [
        f"{path.name} {list(error.absolute_path)}: {error.message[:200]}"
        for path in paths
        for error in rules.iter_errors(guessed(path))
    ]
    assert found == []


@pytest.mark.parametrize(
    ("name", "file", "old", "new"),
    [
        ("items", "items/filler/mix.yml", "  level: recall\n", ""),
        ("items", "items/filler/mix.yml", "kind: choice", "kind: choise"),
        ("items", "items/filler/mix.yml", "      right: true", "      rigth: true"),
        ("items", "items/film_build/dry_from_wet.yml", "  answer:", "  anwser:"),
        ("fault", "faults/soft_filler.yml", "family: material", "family: paint"),
        ("procedure", "procedures/mix_filler.yml", "class: danger", "class: risky"),
        ("table", "tables/hardener_by_heat.yml", "rows:", "lines:"),
        ("blueprint", "blueprints/quick_check.yml", "minutes: 10", "minutes: ten"),
        ("glossary", "glossary.yml", "term: gel time", "word: gel time"),
        ("sources", "sources.yml", "status: restated", "status: hearsay"),
        ("outline", "outline.yml", "module: curing", "modul: curing"),
        ("bank", "bank.yml", "title:", "name:"),
    ],
)
def test_a_schema_refuses_a_broken_record(name: str, file: str, old: str, new: str) -> None:
    text = (SMALL_PROJECT / "question_bank" / file).read_text("utf-8")
    assert old in text
    broken = yaml.safe_load(text.replace(old, new, 1))
    assert list(validator(name).iter_errors(broken))
