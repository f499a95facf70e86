import { SOIL_NAMES } from "../../../calc/earth/soil";
import { CHARACTERS } from "../../../job/facts/start";
import type { SheetLayout } from "../../layout";

/** The six questions; where they have a cell on another sheet, what is typed there wins. */
export function questions(s: SheetLayout): void {
  s.section("Six questions for a first price: leave blank what you don't know");
  s.input({
    name: "RunAsked",
    label: "Run: how long is the stream?",
    kind: "length",
    min: 0.5,
    max: { US: 1000, SI: 300 },
    optional: true,
    message: "Taped level from the top lip to the basin, like 14 ft or 4.2 m. Blank if you don't know.",
    note: "Used on Site until you type it there.",
  });
  s.input({
    name: "FallAsked",
    label: "Fall: how high is the top lip?",
    kind: "length",
    min: 0.1,
    max: { US: 60, SI: 18 },
    optional: true,
    message: "Top lip above the finished grade at the basin, like 3'2 or 95 cm. Blank if you don't know.",
    note: "Used on Site until you type it there.",
  });
  s.input({
    name: "LipAsked",
    label: "Lip: how wide is the top lip?",
    kind: "size",
    min: { US: 1, SI: 25 },
    max: { US: 480, SI: 12_000 },
    optional: true,
    message: "Along its edge, like 30 in or 2'6. Blank if you don't know.",
    note: "For this first price; each lip goes on Water.",
  });
  s.input({
    name: "WaterCharacter",
    label: "Water: how should it sound?",
    kind: "text",
    choices: CHARACTERS,
    optional: true,
    message: "A trickle, a clear sheet, or loud; choose from the list. Blank if you don't know.",
    note: "For this first price; the depth over the lip goes on Water.",
  });
  s.input({
    name: "SoilAsked",
    label: "Soil: what will you dig in?",
    kind: "text",
    choices: SOIL_NAMES,
    optional: true,
    message: "The ground that will be dug; choose from the list. Blank if you don't know.",
    note: "Used on Site until you type it there.",
  });
  s.input({
    name: "WayInAsked",
    label: "Way in: how wide is the gate?",
    kind: "length",
    min: { US: 1, SI: 0.3 },
    max: { US: 100, SI: 30 },
    optional: true,
    message: "Clear width of the narrowest gate or passage, like 34 in. Blank if you don't know.",
    note: "Used on Site until you type it there.",
  });
}
