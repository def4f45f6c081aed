"""Verdicts of earlier checks under the user's cache folder; never needed, safe to delete."""

import json
import os
import tempfile
from collections.abc import Mapping, Sequence
from hashlib import sha256
from pathlib import Path
from typing import Any, NamedTuple

from generator.diagnostics import Place, Problem
from generator.workflows.project import Project
from generator.workflows.verdicts.fingerprint import ground_digest, whole_digest


class Found(NamedTuple):
    """What a check found: every problem, and how much the bank holds."""

    problems: tuple[Problem, ...]
    figures: dict[str, Any]


class VerdictCache:
    """What is known of a project; read once, written once.

    Where it cannot be read or written, nothing is known, and nobody is told.

    folder   where verdicts are kept; None to keep none
    machine  what the check runs with: the version of Python, the packages that are installed
    """

    def __init__(self, project: Project, folder: Path | None, machine: Sequence[str]) -> None:
        name = sha256(str(project.root).encode("utf-8", "surrogateescape")).hexdigest()[:24]
        self._file = folder / f"{name}.json" if folder else None
        self._kept = _read(self._file)
        self._whole = whole_digest(project, machine) if folder else ""
        self.ground = ground_digest(project, machine) if folder else ""

    @property
    def records(self) -> Mapping[str, Any]:
        """Return the verdicts on single records, as they were written."""
        records = self._kept.get("records")
        return records if isinstance(records, dict) else {}

    def found(self) -> Found | None:
        """Return what the last check found where nothing at all has changed since."""
        if not self._whole or self._kept.get("whole") != self._whole:
            return None
        try:
            problems = tuple(_problem(*row) for row in self._kept["problems"])
            figures = self._kept["figures"]
            return Found(problems, figures) if isinstance(figures, dict) else None
        except (KeyError, TypeError, ValueError):
            return None

    def keep(self, found: Found, records: Mapping[str, Any]) -> None:
        """Write what was found in place of what was known."""
        if self._file is None:
            return
        rows = [(*p.place, p.severity, p.rule, p.message, p.hint) for p in found.problems]
        kept = {"whole": self._whole, "problems": rows, "figures": found.figures}
        _write(self._file, json.dumps({**kept, "records": dict(records)}))


def _problem(
    path: str, line: int, column: int, severity: Any, rule: str, message: str, hint: str
) -> Problem:
    if not all(isinstance(text, str) for text in (path, severity, rule, message, hint)):
        raise TypeError("a verdict is made of texts")
    return Problem(Place(path, int(line), int(column)), severity, rule, message, hint)


def _read(file: Path | None) -> dict[str, Any]:
    try:
        kept = json.loads(file.read_bytes()) if file else {}
    except (OSError, ValueError, RecursionError):
        return {}
    return kept if isinstance(kept, dict) else {}


def _write(file: Path, text: str) -> None:
    try:
        file.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        # made for its owner alone, and in one step in the place of the old one
        number, new = tempfile.mkstemp(dir=file.parent, prefix=".new-")
        try:
            with os.fdopen(number, "w", encoding="utf-8") as stream:
                stream.write(text)
            os.replace(new, file)
        except BaseException:
            Path(new).unlink(missing_ok=True)
            raise
    except OSError:
        return
