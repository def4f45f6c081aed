"""Reading the bank: text with places, nodes, typed records, and every problem at its place."""

from generator.bank.reading.loader import load_bank
from generator.bank.reading.yaml_source import read_yaml

__all__ = ["load_bank", "read_yaml"]
