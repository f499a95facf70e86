import { readUnitSystem } from "../../calc/quantity/unitSystem";
import { HostRefusal } from "../../host/port";
import type { NotesForCells } from "../noteCells";
import type { Desk } from "../ui/desk";
import { button, make } from "../ui/elements";

/** A field for the notes of a visit: what was understood is shown fact by fact, and written only then. */
export function notesForm(desk: Desk): HTMLElement {
  const field = make("textarea", {
    id: "visit-notes",
    rows: 3,
    placeholder: "falls 3'2, 14 ft long, 30 in lip, clear sheet, clay, gate 34 in",
  });
  const shown = make("div", { role: "status" });
  let ready: NotesForCells | undefined;
  const forget = (): void => {
    ready = undefined;
    shown.replaceChildren();
  };
  field.addEventListener("input", forget);

  const read = async (): Promise<undefined> => {
    forget();
    const [units] = await desk.host.read(["Units"]);
    const system = units?.[0]?.[0];
    if (system !== "US" && system !== "SI") throw new HostRefusal("Notes go into a job: start or open one first.");
    if (field.value.trim() === "") throw new HostRefusal("Type or paste the notes of the visit first.");
    const { notesForCells } = await import("../noteCells");
    ready = await notesForCells(field.value, readUnitSystem(system), (places) => desk.host.read(places));
    shown.replaceChildren(...described(ready));
  };
  const write = async (): Promise<string> => {
    const noted = ready?.noted ?? [];
    await desk.host.write(noted.map(({ change }) => change));
    forget();
    return `${noted.length === 1 ? "1 fact is" : `${noted.length} facts are`} in the workbook; Start shows the draft.`;
  };
  const described = ({ noted, open }: NotesForCells): HTMLElement[] => [
    make(
      "dl",
      { class: "glance" },
      ...noted.flatMap(({ understood: { called, shown: text, remark }, before }) => [
        make("dt", {}, called),
        make("dd", {}, [text, remark, before === "" ? "" : `replaces ${before}`].filter(Boolean).join("; ")),
      ]),
    ),
    ...open.map(({ said, why }) => make("p", { class: "small" }, `Not used: “${said}”: ${why}.`)),
    ...(noted.length === 0
      ? []
      : [
          make(
            "div",
            { class: "actions" },
            button(noted.length === 1 ? "Write this fact" : `Write these ${noted.length} facts`, () =>
              desk.attempt(write),
            ),
          ),
        ]),
  ];
  return make(
    "details",
    {},
    make("summary", {}, "Notes of a visit"),
    make("label", { for: "visit-notes" }, "Notes, as you wrote them"),
    field,
    make(
      "div",
      { class: "actions" },
      button("Read the notes", () => desk.attempt(read)),
    ),
    shown,
  );
}
