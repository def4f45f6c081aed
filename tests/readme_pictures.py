"""Takes the README's pictures anew: `python -m tests.readme_pictures` after `guidecoat build`.

Needs Debian's chromium and poppler's pdftoppm; not collected by pytest.
"""

import subprocess
from pathlib import Path

from playwright.sync_api import Page, sync_playwright

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
    marking = question.locator("script.marking").evaluate("node => JSON.parse(node.textContent)")
    slip = marking["variants"][0]["slips"][0]
    low, high = (as_number(slip[end]) for end in ("low", "high"))
    question.locator("input.number").fill(f"{(low + high) / 2:.2f}")
    question.locator("button.check").click()
    question.locator(".number-line").evaluate("node => node.scrollIntoView()")


def as_number(text: str) -> float:
    """Give a decimal or a fraction such as 385/3 as a float."""
    above, _, below = text.partition("/")
    return float(above) / float(below or 1)


def take_papers() -> None:
    """Turn pages of the specimen into pictures."""
    for name, (file, number) in PAPERS.items():
        pdf = ROOT / "printed" / f"specimen-A-{file}.pdf"
        pages = ["-f", str(number), "-l", str(number)]
        command = ["pdftoppm", "-png", "-gray", "-r", "60", "-singlefile", *pages, str(pdf)]
        subprocess.run([*command, str(TARGET / name)], check=True)


if __name__ == "__main__":
    TARGET.mkdir(parents=True, exist_ok=True)
    take_pages()
    take_papers()
