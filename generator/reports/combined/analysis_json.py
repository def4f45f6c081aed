"""A pooled analysis as plain data for programs: nothing is rounded."""

from typing import Any

from generator.marking import analysis_as_plain
from generator.marking.analysis import item_as_plain
from generator.reports.combined.analysis import PooledAnalysis

Plain = dict[str, Any]


def pooled_as_plain(analysis: PooledAnalysis) -> Plain:
    """Return the JSON form: every name of the analysis of a response table, and besides

    issues    numbers of the issues
    waiting   papers that are not in the figures, as a person must still look at an answer
    one_form  whether everybody met the same items for the same marks
    common    names of the items that everybody met; the figures of the whole test are about these
    and for each item its `version` and the `people` who answered it. Where forms differ,
    `item_total` and `item_rest` are against shares of the person's own form, `rest_mean` of an
    option is such a share, and an option is named by its text where letters differ.
    """
    return {
        **analysis_as_plain(analysis.whole),
        "issues": list(analysis.issues),
        "waiting": analysis.waiting,
        "one_form": analysis.one_form,
        "common": list(analysis.common),
        "items": [
            {**item_as_plain(item.analysis), "version": item.version, "people": item.people}
            for item in analysis.items
        ],
    }
