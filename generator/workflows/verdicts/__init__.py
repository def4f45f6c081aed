"""Verdicts of earlier checks, kept so that only what changed is judged; loads no bank."""

from generator.workflows.verdicts.verdict_cache import Found, VerdictCache

__all__ = ["Found", "VerdictCache"]
