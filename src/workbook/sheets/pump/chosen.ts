import type { SheetLayout } from "../../layout";
import { readFrom } from "../../layout/conditions";
import { fillDown } from "../money/cells";
import { CURVE_PAIRS, DEMO_CHOICE } from "./demo";

/** The user's choice, and its curve picked out of the table. */
export function chosenPump(s: SheetLayout): void {
  s.section("The chosen pump");
  s.input({
    name: "ChosenPump",
    label: "Pump",
    kind: "text",
    choices: "=PumpNames",
    demo: DEMO_CHOICE,
    message: "Choose one of the pumps above.",
  });
  s.input({
    name: "PumpCount",
    label: "How many, side by side",
    kind: "count",
    unit: "pumps",
    min: 1,
    max: 12,
    message: "Identical pumps that feed the same pipe.",
    note: "Two pumps in one pipe never give twice the flow.",
  });
  s.input({
    name: "PumpSpeed",
    label: "Speed",
    kind: "share",
    min: 0.3,
    max: 1.2,
    message: "Share of the curve's speed, for speed-controlled pumps; 100% for all others.",
    note: "Flow goes with the speed, head with its square, power with its cube.",
  });
  s.result({ name: "PumpName", label: "Name", formula: '=ChosenPump&""', kind: "text" });
  s.result({
    name: "PumpPrice",
    label: "Price of one",
    formula: '=IF(INDEX(PumpPrices,PumpRow)="","",INDEX(PumpPrices,PumpRow))',
    kind: "money",
    needs: ["PumpRow"],
  });
  s.result({
    name: "PumpWatts",
    label: "Power of all",
    source: "affinity laws: DOE-HDBK-1012/3, pump laws",
    formula: '=IF(INDEX(PumpPowers,PumpRow)="","",INDEX(PumpPowers,PumpRow)*PumpCount*PumpSpeed^3)',
    kind: "power",
    needs: ["PumpRow", "PumpCount", "PumpSpeed"],
  });
}

/** The curve of the chosen pump, as DUTY takes it. */
export function chosenCurve(s: SheetLayout): void {
  s.result({
    name: "PumpRow",
    label: "Row of the chosen pump",
    formula: '=IF(ChosenPump="","",MATCH(ChosenPump,PumpNames,0))',
    kind: "count",
  });
  const points = CURVE_PAIRS + 1;
  const { body } = s.table({
    name: "ChosenCurve",
    rows: points,
    columns: [
      { key: "flow", title: "Flow", kind: "flow", name: "ChosenFlows" },
      { key: "head", title: "Head", kind: "head", name: "ChosenHeads" },
    ],
  });
  // Pairs of flow and head from the third column of the pumps on, where the power stands in place of the flow 0.
  const [at, read] = [`SEQUENCE(${points},2,3)`, `INDEX(PumpTable,PumpRow,SEQUENCE(${points},2,3))`];
  fillDown(s, body, `IF(COUNT(PumpRow)*${at}=0,"",IF(${at}=3,0,IF(${read}="","",${read})))`, {
    label: "Curve of the chosen pump",
    source: "by definition: pairs of flow and head, the first at no flow",
  });
  // The curve may end before the wanted flow: then there is no head to read there.
  s.result({
    name: "HeadAtWanted",
    label: "Its head at the wanted flow",
    source: "by definition: pumps side by side share the flow",
    formula: "=IFERROR(RILL.PUMPHEAD(ChosenCurve,DesignFlow/PumpCount,PumpSpeed,Units),0)",
    kind: "head",
    needs: ["PumpRow", "PumpCount", "PumpSpeed", "DesignFlow"],
  });
}

/** What the chosen pump really delivers, and costs. */
export function duty(s: SheetLayout): void {
  s.section("What it really delivers");
  s.results(readFrom("DutyPoint", "{1;2;3}", 2), [
    {
      name: "DeliveredFlow",
      label: "Flow delivered",
      kind: "flow",
      strong: true,
      note: "Where the pump curve and the system curve cross.",
    },
    { name: "DutyHead", label: "Head there", kind: "head" },
    { name: "DutySpeed", label: "Fastest water in the pipe", kind: "speed" },
  ]);
  const from = (row: number): string => `INDEX(DutyPoint,${row},2)`;
  s.result({ name: "DutyState", label: "State", formula: `=${from(5)}&""`, kind: "text" });
  s.put(s.row, 1, { value: "Verdict", style: "label" });
  s.put(s.row, 2, { formula: `=${from(6)}&""`, style: "resultText", across: s.lastColumn - 1 });
  s.row++;
  s.result({
    name: "YearlyEnergyCost",
    label: "Electricity for a year",
    formula: "=RILL.RUNCOST(PumpWatts,RunHours,RunDays,Tariff,Currency)",
    kind: "money",
    needs: ["PumpWatts", "RunHours", "RunDays", "Tariff"],
  });
  s.result({
    name: "PumpOwnCost",
    label: "Cost to own over the years",
    source: "by definition; repairs, interest and the pump's life are left out",
    formula: "=ROUND(PumpPrice*PumpCount+OwnYears*YearlyEnergyCost,MoneyDigits)",
    kind: "money",
    strong: true,
    needs: ["PumpPrice", "OwnYears", "YearlyEnergyCost"],
    note: "Price and electricity; repairs, interest and the pump's life are left out.",
  });
}
