/* The course in one file: shows one page at a time, each laid out fresh as if it had been loaded.
   Without script the same pages stand below one another. */
"use strict";

(() => {
  const MARK = "--";
  const main = document.querySelector("main");
  const pages = {};
  let shown = null;
  let first = "";

  document.querySelectorAll(".one-page").forEach((section) => {
    pages[section.id] = section;
    first = first || section.id;
    section.remove();
  });

  /* Questions of a mixed check are taken from the pages that hold them. */
  Guidecoat.takePagesFrom((paths) => Promise.resolve(paths.map((path) => pages[path.replace(/\.html$/, "")])));

  function named(hash) { return decodeURIComponent(hash.slice(1)).split(MARK)[0]; }

  function markCurrent(name) {
    document.querySelectorAll(".bar a").forEach((link) => {
      if (link.getAttribute("href") === "#" + name) { link.setAttribute("aria-current", "page"); }
      else { link.removeAttribute("aria-current"); }
    });
  }

  function lay(name) {
    const old = main.querySelector(".one-page");
    if (old) { old.remove(); }
    main.appendChild(pages[name].cloneNode(true));
    document.title = pages[name].dataset.title;
    shown = name;
    markCurrent(name);
    Guidecoat.startPage();
  }

  function go(moved) {
    const name = named(location.hash) || first;
    if (shown !== null && !pages[name]) { return; }
    if (name !== shown) { lay(pages[name] ? name : first); }
    const place = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (place && place.id !== shown) { place.scrollIntoView(); } else { window.scrollTo(0, 0); }
    if (moved) { main.focus({ preventScroll: true }); }
  }

  /* Links that scripts make name a page by its file. */
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element && event.target.closest("a[href]");
    const found = link && /^([a-z0-9_-]+)\.html(?:#(.*))?$/.exec(link.getAttribute("href"));
    if (!found || !pages[found[1]]) { return; }
    event.preventDefault();
    location.hash = found[1] + (found[2] ? MARK + found[2] : "");
  });
  window.addEventListener("hashchange", () => { go(true); });
  go(false);
})();
