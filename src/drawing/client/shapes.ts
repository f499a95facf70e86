import { element } from "../svg";
import { at, ring, type Point } from "./outline";

export function polygon(points: readonly Point[], attributes: Record<string, string | number>): string {
  return element("path", { d: ring(points), ...attributes });
}

export function polyline(points: readonly Point[], attributes: Record<string, string | number>): string {
  return element("path", {
    d: `M${points.map(at).join("L")}`,
    fill: "none",
    "stroke-linejoin": "round",
    ...attributes,
  });
}
