"""Reads YAML through libyaml's events, so that `3:1` stays a ratio and `no` stays a word."""

import re
from collections.abc import Callable
from functools import lru_cache
from typing import Any, TypeAlias

import yaml
from yaml.events import (
    AliasEvent,
    MappingEndEvent,
    ScalarEvent,
    SequenceEndEvent,
    SequenceStartEvent,
    StreamEndEvent,
)

from generator.bank.nodes import BrokenNode, ListNode, MappingNode, Node, ScalarNode
from generator.diagnostics import Place, Problem, odd_signs

Following: TypeAlias = Callable[[], Any]

_LOADER = getattr(yaml, "CLoader", yaml.Loader)
MOST_LEVELS = 30


# a preview reads the same files again and again; nobody changes a node
@lru_cache(maxsize=2048)
def read_yaml(text: str, path: str) -> tuple[Node | None, tuple[Problem, ...]]:
    """Return the document as nodes with places, and every problem of its form.

    text  the file's text
    path  how the file is named in messages
    """
    reader = _Reader(path)
    unread = (*_tab_problems(text, path), *odd_signs(text, path))
    if unread:
        return None, unread
    try:
        node = reader.document(text)
    except yaml.MarkedYAMLError as error:
        return None, (*reader.problems, _syntax_problem(error, path))
    except _TooDeep as error:
        return None, (*reader.problems, error.problem(path))
    return node, tuple(reader.problems)


def _tab_problems(text: str, path: str) -> tuple[Problem, ...]:
    lines = enumerate(text.split("\n"), start=1)
    return tuple(
        Problem(
            Place(path, number, line.index("\t") + 1),
            "error",
            "yaml-tab",
            "there is a tab here; YAML is laid out with spaces",
            "write two spaces for each level",
        )
        for number, line in lines
        if "\t" in line
    )


class _TooDeep(Exception):
    """Lists and mappings stand inside each other beyond what a record needs."""

    def __init__(self, event: Any) -> None:
        super().__init__()
        self.mark = event.start_mark

    def problem(self, path: str) -> Problem:
        place = Place(path, self.mark.line + 1, self.mark.column + 1)
        message = f"more than {MOST_LEVELS} levels are inside each other"
        return Problem(place, "error", "yaml-form", message, "close a bracket, or indent less")


def _syntax_problem(error: yaml.MarkedYAMLError, path: str) -> Problem:
    # a quote or a bracket that is never closed is told where it opens, and not where the reader
    # gave up, which may be the end of the file
    opened = re.search("quoted scalar|flow (?:sequence|mapping)", error.context or "")
    unclosed = error.context_mark if opened else None
    mark = unclosed or error.problem_mark or error.context_mark
    place = Place(path, mark.line + 1, mark.column + 1) if mark else Place(path, 1, 1)
    said = " ".join(part for part in (error.context, error.problem) if part)
    hint = "text that holds ': ' or ' #', or starts with a character such as { or *, needs quotes"
    return Problem(place, "error", "yaml-form", f"the layout cannot be read: {said}", hint)


class _Reader:
    """Builds nodes from events and gathers what the house does not allow."""

    def __init__(self, path: str) -> None:
        self.path = path
        self.problems: list[Problem] = []
        self.level = 0

    def document(self, text: str) -> Node | None:
        loader = _LOADER(text)
        try:
            return self._document(loader.get_event)
        finally:
            loader.dispose()

    def _document(self, following: Following) -> Node | None:
        node: Node | None = None
        while type(event := following()) is not StreamEndEvent:
            if isinstance(event, yaml.DocumentStartEvent) and node is not None:
                self._report(event, "yaml-form", "a second document starts here", "use one file")
                break
            if isinstance(event, yaml.NodeEvent):
                node = self._node(event, following)
        return node

    def _node(self, event: Any, following: Following) -> Node:
        mark = event.start_mark
        place = Place(self.path, mark.line + 1, mark.column + 1)
        kind = type(event)
        if kind is AliasEvent:
            self._report(event, "yaml-anchor", f"'*{event.anchor}' points to an anchor", _PLAINLY)
            return BrokenNode(place)
        if kind is not ScalarEvent:
            self.level += 1
            if self.level > MOST_LEVELS:
                raise _TooDeep(event)
        if event.anchor:
            self._report(event, "yaml-anchor", f"'&{event.anchor}' is an anchor", _PLAINLY)
        if event.tag and event.tag != "!":
            tag = event.tag.replace("tag:yaml.org,2002:", "!!")
            self._report(event, "yaml-tag", f"'{tag}' is a type tag", "leave the tag out")
        if kind is ScalarEvent:
            return _scalar(event, mark, place)
        node = (
            self._list(following, place)
            if kind is SequenceStartEvent
            else self._mapping(following, place)
        )
        self.level -= 1
        return node

    def _list(self, following: Following, place: Place) -> ListNode:
        items: list[Node] = []
        while type(event := following()) is not SequenceEndEvent:
            items.append(self._node(event, following))
        return ListNode(tuple(items), place)

    def _mapping(self, following: Following, place: Place) -> Node:
        entries: dict[str, Node] = {}
        keys: dict[str, Place] = {}
        spoilt = False
        while type(event := following()) is not MappingEndEvent:
            key = self._node(event, following)
            value = self._node(following(), following)
            if type(key) is ScalarNode and key.text != "<<" and key.text not in entries:
                entries[key.text] = value
                keys[key.text] = key.place
            else:
                self._refuse(key, keys, event)
                spoilt = spoilt or not isinstance(key, ScalarNode) or key.text == "<<"
        # what a merge would have brought must not be reported as missing
        return BrokenNode(place) if spoilt else MappingNode(entries, keys, place)

    def _refuse(self, key: Node, keys: dict[str, Place], event: yaml.Event) -> None:
        if not isinstance(key, ScalarNode):
            if not isinstance(key, BrokenNode):
                self._report(event, "yaml-form", "a name is expected here", _NAMED)
        elif key.text == "<<":
            self._report(event, "yaml-anchor", "'<<' merges another mapping", _PLAINLY)
        else:
            first = keys[key.text].line
            message = f"'{key.text}' appears again; the first is on line {first}"
            self._report(event, "repeated-key", message, "keep one of the two")

    def _place(self, event: Any) -> Place:
        return Place(self.path, event.start_mark.line + 1, event.start_mark.column + 1)

    def _report(self, event: yaml.Event, rule: str, message: str, hint: str) -> None:
        self.problems.append(Problem(self._place(event), "error", rule, message, hint))


def _scalar(event: Any, start: Any, place: Place) -> ScalarNode:
    style, end = event.style, event.end_mark
    one_line = end.line == start.line
    if style != "'" and style != '"':
        return ScalarNode(event.value, place, place, not one_line or style in ("|", ">"))
    escaped = end.column - start.column - 2 != len(event.value)
    return ScalarNode(event.value, place, place.shifted(1), not one_line or escaped)


_PLAINLY = "write the value out in full"
_NAMED = "write 'name: value', or quotes around a text that starts with {"
