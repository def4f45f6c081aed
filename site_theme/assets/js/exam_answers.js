/* Answers to the questions of a form: taking them, putting them back, and what is still open.
   No answer is judged here; the page does not know what is right. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var all = Guidecoat.all;

  /* Texts are pasted from anywhere: what nobody can type becomes a space. With the flag u the
     second part finds halves of characters only. */
  Guidecoat.typable = function (text) {
    return text.replace(/[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f]|[\ud800-\udfff]/gu, " ");
  };

  /* A code on one line, without signs that cannot be seen. */
  Guidecoat.codeOf = function (text) {
    return Guidecoat.typable(text).replace(/[\p{Cf}\p{Zl}\p{Zp}]/gu, " ").replace(/\s+/g, " ").trim();
  };

  function kindOf(section) { return section.dataset.kind; }

  function isEmpty(answer) {
    if (answer.form === "typed") { return !answer.text.trim(); }
    return answer.form === "matched" ? !Object.keys(answer.answers).length : !answer.letters.length;
  }

  function withoutGaps(answer) {
    if (answer.form === "matched") {
      Object.keys(answer.answers).forEach(function (number) {
        if (!answer.answers[number]) { delete answer.answers[number]; }
      });
    }
    return answer;
  }

  /* Give what stands in a question: an answer, the text of a written one, or null. */
  Guidecoat.takeAnswer = function (section) {
    if (kindOf(section) === "written") {
      var text = Guidecoat.typable(section.querySelector("textarea").value);
      return text.trim() ? text : null;
    }
    var answer = withoutGaps(Guidecoat.readAnswer[kindOf(section)](section));
    if (answer.form === "typed") { answer.text = Guidecoat.typable(answer.text); }
    return isEmpty(answer) ? null : answer;
  };

  var put = {
    choice: function (section, answer) {
      var letters = answer ? answer.letters : [];
      all(section, ".option input").forEach(function (input) { input.checked = letters.indexOf(input.value) >= 0; });
    },

    order: function (section, answer) {
      var list = section.querySelector(".steps-to-order");
      var steps = all(list, "li");
      var letters = answer ? answer.letters : steps.map(function (step) { return step.dataset.letter; }).sort();
      letters.forEach(function (letter) {
        var step = steps.find(function (one) { return one.dataset.letter === letter; });
        if (step) { list.appendChild(step); }
      });
    },

    match: function (section, answer) {
      all(section, ".pair").forEach(function (pair) {
        pair.querySelector("select").value = answer && answer.answers[pair.dataset.number] || "";
      });
    },

    numeric: function (section, answer) { section.querySelector(".number").value = answer ? answer.text : ""; },

    written: function (section, answer) { section.querySelector("textarea").value = answer || ""; }
  };
  put.multiple_response = put.choice;

  /* Show a kept answer, or the untouched question. */
  Guidecoat.putBack = function (section, answer) { put[kindOf(section)](section, answer); };

  /* Say what is still open in a question, or nothing. */
  Guidecoat.stillOpen = function (section, answer) {
    if (!answer) { return "not answered"; }
    if (answer.form === "matched") {
      var open = all(section, ".pair").length - Object.keys(answer.answers).length;
      return open ? Guidecoat.counted(open, "pair is", "pairs are") + " still open" : "";
    }
    return answer.form === "typed" && Guidecoat.readNumber(answer.text).problem ? "the number cannot be read" : "";
  };

  /* Say why a typed number cannot be read, or nothing. */
  Guidecoat.numberProblem = function (answer) {
    return answer && answer.form === "typed" && Guidecoat.readNumber(answer.text).problem || "";
  };
})();
