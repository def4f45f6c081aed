"""Letters of the right options laid anew where chance has piled them up on one letter."""

from dataclasses import replace

from generator.assembly.forms.form import Form, FormQuestion
from generator.assembly.forms.key_positions import position_alarms
from generator.questions import ChoiceKey, SeededRandom
from generator.questions.drawing import relettered

# one try in a hundred leaves them uneven again
MOST_TRIES = 8


def evened(form: Form) -> Form:
    """Return a form whose keys stand as chance would have them; most forms come back as they are.

    Options that stand in the order of their numbers keep it.
    """
    for number in range(1, MOST_TRIES + 1):
        if not position_alarms(form):
            break
        form = replace(
            form, questions=tuple(_laid_anew(entry, form, number) for entry in form.questions)
        )
    return form


def _laid_anew(entry: FormQuestion, form: Form, number: int) -> FormQuestion:
    question = entry.question
    if question.kind != "choice" or not isinstance(question.key, ChoiceKey):
        return entry
    label = (form.edition, form.blueprint, form.seed, form.label, question.name)
    key = relettered(question.key, SeededRandom("letters", *label, str(number)))
    return replace(entry, question=replace(question, key=key))
