"""A key corrected after an appeal: planned and shown first, then kept, and all marked again."""

from dataclasses import dataclass

from generator.issued import IssuedQuestion
from generator.marking.answers import (
    CannotMark,
    Change,
    accept_number,
    accept_option,
    in_words,
    key_options,
    leave_out,
)
from generator.records import Records, RecordsRefused
from generator.records.sittings import (
    Appeal,
    Correction,
    correct_and_mark_again,
    corrected_forms,
    preview_correction,
)
from generator.workflows.refusals import NeedsConfirmation, refusing


@dataclass(frozen=True, slots=True)
class NewKey:
    """How a key changes; exactly one is set, or none for a question that is left out.

    accept         an option that is right as well, by its letter on the form that is named
    options        the right options, by their letters there; no other is right
    accept_number  a number or a range that is right as well
    """

    accept: str | None = None
    options: str | None = None
    accept_number: str | None = None


@dataclass(frozen=True, slots=True)
class PlannedCorrection:
    """What a correction would do, to be confirmed before it is carried out.

    item      name of the question, the same on every form
    question  which question of which form was named, and what changes, in words
    """

    issue: int
    item: str
    change: Change
    question: str
    appeal: Appeal

    @property
    def asks(self) -> NeedsConfirmation:
        """Return what a person must say yes to."""
        return NeedsConfirmation(self.question, "Keep this correction?")


@dataclass(frozen=True, slots=True)
class Corrected:
    """A correction that is kept.

    meanwhile  whether answers came in between plan and correction, so that more was marked again
    """

    number: int
    appeal: Appeal
    meanwhile: bool


@refusing(RecordsRefused, CannotMark)
def plan_correction(
    connection: Records, issue: int, label: str, number: int, key: NewKey
) -> PlannedCorrection:
    """Return what a new key would change, and keep nothing.

    label, number  the question as one printed form shows it
    """
    asked = _question(connection, issue, label, number)
    change = _change(asked, key)
    appeal = preview_correction(connection, issue, asked["id"], change)
    words = f"question {number} of form {label}: {in_words(change)}"
    return PlannedCorrection(issue, asked["id"], change, words, appeal)


@refusing(RecordsRefused)
def carry_out_correction(
    connection: Records, plan: PlannedCorrection, *, reason: str, decided_by: str, at: str
) -> Corrected:
    """Keep a planned correction and mark every paper again that holds its question.

    decided_by  code of who decided
    at          the time, as text
    """
    correction = Correction(plan.item, plan.change, reason, decided_by)
    number, done = correct_and_mark_again(connection, plan.issue, correction, at)
    return Corrected(number, done, done != plan.appeal)


def _question(connection: Records, issue: int, label: str, number: int) -> IssuedQuestion:
    forms = corrected_forms(connection, issue)
    if not forms:
        raise RecordsRefused(f"there is no issue {issue} in the records")
    form = forms.get(label.upper())
    if form is None:
        raise RecordsRefused(f"issue {issue} has no form '{label}', only {', '.join(forms)}")
    entries = form["questions"]
    if number > len(entries):
        raise RecordsRefused(f"form {label} ends with question {len(entries)}")
    return entries[number - 1]["question"]


def _change(question: IssuedQuestion, key: NewKey) -> Change:
    if key.accept is not None:
        return accept_option(question, key.accept)
    if key.options is not None:
        return key_options(question, key.options)
    if key.accept_number is not None:
        return accept_number(question, key.accept_number)
    return leave_out()
