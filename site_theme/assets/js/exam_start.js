/* Starts an exam on a screen: its first page, its time, and what was kept of an earlier go. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var TICK = 5000;
  var STEPS = { start: ".form-start", ask: ".form-ask", review: ".form-review", done: ".form-done" };
  var NOTES = {
    kept: "",
    refused: "This device does not keep your answers. Do not close or reload this page before you have handed in.",
    elsewhere: "This form is open in another window too. Go on in one of them only."
  };
  var main = document.querySelector("main");
  var title = document.querySelector("h1");
  var codeInput = document.querySelector(".code-input");
  var troubles = document.querySelector(".store-note");
  var said = document.querySelector(".form-said");

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

  var exam = {
    form: {
      id: main.dataset.formId, label: main.dataset.label, edition: main.dataset.edition,
      minutes: Number(main.dataset.minutes)
    },
    questions: Guidecoat.all(document, ".question"),
    state: fresh(),

    keep: function () {
      exam.state.turn += 1;
      store.save(exam.state);
    },

    /* Show one step of the way and go to a place in it. */
    show: function (step, place) {
      Object.keys(STEPS).forEach(function (name) { document.querySelector(STEPS[name]).hidden = name !== step; });
      document.body.dataset.step = step;
      tick();
      if (!place) { return; }
      place.focus({ preventScroll: true });
      window.scrollTo(0, 0);
    },

    clear: function () {
      store.clear().then(function (isGone) {
        exam.state = fresh();
        Guidecoat.layAnswers(exam);
        showStart(title);
        say(said, isGone ? "Nothing of the last person is left on this page. The next person can start."
          : "The last answers could not be cleared from this device. Tell your instructor.");
      });
    }
  };

  var store = Guidecoat.examStore(exam.form.id + " " + main.dataset.person, function (what) { say(troubles, NOTES[what]); });

  function tick() {
    var state = exam.state, running = document.body.dataset.step === "ask" || document.body.dataset.step === "review";
    document.querySelector(".way").hidden = !running;
    if (!running) { return; }
    var left = document.querySelector(".time-left");
    left.textContent = Guidecoat.timeWords(state.began, Date.now(), exam.form.minutes);
    left.hidden = state.hidesTime;
    document.querySelector(".time-hide").textContent = state.hidesTime ? "Show the time" : "Hide the time";
    var up = Guidecoat.timeIsUp(state.began, Date.now(), exam.form.minutes);
    say(document.querySelector(".time-up"), up
      ? "The time is up. You can still answer and hand in; the file says how many minutes it took over." : "");
  }

  function showStart(place) {
    if (codeInput) { codeInput.value = exam.state.person; }
    document.querySelector(".form-go").textContent = exam.state.began ? "Go on" : "Start";
    exam.show("start", place);
  }

  function go() {
    var wrong = document.querySelector(".code-wrong");
    if (codeInput) {
      var code = Guidecoat.codeOf(codeInput.value);
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
    document.querySelector(".form-code").addEventListener("submit", function (event) { event.preventDefault(); go(); });
    document.querySelector(".form-first").addEventListener("click", function () { showStart(title); });
    document.querySelector(".time-hide").addEventListener("click", function () {
      exam.state.hidesTime = !exam.state.hidesTime;
      exam.keep();
      tick();
    });
    Guidecoat.startExamQuestions(exam);
    Guidecoat.startHandIn(exam);
    setInterval(tick, TICK);
    store.load().then(function (kept) {
      var goesOn = take(kept);
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
