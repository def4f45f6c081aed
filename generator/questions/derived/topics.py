"""What a text is about, so that wrong options come from the same work as the question."""

from collections import Counter
from collections.abc import Iterable

from generator.bank import Bank
from generator.bank.models import Fault, Procedure
from generator.questions.trade_words import trade_words

# a word that more than one record in so many has says nothing of the work
ONE_IN = 4
# in a small bank a word of two records is not yet a common one
FEWEST_RECORDS = 3


def work_words(bank: Bank, procedure: Procedure) -> frozenset[str]:
    """Return the words that tell a procedure's work from most other work of the bank."""
    return _words(procedure) - _common(map(_words, (e.record for e in bank.procedures.values())))


def is_like_remedy(remedy: str, fault: Fault) -> bool:
    """Say whether a remedy speaks of what a fault or its own remedy speaks of."""
    return bool(trade_words(remedy) & (_seen(fault) | trade_words(fault.remedy)))


def names_its_fault(other: Fault, fault: Fault) -> bool:
    """Say whether another fault's remedy speaks of its look, so that it gives itself away."""
    return bool(trade_words(other.remedy) & _seen(other) - _seen(fault))


def _words(procedure: Procedure) -> frozenset[str]:
    texts = (procedure.title, *(step.action for step in procedure.steps))
    return frozenset(word for text in texts for word in trade_words(text))


def _seen(fault: Fault) -> frozenset[str]:
    texts = (fault.title, fault.look)
    return frozenset(word for text in texts for word in trade_words(text))


def _common(records: Iterable[frozenset[str]]) -> frozenset[str]:
    counts: Counter[str] = Counter()
    number = 0
    for words in records:
        counts.update(words)
        number += 1
    most = max(number // ONE_IN, FEWEST_RECORDS - 1)
    return frozenset(word for word, count in counts.items() if count > most)
