"""JSON Schemas of the record kinds, for editors that check YAML while it is typed."""

import json
from typing import Any

from pydantic import BaseModel, TypeAdapter

from generator.bank.models import (
    BankSheet,
    Belief,
    Blueprint,
    ChoiceItem,
    DataSheet,
    Fault,
    Giveaways,
    Hazard,
    MatchItem,
    MultipleResponseItem,
    NumericItem,
    OrderItem,
    Outline,
    Procedure,
    RulePlace,
    Source,
    Table,
    Term,
    WrittenItem,
)

_FILES: dict[str, type[BaseModel]] = {
    "bank": BankSheet,
    "outline": Outline,
    "procedure": Procedure,
    "fault": Fault,
    "table": Table,
    "blueprint": Blueprint,
    "data_sheet": DataSheet,
    "giveaways": Giveaways,
}
_NAMED: dict[str, Any] = {
    "sources": dict[str, Source],
    "glossary": dict[str, Term],
    "hazards": dict[str, Hazard],
    "places": dict[str, RulePlace],
    "beliefs": dict[str, Belief],
}
_ANY_ITEM = NumericItem | ChoiceItem | MultipleResponseItem | OrderItem | MatchItem | WrittenItem


def record_schemas() -> dict[str, str]:
    """Return the text of each schema file by its name, such as items.schema.json."""
    schemas = {name: _schema(kind) for name, kind in _FILES.items()}
    schemas |= {name: _schema(kind) for name, kind in _NAMED.items()}
    schemas["items"] = _with_named_sheets(_schema(dict[str, _ANY_ITEM]))
    return {f"{name}.schema.json": _text(name, schema) for name, schema in sorted(schemas.items())}


def _with_named_sheets(schema: dict[str, Any]) -> dict[str, Any]:
    """Let an item name a whole document, which the reader puts in its place."""
    for record in schema["$defs"].values():
        if "stem" in record.get("properties", {}):
            record["properties"]["sheet"]["anyOf"].append({"type": "string"})
    return schema


def _schema(kind: Any) -> dict[str, Any]:
    schema: dict[str, Any] = TypeAdapter(kind).json_schema(by_alias=True)
    return schema


def _text(name: str, schema: dict[str, Any]) -> str:
    head = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$comment": "Written by 'guidecoat check --write-schemas'; do not edit by hand.",
        "title": f"Guidecoat {name}",
    }
    return json.dumps({**schema, **head}, indent=2, sort_keys=True) + "\n"
