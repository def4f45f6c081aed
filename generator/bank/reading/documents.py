"""Puts the lines of a whole document where an item names one."""

from collections.abc import Iterator

from generator.bank.nodes import ListNode, MappingNode, Node, ScalarNode


def with_document(item: MappingNode, name: ScalarNode, document: Node) -> MappingNode:
    """Return an item with the lines of a document for the name of it.

    document  the node of a DataSheet that was read and found sound
    """
    if not isinstance(document, MappingNode):
        return item
    lines = ListNode(tuple(_lines(document)), name.place)
    title = document.entries["title"]
    entries: dict[str, Node] = {"title": title, "rows": lines, "document": name}
    sheet = MappingNode(entries, dict.fromkeys(entries, name.place), name.place)
    return MappingNode({**item.entries, "sheet": sheet}, item.keys, item.place)


def _lines(document: MappingNode) -> Iterator[Node]:
    sections = document.entries["sections"]
    for section in sections.items if isinstance(sections, ListNode) else ():
        if isinstance(section, MappingNode):
            title, rows = section.entries["title"], section.entries["rows"]
            yield ListNode((title,), title.place)
            yield from rows.items if isinstance(rows, ListNode) else ()
