"""Takes the README's pictures anew: `python -m tests.readme_pictures` after `guidecoat build`.

The class is issued in a project of its own. Needs Debian's chromium and poppler's pdftoppm; not
collected by pytest.
"""

import subprocess
import tempfile
from contextlib import chdir
from pathlib import Path

from click.testing import CliRunner
from playwright.sync_api import Page, sync_playwright

from generator.command_line.main import main
from tests.filled_table import ANSWERS, fill_in

ROOT = Path(__file__).parents[1]
TARGET = ROOT / "course" / "figures" / "readme"
CHROMIUM = "/usr/bin/chromium"
PHONE = {"width": 360, "height": 640}
PAPERS = {
    "question_paper": ("questions", 4),
    "answer_sheet": ("answer-sheet", 1),
    "answer_key": ("key", 4),
}


def take_pages() -> None:
    """Photograph a lesson, a question with the feedback on a slip, and the panels."""
    with sync_playwright() as play:
        browser = play.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        page = browser.new_page(viewport=PHONE, device_scale_factor=1)
        page.goto((ROOT / "site" / "filler.html").as_uri())
        page.screenshot(path=TARGET / "lesson_phone.png")
        page.goto((ROOT / "site" / "lessons.html").as_uri())
        page.screenshot(path=TARGET / "panel_phone.png")
        page.goto((ROOT / "site" / "film_build-questions.html").as_uri())
        answer_a_slip(page)
        page.screenshot(path=TARGET / "question_phone.png")
        browser.close()


def answer_a_slip(page: Page) -> None:
    """Type the first known slip of a numeric question and show what the page says of it."""
    question = page.locator('[data-item="film_build/dry_from_wet/wet_film_for_target"]')
    question.evaluate("node => { node.hidden = false; }")
    slip = question.evaluate(
        "({ questionData: { variants: [first] } }) => Guidecoat.bandOf(first.slips[0], first.step)"
    )
    low, high = (as_number(slip[end]) for end in ("low", "high"))
    question.locator("input.number").fill(f"{(low + high) / 2:.2f}")
    question.locator("button.check").click()
    question.locator(".number-line").evaluate("node => node.scrollIntoView()")


def as_number(text: str) -> float:
    """Return a decimal or a fraction such as 385/3 as a float."""
    above, _, below = text.partition("/")
    return float(above) / float(below or 1)


def take_papers() -> None:
    """Turn pages of the specimen into pictures."""
    for name, (file, number) in PAPERS.items():
        pdf = ROOT / "printed" / f"specimen-A-{file}.pdf"
        take_paper(name, pdf, number)


def take_paper(name: str, pdf: Path, number: int = 1) -> None:
    """Turn one page of a paper into a picture."""
    pages = ["-f", str(number), "-l", str(number)]
    command = ["pdftoppm", "-png", "-gray", "-r", "60", "-singlefile", *pages, str(pdf)]
    subprocess.run([*command, str(TARGET / name)], check=True)


def take_class() -> None:
    """Issue, answer and mark the papers of a class; photograph its key, a report and a sitting."""
    with tempfile.TemporaryDirectory() as folder, chdir(folder):
        for name in ("question_bank", "course", "site_theme", "mkdocs.yml"):
            Path(name).symlink_to(ROOT / name)
        codes = [f"Apprentice {n:02}" for n in range(1, 13)]
        Path("people.csv").write_text("\n".join(["code", *codes]), "utf-8")
        issue = "issue painter_training --roster people.csv --seed spring --on-screen"
        CliRunner().invoke(main, issue.split())
        fill_in(Path(), {code: 30 - 2 * n for n, code in enumerate(codes)})
        CliRunner().invoke(main, ["mark", str(ANSWERS)])
        CliRunner().invoke(main, ["report", "1"])
        take_paper("class_key", ANSWERS.with_name("class-key.pdf"))
        take_paper("report", ANSWERS.parent / "reports" / "painter_training-C-report.pdf")
        take_sitting((ANSWERS.parent / "painter_training-C-on-screen.html").absolute())


def take_sitting(page_file: Path) -> None:
    """Photograph the first question of a page to answer on a screen."""
    with sync_playwright() as play:
        browser = play.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        page = browser.new_page(viewport=PHONE, device_scale_factor=1)
        page.goto(page_file.as_uri())
        page.get_by_role("button", name="Start").click()
        page.screenshot(path=TARGET / "on_screen_phone.png")
        browser.close()


if __name__ == "__main__":
    TARGET.mkdir(parents=True, exist_ok=True)
    take_pages()
    take_papers()
    take_class()
