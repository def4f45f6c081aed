"""What a reader takes for the same text."""

from unicodedata import category, normalize


def normal(text: str) -> str:
    """Return a text without the differences that do not matter to a reader."""
    seen = "".join(sign for sign in normalize("NFKC", text) if category(sign) != "Cf")
    return " ".join(seen.casefold().split()).rstrip(".,;:!? ")
