/* Makes a form of a question that stands on the page as plain text: letters, fields and buttons. */
"use strict";

(() => {
  const { element, all, words } = Guidecoat;
  const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  const ARROWS = { "-1": "M12 20V5M5 12l7-7 7 7", "1": "M12 4v15M5 12l7 7 7-7" };

  function kindOf(section) { return /kind-([a-z_]+)/.exec(section.className)[1]; }

  function labelOf(section) { return words(section.querySelector(".question-label")); }

  function moved(from, to) { while (from.firstChild) { to.appendChild(from.firstChild); } return to; }

  function withAttributes(part, attributes) {
    Object.keys(attributes).forEach((name) => part.setAttribute(name, attributes[name]));
    return part;
  }

  function letterSpan(letter) { return element("span", "letter", letter); }

  function fieldset(className, section, ending) {
    const made = withAttributes(element("fieldset", className), { "aria-describedby": section.id + "-given" });
    made.appendChild(element("legend", "unseen", labelOf(section) + ": " + ending));
    return made;
  }

  function options(section, ask, type, ending) {
    const made = fieldset("options", section, ending);
    all(ask, ".choices > li").forEach((item, place) => {
      const label = withAttributes(element("label", "option"), { "data-letter": LETTERS[place] });
      const input = withAttributes(element("input"), { type, name: section.id, value: LETTERS[place] });
      label.append(input, letterSpan(LETTERS[place]), moved(item, element("span", "option-text")));
      made.appendChild(label);
    });
    ask.querySelector(".choices").replaceWith(made);
  }

  function mover(by, text) {
    const button = withAttributes(element("button", "move"), { type: "button", "data-by": by });
    const picture = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    const line = document.createElementNS("http://www.w3.org/2000/svg", "path");
    withAttributes(picture, { viewBox: "0 0 24 24", "aria-hidden": "true" });
    line.setAttribute("d", ARROWS[by]);
    picture.appendChild(line);
    button.append(picture, element("span", "unseen", text));
    return button;
  }

  function steps(section, ask) {
    const list = ask.querySelector(".steps-to-order");
    list.setAttribute("aria-label", labelOf(section) + ": steps to put in order");
    all(list, "li").forEach((item, place) => {
      const text = moved(item, element("span", "step-text"));
      const moves = element("span", "moves");
      moves.append(mover("-1", "Move up: " + words(text)), mover("1", "Move down: " + words(text)));
      item.dataset.letter = LETTERS[place];
      item.append(letterSpan(LETTERS[place]), text, moves);
    });
  }

  function pairs(section, ask) {
    const made = fieldset("pairs", section, "pair them up");
    const list = element("ul", "match-to");
    const rights = all(ask, ".match-to > li");
    rights.forEach((item, place) => { item.prepend(letterSpan(LETTERS[place]), " "); list.appendChild(item); });
    made.appendChild(list);
    all(ask, ".match-left > li").forEach((item, place) => {
      const number = String(place + 1);
      const id = section.id + "-" + number;
      const pair = withAttributes(element("div", "pair"), { "data-number": number });
      const select = withAttributes(element("select"), { id });
      select.appendChild(element("option", "", "Choose")).value = "";
      rights.forEach((right, at) => {
        select.appendChild(element("option", "", LETTERS[at] + ": " + words(right).slice(2))).value = LETTERS[at];
      });
      pair.append(withAttributes(moved(item, element("label")), { for: id }), select);
      made.appendChild(pair);
    });
    ask.querySelector(".match-to").remove();
    ask.querySelector(".match-left").replaceWith(made);
  }

  function labeled(section, ask, className, field, ending) {
    const made = element("div", className);
    const old = ask.querySelector(".your-answer");
    withAttributes(field, { id: section.id + ending, "aria-describedby": section.id + "-given" });
    made.append(withAttributes(moved(old, element("label")), { for: field.id }), field);
    old.replaceWith(made);
    return made;
  }

  function numeric(section, ask, marking) {
    const field = element("input", "number");
    withAttributes(field, { type: "text", spellcheck: "false", autocapitalize: "off" });
    const box = element("span", "number-box");
    const line = labeled(section, ask, "number-line", field, "-number");
    line.appendChild(box).appendChild(field);
    if (marking.asks_unit) { return; }
    field.inputMode = "decimal";
    box.appendChild(withAttributes(element("span", "unit", marking.symbol), { "aria-hidden": "true" }));
  }

  const ASKED = {
    choice: (section, ask) => options(section, ask, "radio", "choose one"),
    multiple_response: (section, ask) => options(section, ask, "checkbox", "choose all that apply"),
    order: steps,
    match: pairs,
    numeric,
    written: (section, ask) => {
      labeled(section, ask, "written-line", withAttributes(element("textarea"), { rows: "4" }), "-words");
    }
  };

  /* Name what answering looks up: the reason of a letter, a number, a pair of steps or a slip. */
  function nameReasons(reasons, kind, marking) {
    all(reasons, ".verdicts > li, .slips > li, .pair-reasons > li").forEach((item) => {
      item.lastElementChild.classList.add("says");
    });
    all(reasons, ".points > li").forEach((item, place) => {
      item.firstElementChild.classList.add("says");
      item.dataset.marks = marking.marks[place];
    });
    all(reasons, ".pair-reasons > li").forEach((item, place) => {
      item.dataset.first = marking.pairs[place].first;
      item.dataset.then = marking.pairs[place].then;
    });
    all(reasons, ".verdicts > li").forEach((item, place) => {
      if (kind === "match") { item.dataset.number = String(place + 1); return; }
      const letter = LETTERS[place];
      item.dataset.letter = letter;
      item.classList.add(marking.right.includes(letter) ? "holds" : "fails");
      item.prepend(letterSpan(letter), " ");
    });
    all(reasons, "ol.verdicts").forEach((list) => list.classList.add("lettered"));
  }

  function typedButton(className, text) {
    return withAttributes(element("button", className, text), { type: "button" });
  }

  function buttons(kind, variants) {
    const made = element("div", "actions");
    made.appendChild(typedButton("check", kind === "written" ? "Show the points" : "Check my answer"));
    if (variants > 1) {
      made.appendChild(typedButton("plain another", kind === "numeric" ? "New numbers" : "Another like it"));
    }
    return made;
  }

  /* Make the frame of the form once. */
  Guidecoat.frameQuestion = (section, variants) => {
    const form = withAttributes(element("form"), { novalidate: "", autocomplete: "off" });
    const name = section.querySelector(".question-name");
    const data = section.querySelector("script");
    name.id = section.id + "-name";
    name.children[0].className = "question-label";
    name.children[1].className = "question-kind";
    section.setAttribute("aria-labelledby", name.id);
    data.remove();
    section.append(moved(section, form), data);
    const feedback = withAttributes(element("div", "feedback"), { role: "status" });
    form.querySelector(".ask").after(buttons(kindOf(section), variants), feedback);
  };

  /* Make what is asked and what is explained ready for one variant. */
  Guidecoat.fitOut = (section, marking) => {
    const ask = section.querySelector(".ask");
    ask.querySelector(".given").id = section.id + "-given";
    ASKED[kindOf(section)](section, ask, marking);
    nameReasons(section.querySelector(".reasons-body"), kindOf(section), marking);
  };
})();
