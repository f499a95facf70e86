import { unitLabel, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

/** What a number is: a measure with a unit of the system, or one of the kinds every system shares. */
export type Kind = Measure | "money" | "share" | "count" | "number" | "factor" | "text" | "date" | "hours" | "answer";

/** Money has a form of its own, so that it can be told from other numbers where a currency has no cents. */
export const MONEY_FORMAT = "#,##0.00;-#,##0.00";

const FORMATS: Readonly<Record<Kind, string | Readonly<Record<UnitSystem, string>>>> = {
  length: "#,##0.00",
  size: { US: "0.00", SI: "#,##0" },
  area: { US: "#,##0", SI: "#,##0.0" },
  earth: "#,##0.00",
  water: "#,##0",
  flow: "#,##0",
  head: "0.00",
  pressure: { US: "0.0", SI: "#,##0" },
  speed: { US: "0.0", SI: "0.00" },
  wind: "0.0",
  load: "#,##0.00",
  weight: "#,##0",
  temperature: "0",
  power: "#,##0",
  density: { US: "#,##0", SI: "0.00" },
  money: MONEY_FORMAT,
  share: "0.0%",
  count: "#,##0",
  number: "General",
  factor: "0.000",
  hours: "#,##0.0",
  text: "@",
  date: "yyyy-mm-dd",
  answer: '[=1]"yes";[=2]"not needed";"no"',
};

/** Number format that suits a kind in a system. */
export function formatOf(kind: Kind, system: UnitSystem): string {
  const format = FORMATS[kind];
  return typeof format === "string" ? format : format[system];
}

const UNITLESS: Readonly<Record<string, string>> = {
  share: "",
  count: "",
  number: "",
  factor: "",
  text: "",
  date: "",
  answer: "",
  hours: "h",
};

/** The unit printed beside a number of this kind; money takes the job's currency instead, as a formula. */
export function unitOf(kind: Kind, system: UnitSystem): string {
  if (kind === "money") return "=Currency";
  return UNITLESS[kind] ?? unitLabel(kind as Measure, system);
}
