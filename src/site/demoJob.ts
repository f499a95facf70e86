import { readFile } from "node:fs/promises";
import path from "node:path";
import type { DemoJob } from "../help/guide";
import { recalculate } from "../workbook/recalculate";

/** The demo job of the built US workbook, calculated afresh: what the guide quotes is what a reader finds there. */
export async function demoJob(top: string): Promise<DemoJob> {
  const workbook = await recalculate(await readFile(path.join(top, "templates/rillwright-us-demo.xlsx")));
  return {
    value(name) {
      const value = workbook.named(name)?.[0]?.[0];
      if (value === undefined || value === "") throw new Error(`the demo job has nothing named ${name}`);
      return value;
    },
  };
}
