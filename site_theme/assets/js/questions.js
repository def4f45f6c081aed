/* Brings a question to life: checking, new numbers, moving steps. */
"use strict";

(() => {
  const { all } = Guidecoat;
  const say = Guidecoat.feedback.show;

  function shown(section) { return Number(section.getAttribute("data-shown") || 0); }

  /* Back to an unanswered question, for new numbers or another go. */
  function clear(section) {
    section.querySelector(".feedback").textContent = "";
    section.querySelector(".feedback").removeAttribute("data-state");
    section.querySelector(".reasons").hidden = true;
    section.querySelector(".reasons").open = false;
    section.removeAttribute("data-tried");
  }

  /* Show one of the solved variants; they are counted round. */
  Guidecoat.showVariant = (section, number) => {
    const templates = all(section, "template.variant");
    const ask = section.querySelector("form .ask");
    const reasons = section.querySelector("form .reasons-body");
    const wanted = number % (templates.length + 1);
    if (!section.firstVariant) {
      section.firstVariant = { ask: ask.innerHTML, reasons: reasons.innerHTML };
    }
    const from = wanted ? templates[wanted - 1].content : null;
    ask.innerHTML = from ? from.querySelector(".ask").innerHTML : section.firstVariant.ask;
    reasons.innerHTML = from ? from.querySelector(".reasons-body").innerHTML : section.firstVariant.reasons;
    section.setAttribute("data-shown", wanted);
    clear(section);
    startMoves(section);
  };

  function another(section) {
    Guidecoat.showVariant(section, shown(section) + 1);
    say(section, "fresh", section.classList.contains("kind-numeric")
      ? "New numbers. Read the question again." : "Another one. Read the question again.", []);
    (section.querySelector(".number") || section.querySelector(".ask input, .ask select, .ask button")).focus();
  }

  function startMoves(section) {
    Guidecoat.startReordering(section, (state, text) => { say(section, state, text, []); });
  }

  Guidecoat.startQuestion = (section) => {
    const data = JSON.parse(section.querySelector("script.marking").textContent);
    section.querySelector(".actions").hidden = false;
    section.querySelector(".reasons").hidden = true;
    startMoves(section);
    function check(event) {
      event.preventDefault();
      /* inside a check the first answer stands */
      if (section.dataset.once && section.dataset.tried) { return; }
      const variant = data.variants[shown(section)];
      Guidecoat.answer[variant.kind](section, variant);
    }
    section.querySelector("form").addEventListener("submit", check);
    section.querySelector(".check").addEventListener("click", check);
    all(section, ".another").forEach((button) => {
      button.addEventListener("click", () => { another(section); });
    });
  };
})();
