import { minorDigits } from "../calc/money/currency";
import { attributeOf, startTag, within } from "../xlsx/xml";
import { Package } from "../xlsx/package";
import { MONEY_FORMAT } from "./layout/formats";

const CENTS = minorDigits("USD");

/** A job whose amounts show as many digits behind the point as its currency has; one with cents as it is. */
export function jobInCurrency(job: Uint8Array, currency: string): Uint8Array {
  const digits = minorDigits(currency);
  const file = new Package(job);
  const styles = file.partOf("styles");
  const root = styles === undefined ? undefined : file.xml(styles);
  if (digits === CENTS || styles === undefined || !root) return job;
  const form = digits === 0 ? "#,##0" : `#,##0.${"0".repeat(digits)}`;
  const money = [...within(root, "numFmt")].filter((one) => attributeOf(one, "formatCode") === MONEY_FORMAT);
  file.change(
    styles,
    money.map((one) => startTag(one, { formatCode: `${form};-${form}` })),
  );
  return file.bytes();
}
