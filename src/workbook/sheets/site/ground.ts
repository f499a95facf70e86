import { SOIL_NAMES } from "../../../calc/earth/soil";
import { densityNames } from "../../../calc/stone/density";
import type { SheetLayout } from "../../layout";
import { text } from "./text";

/** The ground that is dug, the stone that is set, and how to get there. */
export function ground(s: SheetLayout): void {
  s.section("Ground, stone and access");
  s.input({
    name: "SoilKind",
    label: "Ground",
    kind: "text",
    choices: SOIL_NAMES,
    message: "The ground that will be dug; choose from the list.",
  });
  s.input({
    name: "GroundWaterDepth",
    label: "Groundwater below finished grade",
    kind: "length",
    demo: { US: 6.5, SI: 2.1 },
    min: 0,
    max: { US: 100, SI: 30 },
    message: "How deep below finished grade water stood in a test hole, or is known to rise; blank while unknown.",
    optional: true,
    note: "A test hole tells; highest in the wet season.",
  });
  s.input({
    name: "RockKind",
    label: "Rock for boulders",
    kind: "text",
    choices: densityNames("rock"),
    message: "The rock of boulders and lip stones; choose from the list.",
  });
  s.input({
    name: "GravelKind",
    label: "Gravel",
    kind: "text",
    choices: densityNames("stone"),
    message: "The gravel that covers bed and basin; choose from the list.",
  });
  text(
    s,
    "AccessNote",
    "Access",
    {
      US: "Side yard behind a double gate; no machine over the septic field.",
      SI: "Hofdurchfahrt, 2,6 m hoch; Kran nur bis 18 Uhr.",
    },
    "Gates, slopes, overhead wires, working hours.",
    180,
    true,
  );
  // Room for what is said of most sites, blank or filled.
  s.roomFor(s.row - 1, 3);
  s.input({
    name: "AccessWidth",
    label: "Narrowest point of the way in",
    kind: "length",
    demo: { US: 6.5, SI: 2.2 },
    min: { US: 1, SI: 0.3 },
    max: { US: 100, SI: 30 },
    message: "Clear width of the narrowest gate or passage that machines and stone must pass; blank while unknown.",
    optional: true,
  });
  s.caution(
    s.job.pick({
      US: "Before anyone digs call 811 (United States), so that buried lines are marked. Keep machines, booms and loads 10 ft from overhead wires; that holds to 50 kV only (29 CFR 1926.1408 Table A, 1926.600(a)(6)): otherwise ask the utility.",
      SI: "Have buried lines marked by the utility owners before anyone digs. Keep machines, booms and loads 5 m from overhead wires of unknown voltage (DIN VDE 0105-100, from memory), and ask the utility.",
    }),
  );
}
