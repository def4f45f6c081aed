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

  /* What marks a variant; each one but the first says only what differs. */
  function marking(section) {
    const { variants } = section.questionData;
    return { ...variants[0], ...variants[shown(section)] };
  }

  function dataOf(section) { return JSON.parse(section.querySelector("script").textContent); }

  /* The words of a variant: each was sent, or follows from a band by a rule such as "1m2". */
  function words(data, number) {
    const marks = { ...data.variants[0], ...data.variants[number] };
    return data.else.map((column) => {
      if (typeof column !== "string") { return column[number - 1]; }
      const [, band, end, places] = /^([0-9]+)([mlh])([0-9])$/.exec(column);
      return Guidecoat.wordOfBand([marks.band, ...marks.slips][Number(band)], marks.step, end, Number(places));
    });
  }

  /* Put the words of a variant into their places; places with the same word share a column. */
  function fill(places, wanted, columns) {
    const standing = places.map((place) => place.innerHTML);
    const first = [...new Set(standing)];
    places.forEach((place, at) => {
      place.innerHTML = wanted[columns ? columns[at] : first.indexOf(standing[at])];
    });
  }

  /* Lay the plain text of a variant: the first one's, with the words that differ put in. */
  function lay(section, number) {
    const data = section.questionData;
    const whole = number && data.whole ? data.whole[number - 1] : section.firstVariant;
    section.querySelector("form .ask").innerHTML = whole.ask;
    section.querySelector("form .reasons-body").innerHTML = whole.reasons;
    if (number && data.else) { fill(all(section, "x-v"), words(data, number), data.at); }
  }

  /* Show one of the solved variants; they are counted round. */
  Guidecoat.showVariant = (section, number) => {
    const wanted = number % section.questionData.variants.length;
    section.setAttribute("data-shown", wanted);
    lay(section, wanted);
    Guidecoat.fitOut(section, marking(section));
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
    section.questionData = dataOf(section);
    section.firstVariant = {
      ask: section.querySelector(".ask").innerHTML,
      reasons: section.querySelector(".reasons-body").innerHTML
    };
    Guidecoat.frameQuestion(section, section.questionData.variants.length);
    Guidecoat.fitOut(section, marking(section));
    section.querySelector(".reasons").hidden = true;
    startMoves(section);
    function check(event) {
      event.preventDefault();
      /* inside a check the first answer stands */
      if (section.dataset.once && section.dataset.tried) { return; }
      const variant = marking(section);
      Guidecoat.answer[variant.kind](section, variant);
    }
    section.querySelector("form").addEventListener("submit", check);
    section.querySelector(".check").addEventListener("click", check);
    all(section, ".another").forEach((button) => {
      button.addEventListener("click", () => { another(section); });
    });
  };
})();
