"""Small matters of wording in derived questions."""

import re

_SMALL = frozenset(
    ("after", "before", "from", "into", "over", "that", "them", "then", "this", "until")
    + ("what", "when", "which", "with", "your")
)


def content_words(text: str) -> set[str]:
    """Return the words of a text that carry its meaning, in small letters."""
    words = {word.strip(".,;:'()").lower() for word in text.split()}
    return {word for word in words if len(word) > 3 and word not in _SMALL}


def lower_start(text: str) -> str:
    """Return a sentence as it stands inside another: no full stop, a small first letter."""
    plain = text.rstrip(".")
    keep = len(plain) > 1 and (plain[1].isupper() or plain[1].isdigit())
    return plain if keep else plain[:1].lower() + plain[1:]


def sentence(text: str) -> str:
    """Return a text with a full stop where it has no end mark."""
    return text if not text or text[-1] in ".!?" else f"{text}."


def with_articles(text: str) -> str:
    """Return a text in which 'a' or 'an' fits the number behind it, as it is read aloud."""
    # a capital in the middle of a sentence is a letter of its own
    return re.sub(r"(\ba|(?:^|(?<=[.!?:] ))A)n? (?=([0-9]+))", _article, text)


def _article(found: re.Match[str]) -> str:
    figures = found[2]
    # eight, eighty, eight hundred; eleven, eighteen, and as many thousands
    aloud = figures[0] == "8" or (figures[:2] in ("11", "18") and len(figures) in (2, 5))
    return f"{found[1]}{'n' * aloud} "
