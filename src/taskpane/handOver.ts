import type { Host, Progress } from "../host/port";
import { download, WORKBOOK } from "./download";

/** Hands the person a copy of the workbook's values without formulas; gives the sentence that says so. */
export async function handOverValues(host: Host, progress?: Progress): Promise<string> {
  const { name, bytes } = await host.file(progress);
  // What reads and writes packages is loaded when it is needed, not with the pane.
  const { copyFileName, valuesCopy } = await import("../workbook/copy/valuesCopy");
  const made = new Date();
  const target = copyFileName(name, made);
  download(target, valuesCopy(bytes, { made, from: name }) as BlobPart, WORKBOOK);
  return `${target} is in your downloads: values only, marked with the time, for any program.`;
}
