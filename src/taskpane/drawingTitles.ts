/** The drawing that a longer search may change. */
export const CUT_PLAN = "Cut plan";

/** The drawings to choose from, in the order of `DRAWINGS`: their code comes when the first is looked at. */
export const DRAWING_TITLES = [
  "Client's drawing",
  "Section",
  "Profile",
  "Plan",
  CUT_PLAN,
  "Pump and system curves",
] as const;
