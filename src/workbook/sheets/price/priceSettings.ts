import { COST_KIND_WORDS, costKindWord, TAX_BASES } from "../../../calc/money/costKinds";
import type { Job, SheetLayout } from "../../layout";
import { OPTIONS } from "./priceTable";

export const CHANGE_ROWS = 8;
/** Facts that an option may change. */
export const FACT_ROWS = 3;

/** How overhead, contingency, tax and rounding are counted, and which option is quoted. */
export function settings(s: SheetLayout, job: Job): void {
  s.section("Settings");
  const share = (name: string, label: string, max: number, message: string, note?: string): void => {
    s.input({ name, label, kind: "share", min: 0, max, message, ...(note ? { note } : {}) });
  };
  share(
    "WantedMargin",
    "Gross margin wanted",
    0.9,
    "Share of the price that is left over the job's own cost.",
    "Of the price, not of the cost: 30% of the price is 42.9% on cost.",
  );
  s.input({
    name: "OverheadBy",
    label: "Overhead is counted by",
    kind: "text",
    choices: ["share of cost", "crew hours"],
    message: "How the office, vehicles and insurance are charged to a job.",
  });
  share("OverheadShare", "Overhead as a share of direct cost", 2, "Yearly overhead over yearly direct cost.");
  s.input({
    name: "OverheadPerHour",
    label: "Overhead for a crew hour",
    kind: "money",
    min: 0,
    max: 1000,
    message: "Yearly overhead over yearly hours on site.",
  });
  s.result({ name: "CrewHours", label: "Crew hours", kind: "hours", formula: whenNamed(job, "LaborHours") });
  s.result({
    name: "CrewDays",
    label: "Crew days",
    kind: "number",
    format: "0.0",
    unit: "days",
    formula: whenNamed(job, "WorkingDays"),
  });
  share(
    "ContingencyShare",
    "Contingency",
    1,
    "Share of the direct cost kept for what goes wrong.",
    "See the odds below for what it should cover.",
  );
  s.input({
    name: "TaxName",
    label: "Name of the tax",
    kind: "text",
    demo: { US: "Sales tax", SI: "VAT" },
    max: 30,
    message: "What the quote calls it: sales tax, VAT, GST, MwSt.",
    optional: true,
  });
  s.input({
    name: "TaxBase",
    label: "Tax is owed on",
    kind: "text",
    choices: TAX_BASES,
    message: "What the tax is worked out on; ask your accountant.",
    note: "Rules differ from place to place: ask your accountant.",
  });
  s.input({
    name: "TaxRate",
    label: "Tax rate",
    kind: "share",
    format: "0.000%",
    min: 0,
    max: 0.5,
    message: "Rate of the sales or value-added tax.",
  });
  s.input({
    name: "RoundTo",
    label: "Round the price up to a multiple of",
    kind: "money",
    min: 0,
    max: 10_000,
    message: "The price before tax is raised to a whole multiple; 0 leaves it.",
  });
  s.input({
    name: "ChosenOption",
    label: "Option that is quoted",
    kind: "text",
    choices: OPTIONS,
    message: "The option whose price goes to the quote's total.",
  });
}

function whenNamed(job: Job, name: string): string {
  return job.names.has(name) ? `=${name}` : '=""';
}

/** Up to three ways to build, as changes of the cost of the first. */
export function options(s: SheetLayout, job: Job): void {
  s.section("Options");
  s.note(
    "A is the takeoff as it stands; B and C, once named, change facts, cost or both. A change below zero saves; the crew's cost takes hours " +
      "and days with it. Orders and the crew's page stay with A: to build another, type it into the sheets.",
  );
  s.table({
    name: "OptionTable",
    rows: OPTIONS.length,
    columns: [
      { key: "letter", title: "Option", kind: "text", fixed: [...OPTIONS] },
      {
        key: "name",
        title: "Name, as the client reads it",
        kind: "text",
        name: "OptionNames",
        across: 3,
        input: { max: 80, message: "A few plain words." },
      },
    ],
    ...(job.filled === "demo"
      ? {
          demo: [
            ["As designed"],
            [job.pick({ US: "Ledge stone at the drops", SI: "Slabs at the drops" })],
            ["As designed, with lamps"],
          ],
        }
      : { usual: [["As designed"]] }),
  });
  const facts = s.table({
    name: "OptionFacts",
    rows: FACT_ROWS,
    columns: (["B", "C"] as const).flatMap((letter) => [
      {
        key: `fact${letter}`,
        title: `${letter}: fact that changes`,
        kind: "text" as const,
        name: `OptionFacts${letter}`,
        ...(letter === "C" ? { across: 3 } : {}),
        input: { max: 80, message: "Like Bed width, or Lip 1 width; or its name on Facts. The pane fills it in." },
      },
      {
        key: `value${letter}`,
        title: "What it is then",
        kind: "text" as const,
        name: `OptionValues${letter}`,
        ...(letter === "C" ? { across: 2 } : {}),
        input: { max: 80, message: "As you would type it into its own cell." },
      },
    ]),
  });
  for (const letter of ["B", "C"] as const) {
    const [name, value] = [facts.column(`fact${letter}`), facts.column(`value${letter}`)];
    s.define(`Option${letter}`, name.top, name.left, name.bottom, value.left);
  }
  s.skip();
  s.table({
    name: "OptionChanges",
    rows: CHANGE_ROWS,
    columns: [
      {
        key: "what",
        title: "What changes",
        kind: "text",
        across: 2,
        input: { max: 120, message: "What is different." },
      },
      {
        key: "kind",
        title: "Cost kind",
        kind: "text",
        name: "OptionKinds",
        across: 2,
        input: { choices: COST_KIND_WORDS[job.system], message: "Which cost it changes." },
      },
      ...(["B", "C"] as const).map((letter) => ({
        key: letter,
        title: `${letter}: change`,
        kind: "money" as const,
        name: `OptionChanges${letter}`,
        input: { min: -1_000_000, max: 1_000_000, message: "Cost added, or saved when below zero; a formula will do." },
      })),
    ],
    demo: {
      US: [
        ["Ledge stone in place of mixed boulders", "material", 385, ""],
        ["Setting ledge stone", costKindWord("labor", job.system), 210, ""],
        ["Six lamps with transformer and cable", "material", "", 495],
        ["Fitting the lamps", costKindWord("labor", job.system), "", 180],
      ],
      SI: [
        ["Slabs in place of mixed boulders", "material", 340, ""],
        ["Setting slabs", costKindWord("labor", job.system), 195, ""],
        ["Six lamps with transformer and cable", "material", "", 430],
        ["Fitting the lamps", costKindWord("labor", job.system), "", 165],
      ],
    },
  });
}
