"""From a blueprint and a seed to forms with keys."""

from collections.abc import Sequence
from dataclasses import dataclass

from generator.assembly.forms.candidates import Choice, choice_for, demand_for
from generator.assembly.forms.class_questions import ClassQuestions
from generator.assembly.forms.evened_letters import evened
from generator.assembly.forms.form import Form, FormQuestion, marks_of
from generator.assembly.forms.history import NO_HISTORY, History
from generator.assembly.search import (
    Balance,
    CannotFill,
    Seat,
    Shortfall,
    balance_of,
    search,
    shortfalls,
)
from generator.assembly.supply import in_places
from generator.bank import Bank, Entry
from generator.bank.models import Blueprint
from generator.questions import Askable, askables
from generator.questions.giveaways import kept_apart

# after so many stuck cells none is parted
MOST_CELLS_WHOLE = 3


class CannotAssemble(ValueError):
    """A plan for which no papers were found; the text names what is short and by how many."""


@dataclass(frozen=True, slots=True)
class Assembly:
    """Forms, and how even they came out."""

    forms: tuple[Form, ...]
    balance: Balance


def build_forms(
    bank: Bank, entry: Entry[Blueprint], seed: str, labels: tuple[str, ...]
) -> tuple[Form, ...]:
    """Return one form per label, as `assemble` does where nothing was issued before."""
    return assemble(bank, entry, seed, labels).forms


def assemble(
    bank: Bank,
    entry: Entry[Blueprint],
    seed: str,
    labels: tuple[str, ...],
    people: Sequence[str] = (),
    past: History = NO_HISTORY,
    known: Sequence[Askable] = (),
) -> Assembly:
    """Return one form per label; the same bank, seed, labels, people and past give the same forms.

    people  the code of the person each form is for, in the order of the seats; may be empty
    known   everything the bank can ask, where the caller has it already
    Call `shortages` first: it says at its place what the bank lacks. Raises CannotAssemble where
    no papers can be found.
    """
    allowed = in_places(bank.sheet.places, entry.record, known or askables(bank))
    met = [past.met.get(person, frozenset()) for person in people]
    salt = (bank.sheet.title, bank.sheet.edition, entry.name, seed, "selection")
    whole: frozenset[int] = frozenset()
    while True:
        choice = choice_for(entry.record, allowed, past, kept_apart(bank), whole)
        demand = demand_for(entry.record, choice, len(labels), met)
        try:
            papers = search(choice.pool, demand, *salt)
            break
        except CannotFill as error:
            wider = _wider(choice, error, whole)
            if wider == whole:
                raise CannotAssemble(_stuck(entry, choice, error)) from error
            whole = wider
    missed = shortfalls(papers)
    if missed:
        raise CannotAssemble(_missed(missed[0], labels))
    shared = _Class(bank, entry, seed, choice, ClassQuestions())
    named = people or ("",) * len(labels)
    forms = tuple(
        evened(_form(shared, label, person, papers.seats[form]))
        for form, (label, person) in enumerate(zip(labels, named, strict=True))
    )
    return Assembly(forms, balance_of(papers))


def _wider(choice: Choice, error: CannotFill, whole: frozenset[int]) -> frozenset[int]:
    """Return the cells to leave whole at the next try: those that got stuck, then all of them.

    What is kept apart can leave too little of one kind where the cell as a whole has enough.
    """
    stuck = choice.strands[error.cell].cell
    if stuck not in whole and len(whole) < MOST_CELLS_WHOLE:
        return whole | {stuck}
    return whole | {strand.cell for strand in choice.strands}


def _stuck(entry: Entry[Blueprint], choice: Choice, error: CannotFill) -> str:
    strand = choice.strands[error.cell]
    cell = entry.record.cells[strand.cell]
    name = cell.topic or cell.objective or cell.module or f"number {strand.cell + 1}"
    return (
        f"cell '{name}' asks for {strand.count} and stays {error.short} short beside the other "
        "cells and the questions kept apart; write more items for exams, or ask for fewer"
    )


_LIMITS = {
    "new": "new questions short of the plan's share",
    "seconds": "seconds over the plan's time",
    "words": "words over the plan's reading load",
}


def _missed(missed: Shortfall, labels: Sequence[str]) -> str:
    return f"form {labels[missed.form]} stays {missed.amount} {_LIMITS[missed.limit]}"


@dataclass(frozen=True, slots=True)
class _Class:
    """What all forms of one run share."""

    bank: Bank
    entry: Entry[Blueprint]
    seed: str
    choice: Choice
    asked: ClassQuestions

    def is_gate(self, seat: Seat) -> bool:
        """Say whether the question on a seat must be right to pass."""
        cell = self.choice.strands[seat.cell].cell
        return self.entry.record.cells[cell].critical is not None


def _form(of: _Class, label: str, person: str, seats: Sequence[Seat]) -> Form:
    plan = of.entry.record
    order = {module.module: place for place, module in enumerate(of.bank.modules)}
    seated = [(of.choice.askables[seat.candidate], of.is_gate(seat)) for seat in seats]
    in_order = sorted(seated, key=lambda pair: order[pair[0].module])
    made = [of.asked.make(asked, f"{of.entry.name}|{of.seed}|{label}") for asked, _ in in_order]
    questions = tuple(
        FormQuestion(number, marks_of(question), question)
        for number, question in enumerate(made, start=1)
    )
    return Form(
        title=plan.title,
        blueprint=of.entry.name,
        label=label,
        edition=of.bank.sheet.edition,
        seed=of.seed,
        minutes=plan.minutes,
        pass_percent=plan.pass_percent,
        questions=questions,
        gate=tuple(n for n, (_, is_gate) in enumerate(in_order, start=1) if is_gate),
        person=person,
    )


def form_labels(count: int) -> tuple[str, ...]:
    """Return the labels of so many forms: A to Z, then 27 and on."""
    letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
    return tuple(letters[i] if i < len(letters) else str(i + 1) for i in range(count))
