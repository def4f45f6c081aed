/* Holds the first picture until the typefaces are there, so that no line moves afterwards.
   Where they take too long, this page keeps to the device's own type and the next one has them. */
"use strict";

(() => {
  const LONGEST_WAIT = 700;
  const FACES = ['700 1em "Hepta Slab"', '400 1em "Familjen Grotesk"', '700 1em "Familjen Grotesk"',
    '400 1em "Sometype Mono"', '700 1em "Sometype Mono"', '400 1em "Guidecoat Symbols"'];
  const PLACE = "guidecoat-place " + location.pathname;
  const root = document.documentElement;

  function loaded(face) { return document.fonts.load(face, "a\u2713"); }

  /* The page is laid out once, with the right type. The browser could not go to a place before,
     nor back to where the reader was. */
  function show(className) {
    root.classList.remove("waiting");
    if (className) { root.classList.add(className); }
    const down = left();
    const place = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (down) { window.scrollTo(0, down); } else if (place) { place.scrollIntoView(); }
  }

  /* How far down this page was left, for a reader who comes back or loads it again. */
  function left() {
    const [visit] = /** @type {PerformanceNavigationTiming[]} */ (performance.getEntriesByType("navigation"));
    try {
      return visit && visit.type !== "navigate" ? Number(sessionStorage.getItem(PLACE)) : 0;
    } catch {
      return 0;
    }
  }

  function leave() {
    try {
      sessionStorage.setItem(PLACE, String(Math.round(window.scrollY)));
    } catch {
      return;
    }
  }

  /* What is on the screen already must not go away again. */
  if (!document.fonts || performance.getEntriesByType("paint").length) { return; }
  root.classList.add("waiting");
  window.addEventListener("pagehide", leave);
  const late = setTimeout(() => { show("plain-type"); }, LONGEST_WAIT);
  Promise.all(FACES.map(loaded)).catch(() => {}).then(() => {
    clearTimeout(late);
    if (root.classList.contains("waiting")) { show(""); }
  });
})();
