import { readUnitSystem, type UnitSystem } from "../calc/quantity/unitSystem";
import { GLANCE } from "./glance";
import { VERDICT } from "./layout";
import { unitOf } from "./layout/formats";
import type { CellValue } from "./model";
import type { Recalculated } from "./recalculate";

/** What a workbook says of its job. */
export interface Summary {
  readonly job: string;
  readonly units: UnitSystem;
  /** What keeps the price back; "" where it is complete. */
  readonly standing: string;
  /** What keeps the quote a draft; "" where it may be signed. */
  readonly draft: string;
  readonly results: readonly {
    readonly name: string;
    readonly label: string;
    readonly value: CellValue;
    readonly unit: string;
  }[];
  readonly checks: readonly {
    readonly label: string;
    readonly verdict: string;
    readonly where: string;
    readonly cure: string;
  }[];
  /** Cells in error, with the reason where it is known. */
  readonly errors: readonly { readonly cell: string; readonly error: string; readonly reason: string }[];
}

/** Reads the summary off a recalculated workbook; undefined where it is not one of ours. */
export function summarize(calculated: Recalculated): Summary | undefined {
  const single = (name: string): CellValue | undefined => calculated.named(name)?.[0]?.[0];
  const units = single("Units");
  if (units !== "US" && units !== "SI") return undefined;
  const system = readUnitSystem(units);
  const currency = String(single("Currency") ?? "");
  return {
    job: String(single("JobName") ?? ""),
    units: system,
    standing: String(single("PriceStanding") ?? ""),
    draft: String(single("QuoteDraft") ?? ""),
    results: GLANCE.flatMap(({ name, label, kind }) => {
      const value = single(name);
      const unit = unitOf(kind, system).replace("=Currency", currency);
      return value === undefined ? [] : [{ name, label, value, unit }];
    }),
    checks: (calculated.named("Checks") ?? []).map(([label = "", , , , verdict = "", where = "", cure = ""]) => ({
      label: String(label),
      verdict: String(verdict),
      where: String(where),
      cure: String(cure),
    })),
    errors: [...calculated.results].flatMap(([cell, result]) => {
      const error = [result].flat(2).find((value) => typeof value === "string" && /^#[A-Z/0!?]+$/.test(value));
      return error === undefined ? [] : [{ cell, error: String(error), reason: calculated.reasons.get(cell) ?? "" }];
    }),
  };
}

/** The summary as a page of text. */
export function summaryText({ job, units, draft, results, checks, errors }: Summary): string {
  const width = Math.max(0, ...results.map(({ label }) => label.length));
  const open = checks.filter(({ verdict }) => verdict !== VERDICT.ok);
  return [
    `${job || "A job without a name"} (${units === "US" ? "US units" : "metric units"})`,
    "",
    ...results.map(({ label, value, unit }) =>
      `${label.padEnd(width)}  ${shown(value)} ${typeof value === "number" ? unit : ""}`.trimEnd(),
    ),
    "",
    draft === "" ? "The quote is ready to sign." : draft,
    "",
    `Checks: ${checks.length - open.length} passed, ${open.length} to see to`,
    ...open.map(({ label, verdict, where, cure }) => `  ${verdict.padEnd(7)} ${label} (${where}): ${cure}`),
    ...(errors.length > 0 ? ["", `Cells in error: ${errors.length}`] : []),
    ...errors.map(({ cell, error, reason }) => `  ${cell}  ${error}  ${reason}`.trimEnd()),
  ].join("\n");
}

function shown(value: CellValue): string {
  if (value === "") return "(to fill)";
  return typeof value === "number" ? value.toLocaleString("en-US", { maximumFractionDigits: 2 }) : String(value);
}
