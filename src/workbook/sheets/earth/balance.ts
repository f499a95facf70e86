import { STEEPEST_SLOPES, STEEPEST_SLOPES_DIN } from "../../../calc/tables/slopes";
import type { Job, SheetLayout } from "../../layout";
import { readFrom } from "../../layout/conditions";

/** What becomes of the spoil: bank, loose and compacted, and truckloads. */
export function balance(s: SheetLayout): void {
  s.section("Spoil or fill");
  const figure = (name: string, label: string, min: number, max: number, message: string): void => {
    s.input({ name, label, kind: "share", min, max, message, optional: true });
  };
  figure(
    "OwnSwell",
    "Your own swell, if known",
    0,
    1,
    "Share by which the soil grows when dug; blank uses the table's.",
  );
  figure(
    "OwnShrink",
    "Your own shrink, if known",
    -0.6,
    0.4,
    "Share by which it shrinks from bank to compacted; blank uses the table's.",
  );
  s.result({
    name: "SoilUsed",
    label: "Soil used",
    formula: `=IF(COUNT(OwnSwell,OwnShrink)=2,"swell "&OwnSwell&" shrink "&OwnShrink,SoilKind)`,
    kind: "text",
    note: "Own figures count when both are filled in.",
  });
  s.input({
    name: "SpoilTruck",
    label: "One truck holds, loose",
    kind: "earth",
    min: 0.5,
    max: { US: 40, SI: 30 },
    message: "Loose volume one truck takes; check its weight limit too.",
  });
  s.note("The row of the berm counts what is filled in again too. Fill is what they take beyond the spoil.");
  s.spill({
    name: "SoilTable",
    formula: "=RILL.SOILBALANCE(DugVolume,BermNeed+BackfillVolume,SoilUsed,SpoilTruck,Units)",
    rows: 4,
    header: "function",
    columns: [{ kind: "text" }, { kind: "earth" }, { kind: "earth" }, { kind: "earth" }, { kind: "count" }],
    needs: ["DugVolume", "BermNeed", "BackfillVolume", "SpoilTruck"],
  });
  const loads = { kind: "count", unit: "loads", strong: true } as const;
  const loose = { kind: "earth", strong: true } as const;
  s.results(readFrom("SoilTable", "{3;3;4;4}", "{3;5;3;5}"), [
    { name: "SpoilAway", label: "Spoil to take away (loose)", ...loose },
    { name: "SpoilLoads", label: "Truckloads of spoil", ...loads },
    { name: "FillNeed", label: "Fill to bring (loose)", ...loose },
    { name: "FillLoads", label: "Truckloads of fill", ...loads },
  ]);
}

/** The steepest sides a pit may have. */
export function slopes(s: SheetLayout, job: Job): void {
  const rows = job.pick({ US: STEEPEST_SLOPES, SI: STEEPEST_SLOPES_DIN });
  s.section("Steepest side of an open pit");
  s.note(
    job.pick({
      US: "For pits less than 20 ft deep in the United States, as a guide elsewhere; local rules decide. A competent person classes the soil on site.",
      SI: "Above the water table and without loads at the edge; upright to 1.25 m deep. Local rules decide; a competent person judges the soil on site.",
    }),
  );
  s.table({
    rows: rows.length,
    columns: [
      { key: "soil", title: "Soil", kind: "text", fixed: rows.map((row) => row.name) },
      {
        key: "slope",
        title: "Run per 1 of depth",
        kind: "factor",
        format: "0.00",
        fixed: rows.map((row) => row.slope),
      },
      { key: "source", title: "Source", kind: "text", fixed: rows.map((row) => row.source), across: 5 },
    ],
  });
}
