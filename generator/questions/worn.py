"""What a person has on before the first step, as the stem of an order question says it."""

from collections.abc import Sequence

from generator.bank import Bank
from generator.questions.wording import lower_start


def worn_words(bank: Bank, wears: Sequence[str]) -> str:
    """Return a sentence on what is guarded from the start, with a space before it, or nothing."""
    titles = [lower_start(bank.hazards[w].record.title) for w in wears if w in bank.hazards]
    if not titles:
        return ""
    listed = titles[0] if len(titles) == 1 else f"{', '.join(titles[:-1])} and {titles[-1]}"
    return f" What guards against {listed} is already on or running."
