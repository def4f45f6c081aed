"""Loads a bank folder: the story of reading on one page."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

from generator.bank.bank import Bank, Entry, Lesson
from generator.bank.models import (
    ITEM_KINDS,
    BankSheet,
    Belief,
    Blueprint,
    DataSheet,
    Fault,
    Giveaways,
    Hazard,
    Item,
    Outline,
    Procedure,
    Record,
    RulePlace,
    Source,
    Table,
    Term,
)
from generator.bank.nodes import BrokenNode, MappingNode, Node, ScalarNode
from generator.bank.reading.documents import with_document
from generator.bank.reading.file_text import file_text, own_lines
from generator.bank.reading.record_reading import as_mapping, read_record
from generator.bank.reading.yaml_source import read_yaml
from generator.diagnostics import Place, Problem, did_you_mean

R = TypeVar("R", bound=Record)
_NOTE_FOR_PEOPLE = ("REVIEW.md",)
_SINGLE_FILES = frozenset(
    {
        "bank.yml",
        "outline.yml",
        "sources.yml",
        "glossary.yml",
        "hazards.yml",
        "places.yml",
        "giveaways.yml",
    }
)


def _every_file(name: str) -> bool:
    return True


def load_bank(
    folder: Path, course: Path | None = None, wanted: Callable[[str], bool] = _every_file
) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Return the bank in a folder and every problem of reading it.

    folder  the question bank
    course  the lessons' folder, or None to load the bank alone
    wanted  says whether a file of items or records is read, by its name without the ending, such
            as items/filler/mix or faults/runs; what is left out counts as unread
    The bank is None when the sheet or the outline cannot be read.
    """
    reading = _Reading(folder, wanted)
    sheet = reading.single("bank.yml", BankSheet)
    outline_node = reading.node(folder / "outline.yml")
    outline = reading.typed(Outline, outline_node) if outline_node else None
    parts = {
        "sources": reading.named_in("sources.yml", Source),
        "glossary": reading.named_in("glossary.yml", Term) if wanted("glossary") else {},
        "hazards": reading.named_in("hazards.yml", Hazard, needed=False),
        "places": reading.named_in("places.yml", RulePlace, needed=False),
        "procedures": reading.one_a_file("procedures", Procedure),
        "faults": reading.one_a_file("faults", Fault),
        "tables": reading.one_a_file("tables", Table),
        "blueprints": reading.one_a_file("blueprints", Blueprint),
        "data_sheets": reading.data_sheets,
        "beliefs": reading.beliefs(),
    }
    giveaways = reading.one("giveaways.yml", Giveaways) if wanted("giveaways") else None
    items = reading.items()
    if wanted is _every_file:
        reading.report_unread_files()
    if sheet is None or outline is None:
        return None, tuple(reading.problems)
    lessons, figures = reading.course(course) if course else ((), ())
    bank = Bank(
        sheet=sheet,
        modules=outline.modules,
        items=items,
        giveaways=giveaways,
        lessons=lessons,
        figures=figures,
        outline_node=outline_node,
        unread=frozenset(reading.unread),
        **parts,  # type: ignore[arg-type]
    )
    return bank, tuple(reading.problems)


