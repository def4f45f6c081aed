/* Handing in: a look at what is open, the file for the instructor, and the device made ready for
   the next person. */
"use strict";

(() => {
  const { element } = Guidecoat;

  function part(name) { return document.querySelector(name); }

  function openLine(exam, entry) {
    const [section, open] = entry;
    const line = element("li");
    line.append(
      Guidecoat.button("plain", "Question " + section.dataset.number, () => {
        Guidecoat.showQuestion(exam, exam.questions.indexOf(section));
      }),
      element("span", "", open + (section.dataset.mustPass ? "; this one must be right" : "")));
    return line;
  }

  /* Show what is still open before anything is handed in. */
  Guidecoat.review = (exam) => {
    const open = Guidecoat.openQuestions(exam);
    const list = part(".open-questions");
    list.textContent = "";
    open.forEach((entry) => { list.appendChild(openLine(exam, entry)); });
    part(".open-words").textContent = open.length
      ? Guidecoat.counted(open.length, "question is", "questions are") + " still open. " +
        "You can go back to each one, or hand in as it is."
      : "Every question is answered.";
    part(".who-words").textContent = "These answers are handed in for " + exam.state.person + ".";
    exam.show("review", part(".form-review h2"));
  };

  function showDone(exam) {
    const form = exam.form;
    const state = exam.state;
    const over = Guidecoat.minutesOver(state.began, state.ended, form.minutes);
    const used = Guidecoat.minutesUsed(state.began, state.ended);
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
    const ask = part(".next-person");
    const sure = part(".next-sure");
    ask.addEventListener("click", () => {
      ask.hidden = true;
      sure.hidden = false;
      sure.querySelector("p").focus();
    });
    sure.querySelector(".next-no").addEventListener("click", () => {
      sure.hidden = true;
      ask.hidden = false;
      ask.focus();
    });
    sure.querySelector(".next-yes").addEventListener("click", () => { exam.clear(); });
  }

  Guidecoat.showDone = showDone;

  Guidecoat.startHandIn = (exam) => {
    Guidecoat.all(document, ".look-over").forEach((button) => {
      button.addEventListener("click", () => { exam.review(); });
    });
    part(".hand-in").addEventListener("click", () => { handIn(exam); });
    part(".back-to-questions").addEventListener("click", () => { Guidecoat.showQuestion(exam, exam.state.at); });
    part(".save-again").addEventListener("click", () => { saveFile(exam); });
    part(".take-back").addEventListener("click", () => { takeBack(exam); });
    startNextPerson(exam);
  };
})();
