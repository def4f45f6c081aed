"""The bank's list of giveaways: written by a command, with a part that is kept by hand."""

from collections.abc import Iterator, Sequence

from generator.bank import Bank, Entry
from generator.bank.models import Giveaways
from generator.diagnostics import Place, Problem
from generator.questions.giveaways.giving_away import Giveaway, giveaways
from generator.questions.giveaways.paper_texts import paper_texts
from generator.questions.pool import Askable

OUT_OF_DATE, IN_VAIN = "giveaways-out-of-date", "giveaway-cleared-in-vain"
FILE = "giveaways.yml"
COMMAND = "guidecoat check --write-giveaways"
_HEAD = f"""\
# Questions that give one another away, so that no paper holds both. 'found' is written by
# '{COMMAND}'; 'cleared' is kept by hand: pairs that somebody read and
# judged harmless, each with the reason. They may share a paper.
"""
_CLEARED = "cleared: []\n"

Pair = frozenset[str]


def bank_giveaways(bank: Bank, known: Sequence[Askable]) -> tuple[Giveaway, ...]:
    """Return what questions for papers tell of one another; those that never meet are left out.

    known  everything the bank can ask
    A procedure shows the same steps in all its questions, so beside other questions it is named as
    one.
    """
    asked = {askable.name: askable for askable in known if askable.use != "study"}
    apart = {frozenset((a.name, other)) for a in asked.values() for other in a.not_with}
    named: dict[tuple[str, str], Giveaway] = {}
    for found in giveaways(paper_texts(bank, tuple(asked.values()))):
        one, other = asked[found.question], asked[found.gives_away]
        if one.group != other.group and _pair(found) not in apart:
            names = (_named(one, beside=other), _named(other, beside=one))
            named.setdefault(names, Giveaway(*names, found.words))
    return tuple(named[names] for names in sorted(named))


def _named(askable: Askable, beside: Askable) -> str:
    one, other = (asked.record.startswith("procedures/") for asked in (askable, beside))
    return askable.record if one and not other else askable.name


def kept_apart(bank: Bank) -> tuple[tuple[str, str], ...]:
    """Return each two questions that the list keeps off one paper: those found and not cleared."""
    listed = bank.giveaways.record if bank.giveaways else Giveaways()
    cleared = {frozenset((one.question, one.gives_away)) for one in listed.cleared}
    found = {frozenset((one.question, one.gives_away)) for one in listed.found}
    return tuple(sorted((min(pair), max(pair)) for pair in found - cleared if len(pair) == 2))


def list_problems(bank: Bank, known: Sequence[Askable]) -> Iterator[Problem]:
    """Return what the list lacks, what it has too much, and what was cleared in vain."""
    found = bank_giveaways(bank, known)
    entry = bank.giveaways
    listed = entry.record if entry else Giveaways()
    kept = {(one.question, one.gives_away): one.words for one in listed.found}
    now = {(one.question, one.gives_away): " ".join(one.words) for one in found}
    if kept != now:
        place = entry.start if entry else Place(f"question_bank/{FILE}", 1, 1)
        message = f"the list of giveaways does not fit the bank: {_difference(kept, now)}"
        yield Problem(place, "warning", OUT_OF_DATE, message, f"type: {COMMAND}")
    pairs = {_pair(one) for one in found}
    for place_in_list, one in enumerate(listed.cleared):
        if entry and frozenset((one.question, one.gives_away)) not in pairs:
            yield _in_vain(entry, place_in_list)


def _difference(kept: dict[tuple[str, str], str], now: dict[tuple[str, str], str]) -> str:
    lacks, extra = len(now.keys() - kept.keys()), len(kept.keys() - now.keys())
    told = [f"it lacks {lacks}"] * bool(lacks) + [f"it has {extra} too many"] * bool(extra)
    return " and ".join(told) or "other words are shared now"


def _in_vain(entry: Entry[Giveaways], place: int) -> Problem:
    return entry.problem(
        "warning",
        IN_VAIN,
        "these two no longer give one another away",
        *("cleared", place, "question"),
        hint="take the line out, or mend the name",
    )


def list_text(bank: Bank, known: Sequence[Askable], old: str) -> str:
    """Return the text of the list as it should be; what was cleared stays word for word.

    old  the text of the list so far, or nothing
    """
    rows = [
        f"  - {{question: {one.question}, gives_away: {one.gives_away}, "
        f'words: "{" ".join(one.words)}"}}\n'
        for one in bank_giveaways(bank, known)
    ]
    found = "found:\n" + "".join(rows) if rows else "found: []\n"
    lines = old.splitlines(keepends=True)
    start = next((n for n, line in enumerate(lines) if line.startswith("cleared:")), None)
    return _HEAD + found + ("".join(lines[start:]) if start is not None else _CLEARED)


def _pair(found: Giveaway) -> Pair:
    return frozenset((found.question, found.gives_away))
