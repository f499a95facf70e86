import type { ChartSpec } from "./chartSpec";
import type { Page } from "./page";

/** Darkest first, each told apart in grey; series also differ in dash and marker. */
const SERIES_COLORS = ["2B4A52", "B0752A", "7A8F96", "5A1F14"];

/** Stands behind the chart, for programs that draw none. */
const NO_CHART = "If no chart shows here, see Drawings in the pane.";

export function addChart(page: Page, spec: ChartSpec): void {
  const rows = spec.rows ?? 18;
  page.put(page.row + 1, spec.at ?? 1, { value: NO_CHART, style: "remark", look: { wrap: false } });
  page.sheet.charts.push({
    title: spec.title,
    description: spec.description,
    xTitle: spec.xTitle,
    yTitle: spec.yTitle,
    series: spec.series.map(({ x, y, ...rest }, index) => ({
      ...rest,
      x: x.address,
      y: y.address,
      color: SERIES_COLORS[index % SERIES_COLORS.length] ?? "1F2A2E",
    })),
    area: { top: page.row, left: spec.at ?? 1, bottom: page.row + rows - 1, right: page.lastColumn },
  });
  page.row += rows;
}
