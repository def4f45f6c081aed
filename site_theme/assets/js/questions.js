/* Brings the questions of a page to life. All words of feedback are already in the page's
   answer section; here they are only chosen and shown. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  function element(name, className, text) {
    var made = document.createElement(name);
    if (className) { made.className = className; }
    if (text) { made.textContent = text; }
    return made;
  }

  function all(root, selector) { return Array.prototype.slice.call(root.querySelectorAll(selector)); }

  function reason(section, selector) {
    var found = section.querySelector(".reasons " + selector + " .says");
    var line = element("p", "why");
    if (found) { line.innerHTML = found.innerHTML; }
    return line;
  }

  function show(section, state, verdict, lines) {
    var box = section.querySelector(".feedback");
    box.textContent = "";
    box.setAttribute("data-state", state);
    box.appendChild(element("p", "verdict", verdict));
    lines.forEach(function (line) { box.appendChild(line); });
  }

  /* Only the first try after a fresh start counts for the panel. */
  function settle(section, right) {
    section.querySelector(".reasons").hidden = false;
    if (section.getAttribute("data-tried")) { return; }
    section.setAttribute("data-tried", "yes");
    Guidecoat.progress.record(section.dataset.objective, section.dataset.item, right);
    Guidecoat.drawPanel();
  }

  function needsAnswer(section, text) { show(section, "unread", text, []); }

  var answer = {
    choice: function (section, data) {
      var chosen = all(section, ".option input:checked").map(function (input) { return input.value; });
      if (!chosen.length) { return needsAnswer(section, "Choose an option first."); }
      var mark = Guidecoat.marks.choice(chosen, data);
      markOptions(section, chosen, data.right);
      show(section, mark.right ? "right" : "wrong", mark.right ? "Right." : "Not this one.",
        [reason(section, '[data-letter="' + chosen[0] + '"]')]);
      settle(section, mark.right);
    },

    multiple_response: function (section, data) {
      var chosen = all(section, ".option input:checked").map(function (input) { return input.value; });
      if (!chosen.length) { return needsAnswer(section, "Choose at least one option first."); }
      var mark = Guidecoat.marks.multiple_response(chosen, data);
      markOptions(section, chosen, data.right);
      var lines = chosen.map(function (letter) {
        var line = reason(section, '[data-letter="' + letter + '"]');
        line.insertBefore(element("strong", "", letter + (data.right.indexOf(letter) >= 0 ? " holds. " : " does not. ")), line.firstChild);
        return line;
      });
      var tally = mark.hits + " of your " + chosen.length + (chosen.length === 1 ? " choice holds." : " choices hold.");
      var more = mark.missing ? " " + mark.missing + " right " + (mark.missing === 1 ? "option is" : "options are") + " still open." : "";
      show(section, mark.right ? "right" : "wrong", mark.right ? "Right, all of them." : tally + more, lines);
      settle(section, mark.right);
    },

    order: function (section, data) {
      var letters = all(section, ".steps-to-order > li").map(function (step) { return step.dataset.letter; });
      var mark = Guidecoat.marks.order(letters, data);
      var lines = mark.broken.map(function (pair) {
        var line = reason(section, '[data-first="' + pair.first + '"][data-then="' + pair.then + '"]');
        line.insertBefore(element("strong", "", pair.first + " before " + pair.then + ". "), line.firstChild);
        return line;
      });
      var count = mark.broken.length;
      show(section, mark.right ? "right" : "wrong",
        mark.right ? "Right. Every step that must wait does wait."
          : count + (count === 1 ? " step comes" : " steps come") + " too early:", lines);
      settle(section, mark.right);
    },

    match: function (section, data) {
      var chosen = {};
      var empty = null;
      all(section, ".pair").forEach(function (pair) {
        var select = pair.querySelector("select");
        chosen[pair.dataset.number] = select.value;
        if (!select.value && !empty) { empty = select; }
      });
      if (empty) { needsAnswer(section, "One pair or more is still open."); empty.focus(); return; }
      var mark = Guidecoat.marks.match(chosen, data);
      all(section, ".pair").forEach(function (pair) {
        pair.setAttribute("data-state", mark.wrong.indexOf(pair.dataset.number) < 0 ? "right" : "wrong");
      });
      var lines = mark.wrong.map(function (number) {
        var name = section.querySelector('.pair[data-number="' + number + '"] label').textContent;
        var line = element("p", "why");
        line.appendChild(element("strong", "", name + ": not " + chosen[number] + "."));
        return line;
      });
      show(section, mark.right ? "right" : "wrong", mark.right ? "Right, every pair."
        : (mark.total - mark.wrong.length) + " of " + mark.total + " pairs are right.", lines);
      settle(section, mark.right);
    },

    numeric: function (section, key) {
      var input = section.querySelector(".number");
      var read = Guidecoat.readNumber(input.value, key.unit, key.symbol);
      input.setAttribute("aria-invalid", read.problem ? "true" : "false");
      if (read.problem) { needsAnswer(section, read.problem); input.focus(); return; }
      var mark = Guidecoat.marks.numeric(read.value, key);
      var lines = [];
      if (mark.slip >= 0) {
        lines.push(reason(section, ".slips li:nth-child(" + (mark.slip + 1) + ")"));
      } else if (!mark.right) {
        lines.push(element("p", "why", "Work it through again, then open the working and find the line where yours turns off."));
      } else if (section.querySelector(".reasons .key-says")) {
        lines.push(element("p", "why", section.querySelector(".reasons .key-says").textContent));
      }
      show(section, mark.right ? "right" : "wrong", mark.right ? "Right." : "Not that number.", lines);
      settle(section, mark.right);
    },

    written: function (section) {
      var list = element("ul", "own-points");
      var points = all(section, ".reasons .points li");
      var tally = element("p", "own-tally");
      function count() {
        var got = all(list, "input").reduce(function (sum, input) {
          return sum + (input.checked ? Number(input.dataset.marks) : 0);
        }, 0);
        var most = points.reduce(function (sum, point) { return sum + Number(point.dataset.marks); }, 0);
        tally.textContent = got + " of " + most + " marks";
      }
      points.forEach(function (point) {
        var label = element("label", "own-point");
        var box = element("input");
        box.type = "checkbox";
        box.dataset.marks = point.dataset.marks;
        box.addEventListener("change", count);
        var words = element("span");
        words.innerHTML = point.querySelector(".says").innerHTML;
        label.appendChild(box);
        label.appendChild(words);
        var item = element("li");
        item.appendChild(label);
        list.appendChild(item);
      });
      count();
      show(section, "points", "Tick each point that your answer makes.", [list, tally]);
      section.querySelector(".reasons").hidden = false;
    }
  };

  function markOptions(section, chosen, right) {
    all(section, ".option").forEach(function (option) {
      var letter = option.dataset.letter;
      if (chosen.indexOf(letter) < 0) { option.removeAttribute("data-state"); return; }
      option.setAttribute("data-state", right.indexOf(letter) >= 0 ? "right" : "wrong");
    });
  }

  /* Back to an unanswered question, for new numbers or another go. */
  function clear(section) {
    section.querySelector(".feedback").textContent = "";
    section.querySelector(".feedback").removeAttribute("data-state");
    section.querySelector(".reasons").hidden = true;
    section.querySelector(".reasons").open = false;
    section.removeAttribute("data-tried");
  }

  /* Go on to the next solved variant; after the last one the first comes round again. */
  function another(section, data) {
    var templates = all(section, "template.variant");
    var ask = section.querySelector("form .ask");
    var reasons = section.querySelector("form .reasons-body");
    if (!section.firstVariant) {
      section.firstVariant = { ask: ask.innerHTML, reasons: reasons.innerHTML };
    }
    var next = (shown(section) + 1) % (templates.length + 1);
    var from = next ? templates[next - 1].content : null;
    ask.innerHTML = from ? from.querySelector(".ask").innerHTML : section.firstVariant.ask;
    reasons.innerHTML = from ? from.querySelector(".reasons-body").innerHTML : section.firstVariant.reasons;
    section.setAttribute("data-shown", next);
    clear(section);
    startMoves(section);
    show(section, "fresh", data.variants[next].kind === "numeric"
      ? "New numbers. Read the question again." : "Another one. Read the question again.", []);
    (section.querySelector(".number") || section.querySelector(".ask input, .ask select, .ask button")).focus();
  }

  function shown(section) { return Number(section.getAttribute("data-shown") || 0); }

  function move(section, button) {
    var step = button.closest("li");
    var list = step.parentNode;
    var up = button.dataset.by === "-1";
    var other = up ? step.previousElementSibling : step.nextElementSibling;
    if (!other) {
      needsAnswer(section, step.dataset.letter + (up ? " is already first." : " is already last."));
      return;
    }
    list.insertBefore(step, up ? other : other.nextSibling);
    button.focus();
    var place = Array.prototype.indexOf.call(list.children, step) + 1;
    show(section, "moved", step.dataset.letter + " is now step " + place + " of " + list.children.length + ".", []);
  }

  function startMoves(section) {
    all(section, ".moves").forEach(function (part) { part.hidden = false; });
    all(section, ".move").forEach(function (button) {
      button.addEventListener("click", function () { move(section, button); });
    });
  }

  Guidecoat.startQuestion = function (section) {
    var data = JSON.parse(section.querySelector("script.marking").textContent);
    section.querySelector(".actions").hidden = false;
    section.querySelector(".reasons").hidden = true;
    startMoves(section);
    function check(event) {
      event.preventDefault();
      var variant = data.variants[shown(section)];
      answer[variant.kind](section, variant);
    }
    section.querySelector("form").addEventListener("submit", check);
    section.querySelector(".check").addEventListener("click", check);
    all(section, ".another").forEach(function (button) {
      button.addEventListener("click", function () { another(section, data); });
    });
  };
})();
