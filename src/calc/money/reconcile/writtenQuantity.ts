import { invalid } from "../../problem";
import { readNumber, readQuantity } from "../../quantity/readQuantity";
import { readTerms } from "../../quantity/readTerms";
import { findUnit } from "../../quantity/units";
import { unitTurner } from "./stoneUnits";

/** A quantity as it stands on a paper: with a unit of its own, or without. */
export interface WrittenQuantity {
  readonly quantity: number;
  readonly unit?: string;
}

const EXAMPLES = "12.5, 0.5 ton or 6 rolls";
/** A number and one word that the unit library need not know: "6 rolls", "12 ea." */
const COUNTED = /^([^A-Za-z]*)([A-Za-z]+)\.?$/;

/**
 * Reads the quantity of a paper from text: `0.5 ton`, `2 ft 6 in`, `6 rolls`, `1,250`.
 *
 * @example readWritten("6 rolls", "quantity").unit => "rolls"; as written
 */
export function readWritten(text: string, name: string): WrittenQuantity {
  const [, count = "", word = ""] = COUNTED.exec(text.trim()) ?? [];
  if (/\d/.test(count) && findUnit(word) === null) return { quantity: readNumber(count, name), unit: word };
  const unit = readTerms(text, name, () => EXAMPLES).find((term) => term.unit !== null)?.unit ?? undefined;
  return unit === undefined ? { quantity: readNumber(text, name) } : { quantity: readQuantity(text, unit, name), unit };
}

/**
 * A written quantity in the unit that stands beside it; its own unit where none does.
 *
 * @example besideUnit({ quantity: 2 }, "ton", undefined, "quantity").unit => "ton"; the unit beside it
 */
export function besideUnit(
  written: WrittenQuantity,
  unit: string | undefined,
  density: number | undefined,
  name: string,
): WrittenQuantity {
  if (written.unit === undefined || unit === undefined)
    return { quantity: written.quantity, unit: unit ?? written.unit };
  const quantity = unitTurner(unit, density).turn(written.quantity, written.unit);
  if (quantity !== undefined) return { quantity, unit };
  throw invalid(`${name} is in ${written.unit} and its unit says ${unit}; write one unit`);
}
