import { zipSync } from "fflate";

/** The file that Microsoft 365 installs the unified manifest from; the same input gives the same bytes. */
export function unifiedPackage(
  manifest: string,
  icons: Readonly<Record<"color.png" | "outline.png", Uint8Array>>,
): Uint8Array {
  const files = { "manifest.json": new TextEncoder().encode(manifest), ...icons };
  return zipSync(files, { level: 9, mtime: "2000-01-01T00:00:00" });
}
