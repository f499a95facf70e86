import type { Area } from "./address";
import type { Grid } from "./port";

/** Values for an area. */
export interface Write {
  readonly area: Area;
  readonly values: Grid;
}

/** The same writes in fewer pieces: one that goes on right below the one before, in the same columns, is joined to it. */
export function joined(writes: readonly Write[]): Write[] {
  const pieces: { area: Area; values: (readonly Grid[number][number][])[] }[] = [];
  for (const { area, values } of writes) {
    const before = pieces.at(-1);
    if (before && continues(before.area, area)) {
      before.area = { ...before.area, bottom: area.bottom };
      before.values.push(...values);
    } else pieces.push({ area, values: [...values] });
  }
  return pieces;
}

function continues(above: Area, below: Area): boolean {
  return (
    above.sheet === below.sheet &&
    above.left === below.left &&
    above.right === below.right &&
    above.bottom + 1 === below.top
  );
}
