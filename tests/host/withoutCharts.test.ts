import { unzipSync } from "fflate";
import { expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { calculate } from "../../src/workbook/build";
import { withoutCharts } from "../../src/host/withoutCharts";
import { defineSheet } from "../../src/workbook/layout";
import { writeWorkbook } from "../../src/workbook/write";
import { validate } from "../bench/validate";

it("takes the charts out of a file and leaves it sound", async () => {
  const sheet = defineSheet({
    name: "Curves",
    order: 1,
    build(s) {
      const points = s.spill({
        header: "ours",
        rows: 3,
        formula: "SEQUENCE(3,2)",
        columns: [
          { title: "x", kind: "count" },
          { title: "y", kind: "count" },
        ],
      });
      s.link("Up", "Curves!A1");
      s.chart({
        title: "Curve",
        description: "A line.",
        xTitle: "x",
        yTitle: "y",
        series: [{ title: "y", x: points.body.column(1), y: points.body.column(2) }],
      });
    },
  });
  const model = assemble([sheet], "US", "demo");
  await calculate(model);
  const full = await writeWorkbook(model);
  const bare = withoutCharts(full);
  const charts = (bytes: Uint8Array): string[] =>
    Object.keys(unzipSync(bytes)).filter((name) => /chart|drawing/.test(name));
  expect(charts(full).length).toBeGreaterThan(1);
  expect(validate(full)).toEqual([]);
  expect(charts(bare)).toEqual([]);
  expect(validate(bare)).toEqual([]);
});
