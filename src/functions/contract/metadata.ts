import type { Argument } from "./argument";
import type { Declaration } from "./declaration";

/** Where the help pages live until a build names another base address. */
export const HELP_BASE = "https://localhost:3000/help";

/** Excel and the store cut or refuse longer descriptions. */
export const LONGEST_DESCRIPTION = 128;

/** The host's function metadata, functions.json. */
export interface FunctionsJson {
  /** A cell's rich value reaches a function as the host has it, instead of being refused on the way. */
  readonly allowCustomDataForDataTypeAny: boolean;
  /** An error cell reaches the function, which can say which cell to fix; without it the host answers alone. */
  readonly allowErrorForDataTypeAny: boolean;
  readonly functions: readonly FunctionMetadata[];
}

interface FunctionMetadata {
  readonly description: string;
  readonly helpUrl: string;
  readonly id: string;
  readonly name: string;
  readonly parameters: readonly {
    readonly description: string;
    readonly dimensionality?: "matrix";
    readonly name: string;
    readonly optional?: true;
    readonly type: "any";
  }[];
  readonly result: { readonly dimensionality?: "matrix" };
}

/** What Excel is told of the functions, from their declarations. */
export function functionsJson(declarations: readonly Declaration[]): FunctionsJson {
  return {
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
    functions: declarations.map(metadataOf),
  };
}

function metadataOf({ name, summary, args, result }: Declaration): FunctionMetadata {
  return {
    description: summary,
    helpUrl: `${HELP_BASE}/${name.toLowerCase()}.html`,
    id: name,
    name,
    parameters: Object.entries(args).map(([key, argument]) => ({
      description: describeArgument(argument),
      ...(argument.hostType === "any[][]" ? { dimensionality: "matrix" as const } : {}),
      name: key,
      ...(argument.optional ? { optional: true as const } : {}),
      type: "any" as const,
    })),
    result: result.hostType === "any[][]" ? { dimensionality: "matrix" } : {},
  };
}

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
