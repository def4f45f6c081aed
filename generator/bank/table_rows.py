"""The rows of a table record, from the record itself or from a data file of the relations."""

from generator.bank.bank import Entry
from generator.bank.models import Table
from generator.refinishing import published_table


def table_rows(entry: Entry[Table]) -> tuple[tuple[str, ...], ...]:
    """Return a table's cells as texts; raises OSError or ValueError for a missing data file."""
    record = entry.record
    return published_table(record.rows_from).rows if record.rows_from else record.rows
