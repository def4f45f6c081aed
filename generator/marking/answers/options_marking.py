"""Marking of choice and multiple response, from the frozen key."""

from collections.abc import Iterable, Mapping
from fractions import Fraction

from generator.issued import IssuedOption, OptionsAnswerKey
from generator.marking.answers.marks import Code, Finding, Mark, marked
from generator.marking.answers.response import CannotMark


def mark_choice(key: OptionsAnswerKey, letters: Iterable[str]) -> Mark:
    """Mark one chosen option, all or nothing; two marked options are wrong."""
    options = _options(key)
    chosen = known_letters(letters, options)
    if len(chosen) > 1:
        text = "More than one option is marked. This question has one answer."
        return marked(Fraction(0), [Finding("two_options", " ".join(chosen), text)])
    option = options[chosen[0]]
    if option["right"]:
        return marked(Fraction(1), notes=[_said("right_option", options, option["letter"])])
    return marked(Fraction(0), [_said("wrong_option", options, option["letter"])])


def mark_multiple_response(key: OptionsAnswerKey, letters: Iterable[str]) -> Mark:
    """Mark chosen options: right ones less wrong ones, over all right ones, never below 0."""
    options = _options(key)
    chosen = known_letters(letters, options)
    keyed = [letter for letter, option in options.items() if option["right"]]
    if not keyed:
        raise CannotMark("this question has no right option")
    hits = [letter for letter in chosen if letter in keyed]
    false = [letter for letter in chosen if letter not in keyed]
    missed = [letter for letter in keyed if letter not in chosen]
    share = max(Fraction(0), Fraction(len(hits) - len(false), len(keyed)))
    return marked(
        share,
        [_said("wrong_option", options, letter) for letter in false]
        + [_said("missed_option", options, letter) for letter in missed],
        [_said("right_option", options, letter) for letter in hits],
    )


def known_letters(letters: Iterable[str], known: Iterable[str]) -> tuple[str, ...]:
    """Return each letter once, in capitals, in the order of the question.

    Raises CannotMark for a letter that the question does not have.
    """
    asked = {letter.strip().upper() for letter in letters} - {""}
    there = list(known)
    for letter in sorted(asked - set(there)):
        raise CannotMark(f"the question has no '{letter}', only {', '.join(there)}")
    return tuple(letter for letter in there if letter in asked)


def _options(key: OptionsAnswerKey) -> dict[str, IssuedOption]:
    return {option["letter"]: option for option in key["options"]}


def _said(code: Code, options: Mapping[str, IssuedOption], letter: str) -> Finding:
    return Finding(code, letter, options[letter]["says"])
