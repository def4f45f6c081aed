/* The search page: asks the index as the learner types and lists what it found. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var FIRST_SHOWN = 12;
  var SNIPPET = 170;
  var words = Guidecoat.searchIndex.words;

  function has(text, hits) { return words(text).some(function (word) { return hits.has(word); }); }

  /* The part of a text that says most about what was asked, cut at whole words. What is found by
     its title is told from its beginning. */
  function snippet(entry, hits) {
    var text = entry.text;
    var places = [];
    text.replace(/[\p{L}\p{N}]+/gu, function (word, place) {
      if (hits.has(words(word)[0])) { places.push(place); }
      return word;
    });
    var best = places.reduce(function (found, start) {
      var inside = places.filter(function (place) { return place >= start && place < start + SNIPPET; }).length;
      return inside > found.inside ? { start: start, inside: inside } : found;
    }, { start: 0, inside: 0 });
    var from = text.lastIndexOf(" ", Math.max(0, best.start - 40)) + 1;
    if (best.start < 60 || has(entry.title, hits)) { from = 0; }
    var to = from + SNIPPET >= text.length ? text.length : text.lastIndexOf(" ", from + SNIPPET);
    return (from ? "… " : "") + text.slice(from, to) + (to < text.length ? " …" : "");
  }

  function element(name, className, text) {
    var made = document.createElement(name);
    if (className) { made.className = className; }
    if (text) { made.textContent = text; }
    return made;
  }

  function marked(line, text, hits) {
    var end = 0;
    text.replace(/[\p{L}\p{N}]+/gu, function (word, place) {
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
    var item = element("li", "found");
    var heading = element("h2");
    var link = element("a");
    link.href = entry.address;
    marked(link, entry.title, hits);
    heading.appendChild(link);
    item.appendChild(heading);
    item.appendChild(element("p", "found-kind", entry.kind + (entry.place ? " · " + entry.place : "")));
    item.appendChild(marked(element("p", "found-text"), snippet(entry, hits), hits));
    return item;
  }

  function sentence(found, text) {
    var count = found.entries.length;
    var some = found.all ? "“" + text + "”." : "most of these words.";
    var line = count ? count + (count === 1 ? " place has " : " places have ") + some
      : "Nothing here has “" + text + "”. Try one word of it, or look into the glossary.";
    if (count && !found.all) { line = "No place has all of “" + text + "”. " + line; }
    return found.guesses.reduce(function (whole, guess) {
      return whole + " “" + guess.typed + "” stands nowhere; taken instead: “" +
        guess.words.slice(0, 3).join("”, “") + "”.";
    }, line);
  }

  function start(form) {
    var list = window.guidecoatSearchList;
    var input = form.querySelector("input");
    var count = document.querySelector(".found-count");
    var results = document.querySelector(".found-list");
    var more = document.querySelector(".found-more");
    var entries = list.entries.map(function (entry) {
      return { kind: entry[0], title: entry[1], address: entry[2], place: entry[3], names: entry[4], text: entry[5] };
    });
    var index = Guidecoat.searchIndex.indexed(entries);
    var waiting = 0;

    function show(found, most) {
      results.textContent = "";
      found.entries.slice(0, most).forEach(function (number) {
        results.appendChild(row(entries[number], found.words));
      });
      more.hidden = found.entries.length <= most;
      more.textContent = "Show all " + found.entries.length;
      more.onclick = function () {
        show(found, found.entries.length);
        results.children[most].querySelector("a").focus();
      };
    }

    function answer() {
      var text = input.value.trim();
      history.replaceState({ asked: text }, "");
      if (text.length < 2) {
        count.textContent = "";
        show({ entries: [], words: new Map() }, 0);
        return;
      }
      var found = Guidecoat.searchIndex.ask(index, list.names, text);
      show(found, FIRST_SHOWN);
      count.textContent = sentence(found, text);
    }

    form.hidden = false;
    input.addEventListener("input", function () {
      clearTimeout(waiting);
      waiting = setTimeout(answer, 200);
    });
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      clearTimeout(waiting);
      answer();
    });
    if (history.state && history.state.asked) {
      input.value = history.state.asked;
      answer();
    }
  }

  /* It comes after the page was started, because only this page needs it. */
  Guidecoat.startSearch = start;
  if (Guidecoat.hasPage) { document.querySelectorAll(".search-form").forEach(start); }
})();
