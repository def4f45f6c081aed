"""The kind of thinking that a question asks for, so that two of a kind are kept apart."""

from collections.abc import Mapping

from generator.bank import Bank
from generator.bank.models import NumericItem
from generator.formulas import parse_formula
from generator.website.context import Question, objective_of

RECORDS = ("procedures", "faults", "tables")


def relations_of_items(bank: Bank) -> dict[str, str]:
    """Return each numeric item the outermost relation of its answer, where it calls one."""
    found = {}
    for name, entry in bank.items.items():
        if isinstance(entry.record, NumericItem):
            formula, _ = parse_formula(entry.record.answer.formula)
            if formula is not None and formula.relations:
                found[name] = formula.relations[0]
    return found


def method_of(question: Question, relations: Mapping[str, str]) -> str:
    """Return the relation a question turns on, or the record it follows from, or its objective."""
    name = str(question["id"])
    if name in relations:
        return relations[name]
    folder, _, rest = name.partition("/")
    return f"{folder}/{rest.partition('/')[0]}" if folder in RECORDS else objective_of(question)
