"""Which option was chosen, for items whose options stand in other orders on other forms."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.records.sittings import AnsweredQuestion

Question = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class ChosenOptions:
    """What was chosen of a choice.

    chosen  for each answer: the option, nothing for a blank, several where several were marked
    key     the right option
    Options are named by letter where all answers met the same letters, else by their text.
    """

    chosen: tuple[str, ...]
    key: str


def chosen_options(answers: Sequence[AnsweredQuestion]) -> ChosenOptions | None:
    """Return the options that were chosen; None where it is no choice with one key for all."""
    # few questions were printed, and many answers belong to each
    questions = {id(answer.asked): answer.asked.content for answer in answers}
    if not questions or any(question["kind"] != "choice" for question in questions.values()):
        return None
    by_letter = len({_lettering(question) for question in questions.values()}) == 1
    names = {place: _names(question, by_letter) for place, question in questions.items()}
    keys = {_right(question, by_letter) for question in questions.values()}
    if len(keys) != 1 or len(key := keys.pop()) != 1:
        return None
    met = [(id(answer.asked), answer.letters) for answer in answers]
    chosen = {(place, letters): _chosen(letters, names[place]) for place, letters in set(met)}
    return ChosenOptions(tuple(chosen[answer] for answer in met), key[0])


def _lettering(question: Question) -> tuple[tuple[str, str], ...]:
    return tuple((option["letter"], option["text"]) for option in question["key"]["options"])


def _names(question: Question, by_letter: bool) -> dict[str, str]:
    options = question["key"]["options"]
    return {o["letter"]: str(o["letter" if by_letter else "text"]) for o in options}


def _right(question: Question, by_letter: bool) -> tuple[str, ...]:
    names = _names(question, by_letter)
    return tuple(names[o["letter"]] for o in question["key"]["options"] if o["right"])


def _chosen(letters: Sequence[str], names: Mapping[str, str]) -> str:
    written = (letter.strip().upper() for letter in letters)
    return " and ".join(names[letter] for letter in written if letter in names)
