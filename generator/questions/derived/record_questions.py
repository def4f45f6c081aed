"""The questions that follow from procedure, fault and table records."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import partial

from generator.bank import Bank, Entry
from generator.bank.models import Critical, Procedure, SourceTag
from generator.questions.cautions import own_cautions, procedure_cautions
from generator.questions.derived.from_fault import FROM_FAULT
from generator.questions.derived.from_procedure import FROM_PROCEDURE, must_come_before
from generator.questions.derived.from_table import look_up
from generator.questions.drawing import SeededRandom
from generator.questions.item_questions import Taken, salt
from generator.questions.question import MINUTES, Derived, Exhibit, Question, ShownCaution
from generator.questions.sources import place_title, shown_critical, shown_sources

Asked = tuple[Derived, Exhibit | None] | None


@dataclass(frozen=True, slots=True)
class RecordQuestion:
    """A question that a record can give.

    name      such as procedures/mix_filler/order
    cautions  gives what to heed in the work that a question of the record names
    ask       gives the question for a stream, or nothing where the record cannot
    place     whose rule the record follows, a name of places.yml, or empty
    critical  set where the question is on a pair of steps that hurts the other way round
    """

    name: str
    objective: str
    tags: tuple[SourceTag, ...]
    safety: bool
    cautions: Callable[[Derived], tuple[ShownCaution, ...]]
    ask: Callable[[SeededRandom], Asked]
    place: str = ""
    critical: Critical | None = None

    def use(self, bank: Bank) -> str:
        """Return both, or study where a tag rests on memory."""
        shown = shown_sources(bank, self.tags)
        return "study" if any(source.tag == "from_memory" for source in shown) else "both"

    def make(self, bank: Bank, form: str, taken: Taken = ()) -> Question | None:
        """Return the question for a form's label; what is taken does not matter here."""
        asked = self.ask(SeededRandom(salt(bank), form, self.name, "layout"))
        if asked is None:
            return None
        derived, exhibit = asked
        return Question(
            name=self.name,
            kind=derived.kind,
            objective=self.objective,
            level=derived.level,
            use=self.use(bank),
            safety=self.safety,
            stem=derived.stem,
            sources=shown_sources(bank, self.tags),
            key=derived.key,
            cautions=self.cautions(derived),
            exhibit=exhibit,
            minutes=MINUTES[derived.kind],
            critical=shown_critical(bank, self.critical),
            place=place_title(bank, self.place),
        )


def record_questions(bank: Bank) -> Iterator[RecordQuestion]:
    """Return every question the records could give, before any is tried."""
    yield from _of_procedures(bank)
    yield from _of_faults(bank)
    yield from _of_tables(bank)


def _of_procedures(bank: Bank) -> Iterator[RecordQuestion]:
    for name, entry in bank.procedures.items():
        record = entry.record
        danger = any(pair.pair_class == "danger" for pair in record.pairs)
        for label, maker in FROM_PROCEDURE.items():

            def ask(stream: SeededRandom, maker=maker, entry=entry) -> Asked:  # type: ignore[no-untyped-def]
                derived = maker(bank, entry, stream)
                return (derived, None) if derived else None

            full = f"procedures/{name}/{label}"
            yield RecordQuestion(
                full,
                record.objective,
                record.source,
                danger,
                partial(procedure_cautions, bank, record),
                ask,
                record.place or "",
            )
        yield from _of_critical_pairs(bank, entry)


def _of_critical_pairs(bank: Bank, entry: Entry[Procedure]) -> Iterator[RecordQuestion]:
    """Return a question on each pair that hurts somebody the other way round, on no other."""
    record = entry.record
    for pair in record.pairs:
        if pair.critical:

            def ask(stream: SeededRandom, pair=pair) -> Asked:  # type: ignore[no-untyped-def]
                derived = must_come_before(entry, pair, stream)
                return (derived, None) if derived else None

            yield RecordQuestion(
                f"procedures/{entry.name}/{pair.first}_before_{pair.then}",
                record.objective,
                record.source,
                True,
                partial(procedure_cautions, bank, record),
                ask,
                record.place or "",
                pair.critical,
            )


def _of_faults(bank: Bank) -> Iterator[RecordQuestion]:
    for name, entry in bank.faults.items():
        record = entry.record
        for label, maker in FROM_FAULT.items():

            def ask(stream: SeededRandom, maker=maker, entry=entry) -> Asked:  # type: ignore[no-untyped-def]
                derived = maker(bank, entry, stream)
                return (derived, None) if derived else None

            full = f"faults/{name}/{label}"
            cautions = own_cautions([record.caution] if record.caution else [])
            yield RecordQuestion(
                full, record.objective, record.source, False, partial(_same, cautions), ask
            )


def _same(cautions: tuple[ShownCaution, ...], _: Derived) -> tuple[ShownCaution, ...]:
    return cautions


def _of_tables(bank: Bank) -> Iterator[RecordQuestion]:
    for name, entry in bank.tables.items():

        def ask(stream: SeededRandom, entry=entry) -> Asked:  # type: ignore[no-untyped-def]
            return look_up(bank, entry, stream)

        record = entry.record
        full = f"tables/{name}/look_up"
        yield RecordQuestion(
            full,
            record.objective,
            record.source,
            False,
            partial(_same, ()),
            ask,
            record.place or "",
        )
