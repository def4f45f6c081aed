"""Reference pages: glossary, sources, procedures, faults, tables, relations and cautions."""

from collections.abc import Callable, Iterable, Mapping
from typing import NamedTuple

from generator.bank.models import Fault, Module, Procedure, Table
from generator.refinishing import CATALOGUE
from generator.website.context import (
    TAG_WORDS,
    BuiltPage,
    Course,
    Heading,
    PageContext,
    SiteContext,
    hazard_anchor,
    readable,
    relation_tags,
)
from generator.website.pages.blocks import fault_html, procedure_html, table_html


class SharedAssets(NamedTuple):
    """One kind of record and how it is shown."""

    name: str
    title: str
    intro: str
    records: Mapping[str, Procedure] | Mapping[str, Fault] | Mapping[str, Table]
    card: Callable[[str, PageContext, SiteContext], str | None]


def shelves(course: Course) -> tuple[SharedAssets, ...]:
    """Return the kinds of record that have a page of their own."""
    return (
        SharedAssets("procedures", "Procedures", "Every job of the course, step by step.",
              course.procedures, procedure_html),
        SharedAssets("faults", "Faults", "What you see, why it came, and what to do about it.",
              course.faults, fault_html),
        SharedAssets("tables", "Tables", "Published tables, each with its source.",
              course.tables, table_html),
    )  # fmt: skip


def glossary_page(desk: SiteContext) -> BuiltPage:
    """List every term of the trade in plain words."""
    terms = sorted(desk.course.terms.items(), key=lambda entry: entry[1].term.lower())
    draft = desk.draft("question_bank/glossary.yml")
    html = desk.fill("pages/glossary.html", draft, terms=terms)
    return BuiltPage("glossary.html", html, "Glossary", "reference")


def sources_page(desk: SiteContext) -> BuiltPage:
    """List every source with what is known about it."""
    entries = sorted(desk.course.sources.items(), key=lambda entry: entry[1].document.lower())
    draft = desk.draft("question_bank/sources.yml")
    html = desk.fill("pages/sources.html", draft, entries=entries)
    return BuiltPage("sources.html", html, "Sources", "reference")


def relations_page(desk: SiteContext) -> BuiltPage:
    """List the relations of the catalogue with their equations, units, limits and sources.

    A relation whose document is not among the sources of this course is left out.
    """
    entries = [
        {"name": readable(name), "anchor": name, "relation": found, "tags": relation_tags(found)}
        for name, found in sorted(CATALOGUE.items())
        if found.facts.source in desk.course.sources or found.facts.source in TAG_WORDS
    ]
    draft = desk.draft("generator/refinishing/catalogue.py")
    html = desk.fill("pages/relations.html", draft, entries=entries, readable=readable)
    return BuiltPage("relations.html", html, "Relations", "reference")


def card_page(shelf: SharedAssets, desk: SiteContext) -> BuiltPage:
    """Show every record of a kind, grouped by module."""
    draft = desk.draft("")
    groups = [
        {
            "anchor": f"of-{module.module}",
            "text": module.title,
            "cards": [(name, _card(shelf, name, draft, desk)) for name in names],
        }
        for module, names in _by_module(shelf, desk.course.modules)
    ]
    contents = tuple(Heading(2, str(group["anchor"]), str(group["text"])) for group in groups)
    html = desk.fill("pages/cards.html", draft, title=shelf.title, intro=shelf.intro, groups=groups)
    return BuiltPage(f"{shelf.name}.html", html, shelf.title, "reference", contents)


def _card(shelf: SharedAssets, name: str, draft: PageContext, desk: SiteContext) -> str:
    draft.path = f"question_bank/{shelf.name}/{name}.yml"
    return shelf.card(name, draft, desk) or ""


def _by_module(
    shelf: SharedAssets, modules: tuple[Module, ...]
) -> Iterable[tuple[Module, list[str]]]:
    for module in modules:
        names = [
            name
            for name, record in shelf.records.items()
            if record.objective.partition("/")[0] == module.module
        ]
        if names:
            yield module, names


def cautions_page(desk: SiteContext, cautions: Mapping[str, tuple[str, ...]]) -> BuiltPage:
    """Show every hazard with its guards and first aid, then the other cautions by module."""
    groups = []
    for module in desk.course.modules:
        own = cautions.get(module.module, ())
        texts = dict.fromkeys((*own, *_procedure_cautions(desk.course, module.module)))
        if texts:
            groups.append({"module": module, "texts": tuple(texts)})
    draft = desk.draft("question_bank/hazards.yml")
    hazards = [(hazard_anchor(name), hazard) for name, hazard in desk.course.hazards.items()]
    html = desk.fill("pages/cautions.html", draft, groups=groups, hazards=hazards)
    return BuiltPage("cautions.html", html, "Cautions", "reference")


def _procedure_cautions(course: Course, module: str) -> Iterable[str]:
    for record in course.procedures.values():
        if record.objective.partition("/")[0] == module:
            yield from record.cautions
