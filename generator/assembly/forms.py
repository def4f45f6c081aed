"""From a blueprint and a seed to forms with keys."""

from collections import defaultdict

from generator.assembly.form import Form, FormQuestion, marks_of
from generator.assembly.selection import Uses, select
from generator.bank import Bank, Entry
from generator.bank.records import Blueprint
from generator.questions import Askable, Question, Stream, askables

Draw = tuple[tuple[str, str], ...]


def build_forms(
    bank: Bank, entry: Entry[Blueprint], seed: str, labels: tuple[str, ...]
) -> tuple[Form, ...]:
    """Give one form per label; the same bank, seed and labels give the same forms.

    Call `selection.shortages` first: a cell that cannot be filled raises ValueError here.
    No two forms share the drawn values of a numeric question while its grid allows it.
    """
    known = askables(bank)
    uses = Uses()
    drawn: dict[str, list[Draw]] = defaultdict(list)
    return tuple(_form(bank, entry, seed, label, known, uses, drawn) for label in labels)


def _form(
    bank: Bank,
    entry: Entry[Blueprint],
    seed: str,
    label: str,
    known: tuple[Askable, ...],
    uses: Uses,
    drawn: dict[str, list[Draw]],
) -> Form:
    form = f"{entry.name}|{seed}|{label}"
    stream = Stream(bank.sheet.title, bank.sheet.edition, form, "selection")
    chosen = select(entry.record, bank, known, uses, stream)
    questions = []
    for number, askable in enumerate(chosen, start=1):
        question = _question(askable, form, drawn)
        questions.append(FormQuestion(number, marks_of(question), question))
    return Form(
        title=entry.record.title,
        blueprint=entry.name,
        label=label,
        edition=bank.sheet.edition,
        seed=seed,
        minutes=entry.record.minutes,
        pass_percent=entry.record.pass_percent,
        questions=tuple(questions),
    )


def _question(askable: Askable, form: str, drawn: dict[str, list[Draw]]) -> Question:
    question = askable.make(form, drawn[askable.name])
    if question is None:
        raise ValueError(f"'{askable.name}' gave no question")
    if question.draw:
        drawn[askable.name].append(question.draw)
    return question


def form_labels(count: int) -> tuple[str, ...]:
    """Give the labels of so many forms: A to Z, then 27 and on."""
    letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
    return tuple(letters[i] if i < len(letters) else str(i + 1) for i in range(count))
