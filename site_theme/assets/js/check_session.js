/* Runs a check: one question on the screen, its feedback, the next one, and a plain summary. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var element = Guidecoat.element, all = Guidecoat.all;

  function why(pick) {
    var state = Guidecoat.progress.state(pick.entry.objective);
    if (pick.rank === "new") { return "New to you."; }
    if (pick.rank === "weak") { return "Missed last time."; }
    return (pick.rank === "due" ? "Due again. " : "") + "Last asked " + Guidecoat.dayWords(Math.min(state.day, Guidecoat.today())) + ".";
  }

  function ask(session) {
    var pick = session.picks[session.at];
    var name = "Question " + (session.at + 1) + " of " + session.picks.length;
    var form = Guidecoat.form(pick.question, name);
    session.name.textContent = name;
    session.why.textContent = why(pick);
    session.stage.textContent = "";
    session.stage.appendChild(form);
    form.dataset.once = "yes";
    Guidecoat.startQuestion(form);
    var tries = Guidecoat.progress.tries(pick.entry.objective, pick.question.id).length;
    if (tries) { Guidecoat.showVariant(form, tries); }
    all(form, ".another").forEach(function (button) { button.remove(); });
    session.next.hidden = true;
    form.addEventListener("answered", function (event) { settle(session, form, event.detail.right); });
    session.name.focus();
    session.name.scrollIntoView({ block: "start" });
  }

  function settle(session, form, right) {
    form.querySelector(".check").hidden = true;
    all(form, ".ask input, .ask select, .ask button").forEach(function (part) { part.disabled = true; });
    if (!right) { form.querySelector(".reasons").open = true; }
    session.right.push(right);
    session.next.hidden = false;
    session.next.textContent = session.at + 1 < session.picks.length ? "Next question" : "See how it went";
    /* to the feedback, not to the button: a key held down must not skip the reason */
    var box = form.querySelector(".feedback");
    box.tabIndex = -1;
    box.focus({ preventScroll: true });
    box.scrollIntoView({ block: "nearest" });
  }

  function step(session) {
    session.at += 1;
    if (session.at < session.picks.length) { ask(session); } else { close(session); }
  }

  function close(session) {
    session.part.hidden = true;
    session.stage.textContent = "";
    session.done(session.picks.slice(0, session.right.length), session.right);
  }

  /* Ask picks inside a part of the page; `done` gets the picks that were answered, and how. */
  Guidecoat.runCheck = function (part, picks, done) {
    var session = {
      part: part, picks: picks, at: 0, right: [], done: done,
      name: part.querySelector(".sitting-name"), why: part.querySelector(".sitting-why"),
      stage: part.querySelector(".sitting-stage"), next: part.querySelector(".sitting-next")
    };
    part.hidden = false;
    session.next.onclick = function () { step(session); };
    part.querySelector(".sitting-stop").onclick = function () { close(session); };
    ask(session);
  };

  function lines(place, heading, entries, index, withLesson) {
    if (!entries.length) { return; }
    place.appendChild(element("h3", "", heading));
    var list = place.appendChild(element("ul", "summary-list"));
    entries.forEach(function (entry) {
      var line = list.appendChild(element("li", "", entry.text));
      var module = entry.objective.split("/")[0];
      if (withLesson && index.modules[module].lesson) {
        line.append(" ", Guidecoat.link(module + ".html", "Lesson: " + index.modules[module].title));
      }
    });
  }

  /* Say in plain words what went well and what to look at. */
  Guidecoat.summary = function (place, picks, right, index) {
    var missed = {}, asked = [];
    picks.forEach(function (pick, number) {
      if (asked.indexOf(pick.entry) < 0) { asked.push(pick.entry); }
      if (!right[number]) { missed[pick.entry.objective] = true; }
    });
    function wasMissed(entry) { return missed[entry.objective] === true; }
    var count = right.filter(Boolean).length;
    place.textContent = "";
    place.appendChild(element("p", "summary-count", picks.length
      ? count + " of " + picks.length + " right at the first try." : "No question was answered."));
    lines(place, "What went well", asked.filter(function (entry) { return !wasMissed(entry); }), index, false);
    lines(place, "What to look at", asked.filter(wasMissed), index, true);
    if (asked.some(wasMissed)) {
      place.appendChild(element("p")).appendChild(Guidecoat.link("look-back.html", "Look back at what went wrong"));
    }
  };
})();
