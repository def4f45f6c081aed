"""Everything that authors wrote in the records, piece by piece with its place."""

from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.nodes import Node, ScalarNode, scalars


def written_nodes(bank: Bank) -> Iterator[Node]:
    """Return the items, records, sources, terms, hazards, plans and the outline as written."""
    groups = (bank.items, bank.procedures, bank.faults, bank.tables, bank.sources, bank.glossary)
    others = (bank.hazards, bank.places, bank.blueprints, bank.data_sheets, bank.beliefs)
    for group in (*groups, *others):
        for entry in group.values():
            yield entry.node
    if bank.outline_node:
        yield bank.outline_node


def written_texts(bank: Bank) -> Iterator[ScalarNode]:
    """Return each text of the items, records, sources, terms, hazards, plans and the outline."""
    for node in written_nodes(bank):
        yield from scalars(node)
