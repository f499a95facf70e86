import { element } from "../svg";
import { at } from "./outline";

type Point = readonly [number, number];

export function polygon(points: readonly Point[], attributes: Record<string, string | number>): string {
  return element("path", { d: `M${points.map(at).join("L")}Z`, ...attributes });
}

export function polyline(points: readonly Point[], attributes: Record<string, string | number>): string {
  return element("path", {
    d: `M${points.map(at).join("L")}`,
    fill: "none",
    "stroke-linejoin": "round",
    ...attributes,
  });
}
