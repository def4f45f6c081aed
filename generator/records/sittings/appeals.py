"""Appeals: what a corrected key would change, and the correction with everything marked again."""

import sqlite3
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from generator.marking import FormMark, mark_form
from generator.marking.answers import Effect, effect_on
from generator.records.issues import Issue, issue_of, voided_words
from generator.records.sittings.corrected_forms import corrected_forms
from generator.records.sittings.corrections import Correction, correct
from generator.records.sittings.form_marks import as_marked
from generator.records.sittings.mark_and_store import read_responses
from generator.records.sittings.sittings import sittings_of
from generator.records.sittings.stored_marks import Marked
from generator.records.store import RecordsRefused, writing


@dataclass(frozen=True, slots=True)
class MarkedAgain:
    """A sitting before and after a correction."""

    sitting: int
    label: str
    person: str
    before: Marked
    after: FormMark

    @property
    def changes(self) -> bool:
        """Say whether its marks or its verdict change."""
        now = (self.after.points, self.after.most, self.after.verdict)
        return now != (self.before.points, self.before.most, self.before.verdict)


@dataclass(frozen=True, slots=True)
class Appeal:
    """What a correction does.

    effects  on each form of the issue that holds the item, by its label
    again    every sitting of those forms
    """

    effects: Mapping[str, Effect]
    again: tuple[MarkedAgain, ...]


def preview_correction(
    connection: sqlite3.Connection, issue: int, item: str, change: Mapping[str, Any]
) -> Appeal:
    """Say what a correction would do, and keep nothing.

    Raises RecordsRefused for an issue that is not there or was voided, for a change that would
    leave a form without questions, and for one that changes no form.
    """
    found = issue_of(connection, issue)
    if found.state == "voided":
        raise RecordsRefused(voided_words(issue))
    effects = _effects(found, item, change)
    if "changed" not in effects.values():
        raise RecordsRefused(f"no form of issue {issue} would change")
    forms = corrected_forms(connection, issue, [(item, change)])
    if forms == corrected_forms(connection, issue):
        raise RecordsRefused(f"issue {issue} is marked so already; nothing would change")
    for label, form in forms.items():
        if all(entry.get("left_out") for entry in form["questions"]):
            raise RecordsRefused(f"form {label} would be left without questions")
    return Appeal(effects, _again(connection, issue, forms, set(effects)))


def _effects(issue: Issue, item: str, change: Mapping[str, Any]) -> dict[str, Effect]:
    effects = {form.label: effect_on(form.content, item, change) for form in issue.forms}
    return {label: effect for label, effect in effects.items() if effect != "not asked"}


def _again(
    connection: sqlite3.Connection,
    issue: int,
    forms: Mapping[str, Mapping[str, Any]],
    labels: set[str],
) -> tuple[MarkedAgain, ...]:
    return tuple(
        MarkedAgain(
            s.number,
            s.label,
            s.person,
            s.marked,
            mark_form(forms[s.label], read_responses(s.responses)),
        )
        for s in sittings_of(connection, issue)
        if s.label in labels
    )


def correct_and_mark_again(
    connection: sqlite3.Connection, issue: int, correction: Correction, at: str
) -> tuple[int, Appeal]:
    """Keep a correction and mark every sitting again that holds its item; give its number.

    The old marks stay. Raises RecordsRefused as `preview_correction` and `correct` do.
    """
    with writing(connection):
        appeal = preview_correction(connection, issue, correction.item, correction.change)
        marks = {again.sitting: as_marked(again.after) for again in appeal.again}
        return correct(connection, issue, correction, marks, at), appeal
