"""The words for a source tag, a status and a verdict; `issued.FACTS` has those for a kind."""

from collections.abc import Mapping

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
