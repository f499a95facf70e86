import { defineSheet, Ref, type Job, type SheetLayout, type TableRef } from "../../layout";
import { areaAddress } from "../../layout/address";
import { cellOf, fill, fillDown } from "../money/cells";
import { costLabel } from "../money/costKinds";
import { STONE_MACHINE_RATE } from "../money/liftingMachine";
import { hoursBySize } from "./hoursBySize";
import { TASKS, taskRows, type Task } from "./tasks";

const FREE_TASKS = 3;

/** Hours from quantities by the user's own production rates, and what they cost. */
export const labor = defineSheet({
  name: "Hours",
  order: 12,
  build(s, job) {
    s.widths([30, 9, 7, 9, 10, 7, 9, 9, 10, 11, 8]);
    s.print({ pagesHigh: 1 });
    s.title("Hours", "Put in your own production rates; hours, days and cost follow.", { amounts: true });
    rates(s);
    tasks(s, job);
    checks(s);
    s.checksHere();
    s.notPrinted();
    hoursBySize(s, job);
  },
});

function rates(s: SheetLayout): void {
  s.section("Crew and rates");
  s.result({
    name: "CrewSize",
    label: "People on the crew",
    kind: "count",
    formula: "=SUM(CrewPeople)",
    needs: ["CrewPeople"],
    note: "From the wages on Rates.",
  });
  s.input({
    name: "DayHours",
    label: "Hours in a working day",
    kind: "hours",
    min: 1,
    max: 14,
    message: "Hours each of them works a day, travel not counted.",
  });
  s.input({
    name: "Difficulty",
    label: "Difficulty of this site",
    kind: "factor",
    format: "0.00",
    min: 0.5,
    max: 4,
    message: "1 for a plain site; more for poor access, hand work, slopes or wet ground.",
    note: "1 is a plain site. Multiplies all hours.",
  });
  const rate = (name: string, own: string, label: string, from: string, message: string, note: string): void => {
    s.input({
      name: `${name}Typed`,
      label: own,
      kind: "money",
      min: 0,
      max: 2000,
      message,
      optional: true,
    });
    s.result({
      name,
      label,
      kind: "money",
      formula: `=IF(COUNT(${name}Typed)>0,${name}Typed,${from})`,
      note,
    });
  };
  rate(
    "LaborRate",
    "Your own rate of one hour",
    "Loaded rate of one hour",
    "CrewHourRate",
    "What an hour of one person costs you, with all that comes on top of the wage.",
    "Wage and burden of the crew on Rates, on average, unless typed above.",
  );
  rate(
    "MachineRate",
    "Your own rate of a machine hour",
    "One machine hour",
    "MachineHourRate",
    "Rental or ownership, fuel and upkeep per hour, without the operator.",
    "The mix of machines on Rates, unless typed above; the operator's hours are in the crew's.",
  );
  s.result({
    name: "StoneMachineRate",
    label: "One machine hour with stones",
    kind: "money",
    formula: STONE_MACHINE_RATE,
    note: "Of the machine on Rates that sets the heaviest stone, where one must.",
  });
}

