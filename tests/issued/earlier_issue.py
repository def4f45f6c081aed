"""An issue that the edition before typed papers made, marked and corrected, and what it said of it.

`data/last_edition.sql` holds those records. `data/last_edition.json` holds what papers, reports,
analysis and export said then, papers as hashes. Where words are changed on purpose, write it anew
with `python -m tests.issued.earlier_issue` and look at what changed.
"""

import json
import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from hashlib import sha256
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from generator.issued import IssuedForm
from generator.marking import answer_table
from generator.printing.answer_sheet import answer_sheet_content
from generator.printing.content import (
    PageSize,
    answer_key_content,
    class_key_content,
    feedback_sheet_content,
    marking_guide_content,
    question_paper_content,
)
from generator.records import Records, open_records
from generator.records.issues import issue_of
from generator.records.leaving import export_person
from generator.records.store import FILE_NAME, make_private
from generator.reports import (
    CourseNames,
    analyse_pool,
    answered_issue,
    class_report,
    person_report,
    pooled,
    pooled_as_plain,
)
from generator.website.exam.exam_content import sitting_content

DATA = Path(__file__).parent / "data"
SAID = DATA / "last_edition.json"


@contextmanager
def earlier_records(folder: Path) -> Iterator[Records]:
    """Open the records of the earlier edition in a folder that has none yet."""
    make_private(folder / FILE_NAME)
    written = sqlite3.connect(folder / FILE_NAME)
    written.executescript((DATA / "last_edition.sql").read_text("utf-8"))
    written.close()
    with open_records(folder) as connection:
        yield connection


def everything(connection: Records) -> dict[str, Any]:
    """Return what an issue's papers, marks and reports say, with papers as hashes."""
    issue = issue_of(connection, 1)
    forms = [form.content for form in issue.forms]
    sat = answered_issue(connection, 1)
    names = names_of(forms)
    found = analyse_pool(pooled(connection, [1]))
    return {
        "papers": {name: hashed(content) for name, content in papers(forms)},
        "table": answer_table(forms),
        "markings": [
            [paper.label, paper.verdict, str(paper.points), paper.most, paper.pass_marks]
            for paper in sat.papers
        ],
        "persons": [person_report(paper, names) for paper in sat.papers],
        "class": class_report(sat, names, found),
        "analysis": pooled_as_plain(found),
        "exported": export_person(connection, "Apprentice 01"),
    }


def papers(forms: Sequence[IssuedForm]) -> Iterator[tuple[str, Any]]:
    """Return the name and the content of every paper."""
    for form in forms:
        yield f"{form['form']} questions", question_paper_content(form)
        yield f"{form['form']} answer sheet", answer_sheet_content(form)
        yield f"{form['form']} key", answer_key_content(form)
        yield f"{form['form']} feedback", feedback_sheet_content(form)
        yield f"{form['form']} marking guide", marking_guide_content(form)
        yield f"{form['form']} on screen", sitting_content(form)
    yield "class key", class_key_content(forms, PageSize(210.0, 297.0), False)


def names_of(forms: Sequence[IssuedForm]) -> CourseNames:
    """Return names as they were on the day of issue, so that today's bank has no say."""
    titles = {name: words for form in forms for name, words in form["titles"].items()}
    modules = {name: words for name, words in titles.items() if "/" not in name}
    objectives = {name: words for name, words in titles.items() if "/" in name}
    return CourseNames(modules, objectives, frozenset(modules), frozenset(objectives))


def hashed(content: Any) -> str:
    """Return a hash of plain data."""
    text = json.dumps(content, ensure_ascii=False, sort_keys=True)
    return sha256(text.encode("utf-8")).hexdigest()[:16]


def as_text(found: dict[str, Any]) -> str:
    """Return what an issue says as the text of the file beside it."""
    return json.dumps(found, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


if __name__ == "__main__":
    with TemporaryDirectory() as made, earlier_records(Path(made)) as opened:
        SAID.write_text(as_text(everything(opened)), "utf-8")
