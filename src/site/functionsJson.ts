/** The parts of the host's function metadata that this project looks at. */
export interface FunctionsJson {
  allowErrorForDataTypeAny?: boolean;
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly description: string;
    readonly helpUrl: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly description: string;
      readonly type: string;
      readonly dimensionality?: string;
      readonly optional?: boolean;
    }[];
    readonly result: { readonly type?: string; readonly dimensionality?: string };
  }[];
}

/**
 * The generated metadata, made to accept error cells as arguments: the generator never writes that property,
 * and without it Excel would not call a function that could say which cell to mend.
 */
export function acceptErrorCells(generated: string): string {
  const metadata = JSON.parse(generated) as FunctionsJson;
  metadata.allowErrorForDataTypeAny = true;
  return `${JSON.stringify(metadata, null, 1)}\n`;
}
