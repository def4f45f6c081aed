"""The words for a source tag, a status, a kind of question and a verdict."""

from collections.abc import Mapping
from typing import Any, NamedTuple

# nothing for a published source: its document is named instead
TAG_WORDS: Mapping[str, str] = {
    "published": "",
    "common_practice": "Common practice in the trade, no published source",
    "from_memory": "From memory, not checked against a document",
}

VERDICT_WORDS: Mapping[str, str] = {
    "passed": "passed",
    "must_pass_missed": "not passed: a must-pass question was missed",
    "not_passed": "not passed yet",
    "unfinished": "not finished: a person must still look at an answer",
}
# for the cells of a table
SHORT_VERDICT_WORDS: Mapping[str, str] = {
    "passed": "passed",
    "must_pass_missed": "must-pass missed",
    "not_passed": "not passed yet",
    "unfinished": "not finished",
}


class KindWords(NamedTuple):
    """What one kind of question is called.

    heading  over the question on a screen
    task     beside its number on a paper
    prompt   what the terminal asks for when a paper is entered by hand; empty for a written
             answer, which has its own prompts
    """

    heading: str
    task: str
    prompt: str


KIND_WORDS: Mapping[str, KindWords] = {
    "numeric": KindWords("Work it out", "number and unit", "a number"),
    "choice": KindWords("Choose one", "one answer", "one letter"),
    "multiple_response": KindWords("Choose all that apply", "one or more answers", "letters"),
    "order": KindWords("Put in order", "put in order", "letters in order"),
    "match": KindWords("Pair them up", "match", "pairs such as 1C 2A"),
    "written": KindWords("Write it down", "written answer", ""),
}


def status_words(status: str, what: str = "document") -> str:
    """Return how far a source was checked.

    status  of a source, or common_practice
    what    what was read or not: the document, the rule
    """
    return {
        "read": f"read in the {what} itself",
        "restated": "read where another text repeats it",
        "from_memory": f"from memory, not checked against the {what}",
        "common_practice": "common practice, no published source",
    }[status]


def objective_name(question: Mapping[str, Any]) -> str:
    """Return the objective of a question as 'module/objective', however the question spells it."""
    name = str(question["objective"])
    return name if "/" in name else f"{question['module']}/{name}"
