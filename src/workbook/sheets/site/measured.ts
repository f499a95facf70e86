import { FALL_FROM } from "../../../job/facts/site";
import type { SheetLayout } from "../../layout";
import { text } from "./text";

/** What was measured of the feature, and the levels all others are measured from. */
export function measured(s: SheetLayout): void {
  s.section("Measured");
  text(
    s,
    "FeatureName",
    "Feature",
    { US: "Hollow Bank stream", SI: "Hofbach" },
    "What the feature is called on drawings and pages.",
    40,
  );
  s.input({
    name: "FallTyped",
    label: "Fall, up to the top lip",
    kind: "length",
    demo: { US: 2.75, SI: 0.95 },
    min: 0.1,
    max: { US: 60, SI: 18 },
    message: "Height of the highest lip over the basin's finished grade or over its rim, as the next cell says.",
    note: "By level, not by eye: all else follows.",
  });
  s.input({
    name: "FallFrom",
    label: "Measured from",
    kind: "text",
    choices: FALL_FROM,
    message: "Where the fall begins: the finished grade at the basin, or the basin's rim, which lies lower.",
    note: "The rim lies lower, as Basin says.",
  });
  s.input({
    name: "Run",
    label: "Run",
    kind: "length",
    demo: { US: 9.5, SI: 3.4 },
    min: 0.5,
    max: { US: 1000, SI: 300 },
    message: "Horizontal length of the feature from the highest lip to the basin.",
  });
  s.input({
    name: "DropCount",
    label: "Number of drops",
    kind: "count",
    demo: { US: 4, SI: 5 },
    min: 1,
    max: 12,
    message: "Steps the fall is divided into.",
    note: {
      US: "Rule of thumb: drops of 6 to 8 in.",
      SI: "Rule of thumb: drops of 15 to 20 cm.",
    },
  });
  s.input({
    name: "BedWidth",
    label: "Bed width",
    kind: "length",
    demo: { US: 3.25, SI: 1.1 },
    min: { US: 0.5, SI: 0.15 },
    max: { US: 40, SI: 12 },
    message: "Width of the stream bed between the banks.",
  });
  s.input({
    name: "BankHeight",
    label: "Bank height above the bed",
    kind: "length",
    demo: { US: 0.9, SI: 0.3 },
    min: { US: 0.1, SI: 0.03 },
    max: { US: 6, SI: 2 },
    message: "Height of the banks above the stream bed.",
  });
}

export function levels(s: SheetLayout): void {
  s.section("Levels");
  s.input({
    name: "BenchmarkLevel",
    label: "Benchmark level",
    kind: "length",
    demo: { US: 100, SI: 50 },
    min: -2000,
    max: 30000,
    message: "Level given to the fixed point all others are measured from.",
    note: "Any round number; keep it for the whole job.",
  });
  s.input({
    name: "GradeLevel",
    label: "Finished grade at the basin",
    kind: "length",
    demo: { US: 99.4, SI: 49.82 },
    min: -2000,
    max: 30000,
    message: "Level of the finished patio or lawn at the basin.",
  });
}
