import { XML, type Package } from "../../xlsx/package";
import { escapeAttribute, within } from "../../xlsx/xml";
import type { Picture } from "../work/picture";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
/** English metric units in a pixel. */
const EMU = 9525;
/** What stands behind the drawing in a sheet, in the order the format demands. */
const BEHIND_DRAWING = new Set(
  "drawingHF legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst".split(" "),
);

/** Adds the pictures to the sheets' drawings, starting a drawing where a sheet has none. */
export function addPictures(file: Package, sheets: ReadonlyMap<string, string>, pictures: readonly Picture[]): void {
  for (const picture of pictures) {
    const sheet = sheets.get(picture.sheet);
    if (sheet === undefined) continue;
    const drawing = drawingOf(file, sheet) ?? startDrawing(file, sheet);
    const media = freeName(file, "xl/media/rillwright", ".png");
    file.setBytes(media, picture.png);
    file.addDefaultType("png", "image/png");
    const relation = file.addRelation(drawing, `${OFFICE}/image`, media);
    const root = file.xml(drawing);
    if (!root) continue;
    const id = 1000 + [...within(root, "cNvPr")].length;
    file.replace(drawing, root.closing, root.closing, anchor(picture, relation, id));
  }
}

function drawingOf(file: Package, sheet: string): string | undefined {
  return [...file.relations(sheet).values()].find(({ type }) => type.endsWith("/drawing"))?.target;
}

function startDrawing(file: Package, sheet: string): string {
  const drawing = freeName(file, "xl/drawings/drawingRillwright", ".xml");
  file.setText(drawing, `${XML}<xdr:wsDr xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}"></xdr:wsDr>`);
  file.addContentType(drawing, DRAWING_TYPE);
  const relation = file.addRelation(sheet, `${OFFICE}/drawing`, drawing);
  const root = file.xml(sheet);
  if (!root) return drawing;
  const at = root.children.find(({ name }) => BEHIND_DRAWING.has(name))?.start ?? root.closing;
  file.replace(sheet, at, at, `<${root.prefix}drawing xmlns:r="${OFFICE}" r:id="${relation}"/>`);
  return drawing;
}

function freeName(file: Package, stem: string, ending: string): string {
  let number = 1;
  while (file.has(`${stem}${number}${ending}`)) number += 1;
  return `${stem}${number}${ending}`;
}

function anchor({ row, column, width, height, title }: Picture, relation: string, id: number): string {
  const name = escapeAttribute(title);
  return (
    `<xdr:oneCellAnchor xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}"><xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff>` +
    `<xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="${Math.round(width * EMU)}" cy="${Math.round(height * EMU)}"/>` +
    `<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="${id}" name="${name}" descr="${name}"/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>` +
    `<xdr:blipFill><a:blip xmlns:r="${OFFICE}" r:embed="${relation}"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>` +
    `<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="${Math.round(width * EMU)}" cy="${Math.round(height * EMU)}"/></a:xfrm>` +
    `<a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>`
  );
}
