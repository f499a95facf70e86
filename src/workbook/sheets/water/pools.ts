import type { SheetLayout } from "../../layout";
import { numbered, partOf } from "./parts";

const POOLS = 6;

/** Pools whose lip sheet comes back into the basin. */
export function pools(s: SheetLayout): void {
  s.section("Pools above the basin");
  s.note("What stands on a pool's lip comes back into the basin when the pump stops. The spillway box is a pool too.");
  const table = s.table({
    rows: POOLS,
    columns: [
      { key: "pool", title: "Pool, from the top", kind: "text", fixed: numbered("Pool", POOLS) },
      {
        key: "area",
        title: "Water surface",
        kind: "area",
        format: "#,##0.00",
        input: { min: { US: 0.2, SI: 0.02 }, max: { US: 20_000, SI: 2000 }, message: "Area of the pool's surface." },
      },
      {
        key: "lip",
        title: "Lip width",
        kind: "size",
        input: {
          min: { US: 1, SI: 25 },
          max: { US: 960, SI: 24_000 },
          message: "Width of the lip this pool runs over; of several lips, their sum.",
        },
      },
      { key: "sheet", title: "Sheet on its lip", kind: "size", whole: true, formula: partOf("[pool]", 4) },
      {
        key: "water",
        title: "Comes back",
        kind: "water",
        format: "#,##0.0",
        whole: true,
        formula: partOf("[pool]", 2),
      },
    ],
    demo: {
      US: [
        [3.4, 40],
        [8.5, 22],
        [11.5, 29],
      ],
      SI: [
        [0.32, 1030],
        [0.75, 560],
        [1.1, 740],
      ],
    },
  });
  const [areas, lips] = [table.column("area"), table.column("lip")];
  s.define("PoolTable", areas.top, areas.left, lips.bottom, lips.right);
  s.define("PoolAreas", areas.top, areas.left, areas.bottom, areas.right);
  s.caution("Even shallow open water drowns small children: fill pools with stone, or fence them as local rules ask.");
}
