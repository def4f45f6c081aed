"""`guidecoat report` writes what was asked for, privately, and refuses in a sentence."""

import re
import shutil
import stat
from collections.abc import Iterator, Sequence
from io import StringIO
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from generator.command_line.terminal import progress_bar
from generator.printing import PrintingRefused
from generator.printing import report as printed
from generator.records import open_records
from generator.records.issues.issues import void
from generator.records.people.people import add_people
from generator.workflows.answers import report_files
from generator.workflows.checking import loading
from tests.bank.small_bank import REPOSITORY
from tests.command_line.running import misuse, run
from tests.printing.pdf_reading import page_texts, whole_text
from tests.real import real_bank
from tests.reports.sat import AT, apprentices, issued, real_forms, sit, some_wrong
from tests.reports.toy_forms import choice, form_of, issue_of_forms, keep

PEOPLE = apprentices(3)
CODES = tuple(person.code for person in PEOPLE)
JUDGING = re.compile(r"\b(qualified|competent|certified|fit)\b(?! test)", re.I)


@pytest.fixture
def shop(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """Return a project in which three people got the new-hire check and two answered it."""
    root = tmp_path / "shop"
    (root / "question_bank").mkdir(parents=True)
    (root / "site_theme").symlink_to(REPOSITORY / "site_theme")
    shutil.copy(REPOSITORY / "mkdocs.yml", root)
    monkeypatch.setattr(loading, "load_bank", lambda bank, lessons: (real_bank(), ()))
    with open_records(root / "records") as connection:
        add_people(connection, PEOPLE, AT)
        forms = real_forms("new_hire_check", CODES)
        number = issued(connection, forms, CODES)
        sit(connection, number, forms[0], some_wrong())
        sit(connection, number, forms[1], some_wrong(1, 2, 3, 9))
    yield root


def reports(shop: Path, *arguments: str) -> list[str]:
    """Run the command, which must succeed; give what it wrote."""
    result = run(shop, "report", *arguments)
    assert result.exit_code == 0, result.output
    return result.stdout.splitlines()


def refused(shop: Path, *arguments: str) -> str:
    """Run the command, which must be refused; give its sentence."""
    result = run(shop, "report", *arguments)
    assert result.exit_code == 1, result.output
    assert result.stdout == ""
    assert result.stderr.count("\n") == 1
    return result.stderr.removeprefix("Error: ").rstrip("\n")


def both(*names: str) -> list[str]:
    """Return the files of some reports of the issue."""
    folder = "printed/issue-1/reports/new_hire_check"
    return [f"{folder}-{name}.{kind}" for name in names for kind in ("pdf", "html")]


@pytest.mark.parametrize(
    ("options", "names"),
    [
        ((), ("A-report", "B-report", "class-report")),
        (("--person", CODES[1]), ("B-report",)),
        (("--form", "A"), ("A-report",)),
        (("--class",), ("class-report",)),
        (("--profile",), ("A-profile", "B-profile")),
        (("--profile", "--person", CODES[0]), ("A-profile",)),
        (("--profile", "--class"), ("A-profile", "B-profile", "class-report")),
    ],
)
def test_it_writes_what_was_asked_for_and_nothing_else(
    shop: Path, options: Sequence[str], names: Sequence[str]
) -> None:
    assert reports(shop, "1", *options) == both(*names)
    written = sorted(p.relative_to(shop).as_posix() for p in (shop / "printed").rglob("*.*"))
    assert written == sorted(both(*names))


def test_reports_are_readable_by_their_owner_only_and_their_names_hold_no_person(
    shop: Path,
) -> None:
    reports(shop, "1")
    folder = shop / "printed" / "issue-1" / "reports"
    for path in (folder, *folder.iterdir()):
        assert stat.S_IMODE(path.stat().st_mode) & 0o077 == 0
        assert "Apprentice" not in path.name and "Learner" not in path.name
    for path in folder.glob("*.html"):
        assert "Learner Name" not in path.read_text("utf-8")
    for path in folder.glob("*.pdf"):
        assert "Learner Name" not in whole_text(path.read_bytes())


def test_the_same_records_give_the_same_bytes(shop: Path) -> None:
    first = {name: (shop / name).read_bytes() for name in reports(shop, "1")}
    assert {name: (shop / name).read_bytes() for name in reports(shop, "1")} == first


def test_a_report_tells_of_its_own_paper(shop: Path) -> None:
    (pdf, _) = reports(shop, "1", "--person", CODES[1])
    (page,) = page_texts((shop / pdf).read_bytes())
    assert "Not passed: a must-pass question was missed" in page
    assert CODES[1] in page and CODES[0] not in page


def test_a_class_report_names_who_has_not_answered(shop: Path) -> None:
    (pdf, _) = reports(shop, "1", "--class")
    assert f"No answers yet: C ({CODES[2]})." in whole_text((shop / pdf).read_bytes())


def test_links_lead_from_the_page_to_the_built_course(shop: Path, tmp_path: Path) -> None:
    def linked(page: Path) -> set[Path]:
        links = re.findall(r'href="([^"#]*)', page.read_text("utf-8"))
        return {(page.parent / link).resolve().parent for link in links}

    (_, html) = reports(shop, "1", "--form", "B")
    assert linked(shop / html) == {shop / "site"}
    (_, other) = reports(shop, "1", "--form", "B", "--output", str(tmp_path / "elsewhere"))
    assert Path(other).parent == tmp_path / "elsewhere"
    assert linked(Path(other)) == {shop / "site"}


def test_a_profile_judges_dates_by_the_day(shop: Path) -> None:
    fit = ("records", "date", CODES[0], "fit_test", "--done", "2025-06-01", "--as-of", "2026-01-01")
    assert run(shop, *fit).exit_code == 0
    says = "it was due again by 2026-06-01"
    for day, there in (("2026-05-31", False), ("2026-06-02", True)):
        (pdf, _) = reports(shop, "1", "--profile", "--form", "A", "--as-of", day)
        assert (says in whole_text((shop / pdf).read_bytes())) == there


def test_no_profile_on_paper_or_page_judges_the_person_outside_what_it_does_not_say(
    shop: Path,
) -> None:
    reports(shop, "1", "--profile")
    limits = "It does not say that a person is qualified, competent, certified or fit for any work."
    for path in (shop / "printed" / "issue-1" / "reports").iterdir():
        if path.suffix == ".pdf":
            text = whole_text(path.read_bytes())
        else:
            body = path.read_text("utf-8").partition("<main")[2].partition("</main>")[0]
            text = " ".join(re.sub(r"<[^>]*>", " ", body).split())
        assert limits in text
        assert JUDGING.findall(text.replace(limits, "")) == []


def test_papers_of_one_form_are_numbered(shop: Path) -> None:
    form = form_of("A", [choice("filler/mix/a")])
    with open_records(shop / "records") as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, [("air",), ("water",)], CODES[:2])
    start = "printed/issue-2/reports/toy_check-A"
    assert reports(shop, str(number), "--person", CODES[1]) == [
        f"{start}-2-report.pdf",
        f"{start}-2-report.html",
    ]


