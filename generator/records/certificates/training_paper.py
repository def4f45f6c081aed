"""The paper that a training certificate asks for: the last one sat, passed, every topic asked."""

import sqlite3
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

from generator.marking.answers import LEFT_OUT
from generator.records.certificates.painter_topics import TOPICS, Topic
from generator.records.issues import forms_of
from generator.records.sittings import VERDICT_WORDS, Result, results_of, sittings_of


@dataclass(frozen=True, slots=True)
class TrainingPaper:
    """A paper of a plan that serves the certificate.

    topics  by clause how many questions were fully right, of how many; what an appeal left out
            counts in neither
    """

    result: Result
    pass_percent: int
    topics: Mapping[str, tuple[int, int]]


def training_paper(
    connection: sqlite3.Connection, code: str, plans: Collection[str]
) -> TrainingPaper | None:
    """Return the last paper that a person sat of some plans, with the marking that stands.

    plans  names of the plans that serve the certificate; voided issues do not count
    """
    results = [result for result in results_of(connection, code) if result.blueprint in plans]
    return _read(connection, results[-1]) if results else None


def _read(connection: sqlite3.Connection, result: Result) -> TrainingPaper:
    (form,) = (f.content for f in forms_of(connection, result.issue) if f.label == result.label)
    (sitting,) = (
        s
        for s in sittings_of(connection, result.issue)
        if (s.label, s.person) == (result.label, result.person)
    )
    counts = {topic.clause: (0, 0) for topic in TOPICS}
    for entry, mark in zip(form["questions"], sitting.marked.marks, strict=True):
        if mark.findings.get(LEFT_OUT):
            continue
        for topic in (t for t in TOPICS if t.asks(str(entry["question"]["objective"]))):
            right, asked = counts[topic.clause]
            counts[topic.clause] = (right + (mark.status == "right"), asked + 1)
    return TrainingPaper(result, int(form.get("pass_percent", 0)), counts)


def missing_knowledge(
    code: str, paper: TrainingPaper | None, plans: Collection[str]
) -> Iterator[str]:
    """Say what the knowledge part lacks, each time with the command that supplies it."""
    if not plans:
        yield (
            "no plan in question_bank/blueprints/ says 'certificate: painter_training', so no "
            "paper can be asked for: add that line to the plan that trains painters"
        )
        return
    sit = f"guidecoat issue {min(plans)} --roster people.csv --seed WORD, then guidecoat mark"
    if paper is None:
        yield f"'{code}' has sat no paper of painter training: {sit}"
        return
    result = paper.result
    which = f"issue {result.issue}, form {result.label}, of {result.sat[:10]}"
    if result.verdict == "unfinished":
        yield f"the paper ({which}) is {VERDICT_WORDS['unfinished']}: guidecoat mark"
    elif result.verdict != "passed":
        yield f"the last paper ({which}) was {result.in_words}; teach, then issue anew: {sit}"
    for topic in TOPICS:
        right, asked = paper.topics[topic.clause]
        if not asked:
            yield f"the paper ({which}) asks nothing on {_named(topic)}; sit one that does: {sit}"
        elif not right:
            yield (
                f"no answer on {_named(topic)} was right ({which}); "
                f"teach it, then issue anew: {sit}"
            )


def _named(topic: Topic) -> str:
    return f"{topic.clause}, {topic.text.partition(':')[0].lower()}"
