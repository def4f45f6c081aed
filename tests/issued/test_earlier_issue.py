"""An issue of an earlier edition prints, marks and reports as it did when it was made."""

import json
from pathlib import Path

import pytest

from generator.marking import mark_form, response_from_plain
from generator.marking.answers import corrected_form
from generator.records.issues import forms_of
from generator.records.sittings import all_markings, changes_of, sittings_of
from tests.issued.earlier_issue import SAID, earlier_records, everything

WAYS = ("went_wrong", "notes")


@pytest.fixture
def records(tmp_path: Path):
    with earlier_records(tmp_path) as connection:
        yield connection


def test_its_papers_reports_analysis_and_export_say_what_they_said(records):
    found = json.loads(json.dumps(everything(records)))
    said = json.loads(SAID.read_text("utf-8"))
    assert found.keys() == said.keys()
    for name in said:
        assert found[name] == said[name], name


def test_it_has_every_kind_of_question(records):
    kinds = {e["question"]["kind"] for f in forms_of(records, 1) for e in f.content["questions"]}
    assert kinds == {"numeric", "choice", "multiple_response", "order", "match", "written"}


def test_its_answers_are_marked_again_as_they_were_before_and_after_the_correction(records):
    forms = {form.label: form.content for form in forms_of(records, 1)}
    changes = changes_of(records, 1)
    seen = 0
    for sitting in sittings_of(records, 1):
        responses = {int(n): response_from_plain(r) for n, r in sitting.responses.items()}
        for _, correction, kept in all_markings(records, sitting.number):
            form = corrected_form(forms[sitting.label], changes if correction else ())
            again = mark_form(form, responses)
            assert (again.verdict, again.points, again.most) == (
                kept.verdict,
                kept.points,
                kept.most,
            )
            for now, then in zip(again.questions, kept.marks, strict=True):
                assert (now.mark.share, now.mark.status) == (then.share, then.status)
                for way in WAYS:
                    told = then.findings.get(way, [])
                    assert [(f.about, f.subject) for f in getattr(now.mark, way)] == [
                        (f["about"], f["place"]) for f in told
                    ]
                seen += 1
    assert seen == 27
