import type { Feature } from "./feature";
import { PERSON_FEET } from "./person";
import type { Sheet } from "./sheet";

/** Where the section and the plan stand on the sheet: one scale for both, lengths and heights alike. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /** Across the sheet from a station; down the sheet from a level, or from a distance left or right of the middle. */
  readonly x: (station: number) => number;
  readonly y: (level: number) => number;
  readonly across: (distance: number) => number;
  /** Ends of the ground that is drawn, as stations and levels. */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  /** Where the person stands. */
  readonly person: number;
  /** Lines of the sheet: the two rows of dimensions between section and plan, and the first line of the notes. */
  readonly treadsAt: number;
  readonly lengthsAt: number;
  /** Columns of the sheet: the dimensions of fall and bed on the left, of the basin on the right. */
  readonly fallAt: number;
  readonly deepAt: number;
  readonly planTop: number;
  readonly notesAt: number;
}

const MARGIN = { left: 12, right: 66, top: 36, bare: 18 };
const BETWEEN = 46;
/** Room for the dimension of the fall, left of the ground. */
const FALL_ROOM = 58;
/** Where nothing is said, a drawing is at most this many times as high as it is wide. */
const MOST_HEIGHT = 1.9;

/** `noteRoom` is the room that the notes under the plan take. */
export function frameOf(feature: Feature, sheet: Sheet, noteRoom: number): Frame {
  const { facts, foot, fall, rim, run, box } = feature;
  const before = box + Math.max(1.8 * foot, 0.05 * run);
  const person = run + facts.basinLength + 1.8 * foot;
  const right = person + 1.6 * foot;
  const above = Math.max(facts.bankHeight + 2.2 * foot, (PERSON_FEET + 0.4) * foot - fall);
  const bottom = rim - facts.basinDepth - 0.7 * foot;
  const stones = Math.max(0, ...[...feature.far, ...feature.near].map(({ boulder }) => boulder.across));
  const around = Math.max(0, ...feature.around.map(({ across }) => across));
  const half = Math.max(
    facts.bedWidth / 2 + Math.max(2.6 * foot, 1.5 * stones),
    facts.basinWidth / 2 + 0.5 * around + 0.3 * foot,
  );
  const top = sheet.bare ? MARGIN.bare : MARGIN.top;
  const fixed = top + BETWEEN + noteRoom;
  const { width, height = MOST_HEIGHT * width } = sheet;
  const room = width - MARGIN.left - FALL_ROOM - MARGIN.right;
  const scale = Math.min(room / (before + right), (height - fixed) / (above - bottom + 2 * half));
  const spare = (room - (before + right) * scale) / 2;
  const origin = MARGIN.left + FALL_ROOM + spare + before * scale;
  const sectionBottom = top + (above - bottom) * scale;
  const planTop = sectionBottom + BETWEEN;
  const planBottom = planTop + 2 * half * scale;
  const x = (station: number): number => origin + station * scale;
  return {
    width,
    height: Math.ceil(planBottom + noteRoom),
    scale,
    x,
    y: (level) => top + (above - level) * scale,
    across: (distance) => planTop + (half + distance) * scale,
    left: -before,
    right,
    bottom,
    person,
    treadsAt: sectionBottom + 17,
    lengthsAt: sectionBottom + 33,
    fallAt: x(-before) - FALL_ROOM + 2,
    deepAt: x(right) + 6,
    planTop,
    notesAt: planBottom + 20,
  };
}
