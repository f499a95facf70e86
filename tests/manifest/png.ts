import { readFileSync } from "node:fs";

/** Width and height of a PNG, from its header. */
export function pngSize(file: string): [width: number, height: number] {
  const bytes = readFileSync(file);
  if (bytes.toString("latin1", 1, 4) !== "PNG") throw new Error(`${file} is not a PNG`);
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

/** Whether a PNG has an alpha channel. */
export function pngHasAlpha(file: string): boolean {
  return readFileSync(file)[25] === 6;
}
