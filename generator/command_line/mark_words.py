"""What `guidecoat mark` says: a line a form in words, or everything as JSON."""

import json
from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import Any

from generator.command_line.project import counted
from generator.marking import FormMark, Typed
from generator.quantities import number_text, round_to_step
from generator.records.sittings import VERDICT_WORDS, Entered, Kept, Outcome


def outcome_text(outcome: Outcome, empty: Sequence[str]) -> str:
    """Say for each form what it came to, and what a person must still look at.

    empty  label, person and id of each form whose row holds no answer
    """
    lines: list[str] = []
    for issue, kept in outcome.kept.items():
        of_issue = [entered for entered in outcome.entered if entered.issue == issue]
        lines.append(f"issue {issue}, {of_issue[0].form.blueprint}: {kept_words(kept)}")
        lines += [f"  {line}" for entered in of_issue for line in paper_lines(entered)]
    if empty:
        lines.append(f"no answers yet, not marked: {', '.join(empty)}")
    return "\n".join(lines)


def kept_words(kept: Kept) -> str:
    """Say how many papers were new, took the place of earlier answers, or were there."""
    words = [f"{kept.new} new"]
    words += [f"{kept.replaced} in place of earlier answers"] if kept.replaced else []
    words += [f"{kept.known} there already"] if kept.known else []
    words += [f"{kept.dated} there already, with a new day now"] if kept.dated else []
    return ", ".join(words)


def paper_lines(entered: Entered) -> Iterator[str]:
    """Return the line of one paper, and a line for each thing that a person must look at."""
    label = f"form {entered.form.label}"
    who = f"{label}, {entered.person}" if entered.person else label
    yield f"{who}: {mark_words(entered.mark)}"
    if entered.over:
        yield f"    answered {counted(entered.over, 'minute')} past its time"
    if unread := entered.mark.waiting("illegible"):
        yield f"    look at the paper: {_questions(unread)} cannot be read{_typed(entered, unread)}"
    if unmarked := entered.mark.waiting("written"):
        yield f"    give the marks: {_questions(unmarked)} written, not marked yet"
        for number in unmarked:
            yield from _read_aloud(number, entered.written.get(number, ""))


def _typed(entered: Entered, unread: Sequence[int]) -> str:
    """Show what was typed where it cannot be read as a number."""
    typed = ((number, entered.responses.get(number)) for number in unread)
    shown = [f"{n}: '{_plain_line(r.text)}'" for n, r in typed if isinstance(r, Typed)]
    return f" ({', '.join(shown)})" if shown else ""


def _plain_line(text: str) -> str:
    return "".join(c if c.isprintable() else " " for c in text)


def _read_aloud(number: int, text: str) -> Iterator[str]:
    # what a learner typed must not move the cursor or colour the screen
    lines = [_plain_line(line) for line in text.splitlines()]
    yield from (f"      {number}: {line}" for line in lines if line.strip())


def mark_words(mark: FormMark) -> str:
    """Return marks and verdict, with the must-pass questions that were missed."""
    words = f"{marks_shown(mark.points)} of {mark.most} marks, {VERDICT_WORDS[mark.verdict]}"
    if not mark.gate_missed:
        return words
    words = f"{words} ({_questions(mark.gate_missed)})"
    few = mark.points < mark.pass_marks
    return f"{words}, and too few marks: {mark.pass_marks} to pass" if few else words


def marks_shown(points: Fraction) -> str:
    """Write marks with one decimal where they are not whole, half up, as the reports do."""
    return number_text(round_to_step(points, Fraction(1, 10), "half"))


def _questions(numbers: Sequence[int]) -> str:
    return f"{'question' if len(numbers) == 1 else 'questions'} {', '.join(map(str, numbers))}"


def outcome_json(outcome: Outcome, empty: Sequence[str]) -> str:
    """Return everything as JSON; points are exact fractions as text."""
    issues = [
        {
            "issue": issue,
            "new": kept.new,
            "replaced": kept.replaced,
            "known": kept.known,
            "forms": [_plain(e) for e in outcome.entered if e.issue == issue],
        }
        for issue, kept in outcome.kept.items()
    ]
    document = {"issues": issues, "without_answers": list(empty)}
    return json.dumps(document, ensure_ascii=False, indent=2)


def _plain(entered: Entered) -> dict[str, Any]:
    mark = entered.mark
    return {
        "form": entered.form.content["form_id"],
        "label": entered.form.label,
        "person": entered.person,
        "points": str(mark.points),
        "most": mark.most,
        "pass_marks": mark.pass_marks,
        "verdict": mark.verdict,
        "must_pass_missed": list(mark.gate_missed),
        "illegible": list(mark.waiting("illegible")),
        "written_to_mark": list(mark.waiting("written")),
        "minutes_over": entered.over,
        "written": {str(number): text for number, text in entered.written.items()},
        "marks": [
            {
                "question": entry.number,
                "share": str(entry.mark.share),
                "status": entry.waits or entry.mark.status,
                "of": entry.marks,
                "left_out": entry.left_out,
            }
            for entry in mark.questions
        ],
    }
