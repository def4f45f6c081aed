"""What stands on a certificate: papers, observed work, topics and dates from the records."""

import sqlite3
from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from generator.records.answers import answers_by_objective
from generator.records.database import RecordsRefused
from generator.records.dated_facts import DatedFact, facts_of
from generator.records.observations import Observation, observations_of
from generator.records.painter_topics import TOPICS, Topic
from generator.records.people import Person
from generator.records.results import Result, latest_by_paper, results_of

Plain = dict[str, Any]
NOT_SAID = (
    "It does not say that the person is fit to work or allowed to spray.",
    "It is no medical clearance to wear a respirator.",
    "It is no fit test of a respirator.",
    "Answers on paper do not show skill with a gun; only what somebody watched is listed as seen.",
    "The rule asks the owner or operator to certify the training; the signature below does that, "
    "not the program that printed this page.",
)


def certificate_content(
    connection: sqlite3.Connection, person: Person, signer: Person, edition: str, today: date
) -> Plain:
    """Give the plain JSON of a certificate; raises RecordsRefused where a part is missing."""
    papers = latest_by_paper(results_of(connection, person.code))
    practice = _latest_practice(observations_of(connection, person.code))
    if not any(paper.verdict == "passed" for paper in papers):
        raise RecordsRefused(f"'{person.code}' has no passed paper, so the knowledge part is empty")
    if not practice:
        raise RecordsRefused(f"nobody has observed '{person.code}', so the hands-on part is empty")
    facts = facts_of(connection, person.code)
    by_objective = answers_by_objective(connection, person.code)
    return {
        "person": {"code": person.code, "name": person.name},
        "trainer": {"code": signer.code, "name": signer.name},
        "issued": today.isoformat(),
        "edition": edition,
        "dates": _dates(person.code, facts, today),
        "papers": [_paper(paper) for paper in papers],
        "practice": [_practice(seen) for seen in practice],
        "sign_offs": [
            {"subject": fact.subject or "whole training", "done": fact.done}
            for fact in facts
            if fact.kind == "sign_off"
        ],
        "topics": [_topic(topic, by_objective, practice) for topic in TOPICS],
        "not_said": list(NOT_SAID),
    }


def _latest_practice(seen: Sequence[Observation]) -> tuple[Observation, ...]:
    return tuple({observation.procedure: observation for observation in seen}.values())


def _dates(code: str, facts: Sequence[DatedFact], today: date) -> Plain:
    training = [fact for fact in facts if fact.kind == "painter_training"]
    if not training:
        raise RecordsRefused(
            f"'{code}' has no date of painter training; enter it with: records date"
        )
    first, latest = training[0], training[-1]
    due = latest.falls_due
    return {
        "first": first.done,
        "refresher": latest.done if latest is not first else "",
        "due": due.isoformat() if due else "",
        "overdue": due is not None and due < today,
        "leap": latest.done.endswith("-02-29"),
    }


def _paper(result: Result) -> Plain:
    return {
        "title": result.title,
        "date": result.sat[:10],
        "paper": f"issue {result.issue}, form {result.label}, edition {result.edition}",
        "result": result.in_words,
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


def _topic(
    topic: Topic, by_objective: Mapping[str, tuple[int, int]], practice: Sequence[Observation]
) -> Plain:
    right, asked = topic.answers(by_objective)
    seen = [p.title for p in practice if p.procedure in topic.procedures]
    return {
        "clause": topic.clause,
        "text": topic.text,
        "knowledge": f"{right} of {asked} questions right" if asked else "no question asked here",
        "practice": "observed: " + "; ".join(seen) if seen else "not observed here",
    }
