"""Time a class of papers against the PDF engine alone, in one run.

Run it by `python tests/benchmarks/bench_printing.py`. It ends with exit 1 past one of its limits.

The engine alone compiles the same pages from content that is ready. What is left over is ours:
choosing the content and reading its Markdown. Forms differ, so that no result is remembered.
"""

import json
import resource
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import typst

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.printing import (  # noqa: E402
    answer_key,
    answer_sheet,
    class_key,
    feedback_sheet,
    question_paper,
)
from generator.printing.answer_sheet.content import answer_sheet_content  # noqa: E402
from generator.printing.content.feedback_content import feedback_sheet_content  # noqa: E402
from generator.printing.content.key_content import answer_key_content  # noqa: E402
from generator.printing.content.paper_content import question_paper_content  # noqa: E402
from generator.printing.typesetter import TEMPLATES  # noqa: E402
from tests.printing.form_for_tests import issued_form  # noqa: E402

FONTS = ROOT / "site_theme" / "fonts_print"
PEOPLE = 60
# Of question papers, answer sheets and keys together.
MOST_SECONDS, MOST_MEGABYTES, MOST_TIMES_ENGINE = 15, 500, 2
SIZE = {"paper": "a4", "large_print": False}
Content = Callable[[Any], dict[str, Any]]
PAPERS: dict[str, tuple[Callable[..., bytes], Content]] = {
    "question_paper": (question_paper, question_paper_content),
    "answer_sheet": (answer_sheet, answer_sheet_content),
    "answer_key": (answer_key, answer_key_content),
    "feedback_sheet": (feedback_sheet, feedback_sheet_content),
}
COUNTED = ("question_paper", "answer_sheet", "answer_key")


def form_named(name: str) -> dict[str, Any]:
    """Return a form of 20 questions, every one of which differs from those of other names."""
    form = issued_form() | {"form": name, "seed": name, "form_id": name.rjust(8, "0")}
    for entry in form["questions"]:
        question = entry["question"]
        entry["question"] = question | {"stem": f"{question['stem']} Bay {name}."}
    return form


def seconds(work: Callable[[], object]) -> float:
    """Time one piece of work in seconds."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def ours(template: str) -> float:
    """Time our papers of a class, from plain JSON to PDF, in seconds."""
    make = PAPERS[template][0]
    forms = [form_named(f"C{number}") for number in range(PEOPLE)]
    return seconds(lambda: [make(form, paper="a4", fonts=FONTS) for form in forms])


def engine_alone() -> typst.Compiler:
    """Start the engine as our typesetter does."""
    fonts = typst.Fonts(include_system_fonts=False, font_paths=[FONTS])
    return typst.Compiler(root=TEMPLATES, font_paths=fonts, ignore_system_fonts=True)


def alone(template: str, engine: typst.Compiler) -> float:
    """Time the engine on the content of another class, chosen beforehand, in seconds."""
    choose = PAPERS[template][1]
    ready = [json.dumps(choose(form_named(f"E{number}")) | SIZE) for number in range(PEOPLE)]
    return seconds(
        lambda: [
            engine.compile(
                input=TEMPLATES / f"{template}.typ",
                format="pdf",
                sys_inputs={"content": content},
                pdf_standards="ua-1",
                timestamp=0,
            )
            for content in ready
        ]
    )


def peak_megabytes() -> float:
    """Return the most memory that this process has held so far, in MB."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main() -> int:
    """Print one line per paper, then what was counted against its limits."""
    took = {template: ours(template) for template in PAPERS}
    forms = [form_named(f"C{number}") for number in range(PEOPLE)]
    whole_class = seconds(lambda: class_key(forms, paper="a4", fonts=FONTS))
    memory, engine = peak_megabytes(), engine_alone()
    needed = {template: alone(template, engine) for template in PAPERS}
    print(f"{PEOPLE} forms of 20 questions{'ours s':>14}{'engine s':>10}{'ratio':>8}")
    for template in PAPERS:
        ratio = took[template] / needed[template]
        print(f"{template:<24}{took[template]:>14.2f}{needed[template]:>10.2f}{ratio:>8.2f}")
    print(f"{'class_key, once':<24}{whole_class:>14.2f}")
    total, engine_total = (sum(times[name] for name in COUNTED) for times in (took, needed))
    limits = (
        ("seconds", total, MOST_SECONDS),
        ("MB at most", memory, MOST_MEGABYTES),
        ("times the engine", total / engine_total, MOST_TIMES_ENGINE),
    )
    for name, value, most in limits:
        print(f"question papers, answer sheets and keys: {value:.2f} {name} (limit {most})")
    return int(any(value > most for _, value, most in limits))


if __name__ == "__main__":
    sys.exit(main())
