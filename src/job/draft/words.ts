import { formatFeetInches } from "../../calc/quantity/feetInches";
import { fromInside, unitLabel, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

const FOOT = 0.3048;
const INCH = 0.0254;

/** A length as the tape shows it: `8 1/4 in`, `14'-6"`, `210 mm`, `4.25 m`. */
export function tape(metres: number, system: UnitSystem): string {
  if (system === "SI") return metres < 1 ? `${Math.round(metres * 1000)} mm` : `${Number(metres.toFixed(2))} m`;
  if (metres >= 3 * FOOT - INCH / 8) return formatFeetInches(metres, 1);
  const [feet = "0", rest = ""] = formatFeetInches(metres, metres < 2 * INCH ? 8 : 4).split("'-");
  const inches = rest.replace('"', "");
  const whole = Number(feet) * 12 + Number(inches.split(" ")[0]);
  const part = inches.split(" ")[1];
  return `${whole === 0 && part ? "" : whole}${part ? `${whole === 0 ? "" : " "}${part}` : ""} in`;
}

/** A quantity to three digits, in the units of a system. */
export function about(measure: Measure, inside: number, system: UnitSystem): string {
  const shown = fromInside(measure, inside, system);
  const digits = shown === 0 ? 0 : Math.max(0, 2 - Math.floor(Math.log10(Math.abs(shown))));
  const rounded = shown >= 1000 ? Math.round(shown / 10) * 10 : Number(shown.toFixed(Math.min(3, digits)));
  const unit = unitLabel(measure, system);
  return `${grouped(rounded)} ${unit}`;
}

/** A nominal pipe size as it is asked for: `2 1/2 in`, `75 mm`. */
export function nominal(metres: number, system: UnitSystem): string {
  return system === "SI" ? `${Math.round(metres * 1000)} mm` : tape(metres, "US");
}

/** A money amount in whole units of the currency. */
export function money(amount: number, currency = ""): string {
  // A sign stands before the amount, a word apart from it.
  return `${currency}${/\p{L}$/u.test(currency) ? " " : ""}${grouped(Math.round(amount))}`;
}

/** A number with its thousands apart. */
function grouped(value: number): string {
  const [whole = "", part] = String(value).split(".");
  return whole.replace(/\B(?=(\d{3})+$)/g, ",") + (part === undefined ? "" : `.${part}`);
}
