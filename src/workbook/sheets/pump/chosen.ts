import type { SheetLayout } from "../../layout";
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
  const pick = (column: string): string =>
    `IF(COUNT(PumpRow)=0,"",IF(INDEX(PumpTable,PumpRow,${column})="","",INDEX(PumpTable,PumpRow,${column})))`;
  s.table({
    name: "ChosenCurve",
    rows: CURVE_PAIRS + 1,
    columns: [
      {
        key: "flow",
        title: "Flow",
        kind: "flow",
        name: "ChosenFlows",
        formula: `=IF([#]=1,IF(COUNT(PumpRow)=0,"",0),${pick("2*[#]+1")})`,
      },
      { key: "head", title: "Head", kind: "head", name: "ChosenHeads", formula: `=${pick("2*[#]+2")}` },
    ],
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
  const from = (row: number): string => `INDEX(DutyPoint,${row},2)`;
  s.result({
    name: "DeliveredFlow",
    label: "Flow delivered",
    formula: `=${from(1)}`,
    kind: "flow",
    strong: true,
    needs: [from(1)],
    note: "Where the pump curve and the system curve cross.",
  });
  s.result({ name: "DutyHead", label: "Head there", formula: `=${from(2)}`, kind: "head", needs: [from(2)] });
  s.result({
    name: "DutySpeed",
    label: "Fastest water in the pipe",
    formula: `=${from(3)}`,
    kind: "speed",
    needs: [from(3)],
  });
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
