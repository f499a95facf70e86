import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";

/** The pace of a quick typist: milliseconds between keys, and between cells. */
const KEY_MS = 25;
const CELL_MS = 250;

/** Drives the bench as a person does: keyboard, pointer and files. */
export class BenchPage {
  constructor(
    readonly page: Page,
    private readonly address: string,
  ) {}

  async open(): Promise<void> {
    await this.page.goto(`${this.address}/bench.html`);
    await this.ready();
  }

  async ready(): Promise<void> {
    await this.page.locator("body[data-ready]").waitFor({ timeout: 60_000 });
  }

  /** Goes to a cell through the sheet's tab and the name box. */
  async goTo(place: string): Promise<void> {
    const [sheet = "", cell = ""] = place.replace(/[$']/g, "").split("!");
    await this.page
      .locator("[data-u-comp=slide-tab-item]", { hasText: new RegExp(`^${sheet}$`) })
      .first()
      .click();
    const nameBox = this.page.locator("[data-u-comp=defined-name] input");
    await nameBox.click();
    await nameBox.fill(cell);
    await nameBox.press("Enter");
    await this.page.locator("#selected-cell", { hasText: `${sheet}!${cell}` }).waitFor();
  }

  /** Types into the selected cell and ends with Enter. */
  async type(text: string): Promise<void> {
    await this.page.keyboard.type(text);
    await this.page.keyboard.press("Enter");
  }

  /** Types texts into neighbouring cells: Tab leads from one to the next, Enter ends the row. */
  async typeRow(texts: readonly string[]): Promise<void> {
    for (const [index, text] of texts.entries()) {
      await this.page.keyboard.type(text, { delay: KEY_MS });
      await this.page.keyboard.press(index < texts.length - 1 ? "Tab" : "Enter");
      // Between cells a person's hand rests longer than between letters.
      await this.page.waitForTimeout(CELL_MS);
    }
  }

  async showTab(name: string): Promise<void> {
    await this.page.locator("#pane").getByRole("tab", { name, exact: true }).click();
  }

  /** A number of the job as the pane shows it. */
  glance(name: string): Promise<string> {
    return this.page.locator(`[data-name=${name}]`).innerText();
  }

  /** Starts to watch a number of the job; `shownAfter` then gives the milliseconds from the next key to its change. */
  async watch(name: string): Promise<void> {
    await this.page.evaluate((glance) => {
      delete document.body.dataset.shownAfter;
      const list = document.querySelector(".glance");
      const text = (): string => list?.querySelector(`[data-name=${glance}]`)?.textContent ?? "";
      const before = text();
      let pressed = 0;
      document.addEventListener("keydown", () => (pressed = performance.now()), { capture: true, once: true });
      const watch = new MutationObserver(() => {
        if (text() === before || text() === "") return;
        watch.disconnect();
        document.body.dataset.shownAfter = String(performance.now() - pressed);
      });
      if (list) watch.observe(list, { childList: true, subtree: true });
    }, name);
  }

  async shownAfter(): Promise<number> {
    await this.page.locator("body[data-shown-after]").waitFor();
    return Number(await this.page.locator("body").getAttribute("data-shown-after"));
  }

  /** The saved workbook. */
  async save(): Promise<Uint8Array> {
    const [download] = await Promise.all([this.page.waitForEvent("download"), this.page.click("#save")]);
    return new Uint8Array(await readFile(await download.path()));
  }

  /** Drags things over the page and lets them go: files, or text such as a link. */
  async drop(things: {
    readonly files?: readonly { name: string; bytes: Uint8Array }[];
    readonly text?: string;
  }): Promise<void> {
    const files = (things.files ?? []).map(({ name, bytes }) => ({
      name,
      text: Buffer.from(bytes).toString("base64"),
    }));
    const carried = await this.page.evaluateHandle(
      ({ dropped, text }) => {
        const data = new DataTransfer();
        for (const { name, text: content } of dropped)
          data.items.add(new File([Uint8Array.from(atob(content), (letter) => letter.charCodeAt(0))], name));
        if (text !== undefined) data.setData("text/uri-list", text);
        return data;
      },
      { dropped: files, text: things.text },
    );
    for (const type of ["dragover", "drop"]) await this.page.dispatchEvent("#sheet", type, { dataTransfer: carried });
  }

  /** Opens a file that asks no question, and waits until it is the one in sight. */
  async takeFile(name: string, bytes: Uint8Array): Promise<void> {
    await this.openFile(name, bytes);
    await this.page.locator("#file-name", { hasText: name }).waitFor();
  }

  /** Opens a file of the person's own. */
  async openFile(name: string, bytes: Uint8Array): Promise<void> {
    await this.page.setInputFiles("#file", { name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  }
}
