"""Tables that a person made elsewhere, read as text with the place of what is wrong."""

from pathlib import Path

from generator.diagnostics import Place, Problem
from generator.marking.tables import MOST_BYTES


def text_of(file: Path) -> tuple[str | None, tuple[Problem, ...]]:
    """Return the text of a file, or why it is not read: its size, or where it stops being UTF-8."""
    if not file.is_file() or file.stat().st_size > MOST_BYTES:
        message = f"a table is a file of at most {MOST_BYTES // 10**6} MB"
        return None, (Problem(Place(file.as_posix(), 1, 1), "error", "csv-size", message),)
    data = file.read_bytes()
    try:
        return data.decode("utf-8"), ()
    except UnicodeDecodeError as error:
        good = data[: error.start].decode("utf-8")
        line = good.count("\n") + 1
        place = Place(file.as_posix(), line, len(good) - (good.rfind("\n") + 1) + 1)
        message = "this is not UTF-8 text"
        hint = "save the table as CSV in UTF-8"
        return None, (Problem(place, "error", "csv-encoding", message, hint),)


def line_of(path: str, line: int) -> str:
    """Return a line of a file as problems name it, with what cannot be shown replaced."""
    if not Path(path).is_file() or Path(path).stat().st_size > MOST_BYTES:
        return ""
    lines = Path(path).read_text("utf-8", errors="replace").splitlines()
    shown = lines[line - 1] if 0 < line <= len(lines) else ""
    return "".join(c if c.isprintable() or c == "\t" else "\ufffd" for c in shown)
