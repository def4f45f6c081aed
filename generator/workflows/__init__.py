"""What an instructor does, step by step: issue, print, take in, mark, correct, report, certify.

Imports every package but the command line. A workflow takes the time, the day and the folder as
arguments and returns its result, or `Refused`. What a person must say yes to comes back as a plan
or as `NeedsConfirmation`. So a terminal and a page can both show what was done, and ask.
"""

from generator.workflows.refusals import NeedsConfirmation, Refused, refused_with

__all__ = ["NeedsConfirmation", "Refused", "refused_with"]
