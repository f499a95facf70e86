import { HostRefusal, type Host, type Task } from "../../host/port";
import { button, make } from "./elements";

/** What the language throws where the code is wrong. */
const DEFECTS = [TypeError, RangeError, ReferenceError, SyntaxError];

/** What every view works with: the host, a line to say what was done, and long tasks with progress and a way out. */
export class Desk {
  /** The line at the foot of the pane. */
  readonly foot = make("div", { class: "foot" });
  private readonly said = make("p", { role: "status" });
  private readonly progress = make("div", { class: "progress", hidden: true });

  /** Keeps the tab in sight, whatever sheet is chosen: what was begun in it goes on there. */
  stay: () => void = () => undefined;

  constructor(readonly host: Host) {
    this.foot.append(this.progress, this.said);
  }

  /** Says what was done, in a sentence. */
  say(sentence: string): void {
    this.said.className = "";
    this.said.textContent = sentence;
  }

  /** Takes away what was said of a workbook that is there no longer. */
  forget(): void {
    this.say("");
  }

  /** Says what went wrong and what to do; what was never foreseen has no words of its own for that. */
  complain(error: unknown): void {
    this.said.className = "bad";
    const reason = error instanceof Error ? error.message : "no reason was given";
    const foreseen = error instanceof Error && !DEFECTS.some((kind) => error instanceof kind);
    this.said.textContent = foreseen
      ? reason
      : `That did not work (${reason}). Try again; if it happens again, see Help.`;
  }

  /** Does something that the user asked for, and says what came of it. */
  attempt(act: () => Promise<string | undefined>): void {
    act().then(
      (sentence) => sentence !== undefined && this.say(sentence),
      (error: unknown) => this.complain(error),
    );
  }

  /**
   * A task that may take long: progress and a Cancel button come into sight after half a second. They are there from the
   * start, and an animation shows them, because a timer would wait for work that leaves the page no time.
   */
  async long<T>(label: string, act: (task: Task) => Promise<T>): Promise<T> {
    if (!this.progress.hidden) throw new HostRefusal("One thing is under way; wait for it, or cancel it.");
    const before = document.activeElement;
    const stop = new AbortController();
    const bar = make("progress", { "aria-label": label });
    const cancel = button("Cancel", () => stop.abort());
    this.progress.replaceChildren(make("span", {}, `${label}…`), bar, cancel);
    this.progress.hidden = false;
    try {
      await drawn();
      return await act({
        signal: stop.signal,
        progress(done, total) {
          bar.max = total;
          bar.value = done;
        },
        async pause() {
          await drawn();
          stop.signal.throwIfAborted();
        },
      });
    } catch (error) {
      if (stop.signal.aborted) throw new HostRefusal(`${label} was stopped.`);
      throw error;
    } finally {
      // The button that is about to go must not take the keyboard's place with it.
      if (this.progress.contains(document.activeElement) && before instanceof HTMLElement) before.focus();
      this.progress.hidden = true;
    }
  }
}

/** Gives the page time to draw and to take a click. */
function drawn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 20));
}

/** One page of the pane. */
export interface View {
  readonly title: string;
  readonly body: HTMLElement;
  /** Brings one thing of several to the front, by its title. */
  choose?(title: string): void;
  /** Called when the view comes into sight and when the workbook changed while it is in sight. */
  refresh?(): void;
  /** Drops what belongs to a workbook that is there no longer. */
  forget?(): void;
}
