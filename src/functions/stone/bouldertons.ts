import { BOULDER_RANGE, boulderFaceWeight, USUAL_SOLID_SHARE, WEIGHT_ERROR } from "../../calc/stone/boulder";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { quantity, share } from "../contract/scalars";
import { LIFTING_CAUTION, rock, THICKNESS, waste } from "./arguments";

export const BOULDERTONS = declare({
  name: "BOULDERTONS",
  topic: "stone",
  summary: "Gives the weight of the boulders of a face, such as a drop or a bank.",
  formula: "W = length × height × thickness × solid share × rock density × (1 + waste)",
  source:
    "Geometry. Voids of dumped or placed rock 35 to 40% (FHWA and USACE practice, from memory). " +
    "Rock densities: the sources named in the density table",
  limits: `Blank solid share is 0.65; loosely laid stone keeps 0.6, tightly fitted 0.8. One boulder can be off by ${WEIGHT_ERROR}: order lip stones by the piece.`,
  caution: LIFTING_CAUTION,
  args: {
    face_length: quantity("length", "Length of the face", BOULDER_RANGE.faceLength),
    face_height: quantity("length", "Height of the face", BOULDER_RANGE.faceHeight),
    thickness: quantity("size", "How far the stones reach back", THICKNESS),
    rock,
    solid_share: optional(
      share("What is left without the gaps between stones", { min: 0.3, max: 1 }),
      String(USUAL_SOLID_SHARE),
      USUAL_SOLID_SHARE,
    ),
    waste,
  },
  result: quantityResult("load", "the weight of the boulders"),
  examples: [
    {
      args: [10, 1.5, 18, "165 lb/ft3", 0.65],
      gives: 1.2065625,
      within: 1e-6,
      from: "by hand: 10 × 1.5 × 1.5 ft = 22.5 ft³; × 0.65 × 165 lb/ft³ = 2,413 lb; / 2,000 = 1.207 ton",
    },
    {
      args: [4, 0.5, 400, 2.7, 0.7, 0.1, "SI"],
      gives: 1.6632,
      within: 1e-9,
      from: "by hand: 4 × 0.5 × 0.4 m = 0.8 m³; × 0.7 × 2.7 t/m³ × 1.1 = 1.6632 t",
    },
  ],
  compute: ({ face_length, face_height, thickness, rock, solid_share, waste }) =>
    boulderFaceWeight(face_length, face_height, thickness, rock, solid_share, waste),
});
