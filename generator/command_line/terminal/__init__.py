"""What commands have in common at the terminal: where they are, what day it is, asking, showing.

Nothing here loads the bank or the records before a command asks for them.
"""

from generator.command_line.terminal.asking import ask_first, confirmed
from generator.command_line.terminal.cache_folder import cache_folder, python_and_packages
from generator.command_line.terminal.clock import Day, as_of, now, today
from generator.command_line.terminal.needed_part import sound_part_here
from generator.command_line.terminal.open_records import issued_records, records_here
from generator.command_line.terminal.progress_bar import progress
from generator.command_line.terminal.project_here import project_here
from generator.command_line.terminal.renamed_options import needs_option, renamed
from generator.command_line.terminal.seeds import Seed
from generator.command_line.terminal.showing import accepted, say_finished, shown_path

__all__ = [
    "Day",
    "Seed",
    "accepted",
    "as_of",
    "ask_first",
    "cache_folder",
    "confirmed",
    "issued_records",
    "needs_option",
    "now",
    "progress",
    "project_here",
    "python_and_packages",
    "records_here",
    "renamed",
    "say_finished",
    "shown_path",
    "sound_part_here",
    "today",
]
