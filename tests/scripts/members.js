/* Which members of the shared name each script makes and uses: read from its text, and watched while
   it is loaded. */
import vm from "node:vm";
import { page, text } from "./harness.js";

function code(file) { return text(file).replace(/\/\*[^]*?\*\//g, ""); }

function matches(found, pattern) { return [...found.matchAll(pattern)].map((one) => one[1]); }

/* The members that a script assigns, and all others that it names. */
export function written(file) {
  const found = code(file);
  const makes = new Set(matches(found, /\bGuidecoat\.(\w+) = /g));
  const taken = matches(found, /const \{([^}]*)\} = Guidecoat;/g)
    .flatMap((names) => names.split(",").map((name) => name.split(":")[0].trim()));
  const uses = new Set([...matches(found, /\bGuidecoat\.(\w+)/g), ...taken]);
  return { makes, uses: new Set([...uses].filter((name) => !makes.has(name))) };
}

/* What each file takes from others while it is loaded: [{file, name, from}]; `from` is the file that
   made it, or "" where none has yet. Stops with the error of a script that cannot go on. */
export function loaded(files, present) {
  const context = page({ present });
  const makers = new Map();
  const taken = [];
  let held = null;
  let file = "";
  Object.defineProperty(context, "Guidecoat", {
    get: () => held,
    set: (value) => {
      held = new Proxy(value, {
        get: (target, name) => {
          if (makers.get(name) !== file) { taken.push({ file, name, from: makers.get(name) || "" }); }
          return target[name];
        },
        set: (target, name, made) => {
          if (!makers.has(name)) { makers.set(name, file); }
          target[name] = made;
          return true;
        }
      });
    }
  });
  for (file of files) { vm.runInContext(text(file), context, { filename: file + ".js" }); }
  return taken;
}

/* Files that need one another, straight or by others: the first such round, or []. */
export function round(needs) {
  const done = new Set();
  function walk(file, path) {
    if (path.includes(file)) { return [...path.slice(path.indexOf(file)), file]; }
    if (done.has(file)) { return []; }
    const found = [...needs.get(file)].map((other) => walk(other, [...path, file])).find((one) => one.length);
    done.add(file);
    return found || [];
  }
  return [...needs.keys()].map((file) => walk(file, [])).find((one) => one.length) || [];
}
