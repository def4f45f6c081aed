/* One file of the theme is a plain script in the page; the files beside this one run in Node. */
const everywhere = {
  "array-callback-return": "error",
  "arrow-body-style": ["error", "as-needed"],
  complexity: ["error", 12],
  "consistent-return": "error",
  curly: ["error", "all"],
  "default-case-last": "error",
  eqeqeq: "error",
  "max-len": ["error", { code: 120, ignoreRegExpLiterals: true }],
  "max-lines": ["error", 200],
  "no-cond-assign": "error",
  "no-console": "error",
  "no-const-assign": "error",
  "no-dupe-args": "error",
  "no-dupe-else-if": "error",
  "no-dupe-keys": "error",
  "no-duplicate-case": "error",
  "no-else-return": "error",
  "no-empty-character-class": "error",
  "no-eval": "error",
  "no-extra-semi": "error",
  "no-fallthrough": "error",
  "no-func-assign": "error",
  "no-implied-eval": "error",
  "no-loop-func": "error",
  "no-promise-executor-return": "off",
  "no-self-assign": "error",
  "no-shadow": ["error", { builtinGlobals: false }],
  "no-sparse-arrays": "error",
  "no-template-curly-in-string": "error",
  "no-throw-literal": "error",
  "no-undef": "error",
  "no-unreachable": "error",
  "no-unused-expressions": "error",
  "no-unused-vars": ["error", { argsIgnorePattern: "^unused" }],
  "no-use-before-define": ["error", { functions: false, variables: false }],
  "no-useless-escape": "error",
  "no-var": "error",
  "object-shorthand": "error",
  "one-var": ["error", "never"],
  "prefer-arrow-callback": "error",
  "prefer-const": "error",
  "prefer-spread": "error",
  quotes: ["error", "double", { avoidEscape: true }],
  semi: ["error", "always"],
  strict: ["error", "global"],
  "valid-typeof": "error"
};

function readOnly(names) { return Object.fromEntries(names.split(" ").map((name) => [name, "readonly"])); }

export default [
  {
    files: ["**/assets/js/*.js"],
    languageOptions: {
      ecmaVersion: 2020,
      sourceType: "script",
      globals: readOnly("Guidecoat window document location history navigator performance localStorage " +
        "sessionStorage indexedDB setTimeout clearTimeout setInterval URL Blob FileReader Event CustomEvent Element " +
        "fetch DOMParser")
    },
    rules: { ...everywhere, "no-implicit-globals": "error" }
  },
  {
    files: ["**/tests/scripts/*.js"],
    languageOptions: {
      ecmaVersion: 2022,
      sourceType: "module",
      globals: readOnly("process URL setTimeout Event")
    },
    rules: { ...everywhere, strict: "off" }
  }
];
