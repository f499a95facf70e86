import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The file without its charts, for Excel on the web, which refuses to insert sheets that carry them. */
export function withoutCharts(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  for (const [name, part] of Object.entries(parts)) {
    if (/^xl\/(drawings|charts)\//.test(name)) delete parts[name];
    else if (/^xl\/worksheets\/sheet\d+\.xml$/.test(name)) edit(name, part, /<drawing [^>]*\/>/g);
    else if (/^xl\/worksheets\/_rels\//.test(name))
      edit(name, part, /<Relationship [^>]*\/relationships\/drawing"[^>]*\/>/g);
    else if (name === "[Content_Types].xml")
      edit(name, part, /<Override PartName="\/xl\/(?:drawings|charts)\/[^>]*\/>/g);
  }
  return zipSync(parts, { mtime: new Date(1980, 0, 1) });

  function edit(name: string, part: Uint8Array, remove: RegExp): void {
    parts[name] = strToU8(strFromU8(part).replace(remove, ""));
  }
}