def test_large_print_takes_more_room(shop: Path) -> None:
    (pdf, _) = reports(shop, "1", "--form", "B")
    pages = len(page_texts((shop / pdf).read_bytes()))
    reports(shop, "1", "--form", "B", "--large-print")
    assert len(page_texts((shop / pdf).read_bytes())) > pages


def test_what_is_not_there_is_refused_in_a_sentence(shop: Path) -> None:
    assert refused(shop, "9") == "there is no issue 9 in the records"
    assert refused(shop, "1", "--form", "Z") == "issue 1 has no form 'Z'; its forms are A, B, C"
    assert refused(shop, "1", "--form", "C") == "form 'C' has no answers yet"
    assert refused(shop, "1", "--person", "Aprentice 02") == (
        "'Aprentice 02' has no answers in issue 1; did you mean 'Apprentice 02'?"
    )
    assert refused(shop, "1", "--person", "nobody") == "'nobody' has no answers in issue 1"


def test_an_issue_that_was_voided_or_not_answered_has_no_report(shop: Path) -> None:
    with open_records(shop / "records") as connection:
        empty = issue_of_forms(connection, [form_of("A", [choice("filler/mix/a")])])
        void(connection, 1, "left in the canteen", AT)
    assert refused(shop, "1").startswith("issue 1 was voided; its marks do not count. To use it")
    assert refused(shop, str(empty)) == (
        "nobody has answered issue 2 yet; mark the answers first: guidecoat mark"
    )
    assert not (shop / "printed").exists()


def test_options_that_contradict_each_other_are_misuse(shop: Path) -> None:
    assert misuse(shop, "report", "1", "--person", CODES[0], "--form", "A") == (
        "give --person or --form, not both"
    )
    assert "a class report is about everybody" in misuse(
        shop, "report", "1", "--class", "--form", "A"
    )
    assert "is not in the range" in misuse(shop, "report", "0")
    assert "is not a date" in misuse(shop, "report", "1", "--profile", "--as-of", "tomorrow")
    assert "is not a valid integer" in misuse(shop, "report", "spring")


def test_a_report_that_cannot_be_set_leaves_the_earlier_ones_whole(
    shop: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = {name: (shop / name).read_bytes() for name in reports(shop, "1")}
    folder = shop / "printed" / "issue-1" / "reports"
    made: list[Path] = []

    def refuse_the_class(content: dict[str, Any], **layout: Any) -> bytes:
        if content["kind"] == "class":
            made.extend(folder.glob(".new-*/*"))
            assert all(stat.S_IMODE(path.stat().st_mode) & 0o077 == 0 for path in made)
            raise PrintingRefused("No font file.")
        return printed(content, **layout)

    monkeypatch.setattr(report_files, "report", refuse_the_class)
    assert refused(shop, "1", "--large-print") == "No font file."
    # each file leaves the memory as soon as it is made
    assert sorted(path.name for path in made) == sorted(
        Path(name).name for name in both("A-report", "B-report")
    )
    assert {name: (shop / name).read_bytes() for name in before} == before
    assert len(list(folder.iterdir())) == len(before)


class Terminal(StringIO):
    """An error stream that somebody looks at."""

    def isatty(self) -> bool:
        return True


def test_a_terminal_is_told_how_far_many_reports_are_and_a_pipe_is_not(
    shop: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert run(shop, "report", "1").stderr == ""
    seen = Terminal()
    monkeypatch.setattr(progress_bar, "sys", SimpleNamespace(stderr=seen))
    reports(shop, "1", "--form", "A")
    assert seen.getvalue() == ""
    assert len(reports(shop, "1")) == 6
    assert "reports" in seen.getvalue() and "100%" in seen.getvalue()


def test_a_folder_that_cannot_be_written_is_said(shop: Path) -> None:
    (shop / "taken").write_text("a file", "utf-8")
    assert "taken" in refused(shop, "1", "--class", "--output", "taken")


@pytest.mark.parametrize("folder", ["site/reports", "course/reports", "site_theme"])
def test_reports_are_never_written_where_the_site_would_publish_them(
    shop: Path, folder: str
) -> None:
    before = sorted((shop / folder).rglob("*"))
    told = refused(shop, "1", "--class", "--output", folder)
    assert "which is published" in told
    assert sorted((shop / folder).rglob("*")) == before
