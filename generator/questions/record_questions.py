"""The questions that follow from procedure, fault and table records."""

from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass

from generator.bank import Bank
from generator.bank.records import SourceTag
from generator.questions.from_fault import FROM_FAULT
from generator.questions.from_procedure import FROM_PROCEDURE, Derived
from generator.questions.from_table import look_up
from generator.questions.item_questions import salt
from generator.questions.numeric import Draw
from generator.questions.question import MINUTES, Exhibit, Question
from generator.questions.sources import shown_sources
from generator.questions.stream import Stream

Asked = tuple[Derived, Exhibit | None] | None


@dataclass(frozen=True, slots=True)
class RecordQuestion:
    """A question that a record can give.

    name  such as procedures/mix_filler/order
    ask   gives the question for a stream, or nothing where the record cannot
    """

    name: str
    objective: str
    tags: tuple[SourceTag, ...]
    safety: bool
    caution: str | None
    ask: Callable[[Stream], Asked]

    def pool(self, bank: Bank) -> str:
        """Give both, or study where a tag rests on memory."""
        shown = shown_sources(bank, self.tags)
        return "study" if any(source.tag == "from_memory" for source in shown) else "both"

    def make(self, bank: Bank, form: str, taken: Collection[Draw] = ()) -> Question | None:
        """Give the question for a form's label; what is taken does not matter here."""
        asked = self.ask(Stream(salt(bank), form, self.name, "layout"))
        if asked is None:
            return None
        derived, exhibit = asked
        return Question(
            name=self.name,
            kind=derived.kind,
            objective=self.objective,
            level=derived.level,
            pool=self.pool(bank),
            safety=self.safety,
            stem=derived.stem,
            sources=shown_sources(bank, self.tags),
            key=derived.key,
            caution=self.caution,
            exhibit=exhibit,
            minutes=MINUTES[derived.kind],
        )


def record_questions(bank: Bank) -> Iterator[RecordQuestion]:
    """Give every question the records could give, before any is tried."""
    yield from _of_procedures(bank)
    yield from _of_faults(bank)
    yield from _of_tables(bank)


def _of_procedures(bank: Bank) -> Iterator[RecordQuestion]:
    for name, entry in bank.procedures.items():
        record = entry.record
        danger = any(pair.pair_class == "danger" for pair in record.pairs)
        caution = record.cautions[0] if record.cautions else None
        for label, maker in FROM_PROCEDURE.items():

            def ask(stream: Stream, maker=maker, entry=entry) -> Asked:  # type: ignore[no-untyped-def]
                derived = maker(bank, entry, stream)
                return (derived, None) if derived else None

            full = f"procedures/{name}/{label}"
            yield RecordQuestion(full, record.objective, record.source, danger, caution, ask)


def _of_faults(bank: Bank) -> Iterator[RecordQuestion]:
    for name, entry in bank.faults.items():
        record = entry.record
        for label, maker in FROM_FAULT.items():

            def ask(stream: Stream, maker=maker, entry=entry) -> Asked:  # type: ignore[no-untyped-def]
                derived = maker(bank, entry, stream)
                return (derived, None) if derived else None

            full = f"faults/{name}/{label}"
            yield RecordQuestion(full, record.objective, record.source, False, record.caution, ask)


def _of_tables(bank: Bank) -> Iterator[RecordQuestion]:
    for name, entry in bank.tables.items():

        def ask(stream: Stream, entry=entry) -> Asked:  # type: ignore[no-untyped-def]
            return look_up(bank, entry, stream)

        record = entry.record
        full = f"tables/{name}/look_up"
        yield RecordQuestion(full, record.objective, record.source, False, None, ask)
