import type { Change } from "../../host/port";
import type { Desk } from "../ui/desk";
import { button, make } from "../ui/elements";

/** Turns what a tape says in columns of tables into numbers, in one step, and puts it back. */
export function tapeTextsPart(desk: Desk): { body: HTMLElement; show(anyWrong: boolean): void; forget(): void } {
  let back: readonly Change[] = [];
  let anyWrong = false;
  const turn = button("Read lengths typed as text in tables", () => desk.attempt(read));
  const undo = button("Put the texts back", () => desk.attempt(putBack));
  const body = make("div", { class: "actions", hidden: true }, turn, undo);
  const show = (): void => {
    turn.hidden = !anyWrong;
    undo.hidden = back.length === 0;
    body.hidden = turn.hidden && undo.hidden;
  };
  const read = async (): Promise<string> => {
    const { turnTexts } = await import("../tapeTexts");
    const turned = await turnTexts(desk.host);
    back = turned.back;
    show();
    return turned.said;
  };
  const putBack = async (): Promise<string> => {
    await desk.host.write(back);
    back = [];
    show();
    return "The texts are back as they were typed.";
  };
  return {
    body,
    show(now) {
      anyWrong = now;
      show();
    },
    forget() {
      back = [];
      show();
    },
  };
}
