"""Problems as text for people, as JSON for programs, as annotations for a build service."""

import json
from collections.abc import Callable, Mapping, Sequence

from generator.diagnostics.problem import Problem

ReadLine = Callable[[str, int], str]
# as much of a source line as a terminal shows, the more of it before the fault
WIDEST = 160
BEFORE = 100


def as_text(problems: Sequence[Problem], read_line: ReadLine) -> str:
    """Write each problem with its source line, a caret and a hint."""
    return "\n".join(_one_as_text(problem, read_line) for problem in problems)


def _one_as_text(problem: Problem, read_line: ReadLine) -> str:
    lines = [f"{problem.place}: {problem.severity}: {problem.message} [{problem.rule}]"]
    source = read_line(problem.place.path, problem.place.line)
    if source.strip():
        shown, column = _window(source, problem.place.column - 1)
        lead = "".join("\t" if c == "\t" else " " for c in shown[:column])
        lines += [f"    {shown}", f"    {lead}^"]
    if problem.hint:
        lines.append(f"    hint: {problem.hint}")
    return "\n".join(lines)


def _window(source: str, column: int) -> tuple[str, int]:
    """Return the part of a long line around a column, and the column in it."""
    if len(source) <= WIDEST:
        return source, column
    start = max(0, min(column, len(source)) - BEFORE)
    end = start + WIDEST
    before, after = "\u2026" if start else "", "\u2026" if end < len(source) else ""
    return f"{before}{source[start:end]}{after}", min(column, len(source)) - start + len(before)


def as_records(problems: Sequence[Problem]) -> list[dict[str, object]]:
    """Return each problem as a plain mapping for the JSON form."""
    return [
        {
            "path": problem.place.path,
            "line": problem.place.line,
            "column": problem.place.column,
            "severity": problem.severity,
            "rule": problem.rule,
            "message": problem.message,
            "hint": problem.hint,
        }
        for problem in problems
    ]


def as_json(problems: Sequence[Problem], figures: Mapping[str, object]) -> str:
    """Write the figures of the bank and its problems as one JSON document."""
    document = {**figures, "problems": as_records(problems)}
    return json.dumps(document, indent=2, ensure_ascii=False, sort_keys=True)


def as_annotations(problems: Sequence[Problem]) -> str:
    """Write one workflow-command line per problem, as build services read them."""
    kinds = {"error": "error", "warning": "warning", "note": "notice"}
    return "\n".join(
        f"::{kinds[p.severity]} file={_escaped_value(p.place.path)},line={p.place.line},"
        f"col={p.place.column},title={p.rule}::{_escaped(_with_hint(p))}"
        for p in problems
    )


def _with_hint(problem: Problem) -> str:
    return f"{problem.message} ({problem.hint})" if problem.hint else problem.message


def _escaped(text: str) -> str:
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def _escaped_value(text: str) -> str:
    # colon and comma part the values of one line from each other
    return _escaped(text).replace(":", "%3A").replace(",", "%2C")
