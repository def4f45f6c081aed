/* Answers each kind of question: reads the answer, has it marked, and chooses which of the page's
   own words to show. */
"use strict";

(() => {
  const { all, element, words, feedback, feedbackWords: say } = Guidecoat;

  function isRight(data, answer) { return Guidecoat.isRight(Guidecoat.share(data, answer)); }

  function optionText(section, letter) {
    return words(section.querySelector('.option[data-letter="' + letter + '"] .option-text'));
  }

  function markOptions(section, chosen, right) {
    all(section, ".option").forEach((option) => {
      const letter = option.dataset.letter;
      if (!chosen.includes(letter)) { option.removeAttribute("data-state"); return; }
      option.setAttribute("data-state", right.includes(letter) ? "right" : "wrong");
    });
  }

  function choice(section, data) {
    const answer = Guidecoat.readAnswer.choice(section);
    const [letter] = answer.letters;
    if (!letter) { feedback.ask(section, "Choose an option first."); return; }
    const right = isRight(data, answer);
    markOptions(section, answer.letters, data.right);
    feedback.settle(section, right, right ? "Right." : "Not this one.",
      [feedback.reason(section, '[data-letter="' + letter + '"]')], optionText(section, letter));
  }

  function multipleResponse(section, data) {
    const answer = Guidecoat.readAnswer.multiple_response(section);
    const chosen = answer.letters;
    if (!chosen.length) { feedback.ask(section, "Choose at least one option first."); return; }
    const hits = chosen.filter((letter) => data.right.includes(letter));
    markOptions(section, chosen, data.right);
    const lines = chosen.map((letter) => feedback.reason(section, '[data-letter="' + letter + '"]',
      letter + (hits.includes(letter) ? " is right. " : " is wrong. ")));
    feedback.settle(section, isRight(data, answer),
      say.choices(chosen.length, hits.length, data.right.length - hits.length), lines,
      chosen.map((letter) => optionText(section, letter)).join("; "));
  }

  function order(section, data) {
    const answer = Guidecoat.readAnswer.order(section);
    const broken = Guidecoat.turnedRound(answer.letters, data.pairs);
    const lines = broken.map((pair) => feedback.reason(section,
      '[data-first="' + pair.first + '"][data-then="' + pair.then + '"]',
      pair.first + " before " + pair.then + ". "));
    const given = all(section, ".steps-to-order > li").map((step, number) => number + 1 + ". " +
      step.dataset.letter + ": " + words(step.querySelector(".step-text")));
    feedback.settle(section, isRight(data, answer), say.order(broken.length), lines, given.join("; "));
  }

  function match(section, data) {
    const answer = Guidecoat.readAnswer.match(section);
    const pairs = all(section, ".pair");
    const empty = all(section, ".pair select").find((select) => !select.value);
    if (empty) { feedback.ask(section, "One pair or more is still open."); empty.focus(); return; }
    const wrong = Guidecoat.wrongPairs(data, answer);
    function labeled(number, text) {
      return words(section.querySelector('.pair[data-number="' + number + '"] label')) + ": " + text;
    }
    function chosenText(number) {
      return words(section.querySelector('.pair[data-number="' + number + '"] option:checked'));
    }
    pairs.forEach((pair) => {
      pair.setAttribute("data-state", wrong.includes(pair.dataset.number) ? "wrong" : "right");
    });
    const lines = wrong.map((number) => {
      const line = feedback.line("");
      line.append(element("strong", "", labeled(number, "not " + answer.answers[number] + ".")));
      return line;
    });
    const reasons = wrong.map((number) =>
      labeled(number, words(feedback.reason(section, '[data-number="' + number + '"]'))));
    feedback.settle(section, isRight(data, answer), say.pairs(wrong.length, pairs.length), lines,
      wrong.map((number) => labeled(number, chosenText(number))).join("; "), reasons.join(" "));
  }

  function numeric(section, key) {
    const input = section.querySelector(".number");
    const marked = Guidecoat.markNumber(Guidecoat.readAnswer.numeric(section).text, key);
    const { read, turned, right } = marked;
    const problem = read.problem || say.unitProblem(read, turned, key);
    input.setAttribute("aria-invalid", problem ? "true" : "false");
    if (problem) { feedback.ask(section, problem); input.focus(); return; }
    const converted = say.converted(read, turned, key);
    const lines = converted ? [feedback.line(converted)] : [];
    const slip = marked.slip < 0 ? null : slipReason(section, marked.slip);
    const keyText = words(section.querySelector(".reasons .key-line strong"));
    feedback.settle(section, right, right ? "Right." : "Not that number.",
      lines.concat(numberReason(section, marked, key, slip)), read.number + " " + (read.unit || key.symbol),
      [words(lines[0]), words(slip), "The answer was " + keyText + "."].filter(Boolean).join(" "));
  }

  function slipReason(section, slip) {
    return feedback.reason(section, ".slips li:nth-child(" + (slip + 1) + ")");
  }

  function numberReason(section, marked, key, slip) {
    if (marked.right) {
      const reason = section.querySelector(".reasons .key-says");
      return reason ? [feedback.line(words(reason))] : [];
    }
    if (marked.wrongUnit) { return [feedback.line(say.wrongUnit(marked.read, key))]; }
    return [slip || feedback.line(say.unknownSlip)];
  }

  /* A written answer is not marked here: the learner ticks the points that it makes. */
  function written(section) {
    const list = element("ul", "own-points");
    const tally = element("p", "own-tally");
    const points = all(section, ".reasons .points li");
    function marks(parts) { return parts.reduce((sum, part) => sum + Number(part.dataset.marks), 0); }
    function count() { tally.textContent = marks(all(list, "input:checked")) + " of " + marks(points) + " marks"; }
    points.forEach((point) => {
      const label = element("label", "own-point");
      const box = element("input");
      const text = element("span");
      box.type = "checkbox";
      box.dataset.marks = point.dataset.marks;
      box.addEventListener("change", count);
      text.innerHTML = point.querySelector(".says").innerHTML;
      label.append(box, text);
      list.appendChild(element("li")).appendChild(label);
    });
    count();
    feedback.reveal(section, "points", "Tick each point that your answer makes.", [list, tally]);
  }

  Guidecoat.answer = { choice, multiple_response: multipleResponse, order, match, numeric, written };
})();
