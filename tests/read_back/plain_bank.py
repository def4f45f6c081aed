"""The question bank read as plain YAML: every value a text, nothing checked or worked out."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

import yaml

from tests.printing.pdf_reading import squeezed

Record = dict[str, Any]


@dataclass(frozen=True, slots=True)
class PlainBank:
    """Records by their names, as a key prints them."""

    items: dict[str, Record]
    procedures: dict[str, Record]
    faults: dict[str, Record]
    tables: dict[str, Record]


def plain_bank(root: Path) -> PlainBank:
    """Read every record of a bank's folder."""
    items = {
        f"{path.parent.name}/{path.stem}/{name}": record
        for path in sorted((root / "items").glob("*/*.yml"))
        for name, record in _read(path).items()
    }
    whole = {
        kind: {path.stem: _read(path) for path in sorted((root / kind).glob("*.yml"))}
        for kind in ("procedures", "faults", "tables")
    }
    return PlainBank(items, **whole)


def bare(text: str) -> str:
    """Return a text as it can be looked for on a page: no spaces, no marks of emphasis."""
    return squeezed(text.replace("*", ""))


def inside(text: str) -> str:
    """Return a text as it can be looked for inside another sentence."""
    return bare(text).rstrip(".").casefold()


def templates(item: Record) -> list[str]:
    """Return the stem and the rows of an item's sheet, with their placeholders."""
    sheet = item.get("sheet") or {"rows": []}
    return [item["stem"], *("".join(row) for row in sheet["rows"])]


def _read(path: Path) -> Record:
    # the base loader makes no numbers of texts, so that 0.10 stays 0.10
    return yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader) or {}
