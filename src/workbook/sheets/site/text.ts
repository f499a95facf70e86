import type { SheetLayout } from "../../layout";

/** A text that is typed in: its name, label, demo, what belongs in it, the most letters that the pages it prints on have room for, and whether it may stay blank. */
export type TextInput = readonly [
  name: string,
  label: string,
  demo: { readonly US: string; readonly SI: string },
  message: string,
  most: number,
  optional?: boolean,
];

export function text(s: SheetLayout, ...[name, label, demo, message, max, optional = false]: TextInput): void {
  s.input({ name, label, kind: "text", demo, message, max, optional });
}
