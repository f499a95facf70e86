import { Problem } from "../../calc/problem";
import { download } from "../download";
import { DRAWINGS, Reading, type JobDrawing } from "../drawings";
import { pngOf } from "../picture";
import { button, make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";

/** The drawings of the job: look, enlarge, place in the workbook, save. */
export function drawingsView(desk: Desk): View {
  const choice = make(
    "select",
    { id: "drawing" },
    ...DRAWINGS.map(({ title }, index) => make("option", { value: index }, title)),
  );
  const sheet = make("div", { class: "drawing" });
  const large = make("div", { class: "drawing" });
  const enlarged = make("dialog", { class: "enlarged ours", "aria-label": "Drawing, enlarged" });
  enlarged.append(
    large,
    button("Close", () => enlarged.close()),
  );
  const actions = make("div", { class: "actions" });
  let svg = "";

  const chosen = (): JobDrawing | undefined => DRAWINGS[Number(choice.value)];
  const fileName = (): string => (chosen()?.title ?? "drawing").toLowerCase().replace(/\s+/g, "-");

  async function refresh(): Promise<void> {
    const drawing = chosen();
    if (!drawing) return;
    const reading = new Reading(drawing.places, await desk.host.read(drawing.places));
    let now = "";
    try {
      now = drawing.draw(reading);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      sheet.replaceChildren(make("p", { class: "quiet" }, `Not to be drawn yet: ${error.message}.`));
    }
    actions.hidden = now === "";
    if (now === "" || now === svg) {
      svg = now;
      return;
    }
    svg = now;
    sheet.replaceChildren(picture(svg));
    large.replaceChildren(picture(svg));
  }

  const place = async (): Promise<string> => desk.host.placePicture(await pngOf(svg), chosen()?.title ?? "Drawing");
  const savePng = async (): Promise<string> => {
    download(`${fileName()}.png`, (await pngOf(svg)) as BlobPart, "image/png");
    return `${fileName()}.png is in your downloads.`;
  };
  const saveSvg = (): Promise<string> => {
    download(`${fileName()}.svg`, svg, "image/svg+xml");
    return Promise.resolve(`${fileName()}.svg is in your downloads.`);
  };
  actions.append(
    button("Enlarge", () => enlarged.showModal()),
    button("Place in the workbook", () => desk.attempt(place)),
    button("Save PNG", () => desk.attempt(savePng)),
    button("Save SVG", () => desk.attempt(saveSvg)),
  );
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
      sheet,
      actions,
      enlarged,
    ),
    refresh: again,
  };
}

/** The drawing as a node; read as XML, so that nothing in a name of the user's can become more than text. */
function picture(svg: string): Node {
  return document.importNode(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement, true);
}
