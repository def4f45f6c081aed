/* Answers each kind of question. All words of feedback are already in the page's answer section;
   here they are only chosen and shown. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var element = Guidecoat.element, all = Guidecoat.all, words = Guidecoat.words;

  function reason(section, selector) {
    var found = section.querySelector(".reasons " + selector + " .says");
    var line = element("p", "why");
    if (found) { line.innerHTML = found.innerHTML; }
    return line;
  }

  function led(line, text) {
    line.insertBefore(element("strong", "", text), line.firstChild);
    return line;
  }

  function show(section, state, verdict, lines) {
    var box = section.querySelector(".feedback");
    box.textContent = "";
    box.setAttribute("data-state", state);
    box.appendChild(element("p", "verdict", verdict));
    lines.forEach(function (line) { box.appendChild(line); });
  }

  /* The caution comes with the feedback, where it can tell no answer beforehand. */
  function warn(section) {
    var caution = section.querySelector(".reasons .caution");
    if (caution) { section.querySelector(".feedback").appendChild(caution.cloneNode(true)); }
  }

  function ask(section, text) { show(section, "unread", text, []); }

  /* Show the verdict; only the first try after a fresh start counts for the panel. What was given
     and why it fails go to the look back. */
  function settle(section, right, verdict, lines, given, why) {
    show(section, right ? "right" : "wrong", verdict, lines);
    warn(section);
    section.querySelector(".reasons").hidden = false;
    if (section.getAttribute("data-tried")) { return; }
    section.setAttribute("data-tried", "yes");
    Guidecoat.progress.record(section.dataset.objective, section.dataset.item, right, {
      asked: all(section, ".given > p, .given > x-v > p").map(words).join(" "),
      given: given,
      why: (why || lines.map(words).join(" ")).trim()
    });
    Guidecoat.drawPanel();
    section.dispatchEvent(new CustomEvent("answered", { detail: { right: right } }));
  }

  function optionText(section, letter) {
    return words(section.querySelector('.option[data-letter="' + letter + '"] .option-text'));
  }

  function markOptions(section, chosen, right) {
    all(section, ".option").forEach(function (option) {
      var letter = option.dataset.letter;
      if (chosen.indexOf(letter) < 0) { option.removeAttribute("data-state"); return; }
      option.setAttribute("data-state", right.indexOf(letter) >= 0 ? "right" : "wrong");
    });
  }

  function isRight(data, answer) { return Guidecoat.isRight(Guidecoat.share(data, answer)); }

  Guidecoat.say = show;

  Guidecoat.answer = {
    choice: function (section, data) {
      var answer = Guidecoat.readAnswer[data.kind](section);
      var chosen = answer.letters;
      if (!chosen.length) { return ask(section, "Choose an option first."); }
      var right = isRight(data, answer);
      markOptions(section, chosen, data.right);
      settle(section, right, right ? "Right." : "Not this one.",
        [reason(section, '[data-letter="' + chosen[0] + '"]')], optionText(section, chosen[0]));
    },

    multiple_response: function (section, data) {
      var answer = Guidecoat.readAnswer[data.kind](section);
      var chosen = answer.letters;
      if (!chosen.length) { return ask(section, "Choose at least one option first."); }
      var right = isRight(data, answer);
      var hits = chosen.filter(function (letter) { return data.right.indexOf(letter) >= 0; });
      var open = data.right.length - hits.length;
      markOptions(section, chosen, data.right);
      var lines = chosen.map(function (letter) {
        return led(reason(section, '[data-letter="' + letter + '"]'),
          letter + (hits.indexOf(letter) >= 0 ? " holds. " : " does not. "));
      });
      var tally = hits.length + " of your " + Guidecoat.counted(chosen.length, "choice holds.", "choices hold.");
      var more = open ? " " + Guidecoat.counted(open, "right option is", "right options are") + " still open." : "";
      settle(section, right, right ? "Right, all of them." : tally + more, lines,
        chosen.map(function (letter) { return optionText(section, letter); }).join("; "));
    },

    order: function (section, data) {
      var steps = all(section, ".steps-to-order > li");
      var answer = Guidecoat.readAnswer.order(section);
      var broken = Guidecoat.turnedRound(answer.letters, data.pairs);
      var right = isRight(data, answer);
      var lines = broken.map(function (pair) {
        return led(reason(section, '[data-first="' + pair.first + '"][data-then="' + pair.then + '"]'),
          pair.first + " before " + pair.then + ". ");
      });
      settle(section, right, right ? "Right. Every step that must wait does wait."
        : Guidecoat.counted(broken.length, "step comes", "steps come") + " too early:", lines,
      steps.map(function (step, number) {
        return number + 1 + ". " + step.dataset.letter + ": " + words(step.querySelector(".step-text"));
      }).join("; "));
    },

    match: function (section, data) {
      var answer = Guidecoat.readAnswer.match(section), chosen = answer.answers;
      var empty = all(section, ".pair select").find(function (select) { return !select.value; });
      if (empty) { ask(section, "One pair or more is still open."); empty.focus(); return; }
      var wrong = Guidecoat.wrongPairs(data, answer);
      all(section, ".pair").forEach(function (pair) {
        pair.setAttribute("data-state", wrong.indexOf(pair.dataset.number) < 0 ? "right" : "wrong");
      });
      function label(number) { return words(section.querySelector('.pair[data-number="' + number + '"] label')); }
      var lines = wrong.map(function (number) {
        return led(element("p", "why"), label(number) + ": not " + chosen[number] + ".");
      });
      var total = all(section, ".pair").length;
      settle(section, isRight(data, answer), wrong.length ? total - wrong.length + " of " + total + " pairs are right."
        : "Right, every pair.", lines, wrong.map(function (number) {
        return label(number) + ": " + words(section.querySelector('.pair[data-number="' + number + '"] option:checked'));
      }).join("; "), wrong.map(function (number) {
        return label(number) + ": " + words(reason(section, '[data-number="' + number + '"]'));
      }).join(" "));
    },

    numeric: function (section, key) {
      var input = section.querySelector(".number");
      var read = Guidecoat.readNumber(input.value);
      var turned = read.problem ? read : Guidecoat.inAskedUnit(read, key);
      var problem = read.problem || unitProblem(read, turned, key);
      input.setAttribute("aria-invalid", problem ? "true" : "false");
      if (problem) { ask(section, problem); input.focus(); return; }
      var right = isRight(key, Guidecoat.readAnswer.numeric(section));
      var lines = turned.from ? [element("p", "why", typed(read, turned.from.symbol) + " is " +
        typed({ value: turned.value }, key.symbol) + ".")] : [];
      settle(section, right, right ? "Right." : "Not that number.",
        lines.concat(numberReason(section, read, turned, key, right)),
        read.number + " " + (read.unit || key.symbol),
        words(lines[0]) + " " + slipWords(section, turned, key) +
          " The answer was " + words(section.querySelector(".reasons .key-line strong")) + ".");
    },

    written: function (section) {
      var list = element("ul", "own-points");
      var points = all(section, ".reasons .points li");
      var tally = element("p", "own-tally");
      function sum(values) { return values.reduce(function (a, b) { return a + b; }, 0); }
      function count() {
        var got = sum(all(list, "input:checked").map(function (input) { return Number(input.dataset.marks); }));
        tally.textContent = got + " of " + sum(points.map(function (point) { return Number(point.dataset.marks); })) + " marks";
      }
      points.forEach(function (point) {
        var label = element("label", "own-point"), box = element("input"), text = element("span");
        box.type = "checkbox";
        box.dataset.marks = point.dataset.marks;
        box.addEventListener("change", count);
        text.innerHTML = point.querySelector(".says").innerHTML;
        label.append(box, text);
        list.appendChild(element("li")).appendChild(label);
      });
      count();
      show(section, "points", "Tick each point that your answer makes.", [list, tally]);
      warn(section);
      section.querySelector(".reasons").hidden = false;
    }
  };

  function typed(read, unit) { return (read.number || Guidecoat.shortNumber(read.value)) + (unit ? "\u00a0" + unit : ""); }

  /* What keeps a number from being marked: its unit is missing where it is asked for, or is none. */
  function unitProblem(read, turned, key) {
    if (turned.unknown) {
      return key.symbol ? "“" + turned.unknown + "” is not a unit that is known here. Try " + key.symbol + "."
        : "Write the number alone, without “" + turned.unknown + "”.";
    }
    if (turned.unlike) {
      return typed(read, turned.unlike.symbol) + " measures something else. " +
        (key.asks_unit || !key.symbol ? "Look at what is asked, and at your unit." : "Give the answer in " + key.symbol + ".");
    }
    return key.asks_unit && turned.missing ? "And the unit? Write it behind the number." : "";
  }

  function numberReason(section, read, turned, key, right) {
    if (right) {
      var says = section.querySelector(".reasons .key-says");
      return says ? [element("p", "why", words(says))] : [];
    }
    if (turned.from && Guidecoat.inBand(read.value, Guidecoat.bandOf(key.band))) {
      return [element("p", "why", "The number fits, but in " + (key.symbol || "no unit") + ", not in " + read.unit + ".")];
    }
    var slip = Guidecoat.slipOf(turned.value, key);
    return [slip >= 0 ? slipReason(section, slip)
      : element("p", "why", "Go through the working and find the line where yours turns off.")];
  }

  function slipReason(section, slip) { return reason(section, ".slips li:nth-child(" + (slip + 1) + ")"); }

  function slipWords(section, turned, key) {
    var slip = Guidecoat.slipOf(turned.value, key);
    return slip >= 0 ? words(slipReason(section, slip)) : "";
  }
})();
