import { inchPipes } from "./pipesInch";
import { metricPipes } from "./pipesMetric";
import type { PipeType } from "./pipeSizes";

/** Every pipe type, by the name users type. */
export const PIPE_TYPES: readonly PipeType[] = [...inchPipes, ...metricPipes];

/** The pipe of each unit system that is meant where no type is given; common practice, no source. */
export const USUAL_PIPE = { US: "Sch 40 PVC", SI: "PVC-U PN10" } as const;
