import type { Content } from "pdfmake/interfaces";
import type { Logo } from "../book/types";
import { base64 } from "../host/base64";

/** The room for a logo over a paper, in points. */
const WIDEST = 150;
const HIGHEST = 46;

/** A logo as large as its room allows; an SVG is drawn, so that print shows its lines sharp. */
export function logoContent({ type, bytes, width, height }: Logo): Content {
  const times = Math.min(WIDEST / width, HIGHEST / height);
  const size = { width: width * times, height: height * times };
  if (type === "svg") return { svg: new TextDecoder().decode(bytes), ...size };
  return { image: `data:image/${type};base64,${base64(bytes)}`, ...size };
}
