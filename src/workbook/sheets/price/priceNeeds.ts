import { COST_KIND_WORDS, TAX_BASES } from "../../../calc/money/costKinds";
import { NAMED_PARTS, PRICE_PARTS, type PricePart } from "../../../job/standing";
import { partOf, TAKEOFF_PARTS } from "../../../job/takeoff/parts";
import { Ref, type Both, type Job, type SheetLayout } from "../../layout";
import { areaAddress } from "../../layout/address";
import type { Area } from "../../model";
import { fill, fillDown } from "../money/cells";
import { MARK } from "../rates/asShipped";

/** Sheets of which the price takes nothing. */
const APART: readonly string[] = ["Levels"];

/** What the price needs, what is wrong in it, and the verdict that every price in the workbook waits for. */
export function priceNeeds(s: SheetLayout, job: Job, own: readonly Area[]): void {
  // A fact that cannot be read is wrong in its own cell, whatever follows from it.
  const facts = job.hasFacts ? 'IF(FactsWrong>0,INDEX(FactPlaces,MATCH("wrong",FactStates,0)),"")' : '""';
  s.section("What the price stands on");
  s.note(
    "A price is shown once everything that the design needs has a quantity and a price, and no cell on the way to it is in error.",
  );
  s.result({
    name: "FunctionsRun",
    label: "The add-in's functions run",
    kind: "text",
    formula: '=IF(IFERROR(RILL.QTY("1 m","m")=1,FALSE),"yes","no")',
  });
  s.result({
    name: "FirstWrongPlace",
    label: "The first cell that is wrong",
    kind: "text",
    formula: `=IF(SUM(CellsWrong)>0,INDEX(FirstWrong,MATCH("?*",FirstWrong,0)),${facts})`,
  });
  s.result({
    name: "PriceStanding",
    label: "What keeps the price back",
    kind: "text",
    formula:
      '=IF(FunctionsRun<>"yes","no price: the add-in is not running",IF(FirstWrongPlace<>"","wrong: "&FirstWrongPlace,' +
      `IF(PartsMissing=0,"","not complete: "&TEXTJOIN(", ",TRUE,NamesMissing)&IF(PartsMissing>${NAMED_PARTS}," and "&(PartsMissing-${NAMED_PARTS})&" more",""))))`,
  });
  s.result({ name: "PartsMissing", label: "Parts not known", kind: "count", formula: '=COUNTIF(NeedsMissing,">0")' });
  s.skip();
  neededParts(s, job);
  s.skip();
  wrongCells(s, job, own);
}

function neededParts(s: SheetLayout, job: Job): void {
  const own = Object.keys(PRICE_PARTS) as PricePart[];
  const parts: readonly { name: string; where: string }[] = [
    ...TAKEOFF_PARTS.map((name) => ({ name, where: [...sheetsOf(job, name), "Takeoff"].join(", ") })),
    ...own.map((part) => ({
      name: job.pick<string>(PRICE_PARTS[part] as Both<string>),
      where: part === "labor" || part === "machines" ? "Hours, Rates" : "Price",
    })),
  ];
  const table = s.table({
    rows: parts.length,
    columns: [
      { key: "part", title: "What is needed", kind: "text", fixed: parts.map(({ name }) => name) },
      { key: "where", title: "Where it is found", kind: "text", fixed: parts.map(({ where }) => where) },
      { key: "missing", title: "Unknown", kind: "count", name: "NeedsMissing" },
      { key: "named", title: "The first of them", kind: "text", across: 3, whole: NAMED_PARTS },
      { key: "invented", title: "Invented", kind: "count", name: "NeedsInvented" },
    ],
  });
  const ofTakeoff = (key: string): Ref => {
    const { top, left } = table.cell(key, 1);
    return new Ref(s.name, top, left, top + TAKEOFF_PARTS.length - 1, left);
  };
  const names = areaAddress(ofTakeoff("part"));
  const named = table.cell("named", 1);
  const first = s.define("NamesMissing", named.top, named.left, named.top + NAMED_PARTS - 1, named.left);
  fillDown(
    s,
    first,
    `IFERROR(INDEX(FILTER(${areaAddress(table.column("part"))},NeedsMissing>0),SEQUENCE(${NAMED_PARTS})),"")`,
  );
  const counted = { label: "Unknown", source: "by definition: a count" };
  fillDown(s, ofTakeoff("missing"), `COUNTIFS(TakeoffParts,${names},TakeoffLooks,"no *")`, counted);
  fillDown(s, ofTakeoff("invented"), `COUNTIFS(TakeoffParts,${names},TakeoffMarks,"${MARK}")`);
  own.forEach((part, index) =>
    fill(s, table.cell("missing", TAKEOFF_PARTS.length + index + 1), missingOf(job, part), counted),
  );
}

