/* Shows feedback in the form of a question, and notes the first try. */
"use strict";

(() => {
  const { element, all, words } = Guidecoat;

  function show(section, state, verdict, lines) {
    const box = section.querySelector(".feedback");
    box.textContent = "";
    box.setAttribute("data-state", state);
    box.appendChild(element("p", "verdict", verdict));
    box.append(...lines);
  }

  /* The caution comes with the feedback, where it can tell no answer beforehand. */
  function warn(section) {
    const caution = section.querySelector(".reasons .caution");
    if (caution) { section.querySelector(".feedback").appendChild(caution.cloneNode(true)); }
  }

  Guidecoat.feedback = {
    show,

    ask(section, text) { show(section, "unread", text, []); },

    line(text) { return element("p", "why", text); },

    /* The author's reason that stands in the answer section, as a line; `lead` comes before it. */
    reason(section, selector, lead) {
      const found = section.querySelector(".reasons " + selector + " .says");
      const line = element("p", "why");
      if (found) { line.innerHTML = found.innerHTML; }
      if (lead) { line.insertBefore(element("strong", "", lead), line.firstChild); }
      return line;
    },

    /* Show something to think about, with the caution and the answer. */
    reveal(section, state, verdict, lines) {
      show(section, state, verdict, lines);
      warn(section);
      section.querySelector(".reasons").hidden = false;
    },

    /* Show the verdict; only the first try after a fresh start counts for the panel. What was given
       and why it fails go to the look back. */
    settle(section, right, verdict, lines, given, why) {
      Guidecoat.feedback.reveal(section, right ? "right" : "wrong", verdict, lines);
      if (section.getAttribute("data-tried")) { return; }
      section.setAttribute("data-tried", "yes");
      Guidecoat.progress.record(section.dataset.objective, section.dataset.item, right, {
        asked: all(section, ".given > p, .given > x-v > p").map(words).join(" "),
        given,
        why: (why || lines.map(words).join(" ")).trim()
      });
      section.dispatchEvent(new CustomEvent("answered", { detail: { right } }));
    }
  };
})();
