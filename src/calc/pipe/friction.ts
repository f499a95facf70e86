import { invalid, plain, requireFinite } from "../problem";

/** Standard gravity, m/s². */
export const GRAVITY = 9.80665;

/** The one exponent set of Hazen-Williams used everywhere here (SI form). Never mix it with another form's constant. */
const HAZEN_WILLIAMS = { constant: 10.67, flowExponent: 1.852, boreExponent: 4.8704 } as const;

/**
 * Where Hazen-Williams may be believed: turbulent water near 15 °C, up to about 3 m/s (10 ft/s).
 * Source: common statement of hydraulics texts (from memory). Outside it the answer is given and the doubt is said.
 */
export const HAZEN_WILLIAMS_RANGE = { leastReynolds: 4000, mostSpeed: 3.05 } as const;

/** Below the first the flow is laminar, above the second turbulent; between them neither is sure. */
export const REYNOLDS_LAMINAR = 2000;
export const REYNOLDS_TURBULENT = 4000;

/** Flow exponent, for systems that add up pipes before raising to it. */
export const HAZEN_WILLIAMS_EXPONENT = HAZEN_WILLIAMS.flowExponent;

/**
 * Mean speed in a full pipe: V = Q / (π d² / 4).
 *
 * @param flow Q, m³/s, 0 or more
 * @param bore d, m, above 0
 * @returns m/s
 * @throws Problem for a bore that is not above 0
 * @example pipeSpeed(0.002, 0.05) => 1.0186; 0.002 / 0.00196350
 */
export function pipeSpeed(flow: number, bore: number): number {
  return requireFinite("flow", flow) / boreArea(bore);
}

/**
 * Area of a full pipe, m².
 *
 * @example boreArea(0.05) => 0.0019635; π/4 × 0.05²
 */
export function boreArea(bore: number): number {
  if (!(bore > 0)) throw invalid(`bore must be more than 0; got ${plain(bore)} m`);
  return (Math.PI / 4) * bore * bore;
}

/**
 * What Hazen-Williams multiplies Q^1.852 with: r = 10.67 L / (C^1.852 d^4.8704), so that hf = r Q^1.852.
 *
 * @param length L, m, 0 or more
 * @param bore d, m, above 0
 * @param coefficient C, above 0; 130 to 150 for plastic
 *
 * Source: SI form as in Shammas & Wang, Water Engineering, Eq. 5.37, and the EPANET 2.2 User Manual, Table 3.1 in SI.
 */
export function hazenWilliamsResistance(length: number, bore: number, coefficient: number): number {
  if (!(bore > 0)) throw invalid(`bore must be more than 0; got ${plain(bore)} m`);
  if (!(coefficient > 0)) throw invalid(`C of Hazen-Williams must be more than 0; got ${plain(coefficient)}`);
  const { constant, flowExponent, boreExponent } = HAZEN_WILLIAMS;
  return (constant * length) / (coefficient ** flowExponent * bore ** boreExponent);
}

/**
 * Darcy friction factor of a round pipe (four times Fanning's).
 * Re ≤ 2000: f = 64 / Re.
 * Re ≥ 4000: Colebrook-White, 1/√f = -2 log₁₀(ε/3.7d + 2.51 / (Re √f)).
 * Between them, where flow may be either: the cubic in Re that meets both ends in value and slope, so that head
 * never jumps; as Dunlop's cubic does in EPANET. Two books can differ by 10 % here.
 *
 * @param reynolds Re, above 0
 * @param relativeRoughness ε/d, 0 to 0.05
 * @throws Problem outside these ranges
 * @example frictionFactor(100_000, 0.0001) => 0.0185; Moody chart
 *
 * Source: Hagen-Poiseuille; C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; EPANET 2.2 User Manual, chapter 12
 * (head loss formulas, transitional flow after Dunlop 1991).
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (!(reynolds > 0)) throw invalid(`Reynolds number must be more than 0; got ${plain(reynolds)}`);
  if (!(relativeRoughness >= 0 && relativeRoughness <= 0.05)) {
    throw invalid(`roughness must be 0 to 0.05 of the bore; got ${plain(relativeRoughness)}`);
  }
  if (reynolds <= REYNOLDS_LAMINAR) return 64 / reynolds;
  if (reynolds >= REYNOLDS_TURBULENT) return colebrook(reynolds, relativeRoughness).factor;
  return transition(reynolds, relativeRoughness);
}

/** Newton steps on x = 1/√f; the function is all but straight, so four reach the last digit. */
const COLEBROOK_STEPS = 4;

/** Colebrook-White's f and its slope df/dRe. */
function colebrook(reynolds: number, relativeRoughness: number): { factor: number; slope: number } {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  const perLog = 2 / Math.LN10;
  // Swamee-Jain's explicit formula starts within 1 %.
  let x = -2 * Math.log10(rough + 5.74 / reynolds ** 0.9);
  let inside = rough + smooth * x;
  for (let step = 0; step < COLEBROOK_STEPS; step++) {
    const residual = x + perLog * Math.log(inside);
    x -= residual / (1 + (perLog * smooth) / inside);
    inside = rough + smooth * x;
  }
  // Differentiating x + perLog ln(rough + smooth x) = 0 with respect to Re; smooth changes by -smooth/Re.
  const dx = (perLog * smooth * x) / (reynolds * inside) / (1 + (perLog * smooth) / inside);
  return { factor: 1 / (x * x), slope: (-2 * dx) / (x * x * x) };
}

/** Cubic (Hermite) between the laminar and the turbulent end. */
function transition(reynolds: number, relativeRoughness: number): number {
  const width = REYNOLDS_TURBULENT - REYNOLDS_LAMINAR;
  const laminar = 64 / REYNOLDS_LAMINAR;
  const laminarSlope = -laminar / REYNOLDS_LAMINAR;
  const turbulent = colebrook(REYNOLDS_TURBULENT, relativeRoughness);
  const s = (reynolds - REYNOLDS_LAMINAR) / width;
  const rest = 1 - s;
  return (
    rest * rest * ((1 + 2 * s) * laminar + s * width * laminarSlope) +
    s * s * ((3 - 2 * s) * turbulent.factor - rest * width * turbulent.slope)
  );
}

/**
 * Friction head of a pipe after Darcy-Weisbach: hf = f (L/d) V² / 2g.
 *
 * @param flow m³/s, 0 or more
 * @param bore d, m, above 0
 * @param length L, m, 0 or more
 * @param roughness ε, m, 0 to 0.05 d
 * @param viscosity ν, m²/s, above 0
 * @returns m of water
 * @throws Problem outside these ranges
 *
 * Source: any hydraulics text; f as frictionFactor.
 */
export function darcyWeisbachLoss(
  flow: number,
  bore: number,
  length: number,
  roughness: number,
  viscosity: number,
): number {
  const speed = pipeSpeed(flow, bore);
  if (speed === 0) return 0;
  if (!(viscosity > 0)) throw invalid(`viscosity must be more than 0; got ${plain(viscosity)} m²/s`);
  const factor = frictionFactor((speed * bore) / viscosity, roughness / bore);
  return (factor * (length / bore) * speed * speed) / (2 * GRAVITY);
}
