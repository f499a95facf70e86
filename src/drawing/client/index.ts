import { drawing } from "../svg";
import { dimensions, extensions } from "./dimensions";
import { refuseUndrawable, type ClientFacts } from "./facts";
import { featureOf, type Feature } from "./feature";
import { frameOf } from "./frame";
import { Labels, lengthText } from "./labels";
import { names } from "./names";
import { captions, NOTE_LINE, notesOf } from "./notes";
import { clientPlan } from "./plan";
import { scaleBar } from "./scaleBar";
import { clientSection } from "./section";
import type { Sheet } from "./sheet";

export type { ClientFacts } from "./facts";
export type { Sheet } from "./sheet";

/** The pane's width. */
const PANE: Sheet = { width: 360 };

/**
 * The feature as a client sees it: section and plan to one scale, built of the stones that were counted.
 * The same job gives the same picture, to the byte.
 */
export function clientDrawing(facts: ClientFacts, sheet: Sheet = PANE): string {
  refuseUndrawable(facts);
  const feature = featureOf(facts);
  const { width, bare = false } = sheet;
  const notes = bare ? [] : notesOf(facts, width);
  const frame = frameOf(feature, sheet, 30 + NOTE_LINE * notes.length);
  const labels = new Labels();
  dimensions(feature, frame, labels);
  names(feature, frame, labels);
  captions(feature, frame, notes, labels, bare);
  return drawing(
    frame.width,
    frame.height,
    `Client's drawing: ${facts.name}`,
    described(feature),
    clientSection(feature, frame) +
      clientPlan(feature, frame) +
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
