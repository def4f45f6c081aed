/* Handing in: a look at what is open, the file for the instructor, and the device made ready for
   the next person. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var element = Guidecoat.element;

  function part(name) { return document.querySelector(name); }

  function openLine(exam, entry) {
    var section = entry[0], number = section.dataset.number;
    var line = element("li");
    var button = line.appendChild(element("button", "plain", "Question " + number));
    button.type = "button";
    button.addEventListener("click", function () { Guidecoat.showQuestion(exam, exam.questions.indexOf(section)); });
    line.appendChild(element("span", "", entry[1] + (section.dataset.mustPass ? "; this one must be right" : "")));
    return line;
  }

  /* Show what is still open before anything is handed in. */
  Guidecoat.lookOver = function (exam) {
    var open = Guidecoat.openQuestions(exam);
    var list = part(".open-questions");
    list.textContent = "";
    open.forEach(function (entry) { list.appendChild(openLine(exam, entry)); });
    part(".open-words").textContent = open.length
      ? Guidecoat.counted(open.length, "question is", "questions are") + " still open. You can go back to each one, or hand in as it is."
      : "Every question is answered.";
    part(".who-words").textContent = "These answers are handed in for " + exam.state.person + ".";
    exam.show("review", part(".form-review h2"));
  };

  function showDone(exam) {
    var form = exam.form, state = exam.state;
    var over = Guidecoat.minutesOver(state.began, state.ended, form.minutes);
    var used = Guidecoat.minutesUsed(state.began, state.ended);
    part(".done-time").textContent = "Time: " + Guidecoat.counted(used, "minute", "minutes") +
      (over ? ", of which " + over + " over. The file says so." : ".");
    part(".answers-text").value = Guidecoat.answersText(form, state);
    part(".next-sure").hidden = true;
    part(".next-person").hidden = false;
    exam.show("done", part(".form-done h2"));
  }

  function handIn(exam) {
    exam.state.ended = Date.now();
    exam.state.handed = true;
    exam.keep();
    showDone(exam);
    saveFile(exam);
  }

  function saveFile(exam) {
    Guidecoat.saveText(Guidecoat.answersName(exam.form), Guidecoat.answersText(exam.form, exam.state));
  }

  function takeBack(exam) {
    exam.state.handed = false;
    exam.state.ended = 0;
    Guidecoat.showQuestion(exam, exam.state.at);
  }

  function startNextPerson(exam) {
    var ask = part(".next-person"), sure = part(".next-sure");
    ask.addEventListener("click", function () {
      ask.hidden = true;
      sure.hidden = false;
      sure.querySelector("p").focus();
    });
    sure.querySelector(".next-no").addEventListener("click", function () {
      sure.hidden = true;
      ask.hidden = false;
      ask.focus();
    });
    sure.querySelector(".next-yes").addEventListener("click", function () { exam.clear(); });
  }

  Guidecoat.showDone = showDone;

  Guidecoat.startHandIn = function (exam) {
    Guidecoat.all(document, ".look-over").forEach(function (button) {
      button.addEventListener("click", function () { Guidecoat.lookOver(exam); });
    });
    part(".hand-in").addEventListener("click", function () { handIn(exam); });
    part(".back-to-questions").addEventListener("click", function () { Guidecoat.showQuestion(exam, exam.state.at); });
    part(".save-again").addEventListener("click", function () { saveFile(exam); });
    part(".take-back").addEventListener("click", function () { takeBack(exam); });
    startNextPerson(exam);
  };
})();
