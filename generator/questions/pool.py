"""Everything the bank can ask: hand-written items and the questions that records give."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from math import prod

from generator.bank import Bank, Entry, module_of, objective_of
from generator.bank.models import Item, Kind, NumericItem
from generator.questions.derived import RecordQuestion, record_questions
from generator.questions.item_questions import Taken, kind_of, question_of_item
from generator.questions.question import Question
from generator.questions.twins import twin_groups

Make = Callable[[str, Taken], Question | None]


@dataclass(frozen=True, slots=True)
class Askable:
    """Something that can be asked.

    record      the record it was made from; two questions of one record never share a paper
    make        gives the question for a form's label and the draws already given away
    variants    how many sets of values its grids hold, at most; 1 where nothing is drawn
    apart_from  items that never share a paper with it
    twins       items or records that ask the same thing
    hazard      what makes it critical, a name of hazards.yml, or empty
    place       whose rule it asks, a name of places.yml, or empty
    sample      a question it gave, where one was made already
    kin         name of its record and all their twins together; empty where it has no twin
    """

    name: str
    record: str
    kind: Kind
    objective: str
    use: str
    safety: bool
    make: Make
    level: str = "apply"
    variants: int = 1
    not_with: tuple[str, ...] = ()
    twins: tuple[str, ...] = ()
    hazard: str = ""
    place: str = ""
    sample: Question | None = None
    kin: str = ""

    @property
    def module(self) -> str:
        """Return the module the question belongs to."""
        return module_of(self.objective)

    @property
    def group(self) -> str:
        """Return what it shares with its record and twins: two of a group never share a paper."""
        return self.kin or self.record

    @property
    def is_derived(self) -> bool:
        """Return whether a record gave the question, rather than an author writing it."""
        return self.name != self.record


def askables(bank: Bank) -> tuple[Askable, ...]:
    """Return everything the bank can ask, in the order of its names."""
    found = (*askables_of_items(bank), *askables_of_records(bank))
    kin = twin_groups({askable.record: askable.twins for askable in found if askable.twins})
    return tuple(
        replace(askable, kin=kin[askable.record]) if askable.record in kin else askable
        for askable in sorted(found, key=lambda askable: askable.name)
    )


def askable_named(bank: Bank, name: str) -> Askable | None:
    """Return one question of a bank by its name, and None where there is none; not with its kin."""
    entry = bank.items.get(name)
    if entry is not None:
        return _from_item(bank, entry)
    asked = (asked for asked in record_questions(bank) if asked.name == name)
    return next(
        (_from_record(bank, one, trial) for one in asked if (trial := _trial(bank, one))), None
    )


def askables_of_items(bank: Bank) -> Iterator[Askable]:
    """Return what the hand-written items can ask."""
    return (_from_item(bank, entry) for entry in bank.items.values())


def _from_item(bank: Bank, entry: Entry[Item]) -> Askable:
    item = entry.record
    return Askable(
        entry.name,
        entry.name,
        kind_of(item),
        objective_of(entry.name),
        item.use,
        item.safety,
        partial(question_of_item, bank, entry),
        item.level,
        _variants(item),
        item.not_with,
        item.twin_of,
        item.critical.hazard if item.critical else "",
        item.place or "",
    )


def _variants(item: Item) -> int:
    if not isinstance(item, NumericItem):
        return 1
    return prod(len(given.values) for given in item.given.values())


def askables_of_records(bank: Bank) -> Iterator[Askable]:
    """Return each question that its record can give; one trial shows whether it can."""
    for asked in record_questions(bank):
        trial = _trial(bank, asked)
        if trial is not None:
            yield _from_record(bank, asked, trial)


def _trial(bank: Bank, asked: RecordQuestion) -> Question | None:
    return asked.make(bank, "trial")


def _from_record(bank: Bank, asked: RecordQuestion, trial: Question) -> Askable:
    return Askable(
        asked.name,
        asked.name.rsplit("/", 1)[0],
        trial.kind,
        trial.objective,
        trial.use,
        trial.safety,
        partial(asked.make, bank),
        trial.level,
        hazard=trial.critical.hazard if trial.critical else "",
        place=asked.place,
        sample=trial,
    )
