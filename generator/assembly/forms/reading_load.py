"""How much a learner has to read: the words of a question as printed."""

from collections.abc import Iterator

from generator.questions import ChoiceKey, MatchKey, OrderKey, Question


def words_of(question: Question) -> int:
    """Count the words of stem, exhibit and options, and of a caution that stands beside them."""
    return sum(len(text.split()) for text in _printed(question))


def _printed(question: Question) -> Iterator[str]:
    yield question.stem
    yield question.caution or ""
    if question.exhibit:
        yield question.exhibit.title
        yield from question.exhibit.columns
        yield from (cell for row in question.exhibit.rows for cell in row)
    match question.key:
        case ChoiceKey(options):
            yield from (option.text for option in options)
        case OrderKey(steps=steps):
            yield from (text for _, text in steps)
        case MatchKey(left=left, right=right):
            yield from (text for _, text in (*left, *right))
