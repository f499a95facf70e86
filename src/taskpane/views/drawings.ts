import { Problem } from "../../calc/problem";
import { download } from "../download";
import { CUT_PLAN, DRAWING_TITLES } from "../drawingTitles";
import { searchLonger } from "../longerSearch";
import { pngOf } from "../picture";
import { button, make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";
import { picture } from "../ui/picture";

/** The drawings of the job: look, enlarge, place in the workbook, save. */
export function drawingsView(desk: Desk): View {
  const choice = make(
    "select",
    { id: "drawing" },
    ...DRAWING_TITLES.map((title, index) => make("option", { value: index }, title)),
  );
  const sheet = make("div", { class: "drawing" });
  const note = make("p", { class: "quiet", role: "status" });
  const large = make("div", { class: "drawing" });
  const enlarged = make("dialog", { class: "enlarged ours", "aria-label": "Drawing, enlarged" });
  enlarged.append(
    large,
    button("Close", () => enlarged.close()),
  );
  const actions = make("div", { class: "actions" });
  let shown: { readonly title: string; readonly svg: string } | undefined;

  /** Shows a drawing, or words in its place; nothing can be saved or placed that is not in sight. */
  function show(drawn: typeof shown, words = ""): void {
    actions.hidden = sheet.hidden = drawn === undefined;
    note.textContent = words;
    if (drawn && drawn.svg === shown?.svg) return;
    shown = drawn;
    for (const frame of [sheet, large]) frame.replaceChildren(...(drawn ? [picture(drawn.svg)] : []));
  }

  async function refresh(): Promise<void> {
    const asked = choice.value;
    const { DRAWINGS, Reading } = await import("../drawings");
    const drawing = DRAWINGS[Number(asked)];
    if (!drawing) return;
    const { title, places } = drawing;
    longer.hidden = title !== CUT_PLAN;
    // Should the reading fail, the drawing before must not stand under this one's title.
    if (shown && shown.title !== title) show(undefined);
    const reading = new Reading(places, await desk.host.read(places));
    if (asked !== choice.value) return;
    try {
      show({ title, svg: drawing.draw(reading) });
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      show(undefined, `Cannot be drawn yet: ${error.message}.`);
    }
  }

  /** Does something with the drawing in sight, under its own title. */
  const withShown = (act: (title: string, svg: string) => Promise<string>) => (): void => {
    if (!shown) return;
    const { title, svg } = shown;
    desk.attempt(() => act(title, svg));
  };
  const save = (title: string, ending: string, content: BlobPart, type: string): string => {
    const name = `${title.toLowerCase().replace(/\s+/g, "-")}.${ending}`;
    download(name, content, type);
    return `${name} is in your downloads.`;
  };
  actions.append(
    button("Enlarge", () => enlarged.showModal()),
    button(
      "Place in the workbook",
      withShown(async (title, svg) => desk.host.placePicture(await pngOf(svg), title)),
    ),
    button(
      "Save PNG",
      withShown(async (title, svg) => save(title, "png", (await pngOf(svg)) as BlobPart, "image/png")),
    ),
    button(
      "Save SVG",
      withShown((title, svg) => Promise.resolve(save(title, "svg", svg, "image/svg+xml"))),
    ),
  );
  const longer = button("Search longer", () =>
    desk.attempt(() => desk.long("Searching for a cheaper cut plan", (task) => searchLonger(desk.host, task))),
  );
  actions.append(longer);
  const again = (): void => desk.attempt(() => refresh().then(() => undefined));
  choice.addEventListener("change", again);
  return {
    title: "Drawings",
    body: make(
      "div",
      {},
      make("h2", {}, "Drawings"),
      make("label", { for: "drawing" }, "Drawing"),
      choice,
      note,
      sheet,
      actions,
      enlarged,
    ),
    choose(title) {
      const index = (DRAWING_TITLES as readonly string[]).indexOf(title);
      if (index < 0 || choice.value === String(index)) return;
      choice.value = String(index);
      again();
    },
    refresh: again,
  };
}
