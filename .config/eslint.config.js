import eslintJs from "@eslint/js";
import typescript from "@typescript-eslint/eslint-plugin";
import parser from "@typescript-eslint/parser";
import office from "eslint-plugin-office-addins";

/** The floors of the house: which folders of src each may import. cli and site stand on top and may import all. */
const FLOORS = {
  calc: [],
  functions: ["calc", "book", "job"],
  csv: ["calc"],
  drawing: ["calc"],
  xlsx: [],
  host: ["xlsx"],
  book: ["calc"],
  job: ["calc", "book"],
  workbook: ["calc", "functions", "csv", "xlsx", "book", "job"],
  help: ["calc", "functions"],
  taskpane: ["calc", "functions", "csv", "drawing", "xlsx", "host", "book", "job", "workbook"],
  papers: ["calc", "book", "job", "functions", "drawing", "host", "workbook", "taskpane"],
  bench: ["calc", "functions", "csv", "drawing", "xlsx", "host", "book", "job", "workbook", "taskpane"],
  company: ["calc", "csv", "xlsx", "book", "job", "workbook", "taskpane", "bench"],
};
const ALL = [...Object.keys(FLOORS), "cli", "site"];

/** The floors inside src/bench: its folders, and those beside them that each may import. */
const BENCH_FLOORS = {
  work: [],
  typing: [],
  reading: ["work"],
  saving: ["work"],
  keeping: ["work"],
  calculation: ["work"],
  firstLook: ["work", "reading", "keeping"],
  grid: ["work", "typing", "reading", "keeping", "calculation", "firstLook"],
  page: ["work", "typing", "reading", "saving", "keeping", "calculation", "firstLook", "grid"],
};

/** What a folder may not import: the floors above it, and inside the bench the folders above it. */
function refused(folder, floors, allowed, climb, ending = "") {
  const above = floors.filter((other) => other !== folder.split("/").at(-1) && !allowed.includes(other));
  const message = `src/${folder} may import only ${allowed.length > 0 ? allowed.join(", ") : "itself"}`;
  return { regex: `^${climb}(${above.join("|")})(/|$)${ending}`, message };
}

const ofFloor = (floor) => refused(floor, ALL, FLOORS[floor], "(\\.\\./)+", "(?!.*\\.css$)");
const keep = (folder, patterns) => ({
  files: [`src/${folder}/**`],
  rules: { "no-restricted-imports": ["error", { patterns }] },
});
const floorRules = [
  ...Object.keys(FLOORS).map((floor) => keep(floor, [ofFloor(floor)])),
  ...Object.entries(BENCH_FLOORS).map(([folder, allowed]) =>
    keep(`bench/${folder}`, [
      ofFloor("bench"),
      refused(`bench/${folder}`, Object.keys(BENCH_FLOORS), allowed, "\\.\\./"),
    ]),
  ),
];

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
    files: ["src/calc/**", "src/book/**", "src/job/**"],
    rules: {
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
  ...floorRules,
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
