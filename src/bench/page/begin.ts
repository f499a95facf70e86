import { download, WORKBOOK } from "../../taskpane/download";
import { demoFile } from "../firstLook/demoFile";
import type { Draft, DraftKeeper } from "../keeping/draft";
import { keptElsewhere } from "../keeping/otherPorts";
import { saveWorkbook } from "../saving/saveWorkbook";
import { busy } from "./busy";
import type { Files } from "./files";
import { OPENING_PARTS, type Job } from "./job";
import { ask, jobNotice, notice, refusal } from "./notices";

/** Opens what this page kept last, or the demo job; says what came back, and what else is kept. */
export async function beginJob(job: Job, files: Files): Promise<void> {
  const draft = await busy(OPENING_PARTS, (say) => job.restore(say), false);
  if (!draft) await openDemo(files);
  else if (draft.edits.length > 0 || draft.pictures.length > 0) tellBack(job, files, draft);
  await tellAside(job.keeper);
  tellElsewhere();
  const other = await job.waiting();
  if (!other) return;
  notice(`Another job with unsaved changes is kept here: ${other.fileName} of ${asTime(other.at)}.`, [
    // A new page takes the job that waits longest unseen: this one.
    { label: "Open it in a new tab", act: () => void window.open(location.href, "_blank", "noopener") },
  ]);
}

/** Says that changes came back, and offers to drop them: after a question, and so that it can be taken back. */
function tellBack(job: Job, files: Files, draft: Draft): void {
  const drop = async (): Promise<void> => {
    const question = `Drop your changes to ${job.fileName} since it was opened? The file itself stays as it is.`;
    if ((await ask(question, ["Drop them", "Keep them"])) !== 0) return tellBack(job, files, draft);
    if (!(await files.takeEntry())) return;
    const before = await job.snapshot();
    await files.openBytes(draft.fileName, draft.bytes);
    jobNotice("Your changes were dropped.", [{ label: "Bring them back", act: () => void files.comeBackTo(before) }]);
  };
  jobNotice(`Your changes to ${job.fileName} of ${asTime(draft.at)} are back.`, [
    { label: "Drop them…", act: () => void drop() },
  ]);
}

/** Work that is kept under another port of this machine is out of this page's reach, but not out of the person's. */
function tellElsewhere(): void {
  for (const { address, at } of keptElsewhere()) {
    notice(`Unsaved changes of ${asTime(at)} are kept under another address of this machine: ${address}`, [
      { label: "Open that one", act: () => void window.open(address, "_blank", "noopener") },
    ]);
  }
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
    const { fileName, bytes } = await demoFile();
    await files.openBytes(fileName, bytes);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    notice(`The demo job could not be fetched (${why}). Check the connection and load the page again.`);
    throw error;
  }
}

function asTime(at: number): string {
  return new Date(at).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
}
