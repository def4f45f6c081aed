"""Statistics of questions over several issues."""

from generator.reports.combined.analysis import (
    FORMS_DIFFER,
    PooledAnalysis,
    PooledItem,
    analyse_pool,
)
from generator.reports.combined.analysis_json import pooled_as_plain
from generator.reports.combined.answers import Pool, pooled

__all__ = [
    "FORMS_DIFFER",
    "Pool",
    "PooledAnalysis",
    "PooledItem",
    "analyse_pool",
    "pooled",
    "pooled_as_plain",
]
