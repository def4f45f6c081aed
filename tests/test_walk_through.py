"""The README's walk from a roster to a certificate, followed to the letter in a fresh project."""

import re
import shlex
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.command_line.main import main
from generator.records import open_records
from generator.records.certificates.painter_topics import TOPICS
from generator.records.sittings.results import all_results
from tests.filled_table import fill_in
from tests.printing.pdf_reading import whole_text
from tests.readme_parts import part, tables

ROOT = Path(__file__).parents[1]
WALK = part("A class, from roster to certificate")
COMMANDS = re.findall(r"^(guidecoat .*)$", WALK, re.MULTILINE)


@pytest.fixture
def shop(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A project with the real bank in which nothing was issued yet, and the README's tables."""
    for name in ("question_bank", "course", "site_theme", "mkdocs.yml"):
        (tmp_path / name).symlink_to(ROOT / name)
    for name, text in tables(WALK).items():
        (tmp_path / name).write_text(text, "utf-8")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(line: str) -> Result:
    outcome = CliRunner().invoke(main, shlex.split(line)[1:])
    assert outcome.exit_code == 0, f"{line}\n{outcome.output}"
    return outcome


def test_the_readme_leads_from_a_roster_to_a_certificate(shop: Path) -> None:
    said = {}
    for line in COMMANDS:
        if line.startswith("guidecoat mark"):
            fill_in(shop, {"Apprentice 01": 30, "Apprentice 02": 20, "Apprentice 03": 4})
        said[line.split()[1] + " " + line.split()[2]] = run(line)

    issue = shop / "printed" / "issue-1"
    for name in ("A-questions", "B-answer-sheet", "C-key", "A-feedback"):
        assert (issue / f"painter_training-{name}.pdf").is_file()
    assert (issue / "class-key.pdf").is_file()

    with open_records(shop / "records") as connection:
        results = {result.person: result for result in all_results(connection)}
    assert results["Apprentice 01"].verdict == "passed"
    assert results["Apprentice 01"].points == results["Apprentice 01"].most
    assert {results[f"Apprentice 0{n}"].verdict for n in (2, 3)} <= {
        "not_passed",
        "must_pass_missed",
    }

    reports = issue / "reports"
    assert len(list(reports.glob("*.pdf"))) == len(list(reports.glob("*.html"))) == 4

    (certificate,) = (shop / "records" / "certificates").glob("*.pdf")
    text = " ".join(whole_text(certificate.read_bytes()).split())
    for words in ("Apprentice 01", "Painter training", "Trainer 1", "2026-03-02"):
        assert words in text
    for topic in TOPICS:
        assert topic.clause in text
    assert "not observed" not in text and "no question asked" not in text
    assert any("retest" in line for line in said["records due"].output.splitlines())
    assert any((shop / "inspection").iterdir())


def test_no_file_but_the_records_names_a_person(shop: Path) -> None:
    for line in COMMANDS[:2]:
        run(line)
    names = [path.as_posix() for path in shop.rglob("*") if "question_bank" not in path.parts]
    assert not [name for name in names if "pprentice" in Path(name).name]
