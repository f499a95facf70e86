import { make } from "./elements";

/** A labelled choice in a line of its own. */
export function select(
  label: string,
  id: string,
  options: readonly (readonly [value: string, text: string])[],
  chosen: string,
): { readonly field: HTMLSelectElement; readonly row: HTMLElement } {
  const field = make("select", { id }, ...options.map(([value, text]) => make("option", { value }, text)));
  field.value = chosen;
  return { field, row: make("p", {}, make("label", { for: id }, label), " ", field) };
}

/** The mark before the decimals of a file. */
export function decimalSelect(id: string, chosen: "." | ",", change: (decimal: "." | ",") => void): HTMLElement {
  const { field, row } = select(
    "Decimal mark",
    id,
    [
      [".", "point: 1,250.50"],
      [",", "comma: 1.250,50"],
    ],
    chosen,
  );
  field.addEventListener("change", () => change(field.value === "," ? "," : "."));
  return row;
}
