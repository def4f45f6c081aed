/* Loads scripts of the theme into a page that is no more than names: enough for the pure cores and
   for what every file does while it is loaded. */
import { readFileSync } from "node:fs";
import vm from "node:vm";

export const SCRIPTS = new URL("../../site_theme/assets/js/", import.meta.url);

export function text(file) { return readFileSync(new URL(file + ".js", SCRIPTS), "utf8"); }

/* An object that has every property and may be called; as a text it is an empty record. */
function anything() {
  const known = { then: undefined, length: 0, firstChild: null, [Symbol.iterator]: [][Symbol.iterator].bind([]) };
  known[Symbol.toPrimitive] = () => "{}";
  return new Proxy(() => {}, {
    get: (unused, name) => name in known ? known[name] : anything(),
    set: () => true,
    apply: () => anything()
  });
}

function storage(texts) {
  const kept = new Map(Object.entries(texts));
  return {
    getItem: (key) => kept.has(key) ? kept.get(key) : null,
    setItem: (key, value) => { kept.set(key, String(value)); },
    removeItem: (key) => { kept.delete(key); }
  };
}

function events() {
  const listeners = [];
  return {
    addEventListener: (name, heard) => { listeners.push([name, heard]); },
    dispatchEvent: (event) => {
      listeners.filter(([name]) => name === event.type).forEach(([, heard]) => { heard(event); });
      return true;
    }
  };
}

/* Make a page; `present` names the selectors that find something in it, "*" that each finds one. */
export function page({ stored = {}, present = [] } = {}) {
  const found = (selector) => present.includes(selector) || present.includes("*") ? anything() : null;
  const window = {
    ...events(),
    Event, setTimeout: () => 0, clearTimeout() {}, setInterval: () => 0,
    localStorage: storage(stored),
    location: { protocol: "file:", hash: "", pathname: "/index.html" },
    navigator: {}, history: { state: null },
    performance: { getEntriesByType: () => [] },
    matchMedia: () => ({ matches: false }),
    scrollTo() {},
    indexedDB: anything(),
    guidecoatSearchList: { entries: [], names: [] },
    document: {
      ...events(),
      querySelector: found,
      querySelectorAll: (selector) => present.includes(selector) ? [anything()] : [],
      getElementById: () => null,
      documentElement: anything(), body: anything(), head: anything(),
      createElement: anything
    }
  };
  window.window = window;
  return vm.createContext(window);
}

/* Load files into a page one after the other, as the page itself does. */
export function load(context, files) {
  for (const file of files) { vm.runInContext(text(file), context, { filename: file + ".js" }); }
  return context.Guidecoat;
}

/* The shared name after these files were loaded; `units` is the generated script. */
export function guidecoat(files, { units = "", today = null, ...rest } = {}) {
  const context = page(rest);
  const made = load(context, ["elements", ...files]);
  if (units) { vm.runInContext(units, context); }
  if (today !== null) { made.today = () => today; }
  return made;
}

/* What a page's script gave, as a value of this side. */
export function plain(value) {
  return JSON.parse(JSON.stringify(value, (unused, part) => typeof part === "bigint" ? String(part) : part));
}
