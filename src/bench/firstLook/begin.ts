import { firstDraft } from "../keeping/draft";
import { openWorkbook } from "../reading/openWorkbook";
import { demoFile } from "./demoFile";
import { FirstLook } from "./firstLook";

let look: Promise<FirstLook | undefined> = Promise.resolve(undefined);

/** Shows what the page is about to open, before the grid stands. What cannot be shown the page itself will tell of. */
export function beginLook(container: HTMLElement): Promise<unknown> {
  look = draw(container).catch(() => undefined);
  return look;
}

/** Takes the first look's place; it is given once. */
export function takeLook(): Promise<FirstLook | undefined> {
  const taken = look;
  look = Promise.resolve(undefined);
  return taken;
}

async function draw(container: HTMLElement): Promise<FirstLook> {
  const draft = await firstDraft();
  const { fileName, bytes } = draft ?? (await demoFile());
  return new FirstLook(container, await openWorkbook(fileName, bytes), draft?.edits ?? []);
}
