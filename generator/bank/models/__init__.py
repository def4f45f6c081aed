"""The typed records of the question bank, one class per thing an author writes.

Files: fields (how text becomes a value), items, knowledge, documents, frame.
"""

from generator.bank.models.documents import Belief, DataSheet
from generator.bank.models.fields import Kind, Record, SourceTag, decimal
from generator.bank.models.frame import (
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
from generator.bank.models.items import (
    ITEM_KINDS,
    ChoiceItem,
    Critical,
    Item,
    MatchItem,
    MultipleResponseItem,
    NumericItem,
    OrderItem,
    OrderPair,
    OrderStep,
    WrittenItem,
)
from generator.bank.models.knowledge import Fault, Pair, Procedure, Step, Table

__all__ = [
    "BankSheet",
    "Belief",
    "Blueprint",
    "Cell",
    "ChoiceItem",
    "Critical",
    "DataSheet",
    "Fault",
    "Giveaways",
    "Hazard",
    "ITEM_KINDS",
    "Item",
    "Kind",
    "MatchItem",
    "Module",
    "MultipleResponseItem",
    "NumericItem",
    "Objective",
    "OrderItem",
    "OrderPair",
    "OrderStep",
    "Outline",
    "Pair",
    "Procedure",
    "Record",
    "RulePlace",
    "Source",
    "SourceTag",
    "Step",
    "Table",
    "Term",
    "WrittenItem",
    "decimal",
]
