"""What a citation owes its reader: a clause to look up, and a document that can be found."""

from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem


def _citing(bank: Bank) -> Iterator[Entry[Any]]:
    yield from bank.items.values()
    yield from bank.procedures.values()
    yield from bank.faults.values()
    yield from bank.tables.values()


def clause_missing(bank: Bank) -> Iterator[Problem]:
    """Return tags that call a document read and do not say where in it."""
    for entry in _citing(bank):
        for place, tag in enumerate(entry.record.source):
            source = bank.sources.get(tag.key)
            if source and source.record.status == "read" and not tag.place:
                message = f"'{tag.key}' was read, and no clause, table or page is given"
                hint = f"write '{tag.key}, section 3.2'; lower the tag where nobody can say"
                path = ("source", place) if len(entry.record.source) > 1 else ("source",)
                yield entry.problem("error", "clause-missing", message, *path, hint=hint)


def publisher_missing(bank: Bank) -> Iterator[Problem]:
    """Return documents that are called read and cannot be found by their author or publisher."""
    for entry in bank.sources.values():
        source = entry.record
        if source.status == "read" and not (source.author or source.publisher):
            message = f"'{entry.name}' has no author and no publisher, so nobody can find it"
            hint = "add 'publisher:' or 'author:', or write 'status: restated'"
            yield entry.problem("error", "publisher-missing", message, "status", hint=hint)


def task_list_proves_nothing(bank: Bank) -> Iterator[Problem]:
    """Return facts that rest on a list of tasks."""
    for entry in _citing(bank):
        is_procedure = entry.name in bank.procedures and entry.record is (
            bank.procedures[entry.name].record
        )
        lists = [
            place
            for place, tag in enumerate(entry.record.source)
            if tag.key in bank.sources and bank.sources[tag.key].record.kind == "task_list"
        ]
        others = len(entry.record.source) - len(lists)
        for place in lists:
            if is_procedure and others:
                continue
            key = entry.record.source[place].key
            message = f"'{key}' lists tasks; it proves that the task is in the job and no fact"
            hint = "write common_practice, or the document that states the fact"
            path = ("source", place) if len(entry.record.source) > 1 else ("source",)
            yield entry.problem("error", "task-list-proves-nothing", message, *path, hint=hint)


RULES = (
    Rule(
        "clause-missing",
        "error",
        "A reader who wants to look it up needs the clause, table or page.",
        "source: to_1_1_8",
        "source: to_1_1_8, table 5-2",
        clause_missing,
    ),
    Rule(
        "publisher-missing",
        "error",
        "A document without author or publisher cannot be found again, so it counts as restated.",
        "status: read",
        "publisher: US Air Force\nstatus: read",
        publisher_missing,
    ),
    Rule(
        "task-list-proves-nothing",
        "error",
        "An occupational standard or a curriculum says that a task belongs to the job. It states "
        "no figure, cause or order.",
        "source: red_seal_refinishing, task 5.01",
        "source: common_practice",
        task_list_proves_nothing,
    ),
)
