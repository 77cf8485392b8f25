/** The parts of a package and how they point at each other. */
import { oncePer } from "../oncePer";
import type { Parts } from "./zip";
import { bytesOf, children, documentOf, elements, freshDocument, serialized, sibling, type first } from "./xml";
import { Damaged } from "./fault";

const relationshipType = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

export type Relationship = { readonly id: string; readonly type: string; readonly target: string };

/** `xl/_rels/workbook.xml.rels` for `xl/workbook.xml`. */
export function relationshipsPart(part: string): string {
  const slash = part.lastIndexOf("/");
  return `${part.slice(0, slash + 1)}_rels/${part.slice(slash + 1)}.rels`;
}

/** What a part points at inside the package, its targets as names of parts. */
export function relationshipsOf(parts: Parts, part: string): readonly Relationship[] {
  const bytes = parts.get(relationshipsPart(part));
  return bytes === undefined ? [] : readRelationships(bytes, part).map((each) => ({ ...each, target: nameIn(parts, each.target) }));
}

const readBefore = new WeakMap<Uint8Array, { readonly part: string; readonly relationships: readonly Relationship[] }>();

/** The same as it stands in the bytes, read once: every cell of the grid asks on its way to its style. */
function readRelationships(bytes: Uint8Array, part: string): readonly Relationship[] {
  const before = readBefore.get(bytes);
  if (before?.part === part) return before.relationships;
  const relationships = elements(documentOf(bytes), "Relationship")
    .filter((each) => each.getAttribute("TargetMode") !== "External")
    .map((each) => ({
      id: each.getAttribute("Id") ?? "",
      type: each.getAttribute("Type") ?? "",
      target: resolved(part, each.getAttribute("Target") ?? ""),
    }));
  readBefore.set(bytes, { part, relationships });
  return relationships;
}

export const isOfType = ({ type }: Relationship, name: string): boolean => type.endsWith(`/${name}`);

const spellings = oncePer(
  (parts: Parts): ReadonlyMap<string, string> => new Map([...parts.keys()].map((each) => [each.toLowerCase(), each])),
);

/** The name of a part as it is spelled in the package: names of parts are the same in any case. */
function nameIn(parts: Parts, name: string): string {
  if (parts.has(name)) return name;
  return spellings(parts).get(name.toLowerCase()) ?? name;
}

/** A target relative to a part, or absolute, as the name of a part. */
function resolved(part: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const path = part.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  return path.join("/");
}

/** The main part of the workbook. */
export function workbookPart(parts: Parts): string {
  const bytes = parts.get("_rels/.rels");
  if (bytes === undefined) throw new Damaged("the package does not say what is in it");
  const main = readRelationships(bytes, "").find((each) => isOfType(each, "officeDocument"));
  const name = main === undefined ? null : nameIn(parts, main.target);
  if (name === null || !parts.has(name)) throw new Damaged("the package has no workbook");
  return name;
}

/** A package that is being changed: what is put in place of old parts, and what is taken out. */
export class PackageEdit {
  private readonly changed: Map<string, Uint8Array>;

  constructor(parts: Parts) {
    this.changed = new Map(parts);
  }

  get parts(): Parts {
    return this.changed;
  }

  put(name: string, content: Uint8Array | string): void {
    this.changed.set(name, typeof content === "string" ? bytesOf(content) : content);
  }

  /** A part's name that is free: `xl/worksheets/sheet7.xml` for ("xl/worksheets/sheet", ".xml"). */
  freeName(start: string, end: string): string {
    const taken = new Set([...this.changed.keys()].map((name) => name.toLowerCase()));
    for (let number = 1; ; number += 1) if (!taken.has(`${start}${number}${end}`.toLowerCase())) return `${start}${number}${end}`;
  }

  /** Adds a part and says what it is. */
  add(name: string, content: string, contentType: string): void {
    this.put(name, content);
    this.editTypes((types) => {
      if (children(types, "Override").some((each) => each.getAttribute("PartName") === `/${name}`)) return;
      types.appendChild(sibling(types, "Override", { PartName: `/${name}`, ContentType: contentType }));
    });
  }

  /** Takes a part out, with its own relationships and what is said of it. */
  remove(name: string): void {
    this.changed.delete(name);
    this.changed.delete(relationshipsPart(name));
    this.editTypes((types) => {
      for (const each of children(types, "Override"))
        if (each.getAttribute("PartName")?.toLowerCase() === `/${name}`.toLowerCase()) types.removeChild(each);
    });
  }

  private editTypes(edit: (types: NonNullable<ReturnType<typeof first>>) => void): void {
    const bytes = this.changed.get("[Content_Types].xml");
    if (bytes === undefined) throw new Damaged("the package does not say what its parts are");
    const document = freshDocument(bytes);
    edit(document.documentElement!);
    this.put("[Content_Types].xml", serialized(document));
  }

  /** Lets a part point at another; answers the relationship's id. */
  relate(part: string, type: string, target: string): string {
    const name = relationshipsPart(part);
    const bytes =
      this.changed.get(name) ??
      bytesOf(
        '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships ' +
          `xmlns="http://schemas.openxmlformats.org/package/2006/relationships"/>`,
      );
    const document = freshDocument(bytes);
    const root = document.documentElement!;
    const taken = new Set(children(root, "Relationship").map((each) => each.getAttribute("Id")));
    let number = taken.size + 1;
    while (taken.has(`rId${number}`)) number += 1;
    root.appendChild(sibling(root, "Relationship", { Id: `rId${number}`, Type: `${relationshipType}/${type}`, Target: `/${target}` }));
    this.put(name, serialized(document));
    return `rId${number}`;
  }

  /** Takes the relationships of a part to another away. */
  unrelate(part: string, target: string): void {
    const name = relationshipsPart(part);
    const bytes = this.changed.get(name);
    if (bytes === undefined) return;
    const document = freshDocument(bytes);
    const root = document.documentElement!;
    for (const each of children(root, "Relationship"))
      if (resolved(part, each.getAttribute("Target") ?? "") === target) root.removeChild(each);
    this.put(name, serialized(document));
  }

  /** Changes a small part as a document. */
  edit(name: string, change: (root: NonNullable<ReturnType<typeof first>>) => void): void {
    const document = freshDocument(this.changed.get(name)!);
    change(document.documentElement!);
    this.put(name, serialized(document));
  }
}
