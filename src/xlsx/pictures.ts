import type { Package } from "./package";
import { drawingOf } from "./placePicture";
import { attributeOf, relationOf, within, type XmlElement } from "./xml";

/** A picture that lies on a sheet, and the part that holds it. */
export interface LyingPicture {
  readonly title: string;
  /** Row of its top left corner, from 0. */
  readonly row: number;
  /** Its part: "xl/media/image1.png". */
  readonly part: string;
  /** The part that holds it as SVG too, where a program stored both. */
  readonly svg: string | undefined;
}

/** The pictures of a sheet, in the order in which the file lists them. */
export function picturesOn(file: Package, sheet: string): LyingPicture[] {
  const drawing = drawingOf(file, sheet);
  const root = drawing === undefined ? undefined : file.xml(drawing);
  if (drawing === undefined || !root) return [];
  const relations = file.relations(drawing);
  const partIn = (element: XmlElement | undefined): string | undefined =>
    element && relations.get(relationOf(element, "embed") ?? "")?.target;
  return root.children.flatMap((anchor): LyingPicture[] => {
    const [pic] = within(anchor, "pic");
    const [blip] = pic ? within(pic, "blip") : [];
    const part = partIn(blip);
    if (!pic || !blip || part === undefined) return [];
    const [said] = within(pic, "cNvPr");
    const [from] = within(anchor, "from");
    const [row] = from ? within(from, "row") : [];
    const [svg] = within(blip, "svgBlip");
    return [{ title: (said && attributeOf(said, "name")) ?? "", row: Number(row?.text ?? 0), part, svg: partIn(svg) }];
  });
}
