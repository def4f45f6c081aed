"""Questions that follow from a fault record."""

from collections.abc import Callable, Sequence

from generator.bank import Bank, Entry
from generator.bank.models import Fault
from generator.diagnostics import normal
from generator.questions.derived.topics import is_like_remedy, names_its_fault
from generator.questions.drawing import Answer, SeededRandom, lettered, unlike
from generator.questions.question import Derived
from generator.questions.wording import sentence

DISTRACTORS = 3
# a remedy is asked about where at least this many of other faults could pass for it
FEWEST_REMEDIES = 2

Maker = Callable[[Bank, Entry[Fault], SeededRandom], Derived | None]


def name_the_fault(bank: Bank, entry: Entry[Fault], stream: SeededRandom) -> Derived | None:
    """Describe the look with its place and time, and ask for the name."""
    fault = entry.record
    others = _nearest_first(bank, entry, stream)
    if len(others) < DISTRACTORS:
        return None
    answers: list[Answer] = [(fault.title, True, _advice(fault))]
    answers += [
        (other.record.title, False, _look_says(other, entry)) for other in others[:DISTRACTORS]
    ]
    stem = f"{sentence(fault.look)} {sentence(fault.place_and_time)} Which fault is this?"
    return Derived("choice", "diagnose", stem, lettered(answers, stream))


def likely_cause(bank: Bank, entry: Entry[Fault], stream: SeededRandom) -> Derived | None:
    """Ask for the cause, where the key belongs to this fault alone."""
    fault = entry.record
    own = [cause for cause in fault.causes if cause.asked]
    known = {cause.text for cause in fault.causes}
    foreign = [
        (cause.text, other.record.title)
        for other in bank.faults.values()
        if other.name != entry.name and not _linked(entry, other)
        for cause in other.record.causes
        if cause.asked
    ]
    wrong = _one_a_title(unlike(stream.shuffled(foreign), known))
    if not own or len(wrong) < DISTRACTORS:
        return None
    asked = stream.choose(own)
    answers: list[Answer] = [(asked.text, True, _advice(fault))]
    answers += [(text, False, f"That leads to '{title}'.") for text, title in wrong[:DISTRACTORS]]
    stem = (
        f"{sentence(fault.look)} {sentence(fault.place_and_time)} "
        "Which of these is the likely cause?"
    )
    return Derived("choice", "diagnose", stem, lettered(answers, stream))


def right_remedy(bank: Bank, entry: Entry[Fault], stream: SeededRandom) -> Derived | None:
    """Ask for the remedy, where the key is not the remedy of other faults too."""
    fault = entry.record
    others = [
        other.record
        for other in bank.faults.values()
        if other.name != entry.name and other.record.remedy_asked and not _linked(entry, other)
    ]
    # those that name another fault only where too few leave it open which fault they are for
    plausible = sorted(
        (other for other in stream.shuffled(others) if is_like_remedy(other.remedy, fault)),
        key=lambda other: names_its_fault(other, fault),
    )
    wrong = unlike(((o.remedy, o.title) for o in plausible), [fault.remedy])[:DISTRACTORS]
    if not fault.remedy_asked or len(wrong) < FEWEST_REMEDIES:
        return None
    answers: list[Answer] = [(fault.remedy, True, _advice(fault))]
    answers += [(text, False, f"That is the remedy for '{title}'.") for text, title in wrong]
    stem = f"{fault.title}: {sentence(fault.look)} Which remedy fits?"
    return Derived("choice", "apply", stem, lettered(answers, stream))


def tell_apart(bank: Bank, entry: Entry[Fault], stream: SeededRandom) -> Derived | None:
    """Name a fault that has a look-alike and ask for its own look, beside linked faults first."""
    fault = entry.record
    alike = [look for look in fault.look_alikes if look.fault in bank.faults]
    if not alike:
        return None
    asked = stream.choose(alike)
    twin = bank.faults[asked.fault]
    rest = [e for e in _nearest_first(bank, entry, stream) if e.name != twin.name]
    third = [e for e in rest if _linked(entry, e) or _linked(twin, e)] or rest
    if not third:
        return None
    answers: list[Answer] = [(sentence(fault.look), True, sentence(asked.difference))]
    answers += [
        (
            sentence(other.record.look),
            False,
            f"That is '{other.record.title}'. {sentence(tell)}".strip(),
        )
        for other, tell in ((twin, asked.difference), (third[0], _tell_of(entry, third[0])))
    ]
    stem = (
        f"'{fault.title}' and '{twin.record.title}' are easy to mix up. "
        f"Which of these is '{fault.title}'?"
    )
    return Derived("choice", "diagnose", stem, lettered(answers, stream))


def _nearest_first(bank: Bank, entry: Entry[Fault], stream: SeededRandom) -> Sequence[Entry[Fault]]:
    near = [look.fault for look in entry.record.look_alikes if look.fault in bank.faults]
    rest = [name for name in sorted(bank.faults) if name != entry.name and name not in near]
    names = dict.fromkeys([*near, *stream.shuffled(rest)])
    return [bank.faults[name] for name in names if not _same_fault(entry, bank.faults[name])]


def _same_fault(one: Entry[Fault], two: Entry[Fault]) -> bool:
    """Return whether the title of one record is a name of the other."""
    names, others = (
        {normal(name) for name in (entry.record.title, *entry.record.other_names)}
        for entry in (one, two)
    )
    return normal(one.record.title) in others or normal(two.record.title) in names


def _linked(entry: Entry[Fault], other: Entry[Fault]) -> bool:
    """Return whether two faults are stated look-alikes, whose causes and cures may overlap."""
    return other.name in {look.fault for look in entry.record.look_alikes} or entry.name in {
        look.fault for look in other.record.look_alikes
    }


def _one_a_title(causes: Sequence[tuple[str, str]]) -> list[tuple[str, str]]:
    return list({title: (text, title) for text, title in causes}.values())


def _look_says(other: Entry[Fault], entry: Entry[Fault]) -> str:
    tell = _tell_of(entry, other)
    return f"{other.record.title} looks like this: {sentence(other.record.look)} {tell}".strip()


def _tell_of(entry: Entry[Fault], other: Entry[Fault]) -> str:
    for one, two in ((entry, other), (other, entry)):
        for look in one.record.look_alikes:
            if look.fault == two.name:
                return sentence(look.difference)
    return ""


def _advice(fault: Fault) -> str:
    return f"Prevent it: {sentence(fault.prevention)}"


FROM_FAULT: dict[str, Maker] = {
    "name": name_the_fault,
    "cause": likely_cause,
    "remedy": right_remedy,
    "look_alike": tell_apart,
}
