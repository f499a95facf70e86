import { shippedLabor, shippedMachines } from "../../../book/shipped/people";
import { FACTS } from "../../../job/facts";
import { typedIn } from "../../typedIn";
import type { Job, SheetLayout } from "../../layout";
import { costLabel } from "./costKinds";
import { liftColumns, stoneMachine } from "./liftingMachine";

/** Columns of a table whose rows are told in full or not at all: the first names the row, the others are numbers. */
type Columns = readonly [name: string, ...numbers: string[]];
const WAGES: Columns = ["LaborRoles", "LaborWages", "CrewPeople"];
const BURDEN: Columns = ["INDEX(BurdenTable,0,1)", "INDEX(BurdenTable,0,2)"];
const MACHINES: Columns = [
  "MachineNames",
  "INDEX(MachineTable,0,2)",
  "INDEX(MachineTable,0,3)",
  "INDEX(MachineTable,0,4)",
  "MachineShares",
];

/** Formula of the rows that say something and lack a number; 0 says that there is none. */
function gaps([name, ...numbers]: Columns): string {
  const said = [name, ...numbers].map((cells) => `(${cells}<>"")`).join("+");
  return `SUMPRODUCT((${said}>0)*(1-${numbers.map((cells) => `ISNUMBER(${cells})`).join("*")}))`;
}

/** What an hour of a person costs: burden on top of wages, line by line. */
export function labor(s: SheetLayout, job: Job): void {
  const { burden, wages } = shippedLabor(job.system);
  s.section("Burden: what an hour costs on top of the wage");
  s.table({
    name: "BurdenTable",
    rows: 9,
    columns: [
      { key: "line", title: "Burden line", kind: "text", input: { max: 60, message: "What is paid on top of wages." } },
      {
        key: "share",
        title: "Share of wage",
        kind: "share",
        format: "0.00%",
        input: { min: 0, max: 1, message: "Share of the wage, from your payroll or insurer." },
      },
    ],
    usual: burden.map(({ line, share }) => [line, share]),
    totals: { label: "Burden", keys: ["share"], names: { share: "BurdenTotal" } },
  });
  if (job.system === "US") {
    s.note(
      "Employer's social security 6.2% (up to the yearly wage base) and Medicare 1.45%: IRS Publication 15 (from memory).",
    );
  }

  s.section(`${costLabel("labor", job.system)} rates`);
  s.table({
    name: "WageTable",
    rows: 6,
    columns: [
      { key: "role", title: "Role", kind: "text", name: "LaborRoles", input: { max: 40, message: "Who works." } },
      {
        key: "wage",
        title: "Wage per hour",
        kind: "money",
        name: "LaborWages",
        input: { min: 0, max: 1000, message: "Wage paid for an hour." },
      },
      { key: "burden", title: "Burden", kind: "share", whole: true, formula: '=IF(ISNUMBER([wage]),BurdenTotal,"")' },
      {
        key: "rate",
        title: "Cost per hour",
        source: "by definition: the wage and its burden, rounded to a cent",
        kind: "money",
        name: "LaborHourRates",
        whole: true,
        formula: '=IF(ISNUMBER([wage]),ROUND([wage]*(1+IF(ISTEXT([burden]),0,[burden])),MoneyDigits),"")',
      },
      {
        key: "people",
        title: "On the crew",
        kind: "count",
        name: "CrewPeople",
        input: { min: 0, max: 30, message: "How many of them are on the usual crew." },
      },
    ],
    usual: wages.map(({ role, wage, people }) => [role, wage, people]),
  });
  s.result({
    name: "WageGaps",
    label: "Lines that lack a number",
    formula: `=${gaps(WAGES)}+${gaps(BURDEN)}`,
    kind: "count",
  });
  s.result({
    name: "CrewHourRate",
    label: "One hour of one person, crew average",
    source: "by definition: the mean, weighed by people",
    formula: `=IF(WageGaps>0,"",ROUND(SUMPRODUCT(CrewPeople,LaborHourRates)/SUM(CrewPeople),MoneyDigits))`,
    kind: "money",
    needs: ["CrewPeople", "LaborHourRates"],
    strong: true,
  });
}

/** What an hour of a machine costs, part by part. */
export function machines(s: SheetLayout, job: Job): void {
  s.section("Machine rates, without the operator");
  const part = (key: string, title: string, message: string) => ({
    key,
    title,
    kind: "money" as const,
    input: { min: 0, max: 1000, message },
  });
  const parts = ["[own]", "[fuel]", "[wear]"];
  s.table({
    name: "MachineTable",
    rows: FACTS.machines.rows,
    columns: [
      {
        key: "machine",
        title: "Machine",
        kind: "text",
        name: "MachineNames",
        input: { max: 60, message: "Which machine." },
      },
      part("own", "Rental or ownership per hour", "Rental, or what the machine loses in value, per hour at work."),
      part("fuel", "Fuel per hour", "Fuel and oil for an hour at work."),
      part("wear", "Upkeep per hour", "Wear parts and repairs for an hour at work."),
      {
        key: "rate",
        title: "Cost per hour",
        kind: "money",
        name: "MachineHourRates",
        whole: true,
        formula: `=IF(${parts.map((part) => `ISNUMBER(${part})`).join("+")}=0,"",ROUND(${parts.map((part) => `IF(ISTEXT(${part}),0,${part})`).join("+")},MoneyDigits))`,
      },
      {
        key: "share",
        title: "Share of the hours",
        kind: "share",
        name: "MachineShares",
        input: { min: 0, max: 1, message: "Share of the usual machine hours that this machine works." },
      },
      ...liftColumns(job),
    ],
    usual: shippedMachines(job.system).map(({ name, own, fuel, upkeep, share, width, lift, reach }) => [
      name,
      own ?? "",
      fuel ?? "",
      upkeep ?? "",
      share,
      typedIn("length", width, job.system),
      typedIn("weight", lift, job.system),
      typedIn("length", reach, job.system),
    ]),
  });
  s.result({
    name: "MachineGaps",
    label: "Machines that lack a number",
    formula: `=${gaps(MACHINES)}`,
    kind: "count",
  });
  s.result({
    name: "MachineHourRate",
    label: "One machine hour, average",
    source: "by definition: the mean, weighed by share",
    formula: `=IF(MachineGaps>0,"",ROUND(SUMPRODUCT(MachineShares,MachineHourRates)/SUM(MachineShares),MoneyDigits))`,
    kind: "money",
    needs: ["MachineShares", "MachineHourRates"],
    strong: true,
  });
  stoneMachine(s);
}
