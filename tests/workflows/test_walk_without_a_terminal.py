"""From a roster to a certificate as a desk would go: by workflows alone, time and day given."""

import re
import shlex
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import TypeVar

import pytest

from generator.bank import Bank
from generator.records import Records, open_records
from generator.records.issues import issue_of
from generator.records.sittings import all_results
from generator.workflows import NeedsConfirmation, Refused
from generator.workflows.answers.answer_files import read_files
from generator.workflows.answers.correct import NewKey, carry_out_correction, plan_correction
from generator.workflows.answers.mark import mark_papers, preview_marks
from generator.workflows.answers.paper_entry import open_entry
from generator.workflows.answers.report_files import Wanted, write_reports
from generator.workflows.checking.loading import sound_bank
from generator.workflows.papers.new_issue import issue_papers
from generator.workflows.papers.pending_papers import print_again
from generator.workflows.papers.request import request_papers
from generator.workflows.papers.voiding import plan_void, void_issue
from generator.workflows.project import Project, find_project, known_plan
from generator.workflows.records.certificates import certify_training, print_certificate_again
from generator.workflows.records.dating import keep_date, plan_date
from generator.workflows.records.erasing import carry_out_erasure, plan_erasure
from generator.workflows.records.keeping_people import add_to_records
from generator.workflows.records.observing import Watched, keep_observation, observation_of
from generator.workflows.records.rosters import people_of
from tests.filled_table import ANSWERS, fill_in
from tests.readme_parts import part, tables

ROOT = Path(__file__).parents[2]
WALK = part("A class, from roster to certificate")
AT = "2026-03-02T10:00:00"
DAY = date(2026, 3, 2)
ANN, BOB, CAT = "Apprentice 01", "Apprentice 02", "Apprentice 03"
TRAINER = "Trainer 1"
T = TypeVar("T")


def done(result: T | Refused) -> T:
    """Return what a workflow gave, which must not be a refusal."""
    assert not isinstance(result, Refused), result
    return result


def refusal(result: object) -> str:
    """Return the sentence of a workflow that must refuse."""
    assert isinstance(result, Refused), result
    return result.sentence


