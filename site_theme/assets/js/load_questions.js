/* Loads questions of an objective when they are wanted. What is kept for use without a network are
   the pages, and questions are taken from them. Where nothing is kept yet, and on a memory stick,
   a part comes as a small script of its own. */
"use strict";
var Guidecoat = window.Guidecoat || {};
Guidecoat.parts = {};
Guidecoat.hasParts = true;

(function () {
  const loading = {};

  function fetched(name) {
    return new Promise((done, failed) => {
      const script = document.createElement("script");
      script.src = "parts/" + name.replace(/\/([0-9]+)$/, "-$1") + ".js";
      script.onload = () => { script.remove(); done(Guidecoat.parts[name] || []); };
      script.onerror = () => { script.remove(); failed(new Error(name)); };
      document.head.appendChild(script);
    });
  }

  /* Promise the documents of pages by their file names. */
  Guidecoat.pagesOf = paths => Promise.all(paths.map(path => {
    loading[path] = loading[path] || fetch(path).then(answer => {
      if (!answer.ok) { throw new Error(path + ": " + answer.status); }
      return answer.text();
    }).then(text => new DOMParser().parseFromString(text, "text/html"));
    loading[path].catch(() => { delete loading[path]; });
    return loading[path];
  }));

  function pathsOf(entry) {
    const module = entry.objective.split("/")[0];
    return (entry.sheets || [1]).map(sheet => module + "-questions" + (sheet > 1 ? "-" + sheet : "") + ".html");
  }

  function entryOf(objective) {
    const own = document.querySelector("script.parts-index");
    const index = own ? JSON.parse(own.textContent) : Guidecoat.wholeIndex;
    return index.objectives.find(entry => entry.objective === objective);
  }

  /* A rule of another place and a written answer are asked on their page alone. */
  function isAsked(section, objective) {
    return section.dataset.objective === objective && !section.hasAttribute("data-theirs") &&
      !section.classList.contains("kind-written");
  }

  function fromPages(name) {
    const objective = name.replace(/\/[0-9]+$/, "");
    const entry = entryOf(objective);
    return Guidecoat.pagesOf(pathsOf(entry)).then(pages => pages
      .flatMap(page => Guidecoat.all(page, ".question"))
      .filter(section => isAsked(section, objective) && Guidecoat.partOf(entry, section.dataset.item) === name)
      .map(section => ({ id: section.dataset.item, method: section.dataset.method || objective, html: section.outerHTML }))
      .sort((one, other) => one.id < other.id ? -1 : 1));
  }

  function isKept() { return "serviceWorker" in navigator && Boolean(navigator.serviceWorker.controller); }

  /* Promise the questions of a part: [{id, method, html}, ...]. */
  Guidecoat.part = name => {
    const key = "part " + name;
    if (!loading[key]) {
      const ways = isKept() || !Guidecoat.hasParts ? [fromPages, fetched] : [fetched, fromPages];
      loading[key] = Promise.resolve(name).then(ways[0]).catch(() => ways[1](name));
      loading[key].catch(() => { delete loading[key]; });
    }
    return loading[key];
  };

  /* The part of an objective that holds an item; items are sorted, and each part names its first. */
  Guidecoat.partOf = function (entry, item) {
    var place = 0;
    entry.parts.forEach(function (first, number) { if (first <= item) { place = number; } });
    return entry.objective + "/" + (place + 1);
  };

  /* Make the form of a question, ready to be started. */
  Guidecoat.form = function (question, label) {
    var holder = document.createElement("template");
    holder.innerHTML = question.html;
    var section = holder.content.querySelector(".question");
    section.querySelector(".question-name").firstElementChild.textContent = label;
    return document.importNode(section, true);
  };
})();
