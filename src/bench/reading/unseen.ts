import { unzipSync } from "fflate";

/** What files hold that the bench keeps and does not show, by the parts of the package that hold it. */
const UNSEEN: readonly (readonly [parts: RegExp, one: string, more: string])[] = [
  [/^xl\/charts\/chart\d*\.xml$|^xl\/charts\/chartEx\d*\.xml$/, "chart", "charts"],
  [/^xl\/media\/(?!.*\.png$)/, "picture that is not a PNG", "pictures that are not PNG"],
  [/^xl\/comments\d*\.xml$|^xl\/comments\//, "sheet with notes", "sheets with notes"],
  [/^xl\/threadedComments\//, "sheet with comments", "sheets with comments"],
  [/^xl\/pivotTables\/[^/]*\.xml$/, "pivot table", "pivot tables"],
  [/^xl\/slicers\/[^/]*\.xml$/, "slicer", "slicers"],
  [/^xl\/externalLinks\/[^/]*\.xml$/, "link to another workbook", "links to other workbooks"],
  [/^xl\/(ctrlProps|activeX)\/[^/]*\.xml$/, "form control", "form controls"],
  [/^xl\/embeddings\//, "embedded object", "embedded objects"],
];

/** The unseen parts of a workbook file in words: "2 charts", "1 pivot table". */
export function unseenParts(bytes: Uint8Array): string[] {
  const names: string[] = [];
  unzipSync(bytes, {
    filter: ({ name }) => {
      names.push(name);
      return false;
    },
  });
  return UNSEEN.flatMap(([parts, one, more]) => {
    const count = names.filter((name) => parts.test(name)).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : more}`];
  });
}

/** "a", "a and b", "a, b and c". */
export function listed(things: readonly string[]): string {
  const last = things.at(-1) ?? "";
  return things.length < 2 ? last : `${things.slice(0, -1).join(", ")} and ${last}`;
}
