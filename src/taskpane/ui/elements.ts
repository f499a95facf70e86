type Child = Node | string | undefined | false;

/** Properties of an element: attributes by name, and `on…` listeners. */
type Properties = Readonly<Record<string, string | number | boolean | undefined | ((event: Event) => void)>>;

/** An element with its attributes, listeners and children. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  properties: Properties = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (typeof value === "function") element.addEventListener(name.slice(2), value);
    else if (value === true) element.setAttribute(name, "");
    else if (value !== undefined && value !== false) element.setAttribute(name, String(value));
  }
  element.append(...children.filter((child): child is Node | string => child !== undefined && child !== false));
  return element;
}

/** A button that does something. */
export function button(label: string, act: () => void, properties: Properties = {}): HTMLButtonElement {
  return make("button", { type: "button", onclick: act, ...properties }, label);
}
