"""Whether every accepted order keeps the guard before the hazard, without counting orders."""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Protocol

from generator.bank.orders.precedence import Pairs, transitive_closure


class HazardStep(Protocol):
    """What a step says of hazards."""

    @property
    def step(self) -> str:
        """Return the step's name."""
        ...

    @property
    def meets(self) -> tuple[str, ...]:
        """Return the hazards that the step meets."""
        ...

    @property
    def guards(self) -> tuple[str, ...]:
        """Return the hazards that the step guards against."""
        ...

    @property
    def ends(self) -> tuple[str, ...]:
        """Return the hazards whose guard the step takes off."""
        ...


@dataclass(frozen=True, slots=True)
class StepHazards:
    """The hazards of a piece of work.

    steps  what each step meets, guards against and stops guarding against, in the listed order
    wears  hazards that are guarded against before the first step
    """

    steps: Mapping[str, HazardStep] = field(default_factory=dict)
    wears: frozenset[str] = frozenset()

    def only(self, kept: Collection[str]) -> "StepHazards":
        """Return the same for some of the steps."""
        return StepHazards({n: s for n, s in self.steps.items() if n in kept}, self.wears)


@dataclass(frozen=True, slots=True)
class Unguarded:
    """A step that an accepted order brings before its guard, or after the guard is off.

    ended    the step that takes the guard off too early, or None where no guard came at all
    witness  the start of a shortest such order, up to the step
    """

    step: str
    hazard: str
    ended: str
    witness: tuple[str, ...]


def step_hazards(steps: Iterable[HazardStep], wears: Iterable[str]) -> StepHazards:
    """Return the hazards of steps in their listed order."""
    return StepHazards({step.step: step for step in steps}, frozenset(wears))


def hazards_met(record: object) -> tuple[str, ...]:
    """Return the hazards that an item or a procedure meets, each once, in the order met."""
    names = [*getattr(record, "meets", ())]
    for step in getattr(record, "steps", ()):
        names += step.meets
    return tuple(dict.fromkeys(names))


def unguarded(work: StepHazards, pairs: Iterable[tuple[str, str]]) -> tuple[Unguarded, ...]:
    """Return each step and hazard for which some order that keeps the pairs is unsafe.

    An order is unsafe at a step that meets a hazard where no guard came before it, or where the
    last step before it that changed the guard took it off. Such an order exists just where no
    guard is forced before the step, or where a step that ends the guard is not forced after it and
    no guard is forced between the two: whatever is not forced can be moved out of the way. A step
    never guards itself. The pairs must not run in a circle.
    """
    return unguarded_where(work, transitive_closure(pairs))


def unguarded_where(work: StepHazards, forced: Pairs) -> tuple[Unguarded, ...]:
    """Return what `unguarded` gives, from pairs that hold everything that follows from them."""
    before = _before(work, forced)
    found = []
    for name, step in work.steps.items():
        for hazard in step.meets:
            cases = [*_never_guarded(work, before, name, hazard)]
            cases += _ended_too_early(work, before, name, hazard)
            if cases:
                found.append(min(cases, key=lambda case: len(case.witness)))
    return tuple(found)


def unsafe_at(work: StepHazards, order: Sequence[str]) -> tuple[tuple[str, str], ...]:
    """Return each step and hazard that one order brings without a guard, by walking along it."""
    on = set(work.wears)
    found = []
    for name in order:
        step = work.steps[name]
        found += [(name, hazard) for hazard in step.meets if hazard not in on]
        on -= set(step.ends)
        on |= set(step.guards)
    return tuple(found)


def _before(work: StepHazards, forced: Pairs) -> Mapping[str, frozenset[str]]:
    before: dict[str, set[str]] = {name: set() for name in work.steps}
    for first, then in forced:
        if then in before and first in before:
            before[then].add(first)
    return {name: frozenset(names) for name, names in before.items()}


def _guards(work: StepHazards, hazard: str) -> list[str]:
    return [name for name, step in work.steps.items() if hazard in step.guards]


def _never_guarded(
    work: StepHazards, before: Mapping[str, frozenset[str]], name: str, hazard: str
) -> Iterable[Unguarded]:
    if hazard not in work.wears and not before[name] & set(_guards(work, hazard)):
        yield Unguarded(name, hazard, "", (*_in_order(before[name], work, before), name))


def _ended_too_early(
    work: StepHazards, before: Mapping[str, frozenset[str]], name: str, hazard: str
) -> Iterable[Unguarded]:
    guards = _guards(work, hazard)
    for end, step in work.steps.items():
        if hazard not in step.ends or end in guards or end == name or name in before[end]:
            continue
        if any(end in before[guard] and guard in before[name] for guard in guards):
            continue
        needed = before[name] | before[end]
        after = {other for other in needed if end in before[other]}
        first = _in_order(needed - after - {end}, work, before)
        witness = (*first, end, *_in_order(after, work, before), name)
        yield Unguarded(name, hazard, end, witness)


def _in_order(
    names: Collection[str], work: StepHazards, before: Mapping[str, frozenset[str]]
) -> tuple[str, ...]:
    """Return steps in the listed order as far as what is forced lets them stand so."""
    left = [name for name in work.steps if name in names]
    done: list[str] = []
    while left:
        free = next((n for n in left if not before[n] & set(left)), left[0])
        left.remove(free)
        done.append(free)
    return tuple(done)
