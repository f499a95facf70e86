/** Whether everything is tried (`npm run test:all`), or what `npm test` has time for. */
export const ALL = process.env.TESTS === "all";

/** How often something is tried: as often as the short run has time for, or as all of it asks for. */
export function tries(short: number, all: number): number {
  return ALL ? all : short;
}
