/* Reads what stands in a question as an answer, in the form that marking takes. */
"use strict";

(() => {
  const { all } = Guidecoat;

  /** @type {(section: Element) => Chosen} */
  function chosen(section) {
    return { form: "chosen", letters: all(section, ".option input:checked").map((input) => input.value) };
  }

  Guidecoat.readAnswer = {
    choice: chosen,
    multiple_response: chosen,

    order(section) {
      return { form: "ordered", letters: all(section, ".steps-to-order > li").map((step) => step.dataset.letter) };
    },

    match(section) {
      /** @type {Record<string, string>} */
      const answers = {};
      all(section, ".pair").forEach((pair) => { answers[pair.dataset.number] = pair.querySelector("select").value; });
      return { form: "matched", answers };
    },

    numeric(section) { return { form: "typed", text: section.querySelector(".number").value }; }
  };
})();
