import type { Host } from "../host/port";
import { button } from "./ui/elements";

/** What belongs beside a sheet: a tab, and what is chosen in it. */
export interface Beside {
  readonly tab: string;
  readonly choice?: string;
}

const BESIDE: Readonly<Record<string, Beside>> = {
  Site: { tab: "Drawings", choice: "Plan" },
  Water: { tab: "Drawings", choice: "Section" },
  Pump: { tab: "Drawings", choice: "Pump and system curves" },
  Liner: { tab: "Drawings", choice: "Cut plan" },
  Price: { tab: "Job" },
  Quote: { tab: "Job" },
  Orders: { tab: "Lists" },
  Receipts: { tab: "Lists" },
  Reconcile: { tab: "Lists" },
};

/** What belongs beside a sheet; undefined where the pane may stay as it is. */
export function besideSheet(sheet: string): Beside | undefined {
  return Object.hasOwn(BESIDE, sheet) ? BESIDE[sheet] : undefined;
}

/** The pane goes along with the sheet in sight until a person chooses a tab; the button lets it go along again. */
export class Following {
  readonly switch = button("Follow the sheet", () => this.set(!this.on), {
    class: "follow",
    "aria-pressed": "true",
    title: "Shows what belongs to the sheet in sight; choose a tab to keep it",
  });
  private on = true;
  private sheet = "";

  constructor(
    private readonly host: Host,
    private readonly show: (beside: Beside) => void,
  ) {
    host.onSelect(() => void this.look());
  }

  /** Keeps the tab that is in sight. */
  pin(): void {
    this.set(false);
  }

  private set(on: boolean): void {
    this.on = on;
    this.switch.setAttribute("aria-pressed", String(on));
    this.sheet = "";
    void this.look();
  }

  private async look(): Promise<void> {
    if (!this.on) return;
    // While a cell is edited or a workbook closes there is nothing to follow.
    const { sheet } = await this.host.selected().catch(() => ({ sheet: "" }));
    if (!this.on || sheet === "" || sheet === this.sheet) return;
    this.sheet = sheet;
    const beside = besideSheet(sheet);
    if (beside) this.show(beside);
  }
}
