import type { Declaration } from "../contract/declaration";
import { FITLOSS } from "./fitloss";
import { PIPEBORE } from "./pipebore";
import { PIPELOSS } from "./pipeloss";
import { PIPESPEED } from "./pipespeed";
import { TDH } from "./tdh";
import { TDHTABLE } from "./tdhtable";

export const pipeFunctions: readonly Declaration[] = [PIPEBORE, PIPESPEED, PIPELOSS, FITLOSS, TDH, TDHTABLE];
