"""Forms as the three files that an instructor prints."""

from collections.abc import Iterator

from generator.assembly import Form, form_as_plain
from generator.command_line.project import Project
from generator.printing import PaperSize, answer_key, answer_sheet, question_paper


def paper_files(
    project: Project, form: Form, paper: PaperSize, large_print: bool = False
) -> Iterator[tuple[str, bytes]]:
    """Give name and bytes of question paper, answer sheet and key of a form."""
    plain = form_as_plain(form)
    start = f"{form.blueprint}-{form.label}"
    makers = (("questions", question_paper), ("answer-sheet", answer_sheet), ("key", answer_key))
    for name, make in makers:
        data = make(plain, paper=paper, fonts=project.fonts, large_print=large_print)
        yield f"{start}-{name}.pdf", data
