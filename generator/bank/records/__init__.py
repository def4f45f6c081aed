"""The typed records of the question bank, one class per thing an author writes.

Files: fields (how text becomes a value), items, knowledge, frame.
"""

from generator.bank.records.fields import SourceTag, decimal
from generator.bank.records.frame import (
    BankSheet,
    Blueprint,
    Cell,
    Module,
    Objective,
    Outline,
    Source,
    Term,
)
from generator.bank.records.items import (
    ITEM_KINDS,
    AnyItem,
    ChoiceItem,
    Item,
    MatchItem,
    MultipleResponseItem,
    NumericItem,
    Option,
    OrderItem,
    OrderPair,
    Sheet,
    WrittenItem,
)
from generator.bank.records.knowledge import Fault, Pair, Procedure, Table

__all__ = [
    "ITEM_KINDS",
    "AnyItem",
    "BankSheet",
    "Blueprint",
    "Cell",
    "ChoiceItem",
    "Fault",
    "Item",
    "MatchItem",
    "Module",
    "MultipleResponseItem",
    "NumericItem",
    "Objective",
    "Option",
    "OrderItem",
    "OrderPair",
    "Outline",
    "Pair",
    "Procedure",
    "Sheet",
    "Source",
    "SourceTag",
    "Table",
    "Term",
    "WrittenItem",
    "decimal",
]
