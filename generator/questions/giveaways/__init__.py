"""Which questions of a bank give one another away.

Files: told_text (what a question asks and tells) over paper_texts and record_texts, which read it
off items and records; told_words (texts as weighed words); giving_away with
same_order (the measure); kept_list (the file of the bank that keeps what was found).
"""

from generator.questions.giveaways.giving_away import giveaways
from generator.questions.giveaways.kept_list import (
    FILE,
    bank_giveaways,
    kept_apart,
    list_problems,
    list_text,
)
from generator.questions.giveaways.told_text import Asked, PaperText

__all__ = [
    "Asked",
    "FILE",
    "PaperText",
    "bank_giveaways",
    "giveaways",
    "kept_apart",
    "list_problems",
    "list_text",
]
