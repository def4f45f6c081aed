"""The list of questions that give one another away; the questions themselves are looked at above.

What the list lacks is found by `questions.giveaways`, as it needs the questions of the records.
"""

from generator.bank.checks.rule import Rule

RULES = (
    Rule(
        "giveaways-out-of-date",
        "warning",
        "A question that tells the answer of another one never shares a paper with it. The list of "
        "such pairs is written by a command, so that a change of it can be read. Looked at by "
        "'guidecoat check'.",
        "giveaways.yml without two questions of which one tells the other's answer",
        "guidecoat check --write-giveaways",
    ),
    Rule(
        "giveaway-cleared-in-vain",
        "warning",
        "Pairs that somebody judged harmless are kept by hand. One that is found no longer may "
        "hide the next one under the same names.",
        "cleared:\n  - {question: filler/mix/tube, gives_away: filler/mix/tubes, reason: ...}",
        "cleared: []",
    ),
)
