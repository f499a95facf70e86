import { unitLabel } from "../calc/quantity/measures";
import { plain } from "../calc/problem";
import { inWords, type Argument, type Arguments } from "../functions/contract/argument";
import type { Declaration, Example } from "../functions/contract/declaration";
import type { Column, Value } from "../functions/contract/result";
import { exampleCall } from "../functions/contract/exampleCall";
import { html, type Html } from "./html";
import type { Page } from "./layout";

/** Where a function's page stands: the address that its helpUrl names. */
export function functionPath(name: string): string {
  return `help/${name.toLowerCase()}.html`;
}

/** The help of one function, all of it from its declaration. */
export function functionPage(declaration: Declaration): Page {
  const { name, summary, args, formula, limits, source, caution, examples } = declaration;
  return {
    path: functionPath(name),
    title: `RILL.${name}`,
    about: summary,
    body: html`
      <p class="summary">${summary}</p>
      <p class="call"><code>=RILL.${name}(${signature(args)})</code></p>
      ${caution !== undefined && html`<p class="caution"><strong>Caution.</strong> ${caution}</p>`}
      <h2>Arguments</h2>
      ${argumentTable("What to put between the brackets; those in [brackets] may be left out", args)}
      ${Object.entries(args).map(([key, argument]) => columnsOf(key, argument))}
      <h2>Result</h2>
      ${resultOf(declaration)}
      <h2>How it is worked out</h2>
      <p class="formula">${formula}</p>
      <p><strong>Source:</strong> ${source}</p>
      <h2>How far to trust it</h2>
      <p>${limits}</p>
      <h2>${examples.length === 1 ? "Worked example" : "Worked examples"}</h2>
      ${examples.map((example) => worked(declaration, example))}
    `,
  };
}

function signature(args: Arguments): string {
  return Object.entries(args)
    .map(([key, argument]) => (argument.optional ? `[${key}]` : key))
    .join(", ");
}

function argumentTable(caption: string, args: Arguments): Html {
  return html`<div class="wide" role="group" aria-label="${caption}" tabindex="0">
    <table class="arguments">
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          <th scope="col">Name</th>
          <th scope="col">What it is</th>
          <th scope="col">US</th>
          <th scope="col">SI</th>
          <th scope="col">When blank</th>
        </tr>
      </thead>
      <tbody>
        ${Object.entries(args).map(
          ([key, argument]) =>
            html` <tr>
              <th scope="row"><code>${argument.optional ? `[${key}]` : key}</code></th>
              <td data-head="Is">${argument.about}</td>
              ${rules(argument)}
              <td data-head="Blank">${argument.optional ? argument.fallback : "needed"}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function rules(argument: Argument<unknown>): Html {
  const us = grouped(argument.rule("US"));
  const si = grouped(argument.rule("SI"));
  return us === si
    ? html`<td colspan="2" data-head="Takes">${us}</td>`
    : html`<td data-head="US">${us}</td>
        <td data-head="SI">${si}</td>`;
}

/** Long numbers of a rule as a person writes them: 900,000 for 900000, and 1,000,000,000 for 1e+9. */
function grouped(rule: string): string {
  return rule.replace(/\d+(\.\d+)?e\+\d+|\b\d{5,}\b/g, (digits) => Number(digits).toLocaleString("en-US"));
}

function columnsOf(key: string, { columns, repeated }: Argument<unknown>): Html | undefined {
  if (!columns) return undefined;
  return html` ${argumentTable(`Each row of ${inWords(key)}, in this order, without a header row`, columns)}
  ${repeated && argumentTable(`After them, repeated as often as needed`, repeated)}`;
}

function resultOf({ result }: Declaration): Html {
  const { about, measure, columns } = result;
  if (columns) {
    return html`<p>A table that spills: ${about}. Its first row holds the headers.</p>
      <ol>
        ${columns.map((column) => html`<li>${titleOf(column)}</li>`)}
      </ol>`;
  }
  const unit = measure && html`, in ${bothUnits(measure)}`;
  return html`<p>${about.charAt(0).toUpperCase() + about.slice(1)}${unit}.</p>`;
}

function titleOf({ title, measure, unit }: Column): Html {
  const shown = measure ? bothUnits(measure) : unit;
  const named = typeof title === "string" ? title : `${title.US}, or ${title.SI.toLowerCase()}`;
  return html`${named}${shown !== undefined && html` (${shown})`}`;
}

function bothUnits(measure: NonNullable<Column["measure"]>): string {
  const us = unitLabel(measure, "US");
  const si = unitLabel(measure, "SI");
  return us === si ? us : `${us}, or ${si} under "SI"`;
}

function worked(declaration: Declaration, example: Example): Html {
  return html`<div class="example">
    <p><code>=RILL.${exampleCall(declaration.name, example.args)}</code></p>
    ${shown(declaration.evaluate(example.args))}
    <p class="from">Held against: ${example.from}</p>
  </div>`;
}

function shown(value: Value): Html {
  if (!Array.isArray(value)) return html`<p>gives <output>${cell(value)}</output></p>`;
  const [header, ...rows] = value;
  return html`<div class="wide" role="group" aria-label="The answer" tabindex="0">
    <table>
      <caption>
        gives
      </caption>
      <thead>
        <tr>
          ${header?.map((title) => html`<th scope="col">${cell(title)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) =>
            html`<tr>
              ${row.map((one) => html`<td>${cell(one)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function cell(value: Value): string {
  return typeof value === "number" ? plain(value) : String(value);
}
