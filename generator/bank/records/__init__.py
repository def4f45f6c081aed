"""The typed records of the question bank, one class per thing an author writes.

Files: fields (how text becomes a value), items, knowledge, frame.
"""

from generator.bank.records.fields import SourceTag, decimal
from generator.bank.records.frame import (
    BankSheet,
    Blueprint,
    Cell,
    Giveaways,
    Hazard,
    Module,
    Objective,
    Outline,
    RulePlace,
    Source,
    Term,
)
from generator.bank.records.items import (
    ITEM_KINDS,
    AnyItem,
    ChoiceItem,
    Critical,
    Item,
    MatchItem,
    MultipleResponseItem,
    NumericItem,
    Option,
    OrderItem,
    OrderPair,
    OrderStep,
    Sheet,
    WrittenItem,
)
from generator.bank.records.knowledge import Fault, Pair, Procedure, Step, Table

__all__ = [
    "ITEM_KINDS",
    "AnyItem",
    "BankSheet",
    "Blueprint",
    "Cell",
    "ChoiceItem",
    "Critical",
    "Fault",
    "Giveaways",
    "Hazard",
    "Item",
    "MatchItem",
    "Module",
    "MultipleResponseItem",
    "NumericItem",
    "Objective",
    "Option",
    "OrderItem",
    "OrderPair",
    "OrderStep",
    "Outline",
    "Pair",
    "Procedure",
    "RulePlace",
    "Sheet",
    "Source",
    "SourceTag",
    "Step",
    "Table",
    "Term",
    "WrittenItem",
    "decimal",
]
