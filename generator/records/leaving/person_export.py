"""Everything that the records hold about one person, as plain data for that person."""

import sqlite3
from typing import Any

from generator.records.certificates import certificates_of
from generator.records.issues import unfrozen
from generator.records.people import person_id
from generator.records.practice import (
    KIND_WORDS,
    SEEN_WORDS,
    Observation,
    facts_of,
    observations_of,
)
from generator.records.sittings import VERDICT_WORDS, KeptMark, all_markings
from generator.records.store import amendments_of_person, unpacked

Plain = dict[str, Any]


def export_person(connection: sqlite3.Connection, code: str) -> Plain:
    """Return everything about a person; raises RecordsRefused for nobody.

    Papers come with the questions as they were printed and without their keys, which may be asked
    again; with the answers, and with every marking, also those that were replaced. What was changed
    by hand comes with the value before and the reason.
    """
    row = person_id(connection, code)
    person = connection.execute(
        "SELECT code, name, role, added FROM people WHERE id = ?", (row,)
    ).fetchone()
    return {
        "person": dict(person),
        "papers": _papers(connection, row),
        "practice": [_practice(seen) for seen in observations_of(connection, code)],
        "dates": [
            {"what": KIND_WORDS[f.kind], "subject": f.subject, "done": f.done, "due": f.due}
            for f in facts_of(connection, code)
        ],
        "certificates": [
            {"number": c.number, "issued": c.issued, "content": c.content}
            for c in certificates_of(connection, code)
        ],
        "changed": [
            {"what": c.what, "before": c.before, "after": c.after, "reason": c.reason, "at": c.at}
            for c in amendments_of_person(connection, row)
        ],
        "work_for_others": _work(connection, row),
    }


def _papers(connection: sqlite3.Connection, row: int) -> list[Plain]:
    forms = connection.execute(
        "SELECT f.id, f.label, f.content, f.questions, '' AS person, i.id AS issue, i.title,"
        " i.issued, i.state FROM forms f JOIN issues i ON i.id = f.issue WHERE f.person = :row"
        " OR f.id IN (SELECT form FROM sittings WHERE person = :row) ORDER BY f.id",
        {"row": row},
    ).fetchall()
    return [
        {name: form[name] for name in ("issue", "title", "label", "issued", "state")}
        | {"questions": [_printed(entry) for entry in frozen.content["questions"]]}
        | {"sittings": _sittings(connection, form["id"], row)}
        for form, frozen in zip(forms, unfrozen(connection, forms), strict=True)
    ]


def _printed(entry: Plain) -> Plain:
    """Copy what a paper prints of a question; only named fields, so that no key slips in."""
    question = entry["question"]
    key = question.get("key", {})
    shown = {name: entry.get(name) for name in ("number", "marks", "must_pass")}
    shown |= {name: question.get(name) for name in ("kind", "stem", "caution", "sheet", "table")}
    for listed in ("options", "steps", "left", "right"):
        if listed in key:
            shown[listed] = [_entry(each) for each in key[listed]]
    return {name: value for name, value in shown.items() if value is not None} | (
        {"unit": key["unit_symbol"]} if key.get("unit_symbol") else {}
    )


def _entry(each: Plain) -> Plain:
    return {name: each[name] for name in ("letter", "number", "text") if name in each}


def _sittings(connection: sqlite3.Connection, form: int, row: int) -> list[Plain]:
    rows = connection.execute(
        "SELECT id, responses, entered, sat, replaced FROM sittings WHERE form = ? AND person = ?"
        " ORDER BY id",
        (form, row),
    ).fetchall()
    return [
        {
            "entered": sitting["entered"],
            "sat": sitting["sat"] or sitting["entered"][:10],
            "replaced": bool(sitting["replaced"]),
            "answers": unpacked(sitting["responses"]),
            "markings": [
                {"marked": at, "correction": correction, "points": str(marked.points)}
                | {"most": marked.most, "result": VERDICT_WORDS[marked.verdict]}
                | {"marks": [_mark(mark) for mark in marked.marks]}
                for at, correction, marked in all_markings(connection, sitting["id"])
            ],
        }
        for sitting in rows
    ]


def _mark(mark: KeptMark) -> Plain:
    return {
        "number": mark.number,
        "share": str(mark.share),
        "status": mark.status,
        # what went wrong is told, as on the report; what would have been right is not
        "went_wrong": [
            finding.get("text", "")
            for finding in mark.findings.get("went_wrong", ())
            if isinstance(finding, dict)
        ],
    }


def _practice(seen: Observation) -> Plain:
    return {
        "title": seen.title,
        "observed": seen.observed,
        "observer": seen.observer,
        "job": seen.job,
        "note": seen.note,
        "steps": [
            {"does": step.action, "starred": step.critical, "seen": SEEN_WORDS[step.seen]}
            for step in seen.steps
        ],
    }


def _work(connection: sqlite3.Connection, row: int) -> Plain:
    """Count what a person did as marker, observer, trainer or in appeals."""
    counted = {
        "papers_marked": "sittings WHERE marker",
        "observed": "observations WHERE observer",
        "certificates_signed": "certificates WHERE trainer",
        "corrections_decided": "corrections WHERE decided_by",
    }
    return {
        name: int(connection.execute(f"SELECT count(*) FROM {place} = ?", (row,)).fetchone()[0])
        for name, place in counted.items()
    }
