import { drawing, element } from "../svg";
import { dimensions, extensions } from "./dimensions";
import { refuseUndrawable, seedOf, type ClientFacts } from "./facts";
import { featureOf, type Feature } from "./feature";
import { frameOf } from "./frame";
import { Labels, lengthText } from "./labels";
import { names } from "./names";
import { captions, NOTE_LINE, notesOf } from "./notes";
import { gravel } from "./paint";
import { clientPlan } from "./plan";
import { scaleBar } from "./scaleBar";
import { clientSection } from "./section";

export type { ClientFacts } from "./facts";

/** Width of the drawing in the pane; the lettering is as large in every width. */
const PANE_WIDTH = 360;

/**
 * The feature as a client sees it: section and plan to one scale, built of the stones that were counted.
 * The same job gives the same picture, to the byte.
 */
export function clientDrawing(facts: ClientFacts, width = PANE_WIDTH): string {
  refuseUndrawable(facts);
  const feature = featureOf(facts);
  const notes = notesOf(facts, width);
  const frame = frameOf(feature, width, 30 + NOTE_LINE * notes.length);
  const labels = new Labels();
  // Names of patterns hold for the whole page they stand on, so another drawing's must be others.
  const mark = `${seedOf(facts) >>> 0}-${width}`;
  const pebble = feature.foot * frame.scale;
  const patterns =
    gravel(`fine-${mark}`, Math.max(1.1, 0.075 * pebble), feature.random) +
    gravel(`coarse-${mark}`, Math.max(1.6, 0.15 * pebble), feature.random);
  const fills = { fine: `url(#fine-${mark})`, coarse: `url(#coarse-${mark})` };
  dimensions(feature, frame, labels);
  names(feature, frame, labels);
  captions(feature, frame, notes, labels);
  return drawing(
    frame.width,
    frame.height,
    `Client's drawing: ${facts.name}`,
    described(feature),
    element("defs", {}, patterns) +
      clientSection(feature, frame, fills) +
      clientPlan(feature, frame, fills) +
      extensions(feature, frame) +
      labels.drawn +
      scaleBar(feature, frame),
  );
}

function described({ facts, fall, run }: Feature): string {
  const text = (length: number): string => lengthText(length, facts.system);
  return (
    `${facts.drops.length} drops with a fall of ${text(fall)} over a run of ${text(run)}, a bed ${text(facts.bedWidth)} wide ` +
    `between stone banks, and a buried basin of ${text(facts.basinLength)} by ${text(facts.basinWidth)}, ${text(facts.basinDepth)} deep.`
  );
}
