import { HostRefusal, type CellValue, type Change, type Grid, type Host } from "../../host/port";
import { changedInputs, changesInWords, INPUTS, type ChangedInput } from "./inputs";
import { OPTION_FACT_PLACES, OPTION_PLACES, optionFactWrites, optionWrites } from "./keepOption";
import { costsOf, mainNumbers, SHOWN_PLACES } from "./sideBySide";

/** A job as it stood at a moment. */
interface Moment {
  readonly inputs: readonly (Grid | undefined)[];
  readonly numbers: readonly string[];
  readonly costs: readonly number[] | undefined;
}

/** What became of a job since it was remembered. */
export interface Compared {
  readonly before: readonly string[];
  readonly now: readonly string[];
  readonly changes: readonly ChangedInput[];
  readonly inWords: string;
}

/** More changed cells than this are another job, and no option of this one. */
const MOST_CHANGES = 20;

/** A job that is remembered while somebody tries something else in its cells; the workbook itself calculates both. */
export class Trial {
  private constructor(
    private readonly host: Host,
    private readonly before: Moment,
  ) {}

  static async begin(host: Host): Promise<Trial> {
    const before = await moment(host);
    if (!before.costs) throw new HostRefusal("The job has no cost yet: fill in what Price still waits for.");
    return new Trial(host, before);
  }

  async compare(): Promise<Compared> {
    return this.compared(await moment(this.host));
  }

  /** Keeps what was changed as an option on Price and puts the cells back; says what was done. */
  async keep(name: string): Promise<string> {
    const now = await moment(this.host);
    const { changes, inWords } = await this.compared(now);
    if (changes.length === 0) throw new HostRefusal("Change something on the sheets first; then keep it as an option.");
    if (changes.length > MOST_CHANGES) {
      throw new HostRefusal(`${changes.length} cells were changed; an option takes up to ${MOST_CHANGES}.`);
    }
    if (!now.costs || !this.before.costs) {
      throw new HostRefusal("With these changes the job has no cost; fill in what Price waits for.");
    }
    const [grids, factGrids, names] = await Promise.all([
      this.host.read(OPTION_PLACES),
      this.host.read(OPTION_FACT_PLACES),
      this.host.names(),
    ]);
    const costs = { before: this.before.costs, after: now.costs };
    const called = name.trim() === "" ? inWords : name;
    // As facts where they can be told so: the option then follows the job. Else as what it costs today.
    const asFacts = optionFactWrites(called, changes, factGrids, names);
    const option = asFacts ?? optionWrites(called, costs, grids, names, factGrids);
    const back = await this.back(changes);
    await this.host.write([...back, ...option.changes]);
    const how = asFacts ? "by the facts it changes" : "at what it costs today";
    return `Kept as option ${option.letter} on Price, ${how}, and the changed cells put back (${back.length} of ${changes.length}).`;
  }

  private async compared(now: Moment): Promise<Compared> {
    const changes = changedInputs(this.before.inputs, now.inputs, await this.host.names());
    return { before: this.before.numbers, now: now.numbers, changes, inWords: changesInWords(changes) };
  }

  /** Writes of what the cells held before; a formula of one's own stays, because it follows from other cells. */
  private async back(changes: readonly ChangedInput[]): Promise<Change[]> {
    const { address } = await this.host.selected();
    const writes: Change[] = [];
    for (const { cell, from } of changes) {
      await this.host.select(cell);
      const { formula } = await this.host.selected();
      if (!formula.startsWith("=")) writes.push({ place: cell, values: [[asTyped(from)]] });
    }
    await this.host.select(address);
    return writes;
  }
}

async function moment(host: Host): Promise<Moment> {
  const [[costs, ...inputs], shown] = await Promise.all([
    host.read(["CostsA", ...INPUTS.map(({ place }) => place)]),
    host.show(SHOWN_PLACES),
  ]);
  return { inputs, numbers: mainNumbers(shown), costs: costsOf(costs) };
}

/** A text that begins like a formula stays a text. */
function asTyped(value: CellValue): CellValue {
  return typeof value === "string" && value.startsWith("=") ? `'${value}` : value;
}
