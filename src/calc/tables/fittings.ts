/** A fitting's loss coefficient: a number, or a multiple of the friction factor in fully rough flow. */
export interface Fitting {
  readonly name: string;
  /** Other things people call it. */
  readonly also: readonly string[];
  /** K on the velocity in the pipe it is fitted to. */
  readonly k?: number;
  /** Equivalent length over bore (L/D), for rows of Crane: K = (L/D) × fT. */
  readonly lengthRatio?: number;
  /** The outlet of the whole route: its velocity head is counted once, by the route and not among the fittings. */
  readonly isOutlet?: boolean;
  readonly source: string;
}

const EPANET = "EPANET 2.2 User Manual (Rossman et al., EPA/600/R-20/133), Table 3.3";
const CRANE = "Crane TP-410, L/D values";

/** Fittings by name. Each row keeps the value of one source; other books differ by a third and more. */
export const FITTINGS: readonly Fitting[] = [
  {
    name: "90 elbow",
    also: ["elbow", "90", "90 ell", "90 degree elbow"],
    k: 0.9,
    source: `${EPANET}: short-radius elbow`,
  },
  { name: "90 elbow, medium radius", also: ["medium radius elbow"], k: 0.8, source: EPANET },
  {
    name: "90 sweep",
    also: ["sweep", "long radius elbow", "90 elbow, long radius", "90 degree sweep"],
    k: 0.6,
    source: `${EPANET}: long-radius elbow`,
  },
  { name: "45 elbow", also: ["45", "45 ell", "45 degree elbow"], k: 0.4, source: EPANET },
  { name: "return bend", also: ["180 bend", "closed return bend"], k: 2.2, source: EPANET },
  {
    name: "tee, straight through",
    also: ["tee run", "tee, run"],
    k: 0.6,
    source: `${EPANET}: standard tee, flow through run`,
  },
  {
    name: "tee, through branch",
    also: ["tee", "tee branch", "tee, branch"],
    k: 1.8,
    source: `${EPANET}: standard tee, flow through branch`,
  },
  {
    name: "union or coupling",
    also: ["union", "coupling"],
    k: 0.04,
    source: "Perry's Chemical Engineers' Handbook, loss coefficients of fittings (from memory)",
  },
  { name: "gate valve", also: ["gate valve, open"], k: 0.2, source: `${EPANET}: fully open` },
  {
    name: "ball valve",
    also: ["ball valve, open"],
    lengthRatio: 3,
    source: `${CRANE}: full-bore ball valve, open (from memory)`,
  },
  { name: "butterfly valve", also: [], lengthRatio: 45, source: `${CRANE}: open, 2 to 8 in` },
  { name: "globe valve", also: ["globe valve, open"], k: 10, source: `${EPANET}: fully open` },
  { name: "angle valve", also: ["angle valve, open"], k: 5, source: `${EPANET}: fully open` },
  { name: "swing check valve", also: ["check valve", "swing check"], k: 2.5, source: `${EPANET}: fully open` },
  {
    name: "pipe entrance",
    also: ["entrance", "inlet", "square entrance"],
    k: 0.5,
    source: `${EPANET}: square entrance`,
  },
  { name: "pipe outlet", also: ["outlet", "exit", "pipe exit"], k: 1, isOutlet: true, source: `${EPANET}: exit` },
];

/** Roughness behind Crane's friction factor in fully rough flow, m: commercial steel, 0.0018 in. */
export const CRANE_ROUGHNESS = 0.0018 * 0.0254;
