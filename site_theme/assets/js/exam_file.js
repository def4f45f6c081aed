/* The file that is handed in: what was answered, to which form, by whom, and in what time. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  Guidecoat.answersName = function (form) { return "answers-" + form.id + ".json"; };

  /* Give the text of the file; `form` is {id, label, edition, minutes}. */
  Guidecoat.answersText = function (form, state) {
    return JSON.stringify({
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
  };

  Guidecoat.saveText = function (name, text) {
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = name;
    link.click();
    setTimeout(function () { URL.revokeObjectURL(link.href); }, 60000);
  };
})();
