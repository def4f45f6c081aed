/* Handing in: a look at what is open, the file for the instructor, and the device made ready for
   the next person. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var element = Guidecoat.element;

  function part(name) { return document.querySelector(name); }

  function openLine(sitting, entry) {
    var section = entry[0], number = section.dataset.number;
    var line = element("li");
    var button = line.appendChild(element("button", "plain", "Question " + number));
    button.type = "button";
    button.addEventListener("click", function () { Guidecoat.showQuestion(sitting, sitting.questions.indexOf(section)); });
    line.appendChild(element("span", "", entry[1] + (section.dataset.mustPass ? "; this one must be right" : "")));
    return line;
  }

  /* Show what is still open before anything is handed in. */
  Guidecoat.lookOver = function (sitting) {
    var open = Guidecoat.openQuestions(sitting);
    var list = part(".open-questions");
    list.textContent = "";
    open.forEach(function (entry) { list.appendChild(openLine(sitting, entry)); });
    part(".open-words").textContent = open.length
      ? Guidecoat.counted(open.length, "question is", "questions are") + " still open. You can go back to each one, or hand in as it is."
      : "Every question is answered.";
    part(".who-words").textContent = "These answers are handed in for " + sitting.state.person + ".";
    sitting.show("review", part(".form-review h2"));
  };

  function showDone(sitting) {
    var form = sitting.form, state = sitting.state;
    var over = Guidecoat.minutesOver(state.began, state.ended, form.minutes);
    var used = Guidecoat.minutesUsed(state.began, state.ended);
    part(".done-time").textContent = "Time: " + Guidecoat.counted(used, "minute", "minutes") +
      (over ? ", of which " + over + " over. The file says so." : ".");
    part(".answers-text").value = Guidecoat.answersText(form, state);
    part(".next-sure").hidden = true;
    part(".next-person").hidden = false;
    sitting.show("done", part(".form-done h2"));
  }

  function handIn(sitting) {
    sitting.state.ended = Date.now();
    sitting.state.handed = true;
    sitting.keep();
    showDone(sitting);
    saveFile(sitting);
  }

  function saveFile(sitting) {
    Guidecoat.saveText(Guidecoat.answersName(sitting.form), Guidecoat.answersText(sitting.form, sitting.state));
  }

  function takeBack(sitting) {
    sitting.state.handed = false;
    sitting.state.ended = 0;
    Guidecoat.showQuestion(sitting, sitting.state.at);
  }

  function startNextPerson(sitting) {
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
    sure.querySelector(".next-yes").addEventListener("click", function () { sitting.clear(); });
  }

  Guidecoat.showDone = showDone;

  Guidecoat.startHandIn = function (sitting) {
    Guidecoat.all(document, ".look-over").forEach(function (button) {
      button.addEventListener("click", function () { Guidecoat.lookOver(sitting); });
    });
    part(".hand-in").addEventListener("click", function () { handIn(sitting); });
    part(".back-to-questions").addEventListener("click", function () { Guidecoat.showQuestion(sitting, sitting.state.at); });
    part(".save-again").addEventListener("click", function () { saveFile(sitting); });
    part(".take-back").addEventListener("click", function () { takeBack(sitting); });
    startNextPerson(sitting);
  };
})();
