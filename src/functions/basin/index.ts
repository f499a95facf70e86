import type { Declaration } from "../contract/declaration";
import { BASINCHECK } from "./basincheck";
import { BASINDEPTH } from "./basindepth";
import { BASINHOLD } from "./basinhold";
import { BASINMIX } from "./basinmix";
import { DRAINBACK } from "./drainback";
import { DRAINTABLE } from "./draintable";

export const basinFunctions: readonly Declaration[] = [
  DRAINBACK,
  DRAINTABLE,
  BASINHOLD,
  BASINDEPTH,
  BASINMIX,
  BASINCHECK,
];