class _Reading:
    """Reads files of one bank and keeps the problems together."""

    def __init__(self, folder: Path, wanted: Callable[[str], bool]) -> None:
        self.folder = folder
        self.wanted = wanted
        self.problems: list[Problem] = []
        self.unread: set[str] = set()
        self.texts: dict[str, str] = {}
        self.data_sheets = self.one_a_file("data_sheets", DataSheet)

    def shown(self, path: Path) -> str:
        return (Path(self.folder.name) / path.relative_to(self.folder)).as_posix()

    def text(self, path: Path, shown: str) -> str | None:
        text, problems = file_text(path, shown)
        self.problems += problems
        return text

    def course(self, folder: Path) -> tuple[tuple[Lesson, ...], tuple[str, ...]]:
        lessons = []
        for path in sorted(folder.glob("[!.]*.md")):
            shown = f"{folder.name}/{path.name}"
            text = self.text(path, shown)
            if text is None:
                self.unread.add(f"lessons/{path.stem}")
            else:
                lessons.append(Lesson(path.stem, shown, text))
        figures = tuple(path.stem for path in sorted(folder.glob("figures/*.svg")))
        return tuple(lessons), figures

    def node(self, path: Path) -> Node | None:
        text = self.text(path, self.shown(path))
        if text is None:
            return None
        self.texts[self.shown(path)] = text
        node, problems = read_yaml(text, self.shown(path))
        self.problems += problems
        if node is None and not problems:
            place = Place(self.shown(path), 1, 1)
            self.problems.append(Problem(place, "error", "file-empty", "the file holds nothing"))
        return node

    def single(self, name: str, kind: type[R]) -> R | None:
        node = self.node(self.folder / name)
        return self.typed(kind, node) if node else None

    def one(self, name: str, kind: type[R]) -> Entry[R] | None:
        """Read a file that a bank may do without."""
        path = self.folder / name
        node = self.node(path) if path.exists() else None
        record = self.typed(kind, node) if node else None
        if node is None or record is None:
            return None
        return Entry(path.stem, record, node, Place(self.shown(path), 1, 1))

    def typed(self, kind: type[R], node: Node) -> R | None:
        record, problems = read_record(kind, node)
        self.problems += problems
        return record

    def mapping(self, path: Path) -> MappingNode | None:
        node = self.node(path)
        if node is None:
            return None
        mapping, problems = as_mapping(node)
        self.problems += problems
        return mapping

    def named_in(self, name: str, kind: type[R], needed: bool = True) -> Mapping[str, Entry[R]]:
        group = Path(name).stem
        if not needed and not (self.folder / name).exists():
            return {}
        mapping = self.mapping(self.folder / name)
        if mapping is None:
            self.unread.add(f"{group}/*")
            return {}
        return {entry.name: entry for entry in self._entries(mapping, group, kind)}

    def _entries(self, mapping: MappingNode, group: str, kind: type[R]) -> Iterator[Entry[R]]:
        for name, node in mapping.entries.items():
            record = self.typed(kind, node)
            if record is None:
                self.unread.add(f"{group}/{name}")
            else:
                yield Entry(name, record, node, mapping.keys[name])

    def one_a_file(self, folder: str, kind: type[R]) -> Mapping[str, Entry[R]]:
        entries: dict[str, Entry[R]] = {}
        for path in sorted((self.folder / folder).glob("*.yml")):
            if not (folder == "data_sheets" or self.wanted(f"{folder}/{path.stem}")):
                self.unread.add(f"{folder}/{path.stem}")
                continue
            node = self.node(path)
            record = self.typed(kind, node) if node else None
            if node is None or record is None:
                self.unread.add(f"{folder}/{path.stem}")
            else:
                start = Place(self.shown(path), 1, 1)
                written = self.texts[self.shown(path)]
                entries[path.stem] = Entry(path.stem, record, node, start, written)
        return entries

    def items(self) -> Mapping[str, Entry[Item]]:
        entries: dict[str, Entry[Item]] = {}
        for path in sorted((self.folder / "items").glob("*/*.yml")):
            before = f"{path.parent.name}/{path.stem}/"
            wanted = self.wanted(f"items/{path.parent.name}/{path.stem}")
            mapping = self.mapping(path) if wanted else None
            if mapping is None:
                self.unread.add(f"items/{before}*")
                continue
            written = own_lines(mapping, self.texts[self.shown(path)])
            for name, node in mapping.entries.items():
                start = mapping.keys[name]
                node, shown = self.with_sheet(node)
                item = self.item(node, start)
                if item is None:
                    self.unread.add(f"items/{before}{name}")
                else:
                    full = before + name
                    entries[full] = Entry(full, item, node, start, written[start.line] + shown)
        return entries

    def with_sheet(self, node: Node) -> tuple[Node, str]:
        """Return an item with the document it names in it, and the text of the document."""
        name = node.entries.get("sheet") if isinstance(node, MappingNode) else None
        if not isinstance(node, MappingNode) or not isinstance(name, ScalarNode):
            return node, ""
        document = self.data_sheets.get(name.text)
        if document is not None:
            return with_document(node, name, document.node), document.written
        if f"data_sheets/{name.text}" not in self.unread:
            message = f"there is no document '{name.text}' in data_sheets"
            hint = did_you_mean(name.text, self.data_sheets) or "or write title and rows here"
            self.problems.append(Problem(name.place, "error", "unknown-document", message, hint))
        entries = {**node.entries, "sheet": BrokenNode(name.place)}
        return MappingNode(entries, node.keys, node.place), ""

    def beliefs(self) -> Mapping[str, Entry[Belief]]:
        """Read the beliefs of each module; a name is 'module/belief'."""
        entries: dict[str, Entry[Belief]] = {}
        for path in sorted((self.folder / "beliefs").glob("*.yml")):
            group = f"beliefs/{path.stem}"
            mapping = self.mapping(path) if self.wanted(group) else None
            if mapping is None:
                self.unread.add(f"{group}/*")
                continue
            for entry in self._entries(mapping, group, Belief):
                name = f"{path.stem}/{entry.name}"
                entries[name] = replace(entry, name=name)
        return entries

    def item(self, node: Node, start: Place) -> Item | None:
        mapping, problems = as_mapping(node)
        self.problems += problems
        if mapping is None:
            return None
        kind = mapping.entries.get("kind")
        if isinstance(kind, BrokenNode):
            return None
        if not isinstance(kind, ScalarNode):
            message = "'kind' is missing here"
            hint = f"add 'kind:' with one of {', '.join(ITEM_KINDS)}"
            self.problems.append(Problem(start, "error", "missing-key", message, hint))
            return None
        if kind.text not in ITEM_KINDS:
            message = f"'{kind.text}' is not one of {', '.join(ITEM_KINDS)}"
            hint = did_you_mean(kind.text, ITEM_KINDS)
            self.problems.append(Problem(kind.place, "error", "unknown-choice", message, hint))
            return None
        return self.typed(ITEM_KINDS[kind.text], mapping)

    def report_unread_files(self) -> None:
        """Report files that nothing reads, such as a misspelt ending or folder."""
        known = {"items", "procedures", "faults", "tables", "blueprints", "schemas"}
        known |= {"data_sheets", "beliefs"}
        for path in sorted(self.folder.rglob("*")):
            inside = path.relative_to(self.folder).parts
            depth = 3 if inside[0] == "items" else 2
            read = inside[0] in _SINGLE_FILES or (inside[0] in known and len(inside) == depth)
            ending = ".json" if inside[0] == "schemas" else ".yml"
            if inside == _NOTE_FOR_PEOPLE:
                continue
            if path.is_file() and not (read and path.suffix == ending):
                message = "nothing reads this file; records are .yml files in the bank's folders"
                place = Place(self.shown(path), 1, 1)
                self.problems.append(Problem(place, "warning", "file-unread", message))