/** The sheets that ask for a part of the takeoff. */
function sheetsOf(job: Job, part: string): string[] {
  return [...new Set(job.takeoffLines.filter(({ code }) => partOf(code) === part).map(({ sheet }) => sheet))];
}

const BASES = `{${TAX_BASES.map((base) => `"${base}"`).join(",")}}`;
const CHOICE = 'MATCH(ChosenOption,{"A","B","C"},0)';

/** The option quoted is one that is laid out: A always is, the others once they have a name. */
export const OPTION_IN_USE = `IF(ISNUMBER(${CHOICE}),IF(${CHOICE}=1,1,IF(INDEX(OptionNames,${CHOICE})="",0,1)),0)`;

/** Formula of how much of a part is unknown. */
function missingOf(job: Job, part: PricePart): string {
  const [untaxed] = TAX_BASES;
  const kinds = `{${COST_KIND_WORDS[job.system].map((kind) => `"${kind}"`).join(",")}}`;
  const changed = ["INDEX(OptionChanges,0,1)", "OptionChangesB", "OptionChangesC"];
  const formulas: Readonly<Record<PricePart, string>> = {
    labor: job.names.has("TaskLooks") ? 'COUNTIF(TaskLooks,"to fill")+2-COUNT(Difficulty,LaborRate)' : "0",
    machines: job.names.has("MachineRate")
      ? "IF(ISNUMBER(MachineHours),IF(MachineHours>0,1-COUNT(MachineRate),0),0)"
      : "0",
    markups: "ROWS(Markups)-COUNT(Markups)",
    overhead:
      'IF(OverheadBy="crew hours",2-COUNT(OverheadPerHour,CrewHours),IF(OverheadBy="share of cost",1-COUNT(OverheadShare),1))',
    contingency: "1-COUNT(ContingencyShare)",
    tax: `IF(TaxBase="${untaxed}",0,IF(ISNUMBER(MATCH(TaxBase,${BASES},0)),1-COUNT(TaxRate),1))`,
    rounding: "1-COUNT(RoundTo)",
    option: `1-${OPTION_IN_USE}`,
    changes:
      `SUMPRODUCT((${changed.map((cells) => `(${cells}<>"")`).join("+")}>0)*` +
      `(1-ISNUMBER(MATCH(OptionKinds,${kinds},0))*(ISNUMBER(OptionChangesB)+ISNUMBER(OptionChangesC)>0)))`,
  };
  return formulas[part];
}

/** Where to look for an error: sheet by sheet, in the order of the work; of Price, what the price is calculated from. */
function wrongCells(s: SheetLayout, job: Job, own: readonly Area[]): void {
  const before = [...job.pages].sort((a, b) => a.order - b.order).filter(({ name }) => !APART.includes(name));
  const areas = [
    ...before.map(({ name, rows, columns }) => ({
      sheet: name,
      area: { top: 1, left: 1, bottom: rows, right: columns },
    })),
    ...own.map((area) => ({ sheet: s.name, area })),
  ];
  // What was typed wrong comes first: the other errors follow from it, and a text in a table is no error by itself.
  const typed = job.hasFacts ? ["Facts"] : [];
  const table = s.table({
    rows: typed.length + areas.length,
    columns: [
      { key: "sheet", title: "Cells of", kind: "text", fixed: [...typed, ...areas.map(({ sheet }) => sheet)] },
      { key: "first", title: "The first in error", kind: "text", name: "FirstWrong" },
      { key: "wrong", title: "In error", kind: "count", name: "CellsWrong" },
    ],
  });
  if (typed.length > 0) {
    fill(s, table.cell("wrong", 1), "FactsWrong");
    fill(s, table.cell("first", 1), 'IF(FactsWrong=0,"",FactsNext)');
  }
  areas.forEach(({ sheet, area }, index) => {
    const cells = `${sheet}!${areaAddress(area, true)}`;
    const row = typed.length + index + 1;
    const count = table.cell("wrong", row);
    fill(s, count, `SUMPRODUCT(ISERROR(${cells})*1)`);
    // Counted down, so that the cell nearest the top comes first.
    const [rows, columns] = [area.bottom - area.top + 1, area.right - area.left + 1];
    const last = `MAX(ISERROR(${cells})*(${FAR}-SEQUENCE(${rows},1,${area.top})*100-SEQUENCE(1,${columns},${area.left})))`;
    fill(
      s,
      table.cell("first", row),
      `IF(${count.address}=0,"",LET(at,${FAR}-SUMPRODUCT(${last}),"${sheet}!"&ADDRESS(INT(at/100),MOD(at,100),4)))`,
    );
  });
}

/** More than a hundred times any row. */
const FAR = 10_000_000;
