/* Lists what was answered wrong, newest first, each with its reason and another go. */
"use strict";

(() => {
  const { element } = Guidecoat;

  function said(name, text) {
    const row = element("div");
    row.append(element("dt", "", name), element("dd", "", text));
    return row;
  }

  function tryAgain(line, mistake, entry) {
    const tell = line.querySelector(".check-note");
    Guidecoat.part(Guidecoat.partOf(entry, mistake.item)).then((questions) => {
      const question = questions.find((one) => one.id === mistake.item);
      if (!question) { tell.textContent = "This question is no longer in the course."; return; }
      const form = Guidecoat.form(question, "Once more");
      line.querySelector("button").remove();
      line.appendChild(form);
      Guidecoat.startQuestion(form);
      Guidecoat.showVariant(form, Guidecoat.progress.tries(mistake.objective, mistake.item).length);
      form.querySelector(".question-name").tabIndex = -1;
      form.querySelector(".question-name").focus();
      form.addEventListener("answered", (event) => {
        tell.textContent = event.detail.right ? "Fixed; removed from this list." : "";
      });
    }).catch(() => {
      tell.textContent = "The question could not be loaded. Open this page once with a network.";
    });
  }

  function lineOf(mistake, entry, number) {
    const line = element("li", "mistake");
    const name = line.appendChild(element("h2", "", mistake.asked));
    name.id = "mistake-" + number;
    const more = line.appendChild(element("dl", "mistake-said"));
    more.append(said("Your answer", mistake.given));
    if (mistake.why) { more.append(said("Why it fails", mistake.why)); }
    line.appendChild(element("p", "quiet", (entry ? entry.text + ". " : "") + "Answered " +
      Guidecoat.dayWords(Math.min(mistake.day, Guidecoat.today())) + "."));
    const tell = line.appendChild(element("p", "check-note"));
    tell.setAttribute("role", "status");
    if (entry) {
      const again = Guidecoat.button("plain", "Try again", () => { tryAgain(line, mistake, entry); });
      again.setAttribute("aria-describedby", name.id);
      line.appendChild(again);
    }
    return line;
  }

  Guidecoat.startLookBack = (place) => {
    const index = Guidecoat.partsIndex(place);
    const mistakes = Guidecoat.progress.mistakes();
    place.querySelector(".look-back-count").textContent = mistakes.length
      ? Guidecoat.counted(mistakes.length, "question", "questions") + " to look at, newest first."
      : "Nothing here. What you answer wrong is listed with its reason until you get it right.";
    const list = place.querySelector(".mistakes");
    mistakes.forEach((mistake, number) => {
      const entry = index.objectives.find((one) => one.objective === mistake.objective);
      list.appendChild(lineOf(mistake, entry, number));
    });
  };
})();
