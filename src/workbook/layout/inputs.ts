import type { SingleFact } from "../../job/facts/fact";
import { USUAL, type Usual } from "../../job/facts/usual";
import type { CellValue, Validation } from "../model";
import { cellAddress, Ref } from "./address";
import { markUsed } from "./conditions";
import { COLUMN, FACTS_SHEET, factRow, readsTape, singleFact } from "./factCells";
import { formatOf } from "./formats";
import { label, remark, unit } from "./forms";
import { yoursName } from "../yoursName";
import { validationFor } from "./inputRule";
import type { InputSpec } from "./inputSpec";
import type { Page } from "./page";
import { addReason } from "./reasons";
import { usedValue } from "./usedValue";

export function addInput(page: Page, spec: InputSpec): Ref {
  const single = page.job.hasFacts ? singleFact(spec.name) : undefined;
  return single ? addFact(page, spec, single.fact) : addPlain(page, spec);
}

/** Text the user makes up needs room; so does a choice among names the user made up. */
function isWide({ kind, choices }: InputSpec): boolean {
  return kind === "text" && (choices === undefined || typeof choices === "string");
}

/** An input that stands for itself: it is no fact, or no sheet of facts fills it. */
function addPlain(page: Page, spec: InputSpec): Ref {
  const { row, job } = page;
  const value = usualValue(job, spec) ?? demoValue(job, spec);
  const ref = inputCell(page, spec, spec.name, value);
  const wide = isWide(spec);
  if (!wide) unit(page, row, spec.kind, spec.unit);
  remark(page, row, wide ? 5 : 4, spec.note);
  if (!spec.optional) page.required.push({ label: spec.label, ref });
  page.row++;
  return ref;
}

function usualValue(job: Page["job"], { name, usual }: InputSpec): CellValue | undefined {
  if (usual !== undefined) return job.pick(usual);
  const single = singleFact(name);
  const known = single && (USUAL as Partial<Record<string, Usual>>)[single.key];
  return known && job.pick(known.value);
}

function demoValue(job: Page["job"], { demo }: InputSpec): CellValue | undefined {
  return job.filled === "demo" && demo !== undefined ? job.pick(demo) : undefined;
}

/** Label and cell to type into, with its rule. */
function inputCell(page: Page, spec: InputSpec, name: string | undefined, value: CellValue | undefined): Ref {
  const { row, job } = page;
  const wide = isWide(spec);
  label(page, row, spec.label);
  const ref = page.put(row, 2, {
    ...(value === undefined ? {} : { value }),
    style: "input",
    look: {
      format: spec.format ?? formatOf(spec.kind, job.system),
      align: spec.kind === "text" ? "left" : "right",
      ...(wide ? { wrap: true } : {}),
    },
    ...(spec.unit === undefined ? { kind: spec.kind } : {}),
    ...(name ? { name } : {}),
    ...(wide ? { across: 3 } : {}),
  });
  if (wide && typeof value === "string") page.fitHeight(row, value, page.charactersAcross(2, 3));
  const rule = validationFor(page, { top: row, left: 2, bottom: row, right: 2 }, spec);
  page.sheet.validations.push({ ...rule, ...leniency(page.job, spec, rule) });
  return ref;
}

/** Numbers of facts are never refused: the row itself says what is wrong. Texts are what a tape says where it measures. */
function leniency(job: Page["job"], { name }: InputSpec, { kind }: Validation): Pick<Validation, "lenient"> {
  const single = job.hasFacts ? singleFact(name) : undefined;
  if (!single || (kind !== "decimal" && kind !== "whole")) return {};
  return { lenient: readsTape(single.fact) ? "silent" : "warns" };
}

/**
 * A fact in one row: what is typed, its unit, what is used, and why. A text takes the room of the used value, which then
 * stands on the sheet of facts alone.
 */
function addFact(page: Page, spec: InputSpec, fact: SingleFact): Ref {
  const { row, job } = page;
  const { name } = fact;
  const wide = isWide(spec);
  const yours = inputCell(page, spec, yoursName(name), demoValue(job, spec));
  const format = spec.format ?? formatOf(spec.kind, job.system);
  const note = spec.note === undefined ? "" : job.pick(spec.note);
  job.inputs.set(name, { label: spec.label, yours, wide, format, note });
  const used = wide
    ? new Ref(FACTS_SHEET, factRow(name), COLUMN.used, factRow(name), COLUMN.used, name)
    : page.put(row, 4, {
        formula: usedValue(fact, { typed: cellAddress(row, 2), on: page.name, system: job.system }),
        style: spec.kind === "text" ? "resultText" : "result",
        look: { format: spec.kind === "text" ? "General" : format },
        ...(spec.unit === undefined ? { kind: spec.kind } : {}),
        name,
      });
  if (!wide) {
    unit(page, row, spec.kind, spec.unit);
    for (const choice of offered(page, spec)) page.fitHeight(row, choice, page.charactersAcross(4, 1));
  }
  addReason(page, { name, usual: [note, because(name, job)], remark: spec.remark });
  if (!wide) markUsed(page, row, { yours: 2, used: 4, reason: 5 });
  if (!spec.optional) page.required.push({ label: spec.label, ref: used });
  page.row++;
  return used;
}

function offered(page: Page, { choices }: InputSpec): readonly string[] {
  return choices === undefined || typeof choices === "string" ? [] : page.job.pick(choices);
}

/** The words beside a value that is taken for a fact: "assumed: rule of thumb". */
function because(name: string, job: Page["job"]): string {
  const single = singleFact(name);
  const known = single && (USUAL as Partial<Record<string, Usual>>)[single.key];
  return known ? `${known.invented ? "invented" : "assumed"}: ${job.pick(known.reason)}` : "";
}
