"""Small matters of wording in derived questions."""

_SMALL = frozenset(
    ("after", "before", "from", "into", "over", "that", "them", "then", "this", "until")
    + ("what", "when", "which", "with", "your")
)


def content_words(text: str) -> set[str]:
    """Give the words of a text that carry its meaning, in small letters."""
    words = {word.strip(".,;:'()").lower() for word in text.split()}
    return {word for word in words if len(word) > 3 and word not in _SMALL}


def lower_start(text: str) -> str:
    """Give a sentence as it stands inside another: no full stop, a small first letter."""
    plain = text.rstrip(".")
    keep = len(plain) > 1 and (plain[1].isupper() or plain[1].isdigit())
    return plain if keep else plain[:1].lower() + plain[1:]


def sentence(text: str) -> str:
    """Give a text with a full stop where it has no end mark."""
    return text if not text or text[-1] in ".!?" else f"{text}."
