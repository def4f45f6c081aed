"""Versions of all that can be asked, so that answers to an old wording are kept apart."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from generator.bank import Bank, Entry, record_version
from generator.questions.pool import Askable


def item_versions(bank: Bank, known: Sequence[Askable]) -> Mapping[str, str]:
    """Return the version of everything the bank can ask, by its name.

    A question that a record gave has the version of that record.
    """
    versions = dict(_versions(bank))
    return {asked.name: versions[asked.record] for asked in known}


def _versions(bank: Bank) -> Iterator[tuple[str, str]]:
    records: tuple[tuple[str, Mapping[str, Entry[Any]]], ...] = (
        ("", bank.items),
        ("procedures/", bank.procedures),
        ("faults/", bank.faults),
        ("tables/", bank.tables),
    )
    for group, entries in records:
        for name, entry in entries.items():
            yield f"{group}{name}", record_version(entry.record)
