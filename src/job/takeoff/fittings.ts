/** Fittings that are bought, with the columns of the route they are counted in; intakes are part of the pump. */
export const FITTINGS = [
  ["90 elbow", ["elbows"]],
  ["90 sweep", ["sweeps"]],
  ["45 elbow", ["halfElbows"]],
  ["tee", ["teesThrough", "teesBranch"]],
  ["ball valve", ["ballValves"]],
  ["check valve", ["checkValves"]],
  ["union", ["unions"]],
] as const;

export type FittingColumns = (typeof FITTINGS)[number][1];
export type FittingColumn = FittingColumns[number];
