/** A number with its unit as people write it: "$1,200.50" and "-$3.00", but "1,200.50 kr" and "4.2 ft/s". */
export function amount(text: string, unit: string): string {
  if (unit === "%") return `${text}%`;
  if (!/\p{Sc}$/u.test(unit)) return `${text} ${unit}`.trim();
  const [, minus = "", number = text] = /^(-?)(.*)$/.exec(text) ?? [];
  return `${minus}${unit}${number}`;
}
