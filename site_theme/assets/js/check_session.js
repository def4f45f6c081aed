/* Runs a check: one question on the screen, its feedback, the next one, and a plain summary. */
"use strict";

(() => {
  const { element, all } = Guidecoat;

  function why(pick) {
    const state = Guidecoat.progress.state(pick.entry.objective);
    if (pick.rank === "new") { return "New to you."; }
    if (pick.rank === "weak") { return "Missed last time."; }
    const last = Guidecoat.dayWords(Math.min(state.day, Guidecoat.today()));
    return (pick.rank === "due" ? "Due again. " : "") + "Last asked " + last + ".";
  }

  function ask(session) {
    const pick = session.picks[session.at];
    const name = "Question " + (session.at + 1) + " of " + session.picks.length;
    const form = Guidecoat.form(pick.question, name);
    session.name.textContent = name;
    session.why.textContent = why(pick);
    session.stage.textContent = "";
    session.stage.appendChild(form);
    form.dataset.once = "yes";
    Guidecoat.startQuestion(form);
    const tries = Guidecoat.progress.tries(pick.entry.objective, pick.question.id).length;
    if (tries) { Guidecoat.showVariant(form, tries); }
    all(form, ".another").forEach((button) => { button.remove(); });
    session.next.hidden = true;
    form.addEventListener("answered", (event) => { settle(session, form, event.detail.right); });
    session.name.focus();
    session.name.scrollIntoView({ block: "start" });
  }

  function settle(session, form, right) {
    form.querySelector(".check").hidden = true;
    all(form, ".ask input, .ask select, .ask button").forEach((part) => { part.disabled = true; });
    if (!right) { form.querySelector(".reasons").open = true; }
    session.right.push(right);
    session.next.hidden = false;
    session.next.textContent = session.at + 1 < session.picks.length ? "Next question" : "See how it went";
    /* to the feedback, not to the button: a key held down must not skip the reason */
    const box = form.querySelector(".feedback");
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
  Guidecoat.runCheck = (part, picks, done) => {
    const session = {
      part, picks, at: 0, right: [], done,
      name: part.querySelector(".sitting-name"), why: part.querySelector(".sitting-why"),
      stage: part.querySelector(".sitting-stage"), next: part.querySelector(".sitting-next")
    };
    part.hidden = false;
    session.next.onclick = () => { step(session); };
    part.querySelector(".sitting-stop").onclick = () => { close(session); };
    ask(session);
  };

  function lines(place, heading, entries, index, withLesson) {
    if (!entries.length) { return; }
    place.appendChild(element("h3", "", heading));
    const list = place.appendChild(element("ul", "summary-list"));
    entries.forEach((entry) => {
      const line = list.appendChild(element("li", "", entry.text));
      const module = entry.objective.split("/")[0];
      if (withLesson && index.modules[module].lesson) {
        line.append(" ", Guidecoat.link(module + ".html", "Lesson: " + index.modules[module].title));
      }
    });
  }

  /* Say in plain words what went well and what to look at. */
  Guidecoat.summary = (place, picks, right, index) => {
    const missed = {};
    const asked = [];
    picks.forEach((pick, number) => {
      if (!asked.includes(pick.entry)) { asked.push(pick.entry); }
      if (!right[number]) { missed[pick.entry.objective] = true; }
    });
    function wasMissed(entry) { return missed[entry.objective] === true; }
    const count = right.filter(Boolean).length;
    place.textContent = "";
    place.appendChild(element("p", "summary-count", picks.length
      ? count + " of " + picks.length + " right at the first try." : "No question was answered."));
    lines(place, "What went well", asked.filter((entry) => !wasMissed(entry)), index, false);
    lines(place, "What to look at", asked.filter(wasMissed), index, true);
    if (asked.some(wasMissed)) {
      place.appendChild(element("p")).appendChild(Guidecoat.link("look-back.html", "Look back at what went wrong"));
    }
  };
})();
