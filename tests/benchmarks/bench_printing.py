"""Compare our papers with the PDF engine alone, in one run.

Run it by `python tests/benchmarks/bench_printing.py`.

The engine alone compiles the same pages from content that is ready. What is left over is ours:
choosing the content and reading its Markdown. Forms differ, so that no result is remembered.
"""

import json
import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median
from typing import Any

import typst

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.printing.key_content import answer_key_content  # noqa: E402
from generator.printing.paper_content import question_paper_content  # noqa: E402
from generator.printing.sheet_content import answer_sheet_content  # noqa: E402
from generator.printing.typesetter import TEMPLATES, typeset  # noqa: E402
from tests.printing.form_for_tests import full_form  # noqa: E402

FONTS = ROOT / "site_theme" / "fonts_print"
ROUNDS = 30
SIZE = {"paper": "a4", "large_print": False}
CONTENTS: dict[str, Callable[[Any], dict[str, Any]]] = {
    "question_paper": question_paper_content,
    "answer_sheet": answer_sheet_content,
    "answer_key": answer_key_content,
}


def form_named(name: str) -> dict[str, Any]:
    """Give a form whose every question differs from those of other names."""
    form = full_form() | {"form": name, "seed": name}
    for entry in form["questions"]:
        question = entry["question"]
        entry["question"] = question | {"stem": f"{question['stem']} Bay {name}."}
    return form


def seconds(work: Callable[[], object]) -> float:
    """Time one piece of work in seconds."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def engine_alone() -> typst.Compiler:
    """Start the engine as our typesetter does."""
    fonts = typst.Fonts(include_system_fonts=False, font_paths=[FONTS])
    return typst.Compiler(root=TEMPLATES, font_paths=fonts, ignore_system_fonts=True)


def ours(template: str, name: str) -> float:
    """Time our paper of one form, from plain JSON to PDF, in seconds."""
    form = form_named(name)
    return seconds(lambda: typeset(template, CONTENTS[template](form) | SIZE, fonts=FONTS))


def alone(template: str, name: str, engine: typst.Compiler) -> float:
    """Time the engine on the content of one form, chosen beforehand, in seconds."""
    ready = json.dumps(CONTENTS[template](form_named(name)) | SIZE)
    return seconds(
        lambda: engine.compile(
            input=TEMPLATES / f"{template}.typ",
            format="pdf",
            sys_inputs={"content": ready},
            pdf_standards="ua-1",
            timestamp=0,
        )
    )


def compare(template: str, engine: typst.Compiler) -> tuple[float, float]:
    """Give the median seconds of our paper and of the engine alone, taken in turn."""
    pairs = [
        (ours(template, f"O{number}"), alone(template, f"E{number}", engine))
        for number in range(ROUNDS)
    ]
    return median(pair[0] for pair in pairs), median(pair[1] for pair in pairs)


def main() -> None:
    """Print one line per paper."""
    engine = engine_alone()
    print(f"{'paper':<16}{'ours ms':>9}{'engine ms':>11}{'ratio':>8}   ({ROUNDS} forms each)")
    for template in CONTENTS:
        whole, part = compare(template, engine)
        print(f"{template:<16}{whole * 1e3:>9.1f}{part * 1e3:>11.1f}{whole / part:>8.2f}")


if __name__ == "__main__":
    main()
