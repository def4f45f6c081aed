/* Shows one question of a form at a time, keeps each answer at once, and says how far it is. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var all = Guidecoat.all;
  var CLEAN = 3;
  var LONGEST_NUMBER = 60, LONGEST_TEXT = 10000, PAUSE = 900;

  function held(exam, section) {
    var kept = section.dataset.kind === "written" ? exam.state.written : exam.state.responses;
    return kept[section.dataset.number] || null;
  }

  function tell(section, state, text) {
    var box = section.querySelector(".feedback");
    box.textContent = "";
    if (!text) { box.removeAttribute("data-state"); return; }
    box.setAttribute("data-state", state);
    box.appendChild(Guidecoat.element("p", "verdict", text));
  }

  function keep(exam, section, answer) {
    var kept = section.dataset.kind === "written" ? exam.state.written : exam.state.responses;
    if (answer) { kept[section.dataset.number] = answer; } else { delete kept[section.dataset.number]; }
    exam.keep();
    draw(exam, section);
  }

  function draw(exam, section) {
    var answer = held(exam, section);
    var number = section.dataset.number;
    var open = Guidecoat.stillOpen(section, answer);
    section.querySelector(".clear-answer").hidden = !answer;
    all(section, ".keep-order").forEach(function (button) { button.hidden = Boolean(answer); });
    all(document, '.patch[data-objective="' + number + '"]').forEach(function (patch) {
      patch.setAttribute("data-level", answer ? open ? 1 : CLEAN : 0);
    });
    var button = document.querySelector('.to-question[data-number="' + number + '"]');
    button.classList.toggle("is-answered", Boolean(answer));
    button.querySelector(".to-state").textContent = answer ? open || "answered" : "not answered";
    var count = exam.questions.filter(function (one) { return held(exam, one); }).length;
    all(document, ".how-far").forEach(function (place) {
      place.textContent = count + " of " + exam.questions.length + " answered";
    });
  }

  function tellNumber(exam, section) {
    tell(section, "unread", Guidecoat.numberProblem(held(exam, section)));
  }

  function start(exam, section) {
    var order = section.dataset.kind === "order";
    function take() { keep(exam, section, Guidecoat.takeAnswer(section)); }
    all(section, ".number").forEach(function (input) { input.maxLength = LONGEST_NUMBER; });
    all(section, "textarea").forEach(function (input) { input.maxLength = LONGEST_TEXT; });
    section.addEventListener("input", function () { if (!order) { take(); } });
    section.addEventListener("moved", take);
    /* said in a pause, for what moves under a finger takes its press away */
    var pause = 0;
    all(section, ".number").forEach(function (input) {
      input.addEventListener("input", function () {
        clearTimeout(pause);
        pause = setTimeout(function () { tellNumber(exam, section); }, PAUSE);
      });
    });
    section.querySelector("form").addEventListener("submit", function (event) { event.preventDefault(); });
    Guidecoat.startReordering(section, function (state, text) { tell(section, state, text); });
    all(section, ".keep-order").forEach(function (button) {
      button.addEventListener("click", function () {
        take();
        tell(section, "moved", "Your order is kept.");
        section.querySelector(".question-name").focus();
      });
    });
    section.querySelector(".clear-answer").addEventListener("click", function () {
      Guidecoat.putBack(section, null);
      keep(exam, section, null);
      tell(section, "unread", "Your answer is taken out.");
      section.querySelector(".question-name").focus();
    });
  }

  /* Put the kept answers into every question. */
  Guidecoat.layAnswers = function (exam) {
    exam.questions.forEach(function (section) {
      Guidecoat.putBack(section, held(exam, section));
      tell(section, "", "");
      draw(exam, section);
    });
  };

  /* What is still open, as [section, words]. */
  Guidecoat.openQuestions = function (exam) {
    return exam.questions.map(function (section) {
      return [section, Guidecoat.stillOpen(section, held(exam, section))];
    }).filter(function (entry) { return entry[1]; });
  };

  Guidecoat.showQuestion = function (exam, place) {
    var last = exam.questions.length - 1;
    var at = Math.min(Math.max(place, 0), last);
    exam.state.at = at;
    exam.keep();
    exam.questions.forEach(function (section, number) { section.hidden = number !== at; });
    document.querySelector(".form-before").hidden = at === 0;
    document.querySelector(".form-next").textContent = at === last ? "Look over and hand in" : "Next question";
    all(document, ".to-question").forEach(function (button, number) {
      if (number === at) { button.setAttribute("aria-current", "step"); } else { button.removeAttribute("aria-current"); }
    });
    if (exam.questions[at].dataset.kind === "numeric") { tellNumber(exam, exam.questions[at]); }
    exam.show("ask", exam.questions[at].querySelector(".question-name"));
  };

  Guidecoat.startExamQuestions = function (exam) {
    exam.questions.forEach(function (section) { start(exam, section); });
    document.querySelector(".form-before").addEventListener("click", function () {
      Guidecoat.showQuestion(exam, exam.state.at - 1);
    });
    document.querySelector(".form-next").addEventListener("click", function () {
      if (exam.state.at < exam.questions.length - 1) { Guidecoat.showQuestion(exam, exam.state.at + 1); }
      else { Guidecoat.lookOver(exam); }
    });
    all(document, ".to-question").forEach(function (button, number) {
      button.addEventListener("click", function () { Guidecoat.showQuestion(exam, number); });
    });
  };
})();
