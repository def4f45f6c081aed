"""The text of an author's file, whatever program wrote it, and the lines of each record in it."""

from codecs import BOM_UTF8
from collections.abc import Iterator, Mapping
from pathlib import Path

from generator.bank.nodes import MappingNode
from generator.diagnostics import Place, Problem

# a hundred times the longest file of the course; a mistake or a trap is longer
MOST_BYTES = 8_000_000


def file_text(path: Path, shown: str) -> tuple[str | None, tuple[Problem, ...]]:
    """Return the text of a file, or None, and what is wrong with it.

    shown  how the file is named in messages
    """
    place, reason = Place(shown, 1, 1), ""
    try:
        if path.exists() and not path.is_file():
            raise OSError("neither a folder nor a device holds a text")
        if path.exists() and path.stat().st_size > MOST_BYTES:
            message = f"a file of the bank or the course has at most {MOST_BYTES // 10**6} MB"
            return None, (Problem(place, "error", "file-unreadable", message),)
        # some editors put a mark at the start of a file, which is no part of its text
        data = path.read_bytes().removeprefix(BOM_UTF8)
        text = data.decode("utf-8").replace("\r\n", "\n").replace("\r", "\n")
        return text, tuple(_cut_off(text, shown))
    except FileNotFoundError:
        reason = "the file is missing"
    except OSError:
        reason = "the file cannot be read"
    except UnicodeDecodeError as error:
        good = error.object[: error.start].decode("utf-8")
        place = Place(shown, good.count("\n") + 1, len(good) - good.rfind("\n"))
        reason = "the file is not UTF-8 text from here on"
    return None, (Problem(place, "error", "file-unreadable", reason),)


def own_lines(mapping: MappingNode, text: str) -> Mapping[int, str]:
    """Return the lines of each named value of a file, by the line where its name stands."""
    lines = text.split("\n")
    starts = sorted(place.line for place in mapping.keys.values())
    ends = [*(start - 1 for start in starts[1:]), len(lines)]
    pairs = zip(starts, ends, strict=True)
    return {start: "\n".join(lines[start - 1 : end]) for start, end in pairs}


def _cut_off(text: str, path: str) -> Iterator[Problem]:
    """Yield a warning where the last line has no end, as in a copy that was broken off."""
    if text and not text.endswith("\n"):
        last = text.rpartition("\n")[2]
        place = Place(path, text.count("\n") + 1, len(last))
        message = "the file ends in the middle of a line; it may have been cut off"
        hint = "finish it; where it is whole, press Enter behind the last line"
        yield Problem(place, "warning", "file-cut-off", message, hint)