function tasks(s: SheetLayout, job: Job): void {
  s.section("Hours");
  s.note(
    "Rates are invented for the demo: type your own over them, from jobs you have timed. The last rows are for tasks of your own.",
  );
  s.note(
    "Fittings and check valves are in Pipe, bedding in the digging, seams in the liner. Electrician and plants: your own rows.",
  );
  // OR would make one value of a column.
  const blank = (...cells: readonly string[]): string =>
    cells.length === 1 ? `${cells[0] ?? ""}=""` : `${cells.map((cell) => `(${cell}="")`).join("+")}>0`;
  const money = (hours: string, rate: string): string =>
    `=IF(${blank(hours, rate)},"",ROUND(${hours}*${rate},MoneyDigits))`;
  const taken = (each: string, size: string): string =>
    `=IF(${blank("[quantity]", each, "[size]", "Difficulty")},"",[quantity]*${each}*${size}*Difficulty)`;
  // A task that is named or counted has a quantity and both rates; 0 says that it takes none, and nobody asks for the rates
  // of what there is none of.
  const look =
    `=IF([task]&[quantity]&[rate]&[machine]="","",IF(IF(ISNUMBER([quantity]),[quantity]=0,FALSE),"",` +
    `IF(${blank("[quantity]", "[rate]", "[machine]", "[size]")},"to fill","")))`;
  const rows = TASKS.length + FREE_TASKS;
  const table = s.table({
    name: "LaborTable",
    rows,
    columns: [
      { key: "task", title: "Task", kind: "text", input: { message: "What is done; rename as you like." } },
      {
        key: "quantity",
        title: "Quantity",
        kind: "number",
        format: "#,##0.0",
        input: { min: 0, max: 1000000, message: "Comes from the other sheets; type over it where you know better." },
      },
      { key: "unit", title: "Unit", kind: "text", input: { message: "Unit of the quantity." } },
      {
        key: "rate",
        title: "Hours for one",
        kind: "factor",
        input: { min: 0, max: 1000, message: "Hours of one person for one unit: your own production rate." },
      },
      {
        key: "machine",
        title: "Machine hours for one",
        kind: "factor",
        input: { min: 0, max: 1000, message: "Hours of the machine for one unit." },
      },
      {
        key: "size",
        title: "Times by size",
        kind: "factor",
        format: "0.00",
        fixed: Array.from({ length: rows }, () => 1),
      },
      {
        key: "hours",
        title: "Hours",
        source: "by definition: quantity × hours for one × times by size × difficulty",
        kind: "hours",
        unit: "",
        formula: taken("[rate]", "[size]"),
      },
      {
        key: "machineHours",
        title: "Machine hours",
        source: "by definition: quantity × hours for one × times by size × difficulty",
        kind: "hours",
        unit: "",
        formula: taken("[machine]", "[size]"),
      },
      {
        key: "labor",
        title: costLabel("labor", s.job.system),
        source: "by definition: hours × rate, rounded to a cent",
        kind: "money",
        formula: money("[hours]", "LaborRate"),
      },
      {
        key: "machines",
        title: "Machines",
        source: "by definition: hours × rate, rounded to a cent",
        kind: "money",
        formula: money("[machineHours]", "MachineRate"),
      },
      {
        key: "look",
        title: "Look at",
        kind: "text",
        name: "TaskLooks",
        formula: look,
      },
    ],
    usual: taskRows(job.system),
    totals: {
      label: "All tasks",
      keys: ["hours", "machineHours", "labor", "machines"],
      names: { hours: "LaborHours", machineHours: "MachineHours" },
    },
  });
  fillTasks(s, table, "hours", () => taken("[rate]", "[size]"));
  fillTasks(s, table, "machineHours", ({ machineTimes = "[size]" }) => taken("[machine]", machineTimes));
  fillTasks(s, table, "labor", () => money("[hours]", "LaborRate"));
  fillTasks(s, table, "machines", ({ stones }) => money("[machineHours]", stones ? "StoneMachineRate" : "MachineRate"));
  fillTasks(s, table, "look", () => look);
  TASKS.forEach(({ quantity, times }, index) => {
    if (times) fill(s, table.cell("size", index + 1), times, { label: "Times by size" });
    const names = quantity === "once" ? ["DesignFlow"] : quantity;
    const amount = quantity === "once" ? "1" : names.join("+");
    const cell = cellOf(s, table.cell("quantity", index + 1));
    cell.formula = `=IF(${blank(...names)},"",${amount})`;
    cell.style = { ...cell.style, italic: true };
  });
  for (const key of ["hours", "machineHours"]) {
    const column = areaAddress(table.column(key));
    // Hours that come to nothing while a task's are open are not known yet.
    fill(
      s,
      table.total(key),
      `=IF((SUM(${column})=0)*((COUNT(${column})=0)+(COUNTIF(TaskLooks,"to fill")>0)),"",SUM(${column}))`,
    );
  }
  s.section("Together");
  s.result({
    name: "WorkingDays",
    label: "Working days",
    source: "by definition: hours over those of the crew in a day",
    formula: "=LaborHours/(CrewSize*DayHours)",
    kind: "number",
    format: "0.0",
    unit: "days",
    needs: ["LaborHours", "CrewSize", "DayHours"],
    note: "With the whole crew; weather and waiting come on top.",
  });
  const cost = (name: string, label: string, key: string, needs: readonly string[]): void => {
    s.result({ name, label, formula: `=${table.total(key)}`, kind: "money", needs, strong: true });
  };
  cost("LaborCost", costLabel("labor", s.job.system), "labor", ["LaborRate", "LaborHours"]);
  cost("MachineCost", "Machines", "machines", ["MachineRate", "MachineHours"]);
  s.caution(
    "Hours are an estimate. To save time nobody lifts alone over the hand-lift limit, works under a suspended load, or goes into a pit whose sides can cave in.",
  );
}

function checks(s: SheetLayout): void {
  s.check({
    label: "Working days",
    source: "common practice, no source",
    value: "=WorkingDays",
    limit: 15,
    cure: "Longer than three weeks: take more people, or plan the job in parts (rule of thumb).",
    fix: "CrewPeople",
    kind: "hours",
    unit: "days",
    weight: "look",
    needs: ["WorkingDays"],
  });
  s.check({
    label: "Difficulty of the site",
    value: "=Difficulty",
    sign: "at least",
    limit: 1,
    cure: "Easier than a plain site is rare: check the factor (rule of thumb).",
    fix: "Difficulty",
    kind: "factor",
    over: "times",
    weight: "look",
    needs: ["Difficulty"],
  });
}

/**
 * Gives the usual tasks one formula for each run of rows that are calculated alike. The rows of the user's own tasks keep one each: what
 * he types there may read the hours of another task, which in one formula would be a circle.
 */
function fillTasks(s: SheetLayout, table: TableRef, key: string, formulaOf: (task: Task) => string): void {
  const formulas = TASKS.map(formulaOf);
  for (let first = 0, end = 0; first < formulas.length; first = end) {
    const formula = formulas[first] ?? "";
    while (formulas[end] === formula) end++;
    const run = (column: string): Ref => {
      const { sheet, top, left } = table.cell(column, first + 1);
      return new Ref(sheet, top, left, top + end - first - 1, left);
    };
    for (let row = first + 1; row <= end; row++) delete cellOf(s, table.cell(key, row)).formula;
    fillDown(
      s,
      run(key),
      formula.replace(/\[(\w+)\]/g, (_, other: string) => areaAddress(run(other))),
    );
  }
}
