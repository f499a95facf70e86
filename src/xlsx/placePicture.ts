import { XML, type Package } from "./package";
import { escapeAttribute, within } from "./xml";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
const SVG_IN_DRAWING = "http://schemas.microsoft.com/office/drawing/2016/SVG/main";
/** The extension of a picture that holds its SVG (MS-ODRAWXML 2.3). */
const SVG_EXTENSION = "{96DAC541-7B7A-43D3-8B79-37D633B846F1}";
const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
/** English metric units in a pixel. */
const EMU = 9525;
/** What stands behind the drawing in a sheet, in the order the format demands. */
const BEHIND_DRAWING = new Set(
  "drawingHF legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst".split(" "),
);

const MEDIA = { png: "image/png", jpeg: "image/jpeg", svg: "image/svg+xml" } as const;

/** A picture to lie at a cell, counted from 0, with its size in pixels. */
export interface PlacedPicture {
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly type: "png" | "jpeg";
  readonly bytes: Uint8Array;
  /** The same picture as SVG, for programs that show it. */
  readonly svg?: Uint8Array;
}

/** Adds a picture to a sheet's drawing, starting one where the sheet has none. */
export function placePicture(file: Package, sheet: string, picture: PlacedPicture): void {
  const drawing = drawingOf(file, sheet) ?? startDrawing(file, sheet);
  const add = (bytes: Uint8Array, type: keyof typeof MEDIA): string => {
    const media = freeName(file, "xl/media/rillwright", `.${type}`);
    file.setBytes(media, bytes);
    file.addDefaultType(type, MEDIA[type]);
    return file.addRelation(drawing, `${OFFICE}/image`, media);
  };
  const relation = add(picture.bytes, picture.type);
  const svg = picture.svg && add(picture.svg, "svg");
  const root = file.xml(drawing);
  if (!root) return;
  const id = 1000 + [...within(root, "cNvPr")].length;
  file.replace(drawing, root.closing, root.closing, anchor(picture, relation, svg, id));
}

/** The drawing of a sheet, where it has one. */
export function drawingOf(file: Package, sheet: string): string | undefined {
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

function anchor(
  { row, column, width, height, title }: PlacedPicture,
  relation: string,
  svg: string | undefined,
  id: number,
): string {
  const name = escapeAttribute(title);
  const size = `cx="${Math.round(width * EMU)}" cy="${Math.round(height * EMU)}"`;
  const also =
    svg === undefined
      ? "/>"
      : `><a:extLst><a:ext uri="${SVG_EXTENSION}"><asvg:svgBlip xmlns:asvg="${SVG_IN_DRAWING}" r:embed="${svg}"/></a:ext></a:extLst></a:blip>`;
  return (
    `<xdr:oneCellAnchor xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}"><xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff>` +
    `<xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext ${size}/>` +
    `<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="${id}" name="${name}" descr="${name}"/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>` +
    `<xdr:blipFill><a:blip xmlns:r="${OFFICE}" r:embed="${relation}"${also}<a:stretch><a:fillRect/></a:stretch></xdr:blipFill>` +
    `<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/></a:xfrm>` +
    `<a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>`
  );
}
