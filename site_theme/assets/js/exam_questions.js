/* Shows one question of a form at a time, keeps each answer at once, and says how far it is. */
"use strict";

(() => {
  const { all } = Guidecoat;
  const CLEAN = 3;
  const LONGEST_NUMBER = 60;
  const LONGEST_TEXT = 10000;
  const PAUSE = 900;

  function held(exam, section) {
    const kept = section.dataset.kind === "written" ? exam.state.written : exam.state.responses;
    return kept[section.dataset.number] || null;
  }

  function tell(section, state, text) {
    const box = section.querySelector(".feedback");
    box.textContent = "";
    if (!text) { box.removeAttribute("data-state"); return; }
    box.setAttribute("data-state", state);
    box.appendChild(Guidecoat.element("p", "verdict", text));
  }

  function keep(exam, section, answer) {
    const kept = section.dataset.kind === "written" ? exam.state.written : exam.state.responses;
    if (answer) { kept[section.dataset.number] = answer; } else { delete kept[section.dataset.number]; }
    exam.keep();
    draw(exam, section);
  }

  function draw(exam, section) {
    const answer = held(exam, section);
    const number = section.dataset.number;
    const open = Guidecoat.stillOpen(section, answer);
    section.querySelector(".clear-answer").hidden = !answer;
    all(section, ".keep-order").forEach((button) => { button.hidden = Boolean(answer); });
    all(document, '.patch[data-objective="' + number + '"]').forEach((patch) => {
      patch.setAttribute("data-level", answer ? open ? 1 : CLEAN : 0);
    });
    const button = document.querySelector('.to-question[data-number="' + number + '"]');
    button.classList.toggle("is-answered", Boolean(answer));
    button.querySelector(".to-state").textContent = answer ? open || "answered" : "not answered";
    const count = exam.questions.filter((one) => held(exam, one)).length;
    all(document, ".how-far").forEach((place) => {
      place.textContent = count + " of " + exam.questions.length + " answered";
    });
  }

  function tellNumber(exam, section) {
    tell(section, "unread", Guidecoat.numberProblem(held(exam, section)));
  }

  function start(exam, section) {
    const order = section.dataset.kind === "order";
    function take() { keep(exam, section, Guidecoat.takeAnswer(section)); }
    all(section, ".number").forEach((input) => { input.maxLength = LONGEST_NUMBER; });
    all(section, "textarea").forEach((input) => { input.maxLength = LONGEST_TEXT; });
    section.addEventListener("input", () => { if (!order) { take(); } });
    section.addEventListener("moved", take);
    /* said in a pause, for what moves under a finger takes its press away */
    let pause = 0;
    all(section, ".number").forEach((input) => {
      input.addEventListener("input", () => {
        clearTimeout(pause);
        pause = setTimeout(() => { tellNumber(exam, section); }, PAUSE);
      });
    });
    section.querySelector("form").addEventListener("submit", (event) => { event.preventDefault(); });
    Guidecoat.startReordering(section, (state, text) => { tell(section, state, text); });
    all(section, ".keep-order").forEach((button) => {
      button.addEventListener("click", () => {
        take();
        tell(section, "moved", "Your order has been saved.");
        section.querySelector(".question-name").focus();
      });
    });
    section.querySelector(".clear-answer").addEventListener("click", () => {
      Guidecoat.putBack(section, null);
      keep(exam, section, null);
      tell(section, "unread", "Your answer has been cleared.");
      section.querySelector(".question-name").focus();
    });
  }

  /* Put the kept answers into every question. */
  Guidecoat.layAnswers = (exam) => {
    exam.questions.forEach((section) => {
      Guidecoat.putBack(section, held(exam, section));
      tell(section, "", "");
      draw(exam, section);
    });
  };

  /* What is still open, as [section, words]. */
  Guidecoat.openQuestions = (exam) => exam.questions
    .map((section) => /** @type {[any, string]} */ ([section, Guidecoat.stillOpen(section, held(exam, section))]))
    .filter((entry) => entry[1]);

  Guidecoat.showQuestion = (exam, place) => {
    const last = exam.questions.length - 1;
    const at = Math.min(Math.max(place, 0), last);
    exam.state.at = at;
    exam.keep();
    exam.questions.forEach((section, number) => { section.hidden = number !== at; });
    document.querySelector(".form-before").hidden = at === 0;
    document.querySelector(".form-next").textContent = at === last ? "Review and hand in" : "Next question";
    all(document, ".to-question").forEach((button, number) => {
      if (number === at) { button.setAttribute("aria-current", "step"); }
      else { button.removeAttribute("aria-current"); }
    });
    if (exam.questions[at].dataset.kind === "numeric") { tellNumber(exam, exam.questions[at]); }
    exam.show("ask", exam.questions[at].querySelector(".question-name"));
  };

  Guidecoat.startExamQuestions = (exam) => {
    exam.questions.forEach((section) => { start(exam, section); });
    document.querySelector(".form-before").addEventListener("click", () => {
      Guidecoat.showQuestion(exam, exam.state.at - 1);
    });
    document.querySelector(".form-next").addEventListener("click", () => {
      if (exam.state.at < exam.questions.length - 1) { Guidecoat.showQuestion(exam, exam.state.at + 1); }
      else { exam.review(); }
    });
    all(document, ".to-question").forEach((button, number) => {
      button.addEventListener("click", () => { Guidecoat.showQuestion(exam, number); });
    });
  };
})();
