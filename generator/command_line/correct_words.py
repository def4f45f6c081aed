"""What `guidecoat correct` says: what a correction does to each form and to each person's marks."""

from collections.abc import Iterator, Mapping

from generator.command_line.mark_words import mark_words, marks_shown
from generator.command_line.project import counted
from generator.marking.answers import Effect
from generator.records.sittings import VERDICT_WORDS, Appeal, Marked, MarkedAgain

_STAYS: Mapping[Effect, str] = {
    "other numbers": "asks it with other numbers and stays as it is",
    "another step": "asks about another step and stays as it is",
    "no such option": "does not have every option that is named and stays as it is",
}


def appeal_text(appeal: Appeal) -> str:
    """Say what changes, form by form and paper by paper."""
    return "\n".join(_lines(appeal))


def _lines(appeal: Appeal) -> Iterator[str]:
    changed = [label for label, effect in appeal.effects.items() if effect == "changed"]
    yield f"changes {counted(len(changed), 'form')}: {', '.join(changed)}"
    for effect, words in _STAYS.items():
        for label in (label for label, said in appeal.effects.items() if said == effect):
            yield f"form {label} {words}"
    moved = [again for again in appeal.again if again.changes]
    yield f"{counted(len(appeal.again), 'paper')} marked again, {len(moved)} with other marks"
    yield from map(_moved, moved)


def _moved(again: MarkedAgain) -> str:
    who = f"form {again.label}, {again.person}" if again.person else f"form {again.label}"
    return f"  {who}: {_before(again.before)} -> {mark_words(again.after)}"


def _before(marked: Marked) -> str:
    return f"{marks_shown(marked.points)} of {marked.most} marks, {VERDICT_WORDS[marked.verdict]}"
