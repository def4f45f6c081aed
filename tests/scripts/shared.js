/* What the Python tests hand over: vectors of both markers, the generated units, the bundles. */
import { readFileSync } from "node:fs";

const FOLDER = process.env.GUIDECOAT_SHARED;

/* Options of a test that needs it: skipped, with the reason, where Node was started alone. */
export const needsShared = FOLDER ? {} : { skip: "needs what `pytest tests/scripts` writes" };

function read(name) { return FOLDER ? readFileSync(`${FOLDER}/${name}`, "utf8") : ""; }

export const units = read("units.js");

export function shared(name) { return JSON.parse(read(`${name}.json`)); }
