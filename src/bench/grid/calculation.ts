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
  private passes = 0;

  constructor(
    private readonly api: FUniver,
    private readonly model: GridModel,
    private readonly finished: () => void,
  ) {}

  /** The engine can be listened to only once it has had a workbook. */
  listen(): void {
    this.api.getFormula().calculationResultApplied(() => this.applied());
  }

  again(): Promise<void> {
    this.api.getFormula().executeCalculation();
    return this.settled();
  }

  /** Resolves when the results of everything written so far are there. */
  async settled(): Promise<void> {
    do await this.api.getFormula().onCalculationResultApplied();
    while (this.passes > 0);
  }

  private applied(): void {
    const spills = this.model.spills();
    if (spills !== this.lastSpills && this.passes < MOST_PASSES) {
      this.passes += 1;
      this.lastSpills = spills;
      this.api.getFormula().executeCalculation();
      return;
    }
    this.passes = 0;
    this.finished();
  }
}