@pytest.fixture
def project(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Project:
    for name in ("question_bank", "course", "site_theme", "mkdocs.yml"):
        (tmp_path / name).symlink_to(ROOT / name)
    for name, text in tables(WALK).items():
        (tmp_path / name).write_text(text, "utf-8")
    # nothing may depend on the folder that somebody happens to be in
    monkeypatch.chdir("/")
    found = find_project(tmp_path / "course")
    assert found is not None
    return found


@pytest.fixture
def records(project: Project) -> Iterator[Records]:
    with open_records(project.records) as connection:
        yield connection


def watched_work() -> list[Watched]:
    """Return the observations that the README enters for the first person of the class."""
    found = []
    for line in re.findall(r"^guidecoat records observe .*$", WALK, re.MULTILINE):
        _, _, _, person, procedure, _, observer, _, day, *steps = shlex.split(line)
        watched = Watched(person, procedure, tuple(steps), observer, date.fromisoformat(day))
        found.append(watched)
    return found


def test_a_class_goes_from_roster_to_certificate_without_a_terminal(
    project: Project, records: Records, capfd: pytest.CaptureFixture[str]
) -> None:
    bank = done(sound_bank(project))
    issue_to_the_class(project, bank, records)
    take_in_and_mark(project, records)
    correct_a_key(records)
    written = done(write_reports(project, records, bank, 1, Wanted(), day=DAY))
    assert len(written) == 8 and all(path.is_file() for path in written)
    certify_ann(project, bank, records)
    take_back(project, records)
    # a desk shows what it was given; a workflow says nothing by itself
    assert capfd.readouterr() == ("", "")


def issue_to_the_class(project: Project, bank: Bank, records: Records) -> None:
    trainers = done(people_of(project, project.root / "trainers.csv"))
    people = done(people_of(project, project.root / "people.csv"))
    assert (
        done(add_to_records(records, [replace(t, role="trainer") for t in trainers], AT)).new == 1
    )
    near = refusal(known_plan(project, "painter_trainings"))
    assert "painter_training" in near
    request = request_papers("painter_training", "spring", people=people)
    first = done(issue_papers(project, bank, records, request, AT))
    assert (first.number, first.made_before) == (1, "")
    assert issue_of(records, 1).issued == AT
    bytes_before = {path: path.read_bytes() for path in first.files}
    again = done(issue_papers(project, bank, records, request, "2026-03-05T10:00:00"))
    assert (again.number, again.made_before) == (1, "2026-03-02")
    done(print_again(project, records, 1))
    assert {path: path.read_bytes() for path in first.files} == bytes_before


def take_in_and_mark(project: Project, records: Records) -> None:
    fill_in(project.root, {ANN: 30, BOB: 4, CAT: 0})
    read = read_files(records, [project.root / ANSWERS])
    assert not read.problems and len(read.empty) == 1
    outcome = done(mark_papers(records, read.answers, at=AT, marker=TRAINER, sat=DAY))
    assert {e.person: e.mark.verdict for e in outcome.entered}[ANN] == "passed"
    # the third paper comes in question by question, with a second thought
    entry = done(open_entry(records, read.empty[0], ""))
    assert entry.person == CAT
    first = entry.asks
    assert entry.take("?") and entry.asks != first
    assert entry.take("back") == "" and entry.asks == first
    prompts = 0
    while entry.asks is not None:
        entry.take("")
        prompts += 1
    assert prompts >= 20
    preview = done(preview_marks(records, entry.answers))
    assert {result.person for result in all_results(records)} == {ANN, BOB}
    kept = done(mark_papers(records, [entry.answers], at=AT))
    assert kept.entered[0].mark.points == preview.mark.points == 0
    assert refusal(open_entry(records, "2222-2222", ""))


def correct_a_key(records: Records) -> None:
    plan = done(plan_correction(records, 1, "A", 1, NewKey()))
    assert plan.asks.question == "Keep this correction?"
    before = [result.most for result in all_results(records)]
    assert before == [result.most for result in all_results(records)]
    corrected = done(
        carry_out_correction(records, plan, reason="the picture was torn", decided_by="", at=AT)
    )
    assert corrected.appeal == plan.appeal and not corrected.meanwhile
    assert sum(result.most for result in all_results(records)) < sum(before)
    assert "already" in refusal(plan_correction(records, 1, "A", 1, NewKey()))


def certify_ann(project: Project, bank: Bank, records: Records) -> None:
    def certificate() -> Path | Refused:
        return certify_training(project, records, bank, ANN, TRAINER, at=AT, day=DAY)

    assert "guidecoat records" in refusal(certificate())
    for watched in watched_work():
        assert refusal(observation_of(bank, watched, date(2026, 3, 1)))
        done(keep_observation(records, done(observation_of(bank, watched, DAY)), AT))
    assert refusal(certificate())
    odd = done(plan_date(ANN, "painter_training", done=date(2004, 1, 1), today=DAY))
    assert isinstance(odd.asks, NeedsConfirmation)
    plan = done(plan_date(ANN, "painter_training", done=DAY, today=DAY))
    assert plan.asks is None
    assert "due again on" in done(keep_date(records, plan, AT))
    path = done(certificate())
    first = path.read_bytes()
    assert done(print_certificate_again(project, records, 1, ANN)) == path
    assert path.read_bytes() == first
    assert refusal(print_certificate_again(project, records, 1, BOB))


def take_back(project: Project, records: Records) -> None:
    asks = done(plan_void(records, 1))
    assert "3 marked papers" in asks.stakes and asks.question.endswith("?")
    done(void_issue(records, 1, "left in the canteen", AT))
    assert refusal(void_issue(records, 1, "left in the canteen", AT))
    assert ANN in done(plan_erasure(records, ANN)).stakes
    erased = done(carry_out_erasure(project, records, ANN, AT))
    assert erased.certificates == (1,)
    assert not project.certificate(1).exists()
