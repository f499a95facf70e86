import eslintJs from "@eslint/js";
import typescript from "@typescript-eslint/eslint-plugin";
import parser from "@typescript-eslint/parser";
import office from "eslint-plugin-office-addins";

/** Folders of src from the ground up; none may import one that stands above it. */
const ABOVE_CALC = ["functions", "workbook", "host", "taskpane", "bench", "cli", "help", "site"];
const ABOVE_FUNCTIONS = ["workbook", "host", "taskpane", "bench", "cli", "site"];
const ABOVE_HOST = ["taskpane", "bench", "cli", "site"];

const importsNothingOf = (folders, message) => ({
  "no-restricted-imports": ["error", { patterns: [{ regex: `^(\\.\\./)+(${folders.join("|")})(/|$)`, message }] }],
});

const throughThePort = "only src/host/excel talks to Excel; everything else goes through the port of src/host";
const hostGlobals = ["Excel", "OfficeExtension"].map((name) => ({ name, message: throughThePort }));

export default [
  { ignores: ["dist/", "node_modules/", "templates/"] },
  eslintJs.configs.recommended,
  ...typescript.configs["flat/recommended"],
  {
    files: ["**/*.ts", "**/*.mts"],
    languageOptions: { parser, parserOptions: { projectService: true } },
    rules: {
      // The compiler knows the globals of every file; this rule does not.
      "no-undef": "off",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      "@typescript-eslint/consistent-type-imports": ["error", { disallowTypeAnnotations: false }],
    },
  },
  {
    files: ["**/*.js"],
    languageOptions: { globals: { URL: "readonly" } },
  },
  {
    rules: {
      eqeqeq: "error",
      "no-eval": "error",
      "no-implied-eval": "error",
      "no-new-func": "error",
      "no-var": "error",
      "prefer-const": "error",
      "no-restricted-globals": ["error", ...hostGlobals],
      // The rule above sees values only; this one sees types such as Excel.Range.
      "no-restricted-syntax": [
        "error",
        { selector: "TSQualifiedName[left.name=/^(Excel|OfficeExtension)$/]", message: throughThePort },
      ],
    },
  },
  { files: ["src/**"], ignores: ["src/cli/**", "src/site/**"], rules: { "no-console": "error" } },
  {
    files: ["src/calc/**"],
    rules: {
      ...importsNothingOf(ABOVE_CALC, "calc imports nothing above it"),
      "no-restricted-globals": [
        "error",
        ...hostGlobals,
        ...["Office", "CustomFunctions", "document", "window", "navigator", "fetch", "process"].map((name) => ({
          name,
          message: "the calculations know no host, no page and no machine",
        })),
      ],
    },
  },
  { files: ["src/functions/**"], rules: importsNothingOf(ABOVE_FUNCTIONS, "the functions stand on calc alone") },
  { files: ["src/host/**"], rules: importsNothingOf(ABOVE_HOST, "the port knows neither pane nor bench") },
  {
    files: ["src/host/excel/**"],
    plugins: { "office-addins": office },
    rules: {
      "no-restricted-globals": "off",
      "no-restricted-syntax": "off",
      ...Object.fromEntries(Object.keys(office.rules).map((rule) => [`office-addins/${rule}`, "error"])),
    },
  },
];
