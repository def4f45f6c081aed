"""The bank of a project as workflows take it: held against every rule, or as far as it reads."""

from generator.workflows.bank.loading import (
    read_and_check,
    readable_bank,
    sound,
    sound_bank,
    sound_part,
)

__all__ = ["read_and_check", "readable_bank", "sound", "sound_bank", "sound_part"]
