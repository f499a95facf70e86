import { XML, type Package } from "../../xlsx/package";
import { attributeOf, childOf, within } from "../../xlsx/xml";

const PART = "xl/metadata.xml";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";

/** The whole part that lets a cell be a dynamic array. */
const DYNAMIC =
  `${XML}<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ` +
  'xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1">' +
  '<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" ' +
  'rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
  '<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/**
 * The number that marks a cell as a dynamic array in this file, adding the part where there is none.
 * Undefined where the file has metadata of another kind only: the formula is then written as a plain one.
 */
export function dynamicMetadata(file: Package): number | undefined {
  const { workbook } = file;
  const part = file.partOf("sheetMetadata");
  const root = part === undefined ? undefined : file.xml(part);
  if (!root) {
    file.setText(PART, DYNAMIC);
    file.addContentType(PART, TYPE);
    file.addRelation(workbook, RELATION, PART);
    return 1;
  }
  const types = [...within(root, "metadataType")].map((element) => attributeOf(element, "name"));
  const type = types.indexOf("XLDAPR") + 1;
  const records = (childOf(root, "cellMetadata")?.children ?? []).map((record) =>
    Number(attributeOf(childOf(record, "rc"), "t")),
  );
  const index = type === 0 ? -1 : records.indexOf(type);
  return index < 0 ? undefined : index + 1;
}
