import type { Declaration } from "../functions/contract/declaration";
import { functionPath } from "./functionPage";
import { html, type Html } from "./html";
import type { Page } from "./layout";

/** A number of the workbook that is calculated, and what its formula rests on. */
export interface NumberSource {
  readonly sheet: string;
  readonly cell: string;
  readonly label: string;
  /** Its defined name. */
  readonly name?: string;
  readonly formula: string;
  /** Other rows with the same. */
  readonly more: number;
  readonly source?: string;
  /** Worksheet functions in it, each of which states its own source. */
  readonly functions: readonly string[];
}

/** Where each number of the workbook comes from, sheet by sheet. */
export function numbersPage(catalogue: readonly Declaration[], numbers: readonly NumberSource[]): Page {
  const sheets = [...new Set(numbers.map(({ sheet }) => sheet))];
  const sourceOf = new Map(catalogue.map(({ name, source }) => [name, source]));
  return {
    path: "help/numbers.html",
    title: "Where each number comes from",
    about: "Every number that the workbook calculates, with its formula and what the formula rests on.",
    body: html`
      <p>
        Listed by sheet: what a number is called, its cell, the name that Excel shows in its name box, the formula, and what
        the formula rests on. Cells are those of the demo in US units; the metric workbook differs in its unit factors.
        Plain sums, counts, and cells that only read others are left out.
      </p>
      <p>
        <strong>By definition</strong> means that it could not be otherwise. <strong>Common practice, no source</strong>
        means a rule of thumb: yours may be better.
      </p>
      <search class="search" hidden>
        <label for="search">Find a number</label>
        <input id="search" type="search" autocomplete="off" spellcheck="false" data-of="numbers" />
        <p id="found" role="status"></p>
      </search>
      ${sheets.map(
        (sheet) =>
          html` <section class="topic" aria-labelledby="sheet-${sheet}">
            <h2 id="sheet-${sheet}">${sheet}</h2>
            <ul class="numbers">
              ${numbers.filter((one) => one.sheet === sheet).map((one) => entry(one, sourceOf))}
            </ul>
          </section>`,
      )}
    `,
  };
}

function entry(number: NumberSource, sourceOf: ReadonlyMap<string, string>): Html {
  const { sheet, cell, label, name, formula, more, source, functions } = number;
  const own = functions.map(
    (one) =>
      html`<br /><a href="${functionPath(one).replace("help/", "")}">RILL.${one}</a>: ${sourceOf.get(one) ?? ""}`,
  );
  return html` <li data-words="${sheet}">
    <strong>${label}</strong> <span class="from">${cell}${name !== undefined && ` · ${name}`}${rows(more)}</span><br />
    <code>${formula}</code>
    ${source !== undefined && html`<br />${source.charAt(0).toUpperCase() + source.slice(1)}.`} ${own}
  </li>`;
}

function rows(more: number): string {
  return more === 0 ? "" : ` and ${more} more ${more === 1 ? "cell" : "cells"}`;
}
