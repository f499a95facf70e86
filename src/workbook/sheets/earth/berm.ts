import type { SheetLayout } from "../../layout";

/** The berm the spillway box stands on. */
export function berm(s: SheetLayout): void {
  s.section("Berm under the spillway box");
  const side = (
    name: string,
    label: string,
    demo: { US: number; SI: number },
    max: { US: number; SI: number },
    message: string,
  ): void => {
    s.input({ name, label, kind: "length", demo, min: 0, max, message });
  };
  side("BermLength", "Length of the crest", { US: 5.5, SI: 1.5 }, { US: 300, SI: 90 }, "Length of the flat top.");
  side("BermWidth", "Width of the crest", { US: 3, SI: 0.8 }, { US: 100, SI: 30 }, "Width of the flat top.");
  s.input({
    name: "BermGround",
    label: "Level of the ground under it",
    kind: "length",
    demo: { US: 99.4, SI: 49.82 },
    min: -2000,
    max: 30000,
    message: "Level of the ground that the berm will stand on, by the rod. With shots on Ground, these count instead.",
  });
  s.result({
    name: "BermHeight",
    label: "Height over that ground",
    kind: "length",
    formula: `=MAX(0,TopLipLevel-BoxHeight/${s.job.per("size", "length")}-GroundAtLip)`,
    needs: ["TopLipLevel", "BoxHeight", "GroundAtLip"],
    note: "Up to the foot of the box on Levels; 0 where it is dug into the ground.",
  });
  s.input({
    name: "BermSlope",
    label: "Slope of its sides",
    kind: "factor",
    unit: "to 1",
    min: 0.5,
    max: 6,
    message: "Horizontal run for each 1 of height; loose earth needs 1.5 and more.",
    format: "0.00",
  });
  s.input({
    name: "BermEnds",
    label: "Its ends",
    kind: "text",
    choices: ["sloped", "square"],
    message: "Sloped where the berm stands free, square where it runs into a bank or wall.",
  });
  s.result({
    name: "BermNeed",
    label: "Berm and fill along the line (compacted)",
    formula: "=LineFill",
    kind: "earth",
    needs: ["LineFill"],
    strong: true,
    note: "By station on Ground: under the box and under the stream wherever it lies above the ground.",
  });
  s.notice("Build the berm in thin compacted layers; loose fill settles and tilts the lip.");
  s.caution("High berms and walls that hold back earth or water may need an engineer.");
}
