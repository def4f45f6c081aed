"""Reads YAML through libyaml's events, so that `3:1` stays a ratio and `no` stays a word."""

from collections.abc import Iterator
from typing import Any

import yaml

from generator.bank.nodes import BrokenNode, ListNode, MappingNode, Node, ScalarNode
from generator.diagnostics import Place, Problem

_LOADER = getattr(yaml, "CLoader", yaml.Loader)
MOST_LEVELS = 30


def read_yaml(text: str, path: str) -> tuple[Node | None, tuple[Problem, ...]]:
    """Return the document as nodes with places, and every problem of its form.

    text  the file's text
    path  how the file is named in messages
    """
    reader = _Reader(path)
    tabs = _tab_problems(text, path)
    if tabs:
        return None, tabs
    try:
        node = reader.document(_shallow(yaml.parse(text, Loader=_LOADER)))
    except yaml.MarkedYAMLError as error:
        return None, (*reader.problems, _syntax_problem(error, path))
    except _TooDeep as error:
        return None, (*reader.problems, error.problem(path))
    except yaml.reader.ReaderError as error:
        return None, (_character_problem(text, path, str(error.character)),)
    return node, tuple(reader.problems)


def _tab_problems(text: str, path: str) -> tuple[Problem, ...]:
    lines = enumerate(text.splitlines(), start=1)
    return tuple(
        Problem(
            Place(path, number, line.index("\t") + 1),
            "error",
            "yaml-tab",
            "a tab stands here; YAML is laid out with spaces",
            "write two spaces for each level",
        )
        for number, line in lines
        if "\t" in line
    )


def _character_problem(text: str, path: str, character: str) -> Problem:
    # the reader counts bytes or characters, depending on how it was built; the text does not
    sign = chr(int(character)) if character.isdigit() else character
    index = max(text.find(sign), 0)
    place = Place(path, text.count("\n", 0, index) + 1, index - text.rfind("\n", 0, index))
    message = f"the character U+{ord(sign):04X} cannot stand in a text file"
    return Problem(place, "error", "yaml-form", message, "take it out")


class _TooDeep(Exception):
    """Lists and mappings stand inside each other beyond what a record needs."""

    def __init__(self, event: Any) -> None:
        super().__init__()
        self.mark = event.start_mark

    def problem(self, path: str) -> Problem:
        place = Place(path, self.mark.line + 1, self.mark.column + 1)
        message = f"more than {MOST_LEVELS} levels stand inside each other"
        return Problem(place, "error", "yaml-form", message, "close a bracket, or indent less")


def _shallow(events: Iterator[yaml.Event]) -> Iterator[yaml.Event]:
    """Return the events; raises _TooDeep where lists and mappings are nested too deep."""
    level = 0
    for event in events:
        level += isinstance(event, yaml.CollectionStartEvent)
        level -= isinstance(event, yaml.CollectionEndEvent)
        if level > MOST_LEVELS:
            raise _TooDeep(event)
        yield event


def _syntax_problem(error: yaml.MarkedYAMLError, path: str) -> Problem:
    # a quote that is never closed is told where it opens, and not at the end of the file
    unclosed = error.context_mark if "quoted scalar" in (error.context or "") else None
    mark = unclosed or error.problem_mark or error.context_mark
    place = Place(path, mark.line + 1, mark.column + 1) if mark else Place(path, 1, 1)
    said = " ".join(part for part in (error.context, error.problem) if part)
    hint = "text that holds ': ' or ' #', or starts with a sign such as { or *, needs quotes"
    return Problem(place, "error", "yaml-form", f"the layout cannot be read: {said}", hint)


class _Reader:
    """Builds nodes from events and gathers what the house does not allow."""

    def __init__(self, path: str) -> None:
        self.path = path
        self.problems: list[Problem] = []

    def document(self, events: Iterator[yaml.Event]) -> Node | None:
        node: Node | None = None
        for event in events:
            if isinstance(event, yaml.DocumentStartEvent) and node is not None:
                self._report(event, "yaml-form", "a second document starts here", "use one file")
                break
            if isinstance(event, yaml.NodeEvent):
                node = self._node(event, events)
        return node

    def _node(self, event: Any, events: Iterator[yaml.Event]) -> Node:
        place = self._place(event)
        if isinstance(event, yaml.AliasEvent):
            self._report(event, "yaml-anchor", f"'*{event.anchor}' points to an anchor", _PLAINLY)
            return BrokenNode(place)
        if event.anchor:
            self._report(event, "yaml-anchor", f"'&{event.anchor}' is an anchor", _PLAINLY)
        if event.tag and event.tag != "!":
            tag = event.tag.replace("tag:yaml.org,2002:", "!!")
            self._report(event, "yaml-tag", f"'{tag}' is a type tag", "leave the tag out")
        if isinstance(event, yaml.ScalarEvent):
            return self._scalar(event, place)
        if isinstance(event, yaml.SequenceStartEvent):
            return self._list(events, place)
        return self._mapping(events, place)

    def _scalar(self, event: Any, place: Place) -> ScalarNode:
        quoted = event.style in ("'", '"')
        written = event.end_mark.column - event.start_mark.column - 2
        escaped = quoted and written != len(event.value)
        block = event.style in ("|", ">") or event.end_mark.line != event.start_mark.line
        return ScalarNode(
            event.value, place, place.shifted(1) if quoted else place, block or escaped
        )

    def _list(self, events: Iterator[yaml.Event], place: Place) -> ListNode:
        items: list[Node] = []
        for event in events:
            if isinstance(event, yaml.SequenceEndEvent):
                break
            items.append(self._node(event, events))
        return ListNode(tuple(items), place)

    def _mapping(self, events: Iterator[yaml.Event], place: Place) -> Node:
        entries: dict[str, Node] = {}
        keys: dict[str, Place] = {}
        spoilt = False
        for event in events:
            if isinstance(event, yaml.MappingEndEvent):
                break
            key = self._node(event, events)
            value = self._node(next(events), events)
            self._enter(key, value, entries, keys, event)
            spoilt = spoilt or not isinstance(key, ScalarNode) or key.text == "<<"
        # what a merge would have brought must not be reported as missing
        return BrokenNode(place) if spoilt else MappingNode(entries, keys, place)

    def _enter(
        self,
        key: Node,
        value: Node,
        entries: dict[str, Node],
        keys: dict[str, Place],
        event: yaml.Event,
    ) -> None:
        if not isinstance(key, ScalarNode):
            if not isinstance(key, BrokenNode):
                self._report(event, "yaml-form", "a name is expected here", _NAMED)
        elif key.text == "<<":
            self._report(event, "yaml-anchor", "'<<' merges another mapping", _PLAINLY)
        elif key.text in entries:
            first = keys[key.text].line
            message = f"'{key.text}' stands here again; the first is on line {first}"
            self._report(event, "repeated-key", message, "keep one of the two")
        else:
            entries[key.text] = value
            keys[key.text] = key.place

    def _place(self, event: Any) -> Place:
        return Place(self.path, event.start_mark.line + 1, event.start_mark.column + 1)

    def _report(self, event: yaml.Event, rule: str, message: str, hint: str) -> None:
        self.problems.append(Problem(self._place(event), "error", rule, message, hint))


_PLAINLY = "write the value out in full"
_NAMED = "write 'name: value', or quotes around a text that starts with {"
