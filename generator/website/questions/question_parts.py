"""Questions as small data files, so that a mixed check loads only the objectives it picks."""

import json
from collections.abc import Iterable, Mapping
from typing import Any

from generator.bank.models import Module
from generator.website.context import Course, SiteFile, Variants, objective_id
from generator.website.questions.methods import method_of
from generator.website.questions.packing import PART_BYTES, packed
from generator.website.questions.question_html import objective_of


def parts_of(module: Module, course: Course) -> dict[str, tuple[tuple[Variants, ...], ...]]:
    """Return the parts of each objective that has items a page can mark; sorted by item.

    A rule of a place where the shop does not work is left to the question pages.
    """
    marked = sorted(
        (
            item
            for item in course.questions.get(module.module, ())
            if item[0]["kind"] != "written" and not course.is_theirs(item[0])
        ),
        key=lambda item: str(item[0]["id"]),
    )
    found = {}
    for entry in module.objectives:
        name = objective_id(module, entry)
        items = [item for item in marked if objective_of(item[0]) == name]
        if items:
            found[name] = packed(items, PART_BYTES)
    return found


def parts_index(course: Course, modules: Iterable[Module]) -> dict[str, Any]:
    """Return what a page must know to choose questions without loading any.

    modules     name to its title and whether it has a lesson, in the outline's order
    objectives  each with its words and the first item of every part
    """
    titles, objectives = {}, []
    for module in modules:
        parts = parts_of(module, course)
        if parts:
            lesson = module.module in course.lessons
            titles[module.module] = {"title": module.title, "lesson": lesson}
        words = {objective_id(module, entry): entry.text for entry in module.objectives}
        for name, runs in parts.items():
            firsts = [run[0][0]["id"] for run in runs]
            objectives.append({"objective": name, "text": words[name], "parts": firsts})
    return {"modules": titles, "objectives": objectives}


def part_files(module: Module, course: Course, written: Mapping[str, str]) -> tuple[SiteFile, ...]:
    """Write each part of a module as a script that hands its questions over.

    written  item id to its form
    """
    return tuple(
        SiteFile(f"parts/{name}-{number}.js", _script(f"{name}/{number}", run, course, written))
        for name, runs in parts_of(module, course).items()
        for number, run in enumerate(runs, start=1)
    )


def _script(
    name: str, run: tuple[Variants, ...], course: Course, written: Mapping[str, str]
) -> str:
    held = [
        {
            "id": variants[0]["id"],
            "method": method_of(variants[0], course.relations),
            "html": written[str(variants[0]["id"])],
        }
        for variants in run
    ]
    text = json.dumps(held, ensure_ascii=False, separators=(",", ":"))
    return f"Guidecoat.parts[{json.dumps(name)}]={text};\n"
