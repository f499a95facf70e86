import type { PipeMaterial } from "./pipeMaterials";

/** One size of a pipe type; metres. */
export interface PipeSizeRow {
  /** The size it is sold by: NPS in the inch types, outside diameter in the metric ones. */
  readonly nominal: number;
  readonly outside: number;
  /** Least wall of the standard; the average wall of real pipe is a few percent thicker. */
  readonly wall: number;
  /** outside - 2 × wall */
  readonly bore: number;
}

export interface PipeType {
  readonly name: string;
  /** Words it is also known by. */
  readonly also?: string;
  /** The unit its sizes are named in. */
  readonly sizedIn: "in" | "mm";
  readonly material: PipeMaterial;
  readonly sizes: readonly PipeSizeRow[];
  readonly source: string;
}
