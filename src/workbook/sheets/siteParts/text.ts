import type { SheetLayout } from "../../layout";

/** A text that is typed in: its name, label, demo, what belongs in it, and whether it may stay blank. */
export type TextInput = readonly [
  name: string,
  label: string,
  demo: { readonly US: string; readonly SI: string },
  message: string,
  optional?: boolean,
];

export function text(s: SheetLayout, ...[name, label, demo, message, optional = false]: TextInput): void {
  s.input({ name, label, kind: "text", demo, message, optional });
}
