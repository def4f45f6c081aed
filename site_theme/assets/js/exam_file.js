/* The file that is handed in: what was answered, to which form, by whom, and in what time. */
"use strict";

(() => {
  Guidecoat.answersName = (form) => "answers-" + form.id + ".json";

  /* Give the text of the file; `form` is {id, label, edition, minutes}. */
  Guidecoat.answersText = (form, state) => JSON.stringify({
    kind: "guidecoat answers",
    version: 1,
    form_id: form.id,
    label: form.label,
    edition: form.edition,
    person: state.person,
    responses: state.responses,
    written: state.written,
    minutes_used: Guidecoat.minutesUsed(state.began, state.ended),
    minutes_over: Guidecoat.minutesOver(state.began, state.ended, form.minutes)
  }, null, 1) + "\n";
})();
