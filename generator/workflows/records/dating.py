"""Something was done on a day: the date only, doubted first where it looks odd, then kept."""

from dataclasses import dataclass
from datetime import date

from generator.records import Records, RecordsRefused
from generator.records.practice import DatedFact, add_fact, doubts_about, replace_fact, why_due
from generator.workflows.refusals import NeedsConfirmation, Refused, refusing


@dataclass(frozen=True, slots=True)
class PlannedDate:
    """A date that may be kept, once what looks odd in it was confirmed.

    counted_from  the day on which it is judged
    asks          what a person must say yes to; None where nothing looks odd
    """

    fact: DatedFact
    counted_from: date
    asks: NeedsConfirmation | None


def plan_date(
    person: str,
    kind: str,
    *,
    done: date,
    due: date | None = None,
    subject: str = "",
    today: date,
) -> PlannedDate | Refused:
    """Return a date as it would be kept, with what looks odd about it.

    due      day it is due again, where somebody set one
    subject  what was signed off, or the paper to sit again
    """
    if kind == "retest" and (due is None or not subject):
        sentence = "a retest needs --due and --subject with the name of the paper"
        return Refused(sentence, misuse=True)
    fact = DatedFact(person, kind, done.isoformat(), due.isoformat() if due else "", subject)
    return _planned(fact, today)


@refusing(RecordsRefused)
def _planned(fact: DatedFact, today: date) -> PlannedDate:
    doubts = doubts_about(fact, today)
    asks = NeedsConfirmation(doubts, "Keep this date?") if doubts else None
    return PlannedDate(fact, today, asks)


@refusing(RecordsRefused)
def keep_date(
    connection: Records,
    plan: PlannedDate,
    at: str,
    *,
    earlier: int | None = None,
    reason: str = "",
) -> str:
    """Keep a date, or put it in the place of an earlier one; return it in words.

    at               the time, as text
    earlier, reason  number of the one it corrects, and why; what that was stays in the records
    """
    if earlier is None:
        add_fact(connection, plan.fact, at, plan.counted_from)
    else:
        replace_fact(connection, earlier, plan.fact, reason, at, plan.counted_from)
    day = plan.fact.falls_due
    due = f"; due again on {day.isoformat()}: {why_due(plan.fact, day)}" if day else ""
    return f"{plan.fact.in_words}: {plan.fact.done}{due}"
