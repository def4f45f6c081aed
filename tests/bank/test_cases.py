"""Broken little banks, each with the exact messages it must bring.

A case file holds cases of three parts, each closed by a line with a lone full stop: a title, the
files put over the small project (each headed by '--- path'), and the expected messages.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from generator.bank.checks import RULES
from tests.bank.small_bank import everything_found, put, said, small_project

FOLDER = Path(__file__).parent / "cases"


@dataclass(frozen=True, slots=True)
class Case:
    """One little bank: where the case stands, what is put over the small project, what is said."""

    place: str
    title: str
    files: tuple[tuple[str, str], ...]
    expected: tuple[str, ...]


def read_cases(path: Path) -> Iterator[Case]:
    """Return the cases of a file; raises ValueError where a part is missing."""
    parts: list[list[str]] = [[]]
    starts = [1]
    for number, line in enumerate(path.read_text("utf-8").splitlines(), start=1):
        if line == ".":
            parts.append([])
            starts.append(number + 1)
        else:
            parts[-1].append(line)
    if len(parts) % 3 != 1 or parts[-1]:
        raise ValueError(f"{path.name}: a case has three parts, each closed by a full stop")
    for place in range(0, len(parts) - 1, 3):
        title, files, expected = parts[place : place + 3]
        where = f"{path.name}:{starts[place]}"
        yield Case(where, " ".join(title), tuple(overlaid(files)), tuple(expected))


def overlaid(lines: list[str]) -> Iterator[tuple[str, str]]:
    """Return path and text of each file that a case puts over the small project."""
    path, text = "", list[str]()
    for line in lines:
        if line.startswith("--- "):
            if path:
                yield path, "\n".join(text) + "\n"
            path, text = line.removeprefix("--- "), []
        else:
            text.append(line)
    if path:
        yield path, "\n".join(text) + "\n"


CASES = [case for path in sorted(FOLDER.glob("*.txt")) for case in read_cases(path)]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.place)
def test_a_small_bank_brings_exactly_the_messages_of_its_case(case: Case, tmp_path: Path) -> None:
    root = small_project(tmp_path)
    for path, text in case.files:
        put(root, path, text)
    _, problems = everything_found(root)
    assert tuple(map(said, problems)) == case.expected, case.title


def test_every_rule_of_the_house_is_broken_by_some_case() -> None:
    broken = {line.rpartition("[")[2].rstrip("]") for case in CASES for line in case.expected}
    assert broken == set(RULES)


def test_a_rule_keeps_its_gravity_in_every_message() -> None:
    for case in CASES:
        for line in case.expected:
            rule = line.rpartition("[")[2].rstrip("]")
            assert f": {RULES[rule].severity}: " in line, line


def test_a_case_that_lacks_a_part_is_not_taken(tmp_path: Path) -> None:
    path = tmp_path / "broken.txt"
    path.write_text("A title\n.\n--- glossary.yml\n.\n", "utf-8")
    with pytest.raises(ValueError, match="three parts"):
        list(read_cases(path))
