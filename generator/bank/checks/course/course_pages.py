"""Pages of the course: each is led to, and the rules for what is found as it will be shown."""

import re
from collections.abc import Iterator

from generator.bank.bank import Bank, Lesson
from generator.bank.checks.rule import Rule
from generator.diagnostics import Place, Problem

HOME = "index"
_TO_A_PAGE = re.compile(r"\]\((?:lesson:)?([a-z0-9_-]+)(?:\.html|\.md)?(?:#[^)\s]*)?\)")


def stray_page(bank: Bank) -> Iterator[Problem]:
    """Return Markdown files of the course that no module names and no page of it links to."""
    if bank.is_partly_read:
        return
    led_to = _led_to(bank)
    for lesson in bank.lessons:
        if lesson.name not in led_to:
            message = "no module names this page and no lesson links to it"
            hint = "link to it, name it in outline.yml, or keep it out of course/"
            yield Problem(Place(lesson.path, 1, 1), "error", "stray-page", message, hint)


def _led_to(bank: Bank) -> set[str]:
    lessons = {lesson.name: lesson for lesson in bank.lessons}
    waiting = [HOME, *(module.lesson for module in bank.modules if module.lesson)]
    found: set[str] = set()
    while waiting:
        name = waiting.pop()
        if name in lessons and name not in found:
            found.add(name)
            waiting += _linked(lessons[name])
    return found


def _linked(lesson: Lesson) -> list[str]:
    return _TO_A_PAGE.findall(lesson.text)


RULES = (
    Rule(
        "stray-page",
        "error",
        "Every page of course/ is sent to every phone, so a draft must not lie there by accident.",
        "course/draft_exam.md, which nothing names",
        "course/safety.md, to which the first page links",
        stray_page,
    ),
    Rule(
        "stray-file",
        "warning",
        "course/ and site_theme/assets/ are for the course. Papers, records, copies and hidden "
        "files do not belong there, and they are never published.",
        "course/answers.csv",
        "printed/issue-1/answers.csv",
    ),
    Rule(
        "figure-drawing",
        "error",
        "A drawing is put into the page as it is, so it holds shapes and words, and nothing that "
        "runs, loads or ends the page.",
        "<svg ...><script>...</script></svg>",
        "<svg ...><path .../><text ...>Wet film</text></svg>",
    ),
    Rule(
        "lesson-link",
        "error",
        "A link leads to a term, a source, a lesson or a page of the course; an outside address "
        "would not open without a signal, and half a link stays in the text as it is.",
        "[fan] (term:fan), [fan](trem:fan), [rule](https://...)",
        "[fan](term:fan), [rule](source:osha_134)",
    ),
    Rule(
        "text-block",
        "error",
        "The text of a record is shown in a line of a question, a card or a paper, where a list, a "
        "table or a heading has no room. Lessons may hold all of them.",
        "action: |\n  Put on:\n\n  - goggles\n  - gloves",
        "action: Put on goggles and gloves",
    ),
    Rule(
        "lesson-title",
        "error",
        "A lesson is listed by its first heading.",
        "Film build\n\nA film is ...",
        "# Film build\n\nA film is ...",
    ),
    Rule(
        "worked-example",
        "error",
        "A worked example names each input of its relation, with a number inside its range.",
        "```worked wet_film\nsolids: 60 percent\n```",
        "```worked wet_film\nvolume_solids: 60 percent\ndry_film: 60 um\n```",
    ),
    Rule(
        "lesson-note",
        "error",
        "A note to yourself would be read by every learner.",
        "<!-- ask again on Monday -->",
        "(keep it in a file of your own)",
    ),
    Rule(
        "sign-without-font",
        "error",
        "No typeface of the papers has this character, so that the paper could not be set.",
        "stem: The gauge shows a \U0001f3a8",
        "stem: The gauge shows a color card",
    ),
    Rule(
        "site-settings",
        "error",
        "Without the course's own plugin and theme the site engine would publish the bare lessons; "
        "hooks run programs.",
        "plugins: []",
        "plugins:\n  - guidecoat:\n      question_bank: question_bank",
    ),
)
