/* Answers to the questions of a form: taking them, putting them back, and what is still open.
   No answer is judged here; the page does not know what is right. */
"use strict";

(() => {
  const { all } = Guidecoat;

  /* Texts are pasted from anywhere: what nobody can type becomes a space. With the flag u the
     second part finds halves of characters only. */
  Guidecoat.typable = (text) => text.replace(/[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f]|[\ud800-\udfff]/gu, " ");

  /* A code on one line, without characters that cannot be seen. */
  Guidecoat.codeOf = (text) => Guidecoat.typable(text).replace(/[\p{Cf}\p{Zl}\p{Zp}]/gu, " ")
    .replace(/\s+/g, " ").trim();

  function kindOf(section) { return section.dataset.kind; }

  function isEmpty(answer) {
    if (answer.form === "typed") { return !answer.text.trim(); }
    return answer.form === "matched" ? !Object.keys(answer.answers).length : !answer.letters.length;
  }

  function withoutGaps(answer) {
    if (answer.form === "matched") {
      Object.keys(answer.answers).forEach((number) => {
        if (!answer.answers[number]) { delete answer.answers[number]; }
      });
    }
    return answer;
  }

  /* Give what stands in a question: an answer, the text of a written one, or null. */
  Guidecoat.takeAnswer = (section) => {
    if (kindOf(section) === "written") {
      const text = Guidecoat.typable(section.querySelector("textarea").value);
      return text.trim() ? text : null;
    }
    const answer = withoutGaps(Guidecoat.readAnswer[kindOf(section)](section));
    if (answer.form === "typed") { answer.text = Guidecoat.typable(answer.text); }
    return isEmpty(answer) ? null : answer;
  };

  const put = {
    choice(section, answer) {
      const letters = answer ? answer.letters : [];
      all(section, ".option input").forEach((input) => { input.checked = letters.includes(input.value); });
    },

    order(section, answer) {
      const list = section.querySelector(".steps-to-order");
      const steps = all(list, "li");
      const letters = answer ? answer.letters : steps.map((step) => step.dataset.letter).sort();
      letters.forEach((letter) => {
        const step = steps.find((one) => one.dataset.letter === letter);
        if (step) { list.appendChild(step); }
      });
    },

    match(section, answer) {
      all(section, ".pair").forEach((pair) => {
        pair.querySelector("select").value = answer && answer.answers[pair.dataset.number] || "";
      });
    },

    numeric(section, answer) { section.querySelector(".number").value = answer ? answer.text : ""; },

    written(section, answer) { section.querySelector("textarea").value = answer || ""; }
  };
  put.multiple_response = put.choice;

  /* Show a kept answer, or the untouched question. */
  Guidecoat.putBack = (section, answer) => { put[kindOf(section)](section, answer); };

  /* Say what is still open in a question, or nothing. */
  Guidecoat.stillOpen = (section, answer) => {
    if (!answer) { return "not answered"; }
    if (answer.form === "matched") {
      const open = all(section, ".pair").length - Object.keys(answer.answers).length;
      return open ? Guidecoat.counted(open, "pair is", "pairs are") + " still open" : "";
    }
    return answer.form === "typed" && Guidecoat.readNumber(answer.text).problem ? "the number cannot be read" : "";
  };

  /* Say why a typed number cannot be read, or nothing. */
  Guidecoat.numberProblem = (answer) =>
    answer && answer.form === "typed" && Guidecoat.readNumber(answer.text).problem || "";
})();
