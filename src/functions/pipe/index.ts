import type { Declaration } from "../contract/declaration";
import { FITLENGTH } from "./fitlength";
import { FITLOSS } from "./fitloss";
import { PARTDEPTH } from "./partdepth";
import { PARTFLOW } from "./partflow";
import { PIPEBORE } from "./pipebore";
import { PIPELOSS } from "./pipeloss";
import { PIPESPEED } from "./pipespeed";
import { PRESSUREHEAD } from "./pressurehead";
import { TDH } from "./tdh";
import { TDHTABLE } from "./tdhtable";

export const pipeFunctions: readonly Declaration[] = [
  PIPEBORE,
  PIPESPEED,
  PIPELOSS,
  FITLOSS,
  FITLENGTH,
  PARTDEPTH,
  PARTFLOW,
  PRESSUREHEAD,
  TDH,
  TDHTABLE,
];
