"""What a lesson can ask for in a fenced block: the records are stated once and shown here."""

from collections.abc import Mapping

from markupsafe import Markup

from generator.website.context import (
    Block,
    Course,
    PageContext,
    SiteContext,
    caution_box,
    caution_words,
    objective_id,
    phrase,
    plain_words,
    rendered,
    worked_example,
)
from generator.website.figures import drawn_figure, panel_strips
from generator.website.questions import question_html


def lesson_blocks(desk: SiteContext) -> dict[str, Block]:
    """Return every block by the word that calls it."""

    def caution(draft: PageContext, name: str, body: str) -> str:
        names = name.split()
        for unknown in (one for one in names if one not in draft.course.hazards):
            _missing(draft, "hazard", unknown)
        box = caution_box(draft, names, [body])
        # the author's own words are a part of the lesson, with all of its Markdown
        own = {"prose": lambda text: Markup(rendered(text, draft))}
        draft.heard = caution_words(draft, box)
        return desk.fill("blocks/caution_box.html", draft, box=box, **own)

    def procedure(draft: PageContext, name: str, body: str) -> str:
        return procedure_html(name, draft, desk) or _missing(draft, "procedure", name)

    def fault(draft: PageContext, name: str, body: str) -> str:
        return fault_html(name, draft, desk) or _missing(draft, "fault", name)

    def table(draft: PageContext, name: str, body: str) -> str:
        return table_html(name, draft, desk) or _missing(draft, "table", name)

    def data_sheet(draft: PageContext, name: str, body: str) -> str:
        document = draft.course.data_sheets.get(name)
        if document is None:
            return _missing(draft, "document", name)
        return desk.fill("blocks/data_sheet.html", draft, name=name, record=document)

    def belief(draft: PageContext, name: str, body: str) -> str:
        record = draft.course.beliefs.get(name)
        if record is None:
            return _missing(draft, "belief", name)
        return desk.fill("blocks/belief.html", draft, record=record)

    def question(draft: PageContext, name: str, body: str) -> str:
        variants = draft.course.question_named(name)
        if variants is None:
            return _missing(draft, "study question", name)
        return question_html(variants, draft, desk, "Try it")

    def objectives(draft: PageContext, name: str, body: str) -> str:
        draft.heard = objective_words(name, draft)
        return objectives_html(name, draft, desk) or _missing(draft, "module", name)

    def modules(draft: PageContext, name: str, body: str) -> str:
        return desk.fill("blocks/modules.html", draft, strips=panel_strips(draft.course))

    def worked(draft: PageContext, name: str, body: str) -> str:
        return worked_example(name, body, draft, desk)

    def figure(draft: PageContext, name: str, body: str) -> str:
        drawing = drawn_figure(name, draft.course)
        if drawing is None:
            return _missing(draft, "figure", name)
        draft.heard = plain_words(body.strip(), draft)
        return (
            f'<figure class="figure" id="figure-{name}">{drawing}'
            f"<figcaption>{phrase(body.strip(), draft)}</figcaption></figure>\n"
        )

    return {
        "caution": caution,
        "procedure": procedure,
        "fault": fault,
        "table": table,
        "data_sheet": data_sheet,
        "belief": belief,
        "question": question,
        "objectives": objectives,
        "modules": modules,
        "worked": worked,
        "figure": figure,
        "sources": lambda draft, name, body: "",
    }


def procedure_html(name: str, draft: PageContext, desk: SiteContext) -> str | None:
    """Write a procedure as a card of numbered steps; None when there is none."""
    record = draft.course.procedures.get(name)
    if record is None:
        return None
    numbers = step_numbers(tuple(step.step for step in record.steps))
    return desk.fill("blocks/procedure.html", draft, name=name, record=record, numbers=numbers)


def fault_html(name: str, draft: PageContext, desk: SiteContext) -> str | None:
    """Write a fault as a card; None when there is none."""
    record = draft.course.faults.get(name)
    if record is None:
        return None
    picture = draft.course.figures.get(f"fault_{name}", "")
    return desk.fill("blocks/fault.html", draft, name=name, record=record, picture=picture)


def table_html(name: str, draft: PageContext, desk: SiteContext) -> str | None:
    """Write a published table with its source; None when there is none."""
    record = draft.course.tables.get(name)
    if record is None:
        return None
    rows = draft.course.rows.get(name, record.rows)
    return desk.fill("blocks/table.html", draft, name=name, record=record, rows=rows)


def objectives_html(name: str, draft: PageContext, desk: SiteContext) -> str | None:
    """List what a module teaches, each with its standard and its state on this device."""
    module = draft.course.module_named(name)
    if module is None:
        return None
    ids = {entry.objective: objective_id(module, entry) for entry in module.objectives}
    return desk.fill("blocks/objectives.html", draft, module=module, ids=ids)


def objective_words(name: str, draft: PageContext) -> str:
    """Return what a search finds of the objectives of a module."""
    module = draft.course.module_named(name)
    entries = module.objectives if module else ()
    return " ".join(
        f"{plain_words(entry.text, draft)}. {plain_words(entry.standard, draft)}."
        for entry in entries
    )


def step_numbers(steps: tuple[str, ...]) -> Mapping[str, int]:
    """Number the steps from 1."""
    return {step: number for number, step in enumerate(steps, start=1)}


def sources_html(draft: PageContext, desk: SiteContext) -> str:
    """List everything that the page cites."""
    known: Course = draft.course
    keys = [key for key in draft.cited if key in known.sources]
    return desk.fill("blocks/sources.html", draft, keys=keys)


def _missing(draft: PageContext, what: str, name: str) -> str:
    draft.report("lesson-block", f"there is no {what} named '{name}'")
    return ""
