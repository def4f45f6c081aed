"""The questions an apprentice meets on the site: never one from the exam pool."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, fields
from typing import Any

from generator.bank import Bank
from generator.questions.pool import Askable, askables_of_items, askables_of_records
from generator.questions.question import Question

NUMERIC_VARIANTS = 6
DERIVED_VARIANTS = 2
# what a question of an item may cite, and what of the bank no question is made of
_CITED = ("sheet", "modules", "sources", "glossary", "hazards", "places", "tables")
_NOT_ASKED = frozenset(("items", "blueprints", "giveaways", "lessons", "figures"))

Study = dict[str, list[list[Question]]]
Asked = tuple[str, str, list[Question]]


@dataclass(slots=True)
class DrawnQuestions:
    """Study questions of an earlier reading: drawn again only where their records changed.

    cited    the records that questions of items cite
    items    item to its record and its question
    around   the records that give questions themselves
    derived  the questions of those records
    """

    cited: object = None
    items: dict[str, tuple[object, Asked | None]] = field(default_factory=dict)
    around: object = None
    derived: tuple[Asked, ...] = ()


def study_questions(bank: Bank, drawn: DrawnQuestions | None = None) -> Study:
    """Return the study questions of each module; each inner list holds the variants of one.

    drawn  what an earlier reading drew; it is used where it still holds, and brought up to date
    """
    drawn = DrawnQuestions() if drawn is None else drawn
    found: Study = {module.module: [] for module in bank.modules}
    asked = (*_of_items(bank, drawn), *_of_records(bank, drawn))
    for _, module, variants in sorted(asked, key=lambda one: one[0]):
        if module in found:
            found[module].append(variants)
    return found


def _of_items(bank: Bank, drawn: DrawnQuestions) -> Iterable[Asked]:
    cited = _records(bank, _CITED)
    if cited != drawn.cited:
        drawn.cited, drawn.items = cited, {}
    for askable in askables_of_items(bank):
        record = bank.items[askable.name].record
        kept = drawn.items.get(askable.name)
        if kept is None or kept[0] != record:
            drawn.items[askable.name] = (record, _asked(askable))
    drawn.items = {name: kept for name, kept in drawn.items.items() if name in bank.items}
    return [asked for _, asked in drawn.items.values() if asked is not None]


def _of_records(bank: Bank, drawn: DrawnQuestions) -> tuple[Asked, ...]:
    around = _records(bank, [f.name for f in fields(bank) if f.name not in _NOT_ASKED])
    if around != drawn.around:
        asked = [_asked(askable) for askable in askables_of_records(bank)]
        drawn.around, drawn.derived = around, tuple(one for one in asked if one is not None)
    return drawn.derived


def _records(bank: Bank, names: Sequence[str]) -> dict[str, Any]:
    """Return parts of a bank without the places that they stand at."""
    parts = {name: getattr(bank, name) for name in names if not name.endswith("node")}
    return {
        name: {key: entry.record for key, entry in part.items()} if hasattr(part, "items") else part
        for name, part in parts.items()
    }


def _asked(askable: Askable) -> Asked | None:
    if askable.use not in ("study", "both"):
        return None
    return askable.name, askable.module, _variants(askable)


def _variants(askable: Askable) -> list[Question]:
    wanted = DERIVED_VARIANTS if askable.is_derived else 1
    if askable.kind == "numeric":
        wanted = NUMERIC_VARIANTS
    found: dict[object, Question] = {}
    taken: list[tuple[tuple[str, str], ...]] = []
    for number in range(1, wanted + 1):
        question = askable.make(f"study-{number}", taken)
        if question is not None:
            taken.append(question.draw)
            found.setdefault((question.stem, question.draw), question)
    return list(found.values())
