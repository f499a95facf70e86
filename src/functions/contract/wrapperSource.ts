import type { Argument } from "./argument";
import type { Declaration, Topic } from "./declaration";
import { exampleCall } from "./exampleCall";

/** Where the help pages live until a build names another base address. */
export const HELP_BASE = "https://localhost:3000/help";

/** Excel and the store cut or refuse longer descriptions. */
export const LONGEST_DESCRIPTION = 128;

/** What Excel shows for an argument: what it is, its unit in both systems and its default. */
export function describeArgument(argument: Argument<unknown>): string {
  const us = argument.rule("US");
  const si = argument.rule("SI");
  const units = us === si ? us : `${us} | ${si}`;
  const parts = [units, argument.fallback ? `blank: ${argument.fallback}` : ""].filter(Boolean).join("; ");
  const full = `${argument.about} (${parts})`;
  if (full.length <= LONGEST_DESCRIPTION) return full;
  // The range and the choices are in the help page; the name and unit must fit.
  const unitOnly = argument.measure ? `${us.split(",")[0]} | ${si.split(",")[0]}` : "";
  const without = [unitOnly, argument.fallback ? `blank: ${argument.fallback}` : ""].filter(Boolean).join("; ");
  const shorter = [`${argument.about} (${without})`, unitOnly ? `${argument.about} (${unitOnly})` : argument.about];
  return (
    shorter.find((text) => text.length <= LONGEST_DESCRIPTION && !text.endsWith("()")) ??
    argument.about.slice(0, LONGEST_DESCRIPTION)
  );
}

/** The source text of a topic's worksheet wrappers, from its declarations. */
export function wrapperSource(
  topic: Topic,
  declarations: readonly Declaration[],
  importPaths: ReadonlyMap<string, string>,
): string {
  const imports = declarations.map(
    (d) => `import { ${d.name} as ${declared(d)} } from "${importPaths.get(d.name) ?? ""}";`,
  );
  return [
    `// Written by "npm run generate" from the declarations of the topic "${topic}"; change those, not this file.`,
    "/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */",
    `import { callFromSheet } from "../contract/report";`,
    ...imports,
    "",
    ...declarations.map(wrapper),
  ].join("\n");
}

function declared(declaration: Declaration): string {
  return `declared${declaration.name}`;
}

function wrapper(declaration: Declaration): string {
  const { name, args, result } = declaration;
  const entries = Object.entries(args);
  const parameters = entries.map(([key, a]) => `${key}${a.optional ? "?" : ""}: ${a.hostType}`);
  const lines = [
    declaration.summary,
    `@customfunction ${name}`,
    `@helpurl ${HELP_BASE}/${name.toLowerCase()}.html`,
    ...entries.map(([key, a]) => `@param ${a.optional ? `[${key}]` : key} ${describeArgument(a)}`),
    `@returns ${capital(result.about)}.`,
    `@remarks Formula: ${declaration.formula}. Limits: ${declaration.limits}`,
    ...(declaration.caution ? [`@remarks Caution: ${declaration.caution}`] : []),
    `@remarks Source: ${declaration.source}`,
    ...declaration.examples.map((example) => `@example =RILL.${exampleCall(name, example.args)}`),
  ];
  return [
    "/**",
    ...lines.map((line) => ` * ${line.replace(/\*\//g, "* /").replace(/\s+/g, " ")}`),
    " */",
    `export function ${name}(${parameters.join(", ")}): ${result.hostType} {`,
    `  return callFromSheet(${declared(declaration)}, [${entries.map(([key]) => key).join(", ")}])${tableCast(result.hostType)};`,
    "}",
    "",
  ].join("\n");
}

/** The host's table type says "any"; what comes is a table of cells. */
function tableCast(hostType: string): string {
  return hostType === "any[][]" ? " as any[][]" : "";
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
