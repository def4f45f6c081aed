"""Marking of choice and multiple response, from the frozen key."""

from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Any

from generator.marking.answers.marks import About, Finding, Mark, marked
from generator.marking.answers.response import CannotMark


def mark_choice(key: Mapping[str, Any], letters: Iterable[str]) -> Mark:
    """Mark one chosen option, all or nothing; two marked options are wrong."""
    options = _options(key)
    chosen = known_letters(letters, options)
    if len(chosen) > 1:
        text = "More than one option is marked. This question has one answer."
        return marked(Fraction(0), [Finding("option", " ".join(chosen), text)])
    option = options[chosen[0]]
    said = Finding("option", option["letter"], option["says"])
    return marked(Fraction(1), notes=[said]) if option["right"] else marked(Fraction(0), [said])


def mark_multiple_response(key: Mapping[str, Any], letters: Iterable[str]) -> Mark:
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
        [_said("option", options, letter) for letter in false]
        + [_said("missed", options, letter) for letter in missed],
        [_said("option", options, letter) for letter in hits],
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


def _options(key: Mapping[str, Any]) -> dict[str, Mapping[str, Any]]:
    return {option["letter"]: option for option in key["options"]}


def _said(about: About, options: Mapping[str, Mapping[str, Any]], letter: str) -> Finding:
    return Finding(about, letter, options[letter]["says"])
