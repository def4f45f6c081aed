"""The must-pass questions of a form: a gate beside the score, never more weight in it."""

from collections.abc import Collection, Sequence

from generator.assembly.form import FormQuestion

# plain kinds first: what has no part marks is either right or wrong
PLAINEST_FIRST = ("choice", "numeric", "order", "multiple_response", "match")


def gate_of(
    questions: Sequence[FormQuestion], size: int, first: Collection[str] = ()
) -> tuple[int, ...]:
    """Give the numbers of the questions that must all be right, in the order of the form.

    first  names that come before others, as the plan asks for them on every form
    Written questions are never a gate, since a marker's judgement opens none.
    """
    safe = [
        entry
        for entry in questions
        if entry.question.safety and entry.question.kind in PLAINEST_FIRST
    ]
    safe.sort(
        key=lambda entry: (
            entry.question.name not in first,
            PLAINEST_FIRST.index(entry.question.kind),
            entry.number,
        )
    )
    return tuple(sorted(entry.number for entry in safe[:size]))
