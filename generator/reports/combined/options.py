"""Which option was chosen, for items whose options are in other orders on other forms."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from generator.issued import IssuedQuestion, options_of
from generator.marking import Chosen, Response
from generator.records.sittings import AnsweredQuestion


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
    printed = {id(answer.printed): answer.printed for answer in answers}
    questions = {place: one.question for place, one in printed.items()}
    if not questions or any(question["kind"] != "choice" for question in questions.values()):
        return None
    by_letter = len({_lettering(question) for question in questions.values()}) == 1
    names = {place: _names(question, by_letter) for place, question in questions.items()}
    keys = {_right(question, by_letter) for question in questions.values()}
    if len(keys) != 1 or len(key := keys.pop()) != 1:
        return None
    met = [(id(answer.printed), _letters(answer.response)) for answer in answers]
    chosen = {(place, letters): _chosen(letters, names[place]) for place, letters in set(met)}
    return ChosenOptions(tuple(chosen[answer] for answer in met), key[0])


def _letters(response: Response | None) -> tuple[str, ...]:
    return response.letters if isinstance(response, Chosen) else ()


def _lettering(question: IssuedQuestion) -> tuple[tuple[str, str], ...]:
    return tuple((option["letter"], option["text"]) for option in options_of(question))


def _names(question: IssuedQuestion, by_letter: bool) -> dict[str, str]:
    options = options_of(question)
    return {o["letter"]: o["letter"] if by_letter else o["text"] for o in options}


def _right(question: IssuedQuestion, by_letter: bool) -> tuple[str, ...]:
    names = _names(question, by_letter)
    return tuple(names[o["letter"]] for o in options_of(question) if o["right"])


def _chosen(letters: Sequence[str], names: Mapping[str, str]) -> str:
    written = (letter.strip().upper() for letter in letters)
    return " and ".join(names[letter] for letter in written if letter in names)
