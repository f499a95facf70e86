// Written by "npm run generate" from the declarations of the topic "quantities"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { QTY as declaredQTY } from "../quantities/qty";
import { FTIN as declaredFTIN } from "../quantities/ftin";

/**
 * Reads a quantity written as text, such as 9'4, 2' 6 1/2" or 12 ft + 8 ft 6 in, and gives it in the unit you name.
 * @customfunction QTY
 * @helpurl https://localhost:3000/help/qty.html
 * @param text Quantity to read, such as 2' 6 1/2", 45 cm, 40 gpm (text)
 * @param unit Unit of the result, such as ft, in, m, gph, L/h, yd3, ton (text)
 * @returns The quantity in the unit.
 * @remarks Formula: sum of the terms, each converted to the unit; terms side by side (2 ft 6 in) add up. Limits: A comma before three digits groups thousands (1,250 gph is 1250); before any other number of digits, and behind a leading zero (0,750 m3), it is a decimal comma. A bare number behind feet is inches (9'4, 9 ft 4); a number without a unit is taken in the unit you name. What can mean two things (9-4, 1,250 m) is refused with both.
 * @remarks Source: Unit factors: NIST SP 811 (2008), appendix B.8, through the mathjs unit library
 * @example =RILL.QTY("2' 6 1/2""", "in")
 * @example =RILL.QTY("40 gpm", "gph")
 */
export function QTY(text: any, unit: any): any {
  return callFromSheet(declaredQTY, [text, unit]);
}

/**
 * Writes a length as feet, inches and the nearest fraction of an inch, as a tape reads.
 * @customfunction FTIN
 * @helpurl https://localhost:3000/help/ftin.html
 * @param length Length to write (ft, -100000 to 100000 | m, -30400 to 30400)
 * @param [nearest] Parts of an inch: 1, 2, 4, 8, 16, 32, 64 (whole, more than 0, at most 64; blank: 16)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The length as feet, inches and a fraction.
 * @remarks Formula: steps = round(inches × nearest), half away from zero; then carried into whole inches and feet. Limits: Rounds to the nearest fraction, so the text can be off by half of it; keep the number for calculations.
 * @remarks Source: Arithmetic: 1 ft = 12 in = 0.3048 m (NIST SP 811, appendix B.8)
 * @example =RILL.FTIN(2.5416666667)
 * @example =RILL.FTIN(5.99999)
 */
export function FTIN(length: any, nearest?: any, units?: any): any {
  return callFromSheet(declaredFTIN, [length, nearest, units]);
}
