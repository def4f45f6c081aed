/* Reads what stands in a question as an answer, in the form that marking takes. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var all = Guidecoat.all;

  function chosen(section) {
    return { form: "chosen", letters: all(section, ".option input:checked").map(function (input) { return input.value; }) };
  }

  Guidecoat.readAnswer = {
    choice: chosen,
    multiple_response: chosen,

    order: function (section) {
      return { form: "ordered", letters: all(section, ".steps-to-order > li").map(function (step) { return step.dataset.letter; }) };
    },

    match: function (section) {
      var answers = {};
      all(section, ".pair").forEach(function (pair) { answers[pair.dataset.number] = pair.querySelector("select").value; });
      return { form: "matched", answers: answers };
    },

    numeric: function (section) { return { form: "typed", text: section.querySelector(".number").value }; }
  };
})();
