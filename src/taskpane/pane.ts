import type { Host } from "../host/port";

export function mountPane(root: HTMLElement, host: Host): void {
  root.textContent = host.kind;
}
