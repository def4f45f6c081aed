"""The questions of a class, paper by paper, each unlike what others got while it can be."""

from collections import defaultdict

from generator.questions import Askable, ChoiceKey, NumericKey, OrderKey, Question
from generator.questions.drawing import LIKE_NEIGHBOUR, NEW_KEY, HandedOut

# layouts that are tried for a question without drawn values
MOST_LAYOUTS = 24


class ClassQuestions:
    """Makes questions in the order of the papers and remembers what each paper got."""

    def __init__(self) -> None:
        self._handed: dict[str, HandedOut] = defaultdict(HandedOut)

    def make(self, askable: Askable, form: str) -> Question:
        """Return a paper's question and note it.

        form  the paper's label, on which its draws and layouts depend
        Drawn values follow `class_draws.draw_apart`. Other questions change the order of their
        options, steps or cases, so that the paper before never has the same one where two exist.
        """
        handed = self._handed[askable.name]
        question = _drawn(askable, form, handed)
        if not question.draw and handed.keys:
            question = _unlike(askable, form, handed, question)
        handed.add(question.draw, _signature(question))
        return question


def _drawn(askable: Askable, form: str, handed: HandedOut) -> Question:
    question = askable.make(form, handed)
    if question is None:
        raise ValueError(f"'{askable.name}' gave no question")
    return question


def _unlike(askable: Askable, form: str, handed: HandedOut, first: Question) -> Question:
    best, standing = first, _standing(first, handed)
    for number in range(2, MOST_LAYOUTS + 2):
        if standing == NEW_KEY:
            break
        other = _drawn(askable, f"{form}|{number}", handed)
        if _standing(other, handed) < standing:
            best, standing = other, _standing(other, handed)
        if standing < LIKE_NEIGHBOUR and not isinstance(best.key, NumericKey):
            break
    return best


def _standing(question: Question, handed: HandedOut) -> int:
    return handed.standing(question.draw, _signature(question))


def _signature(question: Question) -> str:
    """Return what a neighbour could copy: a number, or letters and what they stand for."""
    key = question.key
    if isinstance(key, NumericKey):
        return key.shown
    if isinstance(key, ChoiceKey):
        return question.stem + str([(option.text, option.right) for option in key.options])
    if isinstance(key, OrderKey):
        return question.stem + str(key.steps)
    return question.stem + str(key)
