import type { FUniver } from "@univerjs/core/facade";
import type { GridModel } from "./model";

/** Spills that feed one another take a pass each; more than this would be circular. */
const MOST_PASSES = 6;

/**
 * Follows the engine's calculation. It lets readers of a spill see the old cells until the next pass, so that
 * a spill that changed its size or its values asks for one more.
 */
export class Calculation {
  private lastSpills = "";
  private settling: Promise<void> | undefined;

  constructor(
    private readonly api: FUniver,
    private readonly model: GridModel,
    private readonly finished: () => void,
  ) {}

  /** The engine can be listened to only once it has had a workbook. */
  listen(): void {
    this.api.getFormula().calculationResultApplied(() => void this.settle());
  }

  again(): Promise<void> {
    this.api.getFormula().executeCalculation();
    return this.settled();
  }

  /** Resolves when the results of everything written so far are there. */
  async settled(): Promise<void> {
    await this.api.getFormula().onCalculationResultApplied();
    await this.settle();
  }

  /** Calculates on until the spills stand still; whoever asks meanwhile waits for the same end. */
  private settle(): Promise<void> {
    this.settling ??= this.passes().finally(() => {
      this.settling = undefined;
      this.finished();
    });
    return this.settling;
  }

  private async passes(): Promise<void> {
    for (let pass = 0; pass < MOST_PASSES; pass++) {
      // The engine drops a calculation asked for while it still reports the last one.
      await new Promise((resolve) => setTimeout(resolve));
      const spills = this.model.spills();
      if (spills === this.lastSpills) return;
      this.lastSpills = spills;
      this.api.getFormula().executeCalculation();
      await this.api.getFormula().onCalculationResultApplied();
    }
  }
}
