"""The rules of the house, in the order in which they are looked at.

Each rule lives with its page; `rule` says what a rule is. Add one by adding it to the RULES of a
file in one of the rooms here: `one_record`, `whole_bank` or `course`.
"""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks import numbers, reading
from generator.bank.checks.course import FILES as OF_THE_COURSE
from generator.bank.checks.course import shown_figures
from generator.bank.checks.one_record import ALONE, MOST_ORDERS
from generator.bank.checks.one_record import FILES as OF_ONE_RECORD
from generator.bank.checks.rule import Rule
from generator.bank.checks.whole_bank import FILES as OF_THE_WHOLE_BANK
from generator.bank.checks.whole_bank import is_from_memory
from generator.bank.reading import load_bank
from generator.bank.verdicts import GROUPS, RecordAt, Verdicts
from generator.diagnostics import Problem, sorted_problems

_FILES = (reading, *OF_ONE_RECORD, numbers, *OF_THE_WHOLE_BANK, *OF_THE_COURSE)
RULES: Mapping[str, Rule] = {rule.name: rule for file in _FILES for rule in file.RULES}

# rules that see one record and the frame of the bank, and never another record
_OF_ONE_RECORD = tuple(rule.name for file in (numbers, *ALONE) for rule in file.RULES)


def check_bank(bank: Bank, verdicts: Verdicts | None = None) -> tuple[Problem, ...]:
    """Return every problem that the rules find, in the order of the files.

    verdicts  of an earlier run; those that still hold stand for a look at the record
    """
    looks = [rule.look for rule in RULES.values() if rule.name not in _OF_ONE_RECORD and rule.look]
    found = [problem for look in looks for problem in look(bank)]
    return sorted_problems((*found, *_of_single_records(bank, verdicts or Verdicts(""))))


def _of_single_records(bank: Bank, verdicts: Verdicts) -> Iterator[Problem]:
    """Return the problems of rules that look at one record at a time."""
    unknown: dict[str, dict[str, Entry[Any]]] = {group: {} for group in GROUPS}
    for group in GROUPS:
        for name, entry in getattr(bank, group).items():
            known = verdicts.of(entry)
            if known is None:
                unknown[group][name] = entry
            else:
                yield from known
    part = replace(bank, **unknown)  # type: ignore[arg-type]
    record_at = RecordAt(part)
    fresh = [entry for group in unknown.values() for entry in group.values()]
    said: dict[int, list[Problem]] = {id(entry): [] for entry in fresh}
    looks = [RULES[name].look for name in _OF_ONE_RECORD]
    for problem in (problem for look in looks if look for problem in look(part)):
        record = record_at(problem.place)
        assert record is not None, f"{problem.rule} looks past its record"
        said[id(record)].append(problem)
        yield problem
    for entry in fresh:
        verdicts.keep(entry, said[id(entry)])


def checked_bank(
    folder: Path, lessons: Path, verdicts: Verdicts | None = None
) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Return the bank of a folder with every problem of reading and of the rules.

    Every way in takes the bank from here: `check`, `serve`, a build, an issue. Rules look only at
    what could be read, so a broken record is reported once.

    lessons   the folder of the course's lessons, which some rules look into
    verdicts  of an earlier run, for records that have not changed
    """
    bank, problems = load_bank(folder, lessons)
    found = check_bank(bank, verdicts) if bank else ()
    return bank, sorted_problems((*problems, *found))


__all__ = [
    "MOST_ORDERS",
    "RULES",
    "Rule",
    "check_bank",
    "checked_bank",
    "is_from_memory",
    "shown_figures",
]
