"""A YAML file as text with places: nothing is guessed, every scalar stays as typed."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from generator.diagnostics import Place

Path = tuple[str | int, ...]
Plain = str | list["Plain"] | dict[str, "Plain"]


class ScalarNode(NamedTuple):
    """A piece of text.

    place   of the first character, or of the block mark for a folded text
    inner   place of the text's own first character, after a quotation mark
    block   whether the text is folded over lines or has escapes, so that columns inside it
            mean nothing
    """

    text: str
    place: Place
    inner: Place
    block: bool = False


@dataclass(frozen=True, slots=True)
class BrokenNode:
    """Something already reported, so that nobody reports it again."""

    place: Place


@dataclass(frozen=True, slots=True)
class ListNode:
    """A list and where it starts."""

    items: tuple["Node", ...]
    place: Place


@dataclass(frozen=True, slots=True)
class MappingNode:
    """Named values; `keys` holds the place of each name."""

    entries: Mapping[str, "Node"]
    keys: Mapping[str, Place] = field(default_factory=dict)
    place: Place = Place("", 1, 1)


Node = ScalarNode | BrokenNode | ListNode | MappingNode


def to_plain(node: Node) -> Plain:
    """Return the node as text, lists and mappings, with broken parts as empty text."""
    if isinstance(node, ScalarNode):
        return node.text
    if isinstance(node, ListNode):
        return [to_plain(item) for item in node.items]
    if isinstance(node, MappingNode):
        return {name: to_plain(value) for name, value in node.entries.items()}
    return ""


def walk(node: Node, path: Path) -> Iterator[Node]:
    """Return the nodes on the way down a path, as far as it can be followed."""
    yield node
    for step in path:
        if isinstance(node, MappingNode) and step in node.entries:
            node = node.entries[str(step)]
        elif isinstance(node, ListNode) and isinstance(step, int) and step < len(node.items):
            node = node.items[step]
        else:
            return
        yield node


def scalars(node: Node) -> Iterator[ScalarNode]:
    """Return every piece of text in a node, in the order it was written; names are left out."""
    waiting = [node]
    while waiting:
        part = waiting.pop()
        if isinstance(part, ScalarNode):
            yield part
        elif isinstance(part, ListNode):
            waiting += reversed(part.items)
        elif isinstance(part, MappingNode):
            waiting += reversed(list(part.entries.values()))


def place_of(node: Node, *path: str | int) -> Place:
    """Return the place of the value at a path, or of the deepest part that exists."""
    return list(walk(node, path))[-1].place


def key_place(node: Node, *path: str | int) -> Place:
    """Return the place of the name at the end of a path rather than of its value."""
    *upper, last = path
    parent = list(walk(node, tuple(upper)))[-1]
    if isinstance(parent, MappingNode) and str(last) in parent.keys:
        return parent.keys[str(last)]
    return place_of(node, *path)


def text_place(node: Node, column: int, *path: str | int) -> Place:
    """Return the place of a column inside the text at a path (columns count from 1)."""
    found = list(walk(node, path))[-1]
    if isinstance(found, ScalarNode) and not found.block:
        return found.inner.shifted(column - 1)
    return found.place


def is_broken(node: Node, path: Path) -> bool:
    """Return whether a part on the way to a path was already reported."""
    return any(isinstance(part, BrokenNode) for part in walk(node, path))


def holds_broken(node: Node, path: Path) -> bool:
    """Return whether a part of the value at a path was already reported."""
    parts = list(walk(node, path))
    return len(parts) == len(path) + 1 and _has_broken(parts[-1])


def _has_broken(node: Node) -> bool:
    if isinstance(node, ListNode):
        return any(map(_has_broken, node.items))
    if isinstance(node, MappingNode):
        return any(map(_has_broken, node.entries.values()))
    return isinstance(node, BrokenNode)
