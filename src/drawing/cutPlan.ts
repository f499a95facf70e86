import { invalid } from "../calc/problem";
import { unitLabel } from "../calc/quantity/measures";
import type { CutPlanFacts } from "./cutPlanFacts";
import { type Cut, drawSheet, isOn, LEFT, LETTER, shortened, wasteHatch } from "./cutPlanSheet";
import { drawing, element, FAINT, figure, label } from "./svg";

const WIDTH = 360;
const RIGHT = 12;
const TOP = 26;
/** A wide roll must not make the drawing taller than a screen. */
const TALLEST_SHEET = 240;
/** Below this a narrow strip of a long roll could not be seen. */
const LOWEST_SHEET = 16;
const ABOVE_SHEET = 42;
const LEGEND_ROW = 15;

/** Every length to buy with the cuts on it, numbered, and a list of the cuts below. Waste is hatched. */
export function cutPlanDrawing(facts: CutPlanFacts): string {
  const { bought, name } = facts;
  if (bought.length === 0 || facts.cuts.length === 0) throw invalid("the cut plan needs at least one cut on a roll");
  for (const { start, length, width } of bought) {
    if (!(start >= 0 && length > 0 && width > 0 && Number.isFinite(start + length + width))) {
      throw invalid("the cut plan needs lengths and widths above 0");
    }
  }
  for (const { along, across, length, width } of facts.cuts) {
    if (!(along >= 0 && across >= 0 && length > 0 && width > 0 && Number.isFinite(along + across + length + width))) {
      throw invalid("the cut plan needs cuts with lengths and widths above 0");
    }
  }
  const unit = unitLabel("length", facts.system);
  const cuts = facts.cuts.map((cut, index): Cut => ({ ...cut, number: index + 1 }));
  const longest = Math.max(...bought.map((b) => b.length));
  const widest = Math.max(...bought.map((b) => b.width));
  const alongScale = Math.min((WIDTH - LEFT - RIGHT) / longest, TALLEST_SHEET / widest);
  const acrossScale = Math.max(alongScale, LOWEST_SHEET / Math.min(...bought.map((b) => b.width)));

  const parts = [wasteHatch()];
  let y = TOP;
  for (const sheet of bought) {
    y += ABOVE_SHEET;
    parts.push(
      drawSheet(
        sheet,
        cuts.filter((cut) => isOn(cut, sheet)),
        y,
        alongScale,
        acrossScale,
        unit,
      ),
    );
    y += sheet.width * acrossScale;
  }
  y += 26;
  for (const cut of cuts) {
    const size = `${figure(cut.length)} × ${figure(cut.width)} ${unit}${cut.turned ? ", turned" : ""}`;
    parts.push(
      label(LEFT - 8, y, `${cut.number}`, { "text-anchor": "end", "font-weight": "bold" }),
      label(LEFT, y, shortened(cut.name, WIDTH - LEFT - RIGHT - (size.length + 2) * LETTER)),
      label(WIDTH - RIGHT, y, size, { "text-anchor": "end" }),
    );
    y += LEGEND_ROW;
  }
  parts.push(
    element("rect", { x: LEFT, y: y - 7, width: 18, height: 11, fill: "url(#cut-plan-waste)", stroke: FAINT }),
    label(LEFT + 24, y + 2, "not used", { fill: FAINT }),
    label(WIDTH - RIGHT, y + 2, scaleNote(alongScale, acrossScale), { "text-anchor": "end", fill: FAINT }),
  );

  const title = `Cut plan${name ? `: ${name}` : ""}`;
  const heading = label(WIDTH / 2, 18, shortened(title, WIDTH - 20), {
    "text-anchor": "middle",
    "font-size": 12,
    "font-weight": "bold",
  });
  return drawing(WIDTH, y + 14, title, description(facts, unit), heading + parts.join(""));
}

function scaleNote(along: number, across: number): string {
  return across > along * 1.001 ? "widths drawn larger" : "";
}

function description({ bought, cuts }: CutPlanFacts, unit: string): string {
  const rolls = bought.map(
    ({ roll, length, width }) => `${figure(length)} ${unit} of roll ${roll}, ${figure(width)} ${unit} wide`,
  );
  const list = cuts.map((cut) => {
    const place = `${figure(cut.along)} ${unit} along and ${figure(cut.across)} ${unit} across roll ${cut.roll}`;
    return `${cut.name}, ${figure(cut.length)} by ${figure(cut.width)} ${unit}, at ${place}`;
  });
  return `Buy ${rolls.join("; ")}. Cuts: ${list.join("; ")}.`;
}
