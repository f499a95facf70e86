/** An answer a notice or question offers. */
export interface Choice {
  readonly label: string;
  act(): void;
}

const REFUSAL_SECONDS = 8;

/** A line under the bar that says what happened; it stays until closed, or leaves by itself after `seconds`. */
export function notice(text: string, choices: readonly Choice[] = [], seconds?: number): () => void {
  const area = document.getElementById("notices");
  const row = document.createElement("div");
  row.className = "notice";
  const words = document.createElement("p");
  words.textContent = text;
  row.append(words);
  const close = (): void => row.remove();
  for (const { label, act } of [...choices, { label: "Close", act: () => undefined }]) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = label;
    button.addEventListener("click", () => {
      close();
      act();
    });
    row.append(button);
  }
  // One sentence at a time: a newer one replaces what was said before.
  for (const old of area?.querySelectorAll(".notice.passing") ?? []) old.remove();
  if (seconds !== undefined) {
    row.classList.add("passing");
    setTimeout(close, seconds * 1000);
  }
  area?.append(row);
  return close;
}

const ofTheJob: (() => void)[] = [];

/** A notice about the job that is open; it leaves with the job. */
export function jobNotice(text: string, choices: readonly Choice[] = []): void {
  ofTheJob.push(notice(text, choices));
}

/** Takes away what was said about a job that is open no longer: its offers would change another one. */
export function closeJobNotices(): void {
  for (const close of ofTheJob.splice(0)) close();
}

let closeCircles: (() => void) | undefined;
/** Cells of a circle that are named; its cells say the same of the rest. */
const MOST_NAMED = 6;

/** Says which formulas read each other in a circle, as long as they do. */
export function circleNotice(circles: readonly (readonly string[])[]): void {
  closeCircles?.();
  closeCircles = undefined;
  if (circles.length === 0) return;
  const sentences = circles.map((cells) => {
    const more = cells.length - MOST_NAMED;
    const shown = cells.slice(0, MOST_NAMED);
    const last = more > 0 ? `${more} more` : shown.pop();
    const named = shown.length > 0 ? `${shown.join(", ")} and ${last}` : last;
    return cells.length === 1 ? `${named} reads its own cell.` : `${named} read each other.`;
  });
  const one = circles.flat().length === 1;
  closeCircles = notice(
    `A circle of formulas: ${sentences.join(" ")} ${one ? "It has" : "They have"} no result until one reads another cell.`,
  );
}

/** Says why something was refused. */
export function refusal(text: string): void {
  notice(text, [], REFUSAL_SECONDS);
}

/** Asks in a dialog; resolves to the index of the answer, or -1 when it was closed without one. */
export function ask(question: string, answers: readonly string[]): Promise<number> {
  const dialog = document.getElementById("ask") as HTMLDialogElement;
  const words = document.getElementById("ask-question");
  const row = document.getElementById("ask-answers");
  if (!words || !row) return Promise.resolve(-1);
  words.textContent = question;
  row.replaceChildren(
    ...answers.map((answer, index) => {
      const button = document.createElement("button");
      button.value = String(index);
      button.textContent = answer;
      return button;
    }),
  );
  dialog.returnValue = "";
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => resolve(dialog.returnValue === "" ? -1 : Number(dialog.returnValue)), {
      once: true,
    });
  });
}
