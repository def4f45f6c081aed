"""Which options are right, from the records alone: items, procedures, faults, tables."""

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from tests.read_back.plain_bank import PlainBank, Record, bare, inside
from tests.read_back.precedence import earlier, scored_pairs


@dataclass(frozen=True, slots=True)
class Options:
    """Texts without spaces.

    texts  all that may stand beside a letter
    right  those that are right
    """

    texts: frozenset[str]
    right: frozenset[str]


def options_of(bank: PlainBank, name: str, tight: str) -> Options:
    """Return the options of a question by its name and its words on the paper."""
    first, *rest = name.split("/")
    if first not in ("procedures", "faults", "tables"):
        return _of_item(bank.items[name])
    record = getattr(bank, first)[rest[0]]
    # a critical pair, such as protect_before_mix, asks as 'before' does
    kind = "before" if "_before_" in rest[1] else rest[1]
    return _DERIVED[first, kind](bank, record, tight.casefold())


def _options(texts: Iterable[str], right: Iterable[str]) -> Options:
    return Options(frozenset(map(bare, texts)), frozenset(map(bare, right)))


def _of_item(item: Record) -> Options:
    right = [option["text"] for option in item["options"] if option.get("right") == "true"]
    return _options((option["text"] for option in item["options"]), right)


def steps_of(record: Record) -> dict[str, str]:
    """Return the steps of a card that must be done, in their order."""
    return {s["step"]: s["action"] for s in record["steps"] if s.get("optional") != "true"}


def _next(bank: PlainBank, record: Record, tight: str) -> Options:
    """All that is done ends with the last step named; a step is right when nothing is missing."""
    steps = steps_of(record)
    told = re.split(r"thesesteps(?:andallbeforethem)?aredone:", tight)[1].split(
        ".whatmaycomenext?"
    )[0]
    # where something is on before the first step, the stem says so behind the steps
    told = told.split(".whatguardsagainst")[0]
    last = max(place for place, does in enumerate(steps.values()) if told.endswith(inside(does)))
    done = set(list(steps)[: last + 1])
    pairs = scored_pairs(record)
    right = [
        does
        for step, does in steps.items()
        if step not in done and earlier(step, pairs) & steps.keys() <= done
    ]
    return _options(steps.values(), right)


def _before(bank: PlainBank, record: Record, tight: str) -> Options:
    steps = steps_of(record)
    asked = tight.split(".youareaboutto")[1]
    (then,) = [step for step, does in steps.items() if asked.startswith(inside(does) + ".which")]
    return _options(
        steps.values(), (steps[s] for s in earlier(then, scored_pairs(record)) & steps.keys())
    )


def _missing(bank: PlainBank, record: Record, tight: str) -> Options:
    does = list(steps_of(record).values())
    right = [
        gap
        for before, gap, after in zip(does, does[1:], does[2:], strict=False)
        if f"between'{inside(before)}'and'{inside(after)}'." in tight
    ]
    every = (d for card in bank.procedures.values() for d in steps_of(card).values())
    return _options(every, right)


def _goes_wrong(bank: PlainBank, record: Record, tight: str) -> Options:
    does = {step["step"]: step["action"] for step in record["steps"]}
    right = [
        pair["goes_wrong"]
        for pair in record["pairs"]
        if pair.get("goes_wrong")
        and f"someonedoes'{inside(does[pair['then']])}'before'{inside(does[pair['first']])}'"
        in tight
    ]
    every = (p.get("goes_wrong", "") for card in bank.procedures.values() for p in card["pairs"])
    return _options(filter(None, every), right)


def _seen(fault: Record, tight: str) -> bool:
    return inside(fault["look"]) in tight and inside(fault["place_and_time"]) in tight


def _name(bank: PlainBank, record: Record, tight: str) -> Options:
    faults = bank.faults.values()
    return _options(
        (fault["title"] for fault in faults),
        (fault["title"] for fault in faults if _seen(fault, tight)),
    )


def _cause(bank: PlainBank, record: Record, tight: str) -> Options:
    """A cause that the record does not key is a cause all the same, so it may not be wrong."""
    faults = bank.faults.values()
    return _options(
        (cause["text"] for fault in faults for cause in fault["causes"]),
        (c["text"] for fault in faults if _seen(fault, tight) for c in fault["causes"]),
    )


def _remedy(bank: PlainBank, record: Record, tight: str) -> Options:
    faults = bank.faults.values()
    return _options(
        (fault["remedy"] for fault in faults),
        (
            fault["remedy"]
            for fault in faults
            if tight.startswith(f"{inside(fault['title'])}:{inside(fault['look'])}")
        ),
    )


def _look_alike(bank: PlainBank, record: Record, tight: str) -> Options:
    looks = {fault["title"]: f"{fault['look'].rstrip('.')}." for fault in bank.faults.values()}
    right = [look for title, look in looks.items() if f"whichoftheseis'{inside(title)}'?" in tight]
    return _options(looks.values(), right)


def _look_up(bank: PlainBank, record: Record, tight: str) -> Options:
    names = [column["name"] for column in record["columns"]]
    right = [
        row[names.index(asked["to"])]
        for asked in record["look_up"]
        for row in record["rows"]
        if _asks(asked, row[names.index(asked["from"])], tight)
    ]
    return _options((cell for row in record["rows"] for cell in row), right)


def _asks(asked: Record, given: str, tight: str) -> bool:
    question = tight.split("whatisthe")[1].split("?")[0]
    row = f"{inside(asked['from'])}{inside(given)}" if given[:1].isdigit() else f"'{inside(given)}'"
    return question.startswith(inside(asked["to"])) and question.endswith(f"for{row}")


_DERIVED: dict[tuple[str, str], Callable[[PlainBank, Record, str], Options]] = {
    ("procedures", "next"): _next,
    ("procedures", "before"): _before,
    ("procedures", "missing"): _missing,
    ("procedures", "goes_wrong"): _goes_wrong,
    ("faults", "name"): _name,
    ("faults", "cause"): _cause,
    ("faults", "remedy"): _remedy,
    ("faults", "look_alike"): _look_alike,
    ("tables", "look_up"): _look_up,
}
