"""Item and test statistics of a table of responses."""

from generator.marking.analysis.analysis_json import analysis_as_plain, item_as_plain
from generator.marking.analysis.decision import Decision
from generator.marking.analysis.flags import (
    FACILITY_FROM,
    FLAG_WORDS,
    INTERVAL_FROM,
    idle_options,
    trust_in,
)
from generator.marking.analysis.item_analysis import (
    ClassAnalysis,
    ItemAnalysis,
    analyse,
    item_analysis,
)
from generator.marking.analysis.moments import correlation
from generator.marking.analysis.response_table import (
    Key,
    ResponseTable,
    key_disagreements,
    read_key,
    read_responses,
)
from generator.marking.analysis.scores import Scores, Statistic, right_or_wrong_scores

__all__ = [
    "ClassAnalysis",
    "Decision",
    "FACILITY_FROM",
    "FLAG_WORDS",
    "INTERVAL_FROM",
    "ItemAnalysis",
    "Key",
    "ResponseTable",
    "Scores",
    "Statistic",
    "analyse",
    "analysis_as_plain",
    "correlation",
    "idle_options",
    "item_analysis",
    "item_as_plain",
    "key_disagreements",
    "read_key",
    "read_responses",
    "right_or_wrong_scores",
    "trust_in",
]
