"""A key corrected after an appeal, as plain data that is applied to every form that asks the same.

Options are named by their text, since each form letters them in its own order. A question is the
same where its text, its sheet and its table are the same: other numbers are another question.
"""

import copy
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Literal

from generator.marking.answers.mark_form import LEFT_OUT
from generator.marking.answers.numeric_marking import number_in_asked_unit
from generator.marking.answers.options_marking import known_letters
from generator.marking.answers.response import CannotMark
from generator.quantities import number_text

Plain = Mapping[str, Any]
Effect = Literal["changed", "other numbers", "another step", "no such option", "not asked"]
ACCEPTED = "Accepted: the key of this question was corrected."
NO_LONGER = "No longer right: the key of this question was corrected."
_ASKED = ("stem", "sheet", "table")


def accept_option(question: Plain, letters: str) -> Plain:
    """Return the change that accepts a further option of a choice."""
    if question["kind"] != "choice":
        raise CannotMark("a further option is accepted for a choice; name the whole key instead")
    return {"change": "accept_option", **_asked(question), "options": _texts(question, letters, 1)}


def key_options(question: Plain, letters: str) -> Plain:
    """Return the change that puts other options in the place of the right ones."""
    if question["kind"] not in ("choice", "multiple_response"):
        raise CannotMark("only a choice and a multiple response have right options")
    most = 1 if question["kind"] == "choice" else len(question["key"]["options"])
    return {"change": "key_options", **_asked(question), "options": _texts(question, letters, most)}


def accept_number(question: Plain, text: str) -> Plain:
    """Return the change that accepts further numbers: one, or all of `LOW to HIGH`, with a unit."""
    if question["kind"] != "numeric":
        raise CannotMark("only a question that takes a number accepts a further number")
    ends = [number_in_asked_unit(question["key"], end) for end in text.split(" to ")]
    if len(ends) > 2 or ends[0] > ends[-1]:
        raise CannotMark(f"'{text}' is not one number, nor two as in 95 to 105")
    low, high = number_text(ends[0]), number_text(ends[-1])
    return {"change": "accept_number", **_asked(question), "low": low, "high": high}


def leave_out() -> Plain:
    """Return the change that takes a question out of every form: out of marks and most."""
    return {"change": "leave_out"}


def _asked(question: Plain) -> Plain:
    return {"asked": {name: question.get(name) for name in _ASKED}}


def _texts(question: Plain, letters: str, most: int) -> list[str]:
    options = {option["letter"]: option["text"] for option in question["key"]["options"]}
    named = known_letters(letters.replace(",", " "), options)
    if not 0 < len(named) <= most:
        raise CannotMark(f"name {'one option' if most == 1 else 'the right options'} by letter")
    return [options[letter] for letter in named]


def effect_on(form: Plain, item: str, change: Plain) -> Effect:
    """Say what a change does to a form."""
    entries = [e for e in form["questions"] if e["question"]["id"] == item]
    if not entries:
        return "not asked"
    effects = [_effect(entry["question"], change) for entry in entries]
    return "changed" if "changed" in effects else effects[0]


def _effect(question: Plain, change: Plain) -> Effect:
    if change["change"] == "leave_out":
        return "changed"
    if _asked(question)["asked"] != change["asked"]:
        return "other numbers" if question["kind"] == "numeric" else "another step"
    if change["change"] == "accept_number":
        return "changed"
    there = {option["text"] for option in question["key"]["options"]}
    whole = set(change["options"]) <= there
    return "changed" if whole else "no such option"


def corrected_form(form: Plain, changes: Sequence[tuple[str, Plain]]) -> Plain:
    """Return a form as it is marked after its corrections.

    changes  the item and the change of each, oldest first
    The form itself stays as it was issued.
    """
    items = {item for item, _ in changes}
    if not any(entry["question"]["id"] in items for entry in form["questions"]):
        return form
    return {**form, "questions": [_corrected(entry, changes) for entry in form["questions"]]}


def _corrected(entry: Plain, changes: Iterable[tuple[str, Plain]]) -> Plain:
    ours = [c for item, c in changes if item == entry["question"]["id"]]
    ours = [c for c in ours if _effect(entry["question"], c) == "changed"]
    if not ours:
        return entry
    new: dict[str, Any] = copy.deepcopy(dict(entry))
    for change in ours:
        if change["change"] == "leave_out":
            new[LEFT_OUT] = True
        elif change["change"] == "accept_number":
            band = {"low": change["low"], "high": change["high"]}
            also = new["question"]["key"].setdefault("also", [])
            also += [band] if band not in also else []
        else:
            _turn_options(new["question"]["key"]["options"], change)
    return new


def _turn_options(options: Iterable[dict[str, Any]], change: Plain) -> None:
    for option in options:
        right = option["text"] in change["options"]
        if change["change"] == "accept_option":
            right = right or option["right"]
        if right != option["right"]:
            option["right"], option["says"] = right, ACCEPTED if right else NO_LONGER


def in_words(change: Plain) -> str:
    """Say what a change does in one clause."""
    options = " and ".join(f"'{text}'" for text in change.get("options", ()))
    if change["change"] == "accept_option":
        return f"{options} is accepted as well"
    if change["change"] == "key_options":
        return f"{options} {'is' if len(change['options']) == 1 else 'are'} right, nothing else"
    if change["change"] == "accept_number":
        low, high = change["low"], change["high"]
        return f"{low} is accepted as well" if low == high else f"{low} to {high} is accepted too"
    return "the question is left out of the marks"
