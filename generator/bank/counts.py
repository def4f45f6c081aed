"""How much the bank holds, by kind, module, source and pool."""

from collections import Counter
from collections.abc import Iterable
from typing import Any

from generator.bank.bank import Bank, Entry, module_of, objective_of
from generator.bank.checks import is_from_memory, shown_figures


def bank_figures(bank: Bank) -> dict[str, Any]:
    """Return the counts and the coverage of objectives, as `check --format json` prints them."""
    items = bank.items
    kinds = Counter(str(getattr(entry.record, "kind", "")) for entry in items.values())
    counts = {
        "items": len(items),
        "by_kind": _sorted(kinds),
        "by_module": _sorted(Counter(module_of(name) for name in items)),
        "by_source": _by_source(bank),
        "by_pool": _sorted(Counter(entry.record.use for entry in items.values())),
        "numeric_templates": kinds["numeric"],
        "procedures": len(bank.procedures),
        "faults": len(bank.faults),
        "tables": len(bank.tables),
        "data_sheets": len(bank.data_sheets),
        "beliefs": len(bank.beliefs),
        "figures": len(shown_figures(bank)),
        "lessons": sum(1 for module in bank.modules if module.lesson),
        "glossary": len(bank.glossary),
    }
    return {"counts": counts, "coverage": _coverage(bank)}


def _sorted(counter: Counter[str]) -> dict[str, int]:
    return dict(sorted(counter.items()))


def _by_source(bank: Bank) -> dict[str, int]:
    counted = Counter(_standing(bank, entry) for entry in bank.items.values())
    return {tag: counted[tag] for tag in ("published", "common_practice", "from_memory")}


def _standing(bank: Bank, entry: Entry[Any]) -> str:
    """Return the weakest status among an item's tags, so that none is counted upward."""
    tags = entry.record.source
    if any(is_from_memory(bank, tag) for tag in tags):
        return "from_memory"
    return "common_practice" if any(not tag.is_published for tag in tags) else "published"


def _coverage(bank: Bank) -> dict[str, int]:
    records: Iterable[Entry[Any]] = (*bank.procedures.values(), *bank.faults.values())
    asked = {objective_of(name) for name in bank.items}
    asked |= {entry.record.objective for entry in records}
    known = bank.objectives
    return {"objectives": len(known), "covered": len(asked & set(known))}
