"""Field types: how a piece of YAML text becomes a number, a grid of values, a ratio or a source."""

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, PlainValidator, WithJsonSchema

# plain digits only, and few enough to stay a number that someone could mean
_DECIMAL = re.compile(r"[-+]?[0-9]{1,30}(\.[0-9]{1,30})?\Z")
_WHOLE = re.compile(r"[0-9]{1,9}\Z")
_STEPPED = re.compile(r"(\S+) to (\S+) step (\S+)\Z")
_SCALAR = {"type": ["string", "number", "boolean"]}
MOST_VALUES = 400
Kind = Literal["numeric", "choice", "multiple_response", "order", "match", "written"]


class Record(BaseModel):
    """A mapping with declared names only; nothing in it changes after reading."""

    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True)


def _said(text: object) -> str:
    if not isinstance(text, str):
        raise ValueError("a piece of text is expected here, not a list or a mapping")
    if not text.strip():
        raise ValueError("this is empty; write the text")
    return text.strip()


def decimal(text: str) -> Fraction:
    """Return the exact value of a plain decimal such as 12 or 0.25; raises ValueError."""
    if not _DECIMAL.match(text.strip()):
        raise ValueError(f"'{text}' is not a number; write digits such as 12 or 0.25")
    return Fraction(text.strip())


def _yes_or_no(text: object) -> bool:
    if text not in ("true", "false"):
        raise ValueError(f"'{text}' is neither 'true' nor 'false'")
    return text == "true"


def _whole(text: object) -> int:
    if not isinstance(text, str) or not _WHOLE.match(text):
        raise ValueError(f"'{text}' is not a whole number")
    return int(text)


def _grid(value: object) -> tuple[str, ...]:
    """Return the allowed values as texts, from a list or from 'A to B step C'."""
    if isinstance(value, list):
        texts = tuple(_said(entry) for entry in value)
    else:
        texts = _stepped(_said(value))
    if not texts:
        raise ValueError("no value is allowed; list at least one")
    if len(set(texts)) < len(texts):
        raise ValueError("a value appears twice in this list")
    return texts


def _stepped(text: str) -> tuple[str, ...]:
    match = _STEPPED.match(text)
    if not match:
        return (text,)
    first, last, step = (decimal(part) for part in match.groups())
    if step <= 0 or last < first:
        raise ValueError(f"'{text}' never gets from its start to its end")
    count = int((last - first) / step) + 1
    if count > MOST_VALUES:
        raise ValueError(f"'{text}' gives {count} values; {MOST_VALUES} is the most")
    return tuple(_plain(first + step * place) for place in range(count))


def _plain(value: Fraction) -> str:
    text = f"{float(value):.9f}".rstrip("0").rstrip(".")
    return text if Fraction(text) == value else str(value)


@dataclass(frozen=True, slots=True)
class SourceTag:
    """Where a statement comes from.

    key    a key of sources.yml, or common_practice, or from_memory
    place  clause, table or page, or empty
    """

    key: str
    place: str

    @property
    def is_published(self) -> bool:
        """Return whether the tag names a document."""
        return self.key not in ("common_practice", "from_memory")


def _sources(value: object) -> tuple[SourceTag, ...]:
    texts = value if isinstance(value, list) else [value]
    tags = tuple(_source(_said(text)) for text in texts)
    if not tags:
        raise ValueError("name a source, or common_practice")
    return tags


def _source(text: str) -> SourceTag:
    key, _, place = text.partition(",")
    if not re.fullmatch(r"[a-z0-9_]+", key.strip()):
        raise ValueError(
            f"'{text}' does not begin with a source key; write 'key, clause' or common_practice"
        )
    return SourceTag(key.strip(), place.strip())


def _cell_rows(value: object) -> tuple[tuple[str, ...], ...]:
    if not isinstance(value, list) or not all(isinstance(row, list) for row in value):
        raise ValueError("rows are lists in square brackets, one a line")
    return tuple(tuple(_said(cell) for cell in row) for row in value)


def _list_of(items: dict[str, Any]) -> dict[str, Any]:
    return {"type": "array", "items": items}


Text = Annotated[str, BeforeValidator(_said), WithJsonSchema(_SCALAR)]
YesNo = Annotated[bool, PlainValidator(_yes_or_no), WithJsonSchema({"type": "boolean"})]
Whole = Annotated[int, PlainValidator(_whole), WithJsonSchema({"type": "integer", "minimum": 0})]
Decimal = Annotated[
    Fraction,
    PlainValidator(lambda text: decimal(_said(text))),
    WithJsonSchema({"type": ["number", "string"]}),
]
ValueGrid = Annotated[
    tuple[str, ...],
    PlainValidator(_grid),
    WithJsonSchema({"anyOf": [{"type": "string"}, _list_of(_SCALAR)]}),
]
Sources = Annotated[
    tuple[SourceTag, ...],
    PlainValidator(_sources),
    WithJsonSchema({"anyOf": [{"type": "string"}, _list_of({"type": "string"})]}),
]
Rows = Annotated[
    tuple[tuple[str, ...], ...],
    PlainValidator(_cell_rows),
    WithJsonSchema(_list_of(_list_of(_SCALAR))),
]
