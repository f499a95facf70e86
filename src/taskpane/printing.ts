import { dayOf } from "../host/dates";
import { HostRefusal, type Host, type Task } from "../host/port";
import { askBeside } from "./beside";
import { download } from "./download";

/** Papers that are printed together, for one reader. */
export const PACKS = ["client", "crew", "supplier", "office"] as const;
export type Pack = (typeof PACKS)[number];

/** What the worker that prints is asked for; it answers with the bytes of a PDF. */
export interface PrintOrder {
  readonly pack: Pack;
  readonly job: Uint8Array;
  readonly supplier?: string;
  /** The day of an order, in the workbook's days. */
  readonly today: number;
}

/** The names of those the job orders from. */
export const SUPPLIERS = "SupplierTable";

/** Prints a pack into the downloads, as one PDF; gives the sentence that says so. */
export async function printPack(
  host: Host,
  pack: Pack,
  supplier: string,
  task: Task,
  now = new Date(),
): Promise<string> {
  if (pack === "supplier" && supplier === "") throw new HostRefusal("This job orders from no supplier yet.");
  const { name, bytes } = await host.file();
  await task.pause();
  const order: PrintOrder = { pack, job: bytes, today: dayOf(now), ...(pack === "supplier" ? { supplier } : {}) };
  const pdf = await askBeside<Uint8Array>(
    "papers.js",
    order,
    task,
    "The papers could not be made here; reload the page and try again.",
  );
  const file = `${[name.replace(/\.xlsx$/i, ""), pack, ...(pack === "supplier" ? [supplier] : [])].join(" ").replace(/[^\p{L}\p{N} ._-]+/gu, "")}.pdf`;
  download(file, pdf as BlobPart, "application/pdf");
  return `${file} is in your downloads.`;
}
