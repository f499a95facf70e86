import { download } from "../../taskpane/download";
import type { Draft, DraftKeeper } from "../keeping/draft";
import { saveWorkbook } from "../saving/saveWorkbook";
import { busy } from "./busy";
import { WORKBOOK, type Files } from "./files";
import { OPENING_PARTS, type Job } from "./job";
import { jobNotice, notice, refusal } from "./notices";

const FIRST_TEMPLATE = "rillwright-us-demo.xlsx";

/** Opens what this page kept last, or the demo job; says what came back, and what else is kept. */
export async function beginJob(job: Job, files: Files): Promise<void> {
  const draft = await busy(OPENING_PARTS, (say) => job.restore(say), false);
  if (!draft) await openDemo(files);
  else if (draft.edits.length > 0 || draft.pictures.length > 0) {
    jobNotice(`Your changes to ${draft.fileName} of ${asTime(draft.at)} are back.`, [
      { label: "Drop them", act: () => void files.openBytes(draft.fileName, draft.bytes) },
    ]);
  }
  await tellAside(job.keeper);
  const other = await job.waiting();
  if (!other) return;
  notice(`Another job with unsaved changes is kept here: ${other.fileName} of ${asTime(other.at)}.`, [
    // A new page takes the job that waits longest unseen: this one.
    { label: "Open it in a new tab", act: () => void window.open(location.href, "_blank", "noopener") },
  ]);
}

/** Work that could not be brought back is handed over as a file instead. */
async function tellAside(keeper: DraftKeeper): Promise<void> {
  for (const draft of await keeper.aside().catch(() => [])) {
    notice(`Your changes to ${draft.fileName} of ${asTime(draft.at)} could not be brought back here; they are kept.`, [
      { label: "Save them as a file", act: () => saveAside(draft) },
      { label: "Delete them", act: () => void keeper.dropAside(draft) },
    ]);
  }
}

function saveAside({ fileName, bytes, edits, pictures }: Draft): void {
  try {
    download(fileName, saveWorkbook(bytes, { edits, pictures, results: [] }) as BlobPart, WORKBOOK);
  } catch (error) {
    refusal(`${fileName} was not saved: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

async function openDemo(files: Files): Promise<void> {
  try {
    const answer = await fetch(`templates/${FIRST_TEMPLATE}`);
    if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
    await files.openBytes(FIRST_TEMPLATE, new Uint8Array(await answer.arrayBuffer()));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    notice(`The demo job could not be fetched (${why}). Check the connection and load the page again.`);
    throw error;
  }
}

function asTime(at: number): string {
  return new Date(at).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
}
