/* Starts an exam on a screen: its first page, its time, and what was kept of an earlier go. */
"use strict";

(() => {
  const TICK = 5000;
  const STEPS = { start: ".form-start", ask: ".form-ask", review: ".form-review", done: ".form-done" };
  const NOTES = {
    kept: "",
    refused: "This device does not keep your answers. Do not close or reload this page before you have handed in.",
    elsewhere: "This form is open in another window too. Go on in one of them only."
  };
  const main = document.querySelector("main");
  const title = document.querySelector("h1");
  const codeInput = document.querySelector(".code-input");
  const troubles = document.querySelector(".store-note");
  const said = document.querySelector(".form-said");

  function fresh() {
    return {
      turn: 0, began: 0, ended: 0, at: 0, handed: false, hidesTime: false,
      person: main.dataset.person, responses: {}, written: {}
    };
  }

  function isObject(found) { return found !== null && typeof found === "object" && !Array.isArray(found); }

  function isWhole(found) {
    return isObject(found) && isObject(found.responses) && isObject(found.written) &&
      [found.began, found.ended, found.at].every(Number.isFinite) && typeof found.person === "string";
  }

  function say(place, text) { if (place.textContent !== text) { place.textContent = text; } }

  const exam = {
    form: {
      id: main.dataset.formId, label: main.dataset.label, edition: main.dataset.edition,
      minutes: Number(main.dataset.minutes)
    },
    questions: Guidecoat.all(document, ".question"),
    state: fresh(),

    keep() {
      exam.state.turn += 1;
      store.save(exam.state);
    },

    /* Show one step of the way and go to a place in it. */
    show(step, place) {
      Object.keys(STEPS).forEach((name) => { document.querySelector(STEPS[name]).hidden = name !== step; });
      document.body.dataset.step = step;
      tick();
      if (!place) { return; }
      place.focus({ preventScroll: true });
      window.scrollTo(0, 0);
    },

    review() { Guidecoat.review(exam); },

    clear() {
      store.clear().then((isGone) => {
        exam.state = fresh();
        Guidecoat.layAnswers(exam);
        showStart(title);
        say(said, isGone ? "The last person's answers are gone. The next person can start."
          : "The last answers could not be cleared from this device. Tell your instructor.");
      });
    }
  };

  const store = Guidecoat.examStore(exam.form.id + " " + main.dataset.person, (what) => {
    say(troubles, NOTES[what]);
  });

  function tick() {
    const state = exam.state;
    const running = ["ask", "review"].includes(document.body.dataset.step);
    document.querySelector(".way").hidden = !running;
    if (!running) { return; }
    const left = document.querySelector(".time-left");
    left.textContent = Guidecoat.timeWords(state.began, Date.now(), exam.form.minutes);
    left.hidden = state.hidesTime;
    document.querySelector(".time-hide").textContent = state.hidesTime ? "Show the time" : "Hide the time";
    const up = Guidecoat.timeIsUp(state.began, Date.now(), exam.form.minutes);
    say(document.querySelector(".time-up"), up
      ? "The time is up. You can still answer and hand in; the file says how many minutes it took over." : "");
  }

  function showStart(place) {
    if (codeInput) { codeInput.value = exam.state.person; }
    document.querySelector(".form-go").textContent = exam.state.began ? "Go on" : "Start";
    exam.show("start", place);
  }

  function go() {
    const wrong = document.querySelector(".code-wrong");
    if (codeInput) {
      const code = Guidecoat.codeOf(codeInput.value);
      codeInput.setAttribute("aria-invalid", code ? "false" : "true");
      wrong.textContent = code ? "" : "Type the code that your instructor gave you.";
      if (!code) { codeInput.focus(); return; }
      exam.state.person = code;
    }
    exam.state.began = exam.state.began || Date.now();
    say(said, "");
    Guidecoat.showQuestion(exam, exam.state.at);
  }

  function take(kept) {
    if (!isWhole(kept)) { return false; }
    exam.state = Object.assign(fresh(), kept);
    return exam.state.began > 0;
  }

  function start() {
    document.querySelector(".form-code").addEventListener("submit", (event) => { event.preventDefault(); go(); });
    document.querySelector(".form-first").addEventListener("click", () => { showStart(title); });
    document.querySelector(".time-hide").addEventListener("click", () => {
      exam.state.hidesTime = !exam.state.hidesTime;
      exam.keep();
      tick();
    });
    Guidecoat.startExamQuestions(exam);
    Guidecoat.startHandIn(exam);
    setInterval(tick, TICK);
    store.load().then((kept) => {
      const goesOn = take(kept);
      Guidecoat.layAnswers(exam);
      if (exam.state.handed) { Guidecoat.showDone(exam); }
      else if (goesOn) {
        Guidecoat.showQuestion(exam, exam.state.at);
        say(said, "Your answers are still here. Go on where you were.");
      } else { showStart(); }
    });
  }

  start();
})();
