/* Loads questions of an objective when they are wanted. What is kept for use without a network are
   the pages, and questions are taken from them. Where nothing is kept yet, and on a memory stick,
   a part comes as a small script of its own. */
"use strict";
Guidecoat.parts = {};

(() => {
  const loading = {};
  let pagesOf = fetchedPages;
  let hasParts = true;

  /* Promise what was promised before under this name, or now; what failed is tried again. */
  function once(name, start) {
    if (!loading[name]) {
      loading[name] = start();
      loading[name].catch(() => { delete loading[name]; });
    }
    return loading[name];
  }

  function scripted(name) {
    return new Promise((done, failed) => {
      const script = document.createElement("script");
      script.src = "parts/" + name.replace(/\/([0-9]+)$/, "-$1") + ".js";
      script.onload = () => { script.remove(); done(Guidecoat.parts[name] || []); };
      script.onerror = () => { script.remove(); failed(new Error(name)); };
      document.head.appendChild(script);
    });
  }

  function fetched(path) {
    return fetch(path).then((answer) => {
      if (!answer.ok) { throw new Error(path + ": " + answer.status); }
      return answer.text();
    }).then((text) => new DOMParser().parseFromString(text, "text/html"));
  }

  function fetchedPages(paths) { return Promise.all(paths.map((path) => once(path, () => fetched(path)))); }

  function pathsOf(entry) {
    const module = entry.objective.split("/")[0];
    return (entry.sheets || [1]).map((sheet) => module + "-questions" + (sheet > 1 ? "-" + sheet : "") + ".html");
  }

  function indexIn(place) {
    const own = place.querySelector("script.parts-index");
    return own ? JSON.parse(own.textContent) : Guidecoat.wholeIndex;
  }

  /* A rule of another place and a written answer are asked on their page alone. */
  function isAsked(section, objective) {
    return section.dataset.objective === objective && !section.hasAttribute("data-theirs") &&
      !section.classList.contains("kind-written");
  }

  function fromPages(name) {
    const objective = name.replace(/\/[0-9]+$/, "");
    const entry = indexIn(document).objectives.find((one) => one.objective === objective);
    return pagesOf(pathsOf(entry)).then((pages) => pages
      .flatMap((page) => Guidecoat.all(page, ".question"))
      .filter((section) => isAsked(section, objective) && Guidecoat.partOf(entry, section.dataset.item) === name)
      .map(({ dataset, outerHTML }) => ({ id: dataset.item, method: dataset.method || objective, html: outerHTML }))
      .sort((one, other) => one.id < other.id ? -1 : 1));
  }

  function isKept() { return "serviceWorker" in navigator && Boolean(navigator.serviceWorker.controller); }

  /* Promise the questions of a part: [{id, method, html}, ...]. */
  Guidecoat.part = (name) => once("part " + name, () => {
    const [first, second] = isKept() || !hasParts ? [fromPages, scripted] : [scripted, fromPages];
    return Promise.resolve(name).then(first).catch(() => second(name));
  });

  /* Take the pages from elsewhere; `other` promises those of file names. No parts lie beside them. */
  Guidecoat.takePagesFrom = (other) => {
    pagesOf = other;
    hasParts = false;
  };

  /* Read the list of objectives and parts: that of the page, or else that of the whole course. */
  Guidecoat.partsIndex = (place) => indexIn(place.closest("article"));

  /* The part of an objective that holds an item; items are sorted, and each part names its first. */
  Guidecoat.partOf = (entry, item) => {
    let place = 0;
    entry.parts.forEach((first, number) => { if (first <= item) { place = number; } });
    return entry.objective + "/" + (place + 1);
  };

  /* Make the form of a question, ready to be started. */
  Guidecoat.form = (question, label) => {
    const holder = document.createElement("template");
    holder.innerHTML = question.html;
    const section = holder.content.querySelector(".question");
    section.querySelector(".question-name").firstElementChild.textContent = label;
    return document.importNode(section, true);
  };
})();
