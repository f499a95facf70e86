import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";

/** The parts of an .xlsx file, read and replaced as text; parts nobody touches keep their bytes. */
export class Package {
  private readonly parts: Record<string, Uint8Array>;

  constructor(bytes: Uint8Array) {
    this.parts = unzipSync(bytes);
  }

  has(name: string): boolean {
    return name in this.parts;
  }

  text(name: string): string {
    const part = this.parts[name];
    return part ? strFromU8(part) : "";
  }

  setText(name: string, text: string): void {
    this.parts[name] = strToU8(text);
  }

  setBytes(name: string, bytes: Uint8Array): void {
    this.parts[name] = bytes;
  }

  remove(name: string): void {
    delete this.parts[name];
  }

  names(): string[] {
    return Object.keys(this.parts);
  }

  /** Targets of a part's relationships by id, as names of parts. */
  relations(part: string): Map<string, { readonly type: string; readonly target: string }> {
    const found = new Map<string, { type: string; target: string }>();
    for (const [element] of this.text(relationsPart(part)).matchAll(/<(?:\w+:)?Relationship\b[^>]*>/g)) {
      const id = attribute(element, "Id");
      const target = attribute(element, "Target");
      if (id && target && attribute(element, "TargetMode") !== "External") {
        found.set(id, { type: attribute(element, "Type") ?? "", target: resolve(part, target) });
      }
    }
    return found;
  }

  /** Adds a relationship and gives its id. */
  addRelation(part: string, type: string, target: string): string {
    const name = relationsPart(part);
    const existing = this.text(name) || `${XML}<Relationships xmlns="${RELATIONS}"></Relationships>`;
    let number = 1;
    while (existing.includes(`"rIdRill${number}"`)) number += 1;
    const id = `rIdRill${number}`;
    const entry = `<Relationship Id="${id}" Type="${type}" Target="/${target}"/>`;
    this.setText(
      name,
      existing.replace(/<\/Relationships>|<Relationships\b([^>]*)\/>/, (whole, attributes: string | undefined) =>
        attributes === undefined ? `${entry}${whole}` : `<Relationships${attributes}>${entry}</Relationships>`,
      ),
    );
    return id;
  }

  addContentType(part: string, type: string): void {
    const types = "[Content_Types].xml";
    this.setText(
      types,
      this.text(types).replace("</Types>", `<Override PartName="/${part}" ContentType="${type}"/></Types>`),
    );
  }

  addDefaultType(extension: string, type: string): void {
    const types = "[Content_Types].xml";
    if (new RegExp(`Extension="${extension}"`, "i").test(this.text(types))) return;
    this.setText(
      types,
      this.text(types).replace(/(<Types\b[^>]*>)/, `$1<Default Extension="${extension}" ContentType="${type}"/>`),
    );
  }

  /** Takes a part out with everything that points at it. */
  removeWithMentions(part: string, owner: string): void {
    if (!this.has(part)) return;
    this.remove(part);
    const types = "[Content_Types].xml";
    this.setText(
      types,
      this.text(types).replace(
        new RegExp(`<Override\\b[^>]*PartName="/${part.replace(/[.[\]]/g, "\\$&")}"[^>]*/>`),
        "",
      ),
    );
    const relations = relationsPart(owner);
    this.setText(
      relations,
      this.text(relations).replace(/<Relationship\b[^>]*\/>/g, (element) =>
        resolve(owner, attribute(element, "Target") ?? "") === part ? "" : element,
      ),
    );
  }

  /** The file, packed; the same parts give the same bytes. */
  bytes(): Uint8Array {
    const files: Zippable = {};
    for (const [name, part] of Object.entries(this.parts)) if (!name.endsWith("/")) files[name] = part;
    return zipSync(files, { level: 6, mtime: new Date(1980, 0, 1) });
  }
}

export const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";

export function attribute(element: string, name: string): string | undefined {
  return new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(element)?.[1];
}

function relationsPart(part: string): string {
  const slash = part.lastIndexOf("/");
  return `${part.slice(0, slash + 1)}_rels/${part.slice(slash + 1)}.rels`;
}

/** A target as the file writes it, as the name of a part. */
function resolve(part: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const path = part.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== ".") path.push(step);
  }
  return path.join("/");
}
