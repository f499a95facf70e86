import type { TemplateWay } from "../host/port";

/** What taking a workbook is called, beside Excel and beside the bench. */
export const TEMPLATE_LABELS: Readonly<Record<TemplateWay, Record<"excel" | "bench", string>>> = {
  open: { excel: "Open in a new workbook", bench: "Open here" },
  insert: { excel: "Insert into this workbook", bench: "Insert into this workbook" },
  download: { excel: "Download", bench: "Download" },
};
