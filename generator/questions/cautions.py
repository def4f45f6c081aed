"""The cautions that belong to a question: what its author wrote, and those of its hazards."""

from collections.abc import Iterable, Iterator

from generator.bank import Bank
from generator.bank.models import Item, OrderItem, Procedure, Step
from generator.questions.question import ChoiceKey, Derived, OrderKey, ShownCaution
from generator.questions.wording import lower_start


def hazard_cautions(bank: Bank, names: Iterable[str]) -> tuple[str, ...]:
    """Return the caution of each hazard once, in the order of hazards.yml."""
    wanted = set(names)
    return tuple(entry.record.caution for name, entry in bank.hazards.items() if name in wanted)


def item_cautions(bank: Bank, item: Item) -> tuple[ShownCaution, ...]:
    """Return what a learner must heed in the work that an item asks about."""
    steps = item.steps if isinstance(item, OrderItem) else ()
    met = (*item.meets, *(name for step in steps for name in step.meets))
    return _shown(bank, [item.caution] if item.caution else [], met)


def procedure_cautions(
    bank: Bank, procedure: Procedure, derived: Derived
) -> tuple[ShownCaution, ...]:
    """Return what to heed in the steps of a procedure that a question on it names."""
    met = (name for step in _named(procedure.steps, derived) for name in step.meets)
    return _shown(bank, procedure.cautions, met)


def own_cautions(texts: Iterable[str]) -> tuple[ShownCaution, ...]:
    """Return cautions in their author's words."""
    return tuple(ShownCaution("", text) for text in dict.fromkeys(texts))


def _shown(bank: Bank, own: Iterable[str], hazards: Iterable[str]) -> tuple[ShownCaution, ...]:
    met = set(hazards)
    drawn = (ShownCaution(n, e.record.caution) for n, e in bank.hazards.items() if n in met)
    return (*own_cautions(own), *drawn)


def _named(steps: Iterable[Step], derived: Derived) -> Iterator[Step]:
    """Return the steps that stand in a question's words or are its answer."""
    key = derived.key
    if isinstance(key, OrderKey):
        shown = {text for _, text in key.steps}
    else:
        options = key.options if isinstance(key, ChoiceKey) else ()
        shown = {option.text for option in options if option.right}
    return (s for s in steps if s.action in shown or lower_start(s.action) in derived.stem)
