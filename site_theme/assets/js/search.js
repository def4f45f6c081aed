/* The search page: asks the index as the learner types and lists what it found. */
"use strict";

(() => {
  const FIRST_SHOWN = 12;
  const SNIPPET = 170;
  const { element } = Guidecoat;
  const { words } = Guidecoat.searchIndex;

  function has(text, hits) { return words(text).some((word) => hits.has(word)); }

  /* The part of a text that says most about what was asked, cut at whole words. What is found by
     its title is told from its beginning. */
  function snippet(entry, hits) {
    const text = entry.text;
    const places = [];
    text.replace(/[\p{L}\p{N}]+/gu, (word, place) => {
      if (hits.has(words(word)[0])) { places.push(place); }
      return word;
    });
    const best = places.reduce((found, first) => {
      const inside = places.filter((place) => place >= first && place < first + SNIPPET).length;
      return inside > found.inside ? { first, inside } : found;
    }, { first: 0, inside: 0 });
    let from = text.lastIndexOf(" ", Math.max(0, best.first - 40)) + 1;
    if (best.first < 60 || has(entry.title, hits)) { from = 0; }
    const to = from + SNIPPET >= text.length ? text.length : text.lastIndexOf(" ", from + SNIPPET);
    return (from ? "… " : "") + text.slice(from, to) + (to < text.length ? " …" : "");
  }

  function marked(line, text, hits) {
    let end = 0;
    text.replace(/[\p{L}\p{N}]+/gu, (word, place) => {
      if (hits.has(words(word)[0])) {
        line.appendChild(document.createTextNode(text.slice(end, place)));
        line.appendChild(element("mark", "", word));
        end = place + word.length;
      }
      return word;
    });
    line.appendChild(document.createTextNode(text.slice(end)));
    return line;
  }

  function row(entry, hits) {
    const item = element("li", "found");
    const heading = item.appendChild(element("h2"));
    heading.appendChild(marked(Guidecoat.link(entry.address), entry.title, hits));
    item.appendChild(element("p", "found-kind", entry.kind + (entry.place ? " · " + entry.place : "")));
    item.appendChild(marked(element("p", "found-text"), snippet(entry, hits), hits));
    return item;
  }

  function sentence(found, text) {
    const count = found.entries.length;
    const some = found.all ? "“" + text + "”." : "most of these words.";
    let line = count ? count + (count === 1 ? " place has " : " places have ") + some
      : "Nothing here has “" + text + "”. Try one word of it, or look in the glossary.";
    if (count && !found.all) { line = "No place has all of “" + text + "”. " + line; }
    const guesses = found.guesses.map((guess) => " No page has “" + guess.typed + "”; showing “" +
      guess.words.slice(0, 3).join("”, “") + "” instead.");
    return line + guesses.join("");
  }

  function start(form) {
    const list = window.guidecoatSearchList;
    const input = form.querySelector("input");
    const count = document.querySelector(".found-count");
    const results = document.querySelector(".found-list");
    const more = document.querySelector(".found-more");
    const entries = list.entries.map(([kind, title, address, place, names, text]) =>
      ({ kind, title, address, place, names, text }));
    const index = Guidecoat.searchIndex.indexed(entries);
    let waiting = 0;

    function show(found, most) {
      results.textContent = "";
      found.entries.slice(0, most).forEach((number) => {
        results.appendChild(row(entries[number], found.words));
      });
      more.hidden = found.entries.length <= most;
      more.textContent = "Show all " + found.entries.length;
      more.onclick = () => {
        show(found, found.entries.length);
        results.children[most].querySelector("a").focus();
      };
    }

    function answer() {
      const text = input.value.trim();
      history.replaceState({ asked: text }, "");
      if (text.length < 2) {
        count.textContent = "";
        show({ entries: [], words: new Map() }, 0);
        return;
      }
      const found = Guidecoat.searchIndex.ask(index, list.names, text);
      show(found, FIRST_SHOWN);
      count.textContent = sentence(found, text);
    }

    form.hidden = false;
    input.addEventListener("input", () => {
      clearTimeout(waiting);
      waiting = setTimeout(answer, 200);
    });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      clearTimeout(waiting);
      answer();
    });
    if (history.state && history.state.asked) {
      input.value = history.state.asked;
      answer();
    }
  }

  /* This script comes after the page was started, because only the search page needs it. */
  Guidecoat.onPage(() => { Guidecoat.all(document, ".search-form").forEach(start); });
})();
