"""Sentences that every report carries word for word: what marks do not say about a person."""

NOT_SAID_PERSON = (
    "This page says what was answered on one paper. It does not say that a person is fit to work "
    "or allowed to spray: that takes a fit test, a medical check, and somebody who has watched "
    "the work."
)
NOT_SAID_CLASS = (
    "This page says what was answered on these papers. It does not say that anybody is fit to work "
    "or allowed to spray."
)
NOT_SAID_PROFILE = (
    "This page says where to look and what to teach first. It does not say that a person is "
    "qualified, competent, certified or fit for any work.",
    "It replaces no training, no fit test, no medical check and no record that the law asks for.",
    "Watch every task the first time, also those that were all right on paper: answers do not show "
    "skill with a gun or a block.",
)
