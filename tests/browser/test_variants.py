"""Each variant of a question reads as if it stood on the page alone, and is marked alike."""

from typing import Any

from playwright.sync_api import Browser, Page

from generator.website.context.course import Variants
from generator.website.context.site_context import SiteContext
from generator.website.questions.question_html import question_html
from tests.browser.conftest import THEME, Visit
from tests.real import real_course

EVERY = 6
COMPARE = """
([shared, alone]) => {
  function made(html) {
    const section = Guidecoat.form({html: html}, 'Question');
    document.body.appendChild(section);
    Guidecoat.startQuestion(section);
    return section;
  }
  function seen(section) {
    const part = name => section.querySelector(name);
    const texts = ['.ask', '.reasons-body'].map(name => Guidecoat.words(part(name)));
    const fields = Guidecoat.all(section, '.ask [value], .ask select').length;
    const html = part('.ask').innerHTML.replace(/<.?x-v>/g, '');
    return JSON.stringify([...texts, fields, html]);
  }
  const wrong = [];
  const section = made(shared);
  [...alone.keys()].concat(0).forEach(number => {
    Guidecoat.showVariant(section, number);
    const other = made(alone[number]);
    if (seen(section) !== seen(other)) { wrong.push([number, seen(section), seen(other)]); }
    other.remove();
  });
  section.remove();
  return wrong;
}
"""


def written(desk: SiteContext, variants: Variants) -> str:
    """Write a question as its page does."""
    return question_html(variants, desk.draft("question_bank"), desk, "Question")


def differing(page: Page, desk: SiteContext, variants: Variants) -> Any:
    """Return each variant that does not read as it does alone."""
    alone = [written(desk, (variant,)) for variant in variants]
    return page.evaluate(COMPARE, [written(desk, variants), alone])


def test_variants_of_the_bank_read_as_they_do_alone(chromium: Browser, small_address: str) -> None:
    course = real_course()
    desk = SiteContext(course, THEME)
    context = chromium.new_context()
    visit = Visit(context, small_address)
    page = visit.open("index.html")
    several = [v for items in course.questions.values() for v in items if len(v) > 1]
    shapes = [v for v in several if '"whole"' in written(desk, v)]
    assert len(several) > 400 and shapes
    taken = [*several[::EVERY], *shapes]
    wrong = {v[0]["id"]: found for v in taken if (found := differing(page, desk, v))}
    assert wrong == {}
    assert visit.complaints == []
    context.close()
