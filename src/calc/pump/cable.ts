import { invalid, missing, plain } from "../problem";
import { WIRES, type Wire } from "../tables/wires";

/** Limits the cable drop checks. */
export const CABLE_RANGE = {
  amps: { min: 0, max: 400 },
  length: { min: 0, max: 2000 },
  volts: { above: 1, max: 1000 },
} as const;

/** Share of the supply a branch may lose before it is advised against. NEC 210.19 informational note: advice, no rule. */
export const ADVISED_DROP = 0.03;

/**
 * Volts lost in a two-wire cable: VD = 2 L R I (single phase, direct-current resistance, power factor 1).
 *
 * @param amps I, 0 to 400
 * @param length L, one way, m, 0 to 2000
 * @returns V
 * @throws Problem outside these ranges
 * @example cableDrop(8, 30.48, findWire("12 AWG")) => 3.17; 2 × 100 ft × 8 A × 1.98 ohm per 1000 ft, NEC chapter 9,
 *   Table 8
 *
 * Source: Ohm's law, both conductors; R from NEC chapter 9, Table 8, or IEC 60228. For planning only.
 */
export function cableDrop(amps: number, length: number, wire: Wire): number {
  const { amps: a, length: l } = CABLE_RANGE;
  if (!(amps >= a.min && amps <= a.max)) throw invalid(`amps must be ${a.min} to ${a.max}; got ${plain(amps)}`);
  if (!(length >= l.min && length <= l.max)) {
    throw invalid(`length must be ${l.min} to ${l.max} m, one way; got ${plain(length)} m`);
  }
  return 2 * length * wire.resistance * amps;
}

const wires = new Map(WIRES.map((wire) => [key(wire.name), wire]));

function key(text: string): string {
  return text
    .toLowerCase()
    .replace(/²/g, "2")
    .replace(/[\s#]|sq/g, "");
}

/**
 * The cable of a size: "12 AWG", "#12", "2.5 mm2" or "2.5 sq mm".
 * @throws Problem "missing" that lists the sizes
 * @example findWire("12").name => "12 AWG"; the one gauge that fits
 */
export function findWire(text: string, name = "gauge"): Wire {
  const wanted = key(text);
  const found = wires.get(wanted) ?? wires.get(`${wanted}awg`) ?? wires.get(`${wanted}2`);
  if (found) return found;
  throw missing(
    `${name} "${text.trim().slice(0, 20)}" is not known; use one of ${WIRES.map((wire) => wire.name).join(", ")}`,
  );
}
