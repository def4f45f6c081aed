"""What stands on a certificate: the paper, the work that was watched, topics and dates."""

import sqlite3
from collections.abc import Collection, Iterator, Mapping, Sequence
from datetime import date
from typing import Any

from generator.records.certificates.painter_topics import TOPICS, Topic
from generator.records.certificates.training_paper import (
    TrainingPaper,
    missing_knowledge,
    training_paper,
)
from generator.records.certificates.training_practice import latest_looks, missing_practice
from generator.records.people import Person
from generator.records.practice import RENEWALS, DatedFact, Observation, facts_of, observations_of
from generator.records.store import RecordsRefused

Plain = dict[str, Any]
NOT_SAID = (
    "It does not say that the person is fit to work or allowed to spray.",
    "It is no medical clearance to wear a respirator, and no fit test of one.",
    "Answers on paper do not show skill with a gun; only what somebody watched is listed as seen.",
    "The rule asks the owner or operator to certify the training; the signature below does that, "
    "not the program that printed this page.",
)
NO_FIT_TEST = "No fit test of a respirator is in these records."


def certificate_content(
    connection: sqlite3.Connection,
    person: Person,
    signer: Person,
    edition: str,
    plans: Collection[str],
    today: date,
) -> Plain:
    """Return the plain JSON of a certificate.

    plans  names of the plans that serve the certificate
    Raises RecordsRefused with every part that is missing and the command that supplies it.
    """
    paper = training_paper(connection, person.code, plans)
    looks = latest_looks(observations_of(connection, person.code))
    facts = facts_of(connection, person.code)
    training = [fact for fact in facts if fact.kind == "painter_training"]
    missing = [
        *missing_knowledge(person.code, paper, plans),
        *missing_practice(person.code, looks, signer.code),
        *_missing_date(person.code, training),
    ]
    if missing or paper is None:
        listed = "\n".join(f"  - {part}" for part in missing)
        raise RecordsRefused(f"'{person.code}' cannot have a certificate yet. Missing:\n{listed}")
    return {
        "person": {"code": person.code, "name": person.name},
        "trainer": {"code": signer.code, "name": signer.name},
        "issued": today.isoformat(),
        "edition": edition,
        "dates": _dates(training, today),
        "reminders": list(_reminders(facts, today)),
        "papers": [_paper(paper)],
        "practice": [_practice(seen) for seen in looks.values()],
        "sign_offs": [
            {"subject": fact.subject or "whole training", "done": fact.done}
            for fact in facts
            if fact.kind == "sign_off"
        ],
        "topics": [_topic(topic, paper, looks) for topic in TOPICS],
        "not_said": list(NOT_SAID),
    }


def _missing_date(code: str, training: Sequence[DatedFact]) -> Iterator[str]:
    if not training:
        yield (
            "no date of painter training: "
            f'guidecoat records date "{code}" painter_training --done DAY'
        )


def _dates(training: Sequence[DatedFact], today: date) -> Plain:
    first, latest = training[0], training[-1]
    due = latest.falls_due
    return {
        "first": first.done,
        "refresher": latest.done if latest is not first else "",
        "due": due.isoformat() if due else "",
        "overdue": due is not None and due < today,
        "leap": latest.done.endswith("-02-29"),
    }


def _reminders(facts: Sequence[DatedFact], today: date) -> Iterator[str]:
    """Say which fit test or refresher had run out on the day of issue."""
    latest = {fact.kind: fact for fact in facts if fact.kind in RENEWALS}
    for fact in latest.values():
        due = fact.falls_due
        if due is not None and due < today:
            yield (
                f"OVERDUE: {fact.in_words}, last on {fact.done}, was due again by "
                f"{due.isoformat()}."
            )
    if "fit_test" not in latest:
        yield NO_FIT_TEST


def _paper(paper: TrainingPaper) -> Plain:
    result = paper.result
    needed = f"; {paper.pass_percent} % needed" if paper.pass_percent else ""
    return {
        "title": result.title,
        "date": result.sat[:10],
        "paper": f"issue {result.issue}, form {result.label}, edition {result.edition}",
        "result": f"{result.in_words}{needed}",
    }


def _practice(seen: Observation) -> Plain:
    return {
        "procedure": seen.procedure,
        "title": seen.title,
        "date": seen.observed,
        "job": seen.job,
        "observer": seen.observer,
        "result": seen.in_words,
    }


def _topic(topic: Topic, paper: TrainingPaper, looks: Mapping[str, Observation]) -> Plain:
    right, asked = paper.topics[topic.clause]
    seen = [looks[piece.procedure].title for piece in topic.hands_on]
    return {
        "clause": topic.clause,
        "text": topic.text,
        "knowledge": f"{right} of {asked} right",
        "practice": "; ".join(seen),
    }
