"""Answers in a few characters, for the lists that are marked from."""

from generator.issued import ForKey, IssuedQuestion, MatchAnswerKey, OptionsAnswerKey


def short_answer(question: IssuedQuestion) -> str:
    """Write the answer of a question in a few characters for the list at the top of the key."""
    return _SHORT.of(question)


def with_unit(number: str, unit: str) -> str:
    """Write a number and its unit so that no line ends between them."""
    return f"{number}\u00a0{unit}" if unit else str(number)


def _right_letters(key: OptionsAnswerKey) -> str:
    return " ".join(option["letter"] for option in key["options"] if option["right"])


def _short_match(key: MatchAnswerKey) -> str:
    return "  ".join(f"{number}{letter}" for number, letter in key["answers"].items())


_SHORT = ForKey[str](
    numeric=lambda key: with_unit(key["shown"], key["unit_symbol"]),
    choice=_right_letters,
    multiple_response=_right_letters,
    order=lambda key: " ".join(key["one_order"]) + (" *" if int(key["orders"]) > 1 else ""),
    match=_short_match,
    written=lambda key: "see below",
)
