"""What a void or an erasure would take with it, counted before anybody says yes."""

import sqlite3
from collections.abc import Iterable

from generator.records.people import person_id
from generator.records.store import RecordsRefused


def stake_of_issue(connection: sqlite3.Connection, number: int) -> str:
    """Say what no longer counts once an issue is voided, such as '24 marked papers'.

    Raises RecordsRefused for an issue that is not there.
    """
    row = connection.execute(
        "SELECT i.blueprint, count(DISTINCT f.id) AS forms, count(s.id) AS marked FROM issues i"
        " LEFT JOIN forms f ON f.issue = i.id"
        " LEFT JOIN sittings s ON s.form = f.id AND s.replaced = 0 WHERE i.id = ?",
        (number,),
    ).fetchone()
    if row["blueprint"] is None:
        raise RecordsRefused(f"there is no issue {number} in the records")
    counts = _listed([(row["forms"], "form"), (row["marked"], "marked paper")])
    return f"issue {number}, {row['blueprint']}: {counts or 'no form'}"


def stake_of_person(connection: sqlite3.Connection, code: str) -> str:
    """Say what goes for good, and what loses the person, once somebody is erased."""
    row = person_id(connection, code)
    counted = {
        word: int(connection.execute(f"SELECT count(*) FROM {place} = ?", (row,)).fetchone()[0])
        for word, place in _OF_PERSON.items()
    }
    goes = _listed([(counted[word], word) for word in ("observation", "date", "certificate")])
    papers = _listed([(counted["marked paper"], "marked paper")])
    signed = _listed([(counted["signed certificate"], "certificate")])
    said = [f"gone for good: {goes or 'no observation, date or certificate'}"]
    said += [f"left without the person: {papers}"] if papers else []
    said += [f"of others that no longer name the signer: {signed}"] if signed else []
    return "; ".join(said)


_OF_PERSON = {
    "observation": "observations WHERE person",
    "date": "dated_facts WHERE person",
    "certificate": "certificates WHERE person",
    "marked paper": "sittings WHERE replaced = 0 AND person",
    "signed certificate": "certificates WHERE trainer",
}


def _listed(counts: Iterable[tuple[int, str]]) -> str:
    return ", ".join(f"{n} {word}{'s' * (n != 1)}" for n, word in counts if n)
