/* Keeps a published course on this device, and says when a new edition is there.
   Nothing changes under a learner's hands: the new edition comes in when its button is pressed. */
"use strict";

(() => {
  const { element, button } = Guidecoat;
  const worker = document.querySelector('meta[name="offline"]');
  const overHttp = location.protocol.startsWith("http");

  /* From a memory stick there is nothing to install, and the browser would only complain. */
  if (!overHttp) {
    document.querySelectorAll('link[rel="manifest"]').forEach((link) => { link.remove(); });
  }
  if (!overHttp || !("serviceWorker" in navigator)) { return; }

  function say(place, text) { place.appendChild(element("p", "", text)); }

  function use(registration) {
    if (!registration.waiting) { location.reload(); return; }
    navigator.serviceWorker.addEventListener("controllerchange", () => { location.reload(); });
    registration.waiting.postMessage("use this edition");
  }

  function announce(registration) {
    const place = document.querySelector(".edition");
    if (place.firstChild) { return; }
    const box = element("div", "edition-box");
    say(box, "There is a new edition of this course. Finish what you are doing first: " +
      "the page will reload. Your panel stays as it is.");
    box.append(
      button("", "Use the new edition", () => { use(registration); }),
      button("plain", "Later", () => {
        place.textContent = "";
        document.documentElement.classList.remove("has-edition-box");
      }));
    place.appendChild(box);
    document.documentElement.classList.add("has-edition-box");
  }

  /* A worker that waits beside a working one is a new edition; the very first one does not wait. */
  function watch(registration) {
    function look() {
      if (registration.waiting && navigator.serviceWorker.controller) { announce(registration); }
    }
    /* One that never got as far as waiting was not stored: no room, or the network went away. */
    function missed(coming) {
      if (coming.state !== "redundant" || !navigator.serviceWorker.controller) { return; }
      const place = document.querySelector(".kept");
      place.textContent = "";
      say(place, "A newer edition could not be stored on this device. What you read here is the " +
        "earlier one: make some room, then open the course again.");
    }
    function follow(coming) {
      if (!coming) { return; }
      let stored = false;
      coming.addEventListener("statechange", () => {
        look();
        stored = stored || coming.state === "installed";
        if (!stored) { missed(coming); }
      });
    }
    look();
    follow(registration.installing);
    registration.addEventListener("updatefound", () => { follow(registration.installing); });
    document.addEventListener("visibilitychange", () => {
      if (!document.hidden) { registration.update().catch(() => {}); }
    });
  }

  function unregisterAll() {
    navigator.serviceWorker.getRegistrations().then((found) => {
      found.forEach((registration) => { registration.unregister(); });
    }).catch(() => {});
  }

  /* A live preview names no worker and must not be kept. */
  window.addEventListener("load", () => {
    if (!worker) { return; }
    if (!worker.content) { unregisterAll(); return; }
    navigator.serviceWorker.register(worker.content).then(watch).catch(() => {});
    navigator.serviceWorker.ready.then(() => {
      const place = document.querySelector(".kept");
      if (!place.firstChild) { say(place, "Kept on this device: the course opens without a network."); }
    });
  });
})();
