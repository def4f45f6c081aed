"""Questions as small data files, so that a mixed check loads only the objectives it picks."""

import json
from collections.abc import Mapping
from typing import Any

from generator.website.context import Course, SiteFile, Variants, objective_id
from generator.website.questions.methods import method_of
from generator.website.questions.written_questions import ModuleQuestions, Written


def parts_index(course: Course, written: Written) -> dict[str, Any]:
    """Return what a page must know to choose questions without loading any.

    modules     name to its title and whether it has a lesson, in the outline's order
    objectives  each with its words, the first item of every part, and the sheets it stands on
                where that is not the first one alone
    """
    titles, objectives = {}, []
    for module in (module for module in course.modules if module.module in written):
        questions = written[module.module]
        if questions.parts:
            lesson = module.module in course.lessons
            titles[module.module] = {"title": module.title, "lesson": lesson}
        words = {objective_id(module, entry): entry.text for entry in module.objectives}
        objectives += [_entry(name, words[name], questions) for name in questions.parts]
    return {"modules": titles, "objectives": objectives}


def _entry(name: str, words: str, questions: ModuleQuestions) -> dict[str, Any]:
    firsts = [run[0][0]["id"] for run in questions.parts[name]]
    entry = {"objective": name, "text": words, "parts": firsts}
    sheets = questions.sheets_of(name)
    return entry if sheets == [1] else {**entry, "sheets": sheets}


def part_files(course: Course, written: ModuleQuestions) -> tuple[SiteFile, ...]:
    """Write each part of a module as a script that hands its questions over."""
    return tuple(
        SiteFile(
            f"parts/{name}-{number}.js", _script(f"{name}/{number}", run, course, written.html)
        )
        for name, runs in written.parts.items()
        for number, run in enumerate(runs, start=1)
    )


def _script(name: str, run: tuple[Variants, ...], course: Course, html: Mapping[str, str]) -> str:
    held = [
        {
            "id": variants[0]["id"],
            "method": method_of(variants[0], course.relations),
            "html": html[str(variants[0]["id"])],
        }
        for variants in run
    ]
    text = json.dumps(held, ensure_ascii=False, separators=(",", ":"))
    return f"Guidecoat.parts[{json.dumps(name)}]={text};\n"
